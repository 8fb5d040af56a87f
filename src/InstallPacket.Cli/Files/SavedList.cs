using System.Text;

namespace InstallPacket.Cli.Files;

/// <summary>The file that a station list is saved to.</summary>
/// <param name="path">As the user wrote it.</param>
/// <param name="replace">Whether a file that is there may be written over.</param>
internal sealed class SavedList(string path, bool replace)
{
    /// <summary>Why nothing can be written there; empty when it can.</summary>
    public string Problem()
    {
        if (Directory.Exists(path)) return $"{path} is a folder; `--save` names a file";
        if (!Directory.Exists(Path.GetDirectoryName(Path.GetFullPath(path)))) return $"there is no folder for {path}";
        return File.Exists(path) && !replace ? $"{path} is there already; `--replace` writes over it" : "";
    }

    /// <summary>Writes the file; one that is there is replaced in one step.</summary>
    public void Write(string text)
    {
        var fresh = replace ? path + ".new" : path;
        using (var stream = new FileStream(fresh, FileMode.CreateNew, FileAccess.Write)) stream.Write(Encoding.UTF8.GetBytes(text));
        if (replace) File.Move(fresh, path, true);
    }
}
