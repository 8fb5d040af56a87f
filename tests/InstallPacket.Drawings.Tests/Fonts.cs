namespace InstallPacket.Drawings.Tests;

/// <summary>The faces of the theme.</summary>
internal static class Fonts
{
    public static readonly FontSet Set = new(Face("SourceSans3-Regular"), Face("SourceSans3-Semibold"), Face("SourceSans3-It"), Face("SourceCodePro-Regular"));

    private static FontFace Face(string name)
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "InstallPacket.sln"))) folder = folder.Parent;
        return new FontFace(name, File.ReadAllBytes(Path.Combine(folder!.FullName, "theme", "fonts", name + ".ttf")));
    }
}
