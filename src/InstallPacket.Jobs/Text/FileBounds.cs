namespace InstallPacket.Jobs.Text;

/// <summary>The bounds that keep hostile or broken input harmless. They are far above anything that a person writes.</summary>
public static class FileBounds
{
    /// <summary>Of a job file.</summary>
    public const int JobBytes = 256 * 1024;
    /// <summary>Of a parts file.</summary>
    public const int PartsBytes = 512 * 1024;
    /// <summary>Of a station list.</summary>
    public const int StationBytes = 16 * 1024 * 1024;
    /// <summary>Levels of a YAML file.</summary>
    public const int Depth = 24;
    /// <summary>Characters of one value.</summary>
    public const int ScalarCharacters = 4000;
}
