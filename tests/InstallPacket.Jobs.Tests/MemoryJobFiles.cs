using System.Text;

namespace InstallPacket.Jobs.Tests;

/// <summary>Files of an author in memory, with line ends as the real reader of files gives them.</summary>
internal sealed class MemoryJobFiles : IJobFiles
{
    private readonly SortedDictionary<string, string> _files;
    private readonly Dictionary<string, byte[]> _pictures = new(StringComparer.Ordinal);

    public MemoryJobFiles() => _files = new(StringComparer.Ordinal);

    /// <summary>The same files, to be changed.</summary>
    public MemoryJobFiles(MemoryJobFiles other) =>
        (_files, _pictures) = (new(other._files, StringComparer.Ordinal), new(other._pictures, StringComparer.Ordinal));

    public MemoryJobFiles With(string path, string text)
    {
        _files[path] = text.ReplaceLineEndings("\n");
        return this;
    }

    public MemoryJobFiles WithPicture(string path, byte[] bytes)
    {
        _pictures[path] = bytes;
        return this;
    }

    public Stream? Open(string path) => _pictures.TryGetValue(path, out var bytes) ? new MemoryStream(bytes) : null;

    public JobFile Read(string path, int maxBytes)
    {
        if (!_files.TryGetValue(path, out var text)) return new(path, FileState.Absent, "");
        return Encoding.UTF8.GetByteCount(text) > maxBytes ? new(path, FileState.TooLarge, "") : new(path, FileState.Present, text);
    }

    public IReadOnlyList<string> List(string folder) => [.. _files.Keys.Where(p => folder.Length == 0 || p.StartsWith(folder + "/", StringComparison.Ordinal))];
}
