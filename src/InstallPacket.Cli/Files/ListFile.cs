using System.Text;

namespace InstallPacket.Cli.Files;

/// <summary>
/// One station list, wherever it lies. Our own lists are UTF-8; the regulator's list, known by its form, is Latin-1.
/// </summary>
internal sealed class ListFile : IJobFiles
{
    private static readonly UTF8Encoding Strict = new(false, true);

    /// <summary>Reads the file.</summary>
    /// <param name="path">As the user wrote it; findings name it so.</param>
    public ListFile(string path) => File = Open(path);

    /// <summary>The list with line ends as <c>\n</c>, or what came of asking for it.</summary>
    public JobFile File { get; }

    /// <summary>Largest list that is read, in words.</summary>
    public static string Bound => $"{StationListReader.MostBytes / (1024 * 1024)} MiB";

    public JobFile Read(string path, int maxBytes) => path == File.Path ? File : new(path, FileState.Absent, "");

    public IReadOnlyList<string> List(string folder) => [];

    private static JobFile Open(string path)
    {
        try
        {
            if (!System.IO.File.Exists(path)) return new(path, FileState.Absent, "");
            if (new FileInfo(path).Length > StationListReader.MostBytes) return new(path, FileState.TooLarge, "");
            var bytes = System.IO.File.ReadAllBytes(path);
            return Text(bytes) is { } text ? new(path, FileState.Present, text) : new(path, FileState.NotText, "");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new(path, FileState.Absent, "");
        }
    }

    private static string? Text(byte[] bytes)
    {
        try
        {
            var start = bytes.AsSpan().StartsWith("\uFEFF"u8) ? 3 : 0;
            return Strict.GetString(bytes, start, bytes.Length - start).ReplaceLineEndings("\n");
        }
        catch (DecoderFallbackException)
        {
            // Some signs of Latin-1 pass for line ends elsewhere; here they are part of a name.
            var text = Encoding.Latin1.GetString(bytes).Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n');
            return RegulatorList.HasForm(text) ? text : null;
        }
    }
}
