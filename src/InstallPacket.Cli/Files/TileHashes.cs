using System.Globalization;
using System.Security.Cryptography;

namespace InstallPacket.Cli.Files;

/// <summary>
/// Hashes of elevation tiles. A tile is large and seldom changes: its hash is kept in the output folder and asked for again only when size
/// or time of
/// the file differ.
/// </summary>
/// <param name="files">The author's files.</param>
/// <param name="store">The file that keeps them.</param>
internal sealed class TileHashes(IJobFiles files, string store)
{
    private readonly Dictionary<string, string> _known = Load(store);
    private bool _new;

    /// <summary>The hash of a tile; empty when it cannot be read.</summary>
    public string Of(string path)
    {
        using var tile = files.Open(path);
        if (tile is null) return "";
        if (tile is not FileStream file) return Hash(tile);
        var key = string.Create(CultureInfo.InvariantCulture, $"{path}|{file.Length}|{File.GetLastWriteTimeUtc(file.Name).Ticks}");
        lock (_known)
        {
            if (_known.TryGetValue(key, out var known)) return known;
            _new = true;
            return _known[key] = Hash(tile);
        }
    }

    /// <summary>Keeps what was found, for the next run.</summary>
    public void Save()
    {
        if (!_new) return;
        try
        {
            // A pipe or a link in its place is taken away, and not written into.
            var half = store + ".new";
            File.Delete(half);
            File.WriteAllLines(half, _known.OrderBy(k => k.Key, StringComparer.Ordinal).Select(k => k.Value + " " + k.Key));
            File.Move(half, store, true);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // The next run hashes again.
        }
    }

    private static string Hash(Stream tile) => Convert.ToHexStringLower(SHA256.HashData(tile));

    private static Dictionary<string, string> Load(string store)
    {
        var known = new Dictionary<string, string>(StringComparer.Ordinal);
        try
        {
            // A pipe has no length, and reading it might never end.
            if (new FileInfo(store) is not { Exists: true, Length: > 0 }) return known;
            foreach (var line in File.ReadLines(store))
                if (line.Length > 65 && line[64] == ' ') known[line[65..]] = line[..64];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            known.Clear();
        }
        return known;
    }
}
