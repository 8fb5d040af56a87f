using System.Text;

namespace InstallPacket.Jobs.Tests;

/// <summary>Files of an author in memory, with line ends as the real reader of files gives them.</summary>
internal sealed class MemoryJobFiles : IJobFiles
{
    private readonly SortedDictionary<string, string> _files;

    public MemoryJobFiles() => _files = new(StringComparer.Ordinal);

    /// <summary>The same files, to be changed.</summary>
    public MemoryJobFiles(MemoryJobFiles other) => _files = new(other._files, StringComparer.Ordinal);

    public MemoryJobFiles With(string path, string text)
    {
        _files[path] = text.ReplaceLineEndings("\n");
        return this;
    }

    public JobFile Read(string path, int maxBytes)
    {
        if (!_files.TryGetValue(path, out var text)) return new(path, FileState.Absent, "");
        return Encoding.UTF8.GetByteCount(text) > maxBytes ? new(path, FileState.TooLarge, "") : new(path, FileState.Present, text);
    }

    public IReadOnlyList<string> List(string folder) => [.. _files.Keys.Where(p => folder.Length == 0 || p.StartsWith(folder + "/", StringComparison.Ordinal))];
}
