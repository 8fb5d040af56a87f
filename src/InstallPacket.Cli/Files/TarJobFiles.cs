using System.Formats.Tar;
using System.Text;

namespace InstallPacket.Cli.Files;

/// <summary>
/// The author's files as they were at a revision: a tar archive in memory, with the installed parts and kits beside it. Elevation tiles are those
/// of today:
/// they are large, seldom kept in git, and the ground does not change with a job.
/// </summary>
internal sealed class TarJobFiles : IJobFiles
{
    private readonly SortedDictionary<string, byte[]> _files = new(StringComparer.Ordinal);
    private readonly FolderJobFiles _installed;
    private readonly IJobFiles _today;

    public TarJobFiles(Stream archive, string installed, IJobFiles today)
    {
        _today = today;
        _installed = new FolderJobFiles("", installed);
        using var reader = new TarReader(archive);
        while (reader.GetNextEntry() is { } entry)
        {
            if (entry.EntryType is not (TarEntryType.RegularFile or TarEntryType.V7RegularFile) || entry.DataStream is null) continue;
            var bytes = new MemoryStream();
            entry.DataStream.CopyTo(bytes);
            _files[entry.Name] = bytes.ToArray();
        }
    }

    public JobFile Read(string path, int maxBytes)
    {
        if (SharedFolder.IsGeneric(path)) return _installed.Read(path, maxBytes);
        if (!_files.TryGetValue(path, out var bytes)) return new(path, FileState.Absent, "");
        if (bytes.Length > maxBytes) return new(path, FileState.TooLarge, "");
        try
        {
            return new(path, FileState.Present,
                new UTF8Encoding(false, true).GetString(bytes).TrimStart('\uFEFF').ReplaceLineEndings("\n"));
        }
        catch (DecoderFallbackException)
        {
            return new(path, FileState.NotText, "");
        }
    }

    public Stream? Open(string path) => TerrainTiles.IsTile(path) ? _today.Open(path)
        : _files.TryGetValue(path, out var bytes) ? new MemoryStream(bytes, writable: false) : null;

    public IReadOnlyList<string> List(string folder)
    {
        if (SharedFolder.IsGeneric(folder)) return _installed.List(folder);
        var prefix = folder.Length == 0 ? "" : folder + "/";
        return [.. _files.Keys.Where(p => p.StartsWith(prefix, StringComparison.Ordinal) && !SharedFolder.IsGeneric(p))
            .Concat(_today.List(folder).Where(TerrainTiles.IsTile)).Order(StringComparer.Ordinal)];
    }
}
