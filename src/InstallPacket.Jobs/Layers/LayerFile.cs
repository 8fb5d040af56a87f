namespace InstallPacket.Jobs.Layers;

/// <summary>The files of this folder that come with the program.</summary>
internal static class LayerFile
{
    /// <summary>A file; null when there is none of that name.</summary>
    public static YamlMap? Read(string name)
    {
        using var stream = typeof(LayerFile).Assembly.GetManifestResourceStream(name);
        if (stream is null) return null;
        using var reader = new StreamReader(stream);
        return YamlGate.Load(new(name, FileState.Present, reader.ReadToEnd().ReplaceLineEndings("\n")), new FindingList());
    }
}
