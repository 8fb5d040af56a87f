using InstallPacket.Packets;

namespace InstallPacket.Cli.Files;

/// <summary>
/// Writes packets so that a reader never sees half of one: the new packet is written beside the old one and takes its place in two
/// renames; if the program dies between them, the next run puts the old packet back.
/// </summary>
/// <param name="root">The output folder.</param>
internal sealed class OutputFolder(string root)
{
    private const string New = ".new-";
    private const string Old = ".old-";

    /// <summary>Clears up after a run that was killed.</summary>
    public void Recover()
    {
        Directory.CreateDirectory(root);
        foreach (var old in Directory.GetDirectories(root, Old + "*"))
        {
            var place = Path.Combine(root, Path.GetFileName(old)[Old.Length..]);
            if (Directory.Exists(place)) Directory.Delete(old, true);
            else Directory.Move(old, place);
        }
        foreach (var half in Directory.GetDirectories(root, New + "*")) Directory.Delete(half, true);
    }

    /// <summary>The folder of one packet.</summary>
    public string PacketFolder(string id) => Path.Combine(root, id);

    /// <summary>Whether a folder of that name is there that no packet was ever written into.</summary>
    public bool IsForeign(string id)
    {
        var place = PacketFolder(id);
        return Directory.Exists(place) && !File.Exists(Path.Combine(place, PacketManifest.FileName)) && Directory.EnumerateFileSystemEntries(place).Any();
    }

    /// <summary>Replaces a packet.</summary>
    public void Write(string id, IEnumerable<OutputFile> files, PacketManifest manifest)
    {
        var half = Path.Combine(root, New + id);
        foreach (var file in files)
        {
            var path = Path.Combine(half, file.Path);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllBytes(path, file.Bytes);
        }
        File.WriteAllText(Path.Combine(half, PacketManifest.FileName), manifest.Text());
        var (place, old) = (PacketFolder(id), Path.Combine(root, Old + id));
        if (Directory.Exists(place)) Directory.Move(place, old);
        Directory.Move(half, place);
        if (Directory.Exists(old)) Directory.Delete(old, true);
    }

    /// <summary>Replaces a single file of the output folder.</summary>
    public void WriteFile(OutputFile file)
    {
        var path = Path.Combine(root, file.Path);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllBytes(path + ".new", file.Bytes);
        File.Move(path + ".new", path, true);
    }
}
