namespace InstallPacket.Jobs.Text;

/// <summary>The bounds that keep hostile or broken input harmless. They are far above anything that a person writes.</summary>
internal static class FileBounds
{
    public const int JobBytes = 256 * 1024;
    public const int PartsBytes = 512 * 1024;
    public const int StationBytes = 16 * 1024 * 1024;
    public const int Depth = 24;
    public const int ScalarCharacters = 4000;
}
