using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using InstallPacket.Packets;

namespace InstallPacket.Cli.Files;

/// <summary>
/// One hash over everything that a packet is made from: program, theme, shared data, the job's own files. Of a shared parts file only what
/// it says counts, so that a remark in it rebuilds nothing, unless a finding of the packet names a line of it.
/// </summary>
/// <param name="files">The author's files.</param>
/// <param name="theme">The theme.</param>
/// <param name="tiles">Hashes of elevation tiles.</param>
/// <param name="pictures">Figures as PNG files, too.</param>
internal sealed class InputHash(IJobFiles files, Theme theme, TileHashes tiles, bool pictures)
{
    private const string Firm = "_shared/firm.yaml";
    private readonly byte[] _common = Common(files, theme, tiles);

    /// <summary>The hash.</summary>
    /// <param name="jobId">The job.</param>
    /// <param name="placed">Shared files of which findings of the packet name a line.</param>
    public string Of(string jobId, IReadOnlyList<string> placed)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(_common);
        AppendText(hash, "pictures", pictures ? "png" : "");
        Append(hash, files, tiles, files.List(jobId));
        Append(hash, files, tiles, placed);
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    /// <summary>The shared files of which findings name a line, in order.</summary>
    public static IReadOnlyList<string> Placed(IEnumerable<Finding> findings) =>
        [.. findings.Select(f => f.At.File).Where(f =>
            f.StartsWith("_shared/", StringComparison.Ordinal) && f.EndsWith(".yaml", StringComparison.Ordinal)).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];

    private static byte[] Common(IJobFiles files, Theme theme, TileHashes tiles)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var assembly in new[] { typeof(InputHash), typeof(PacketBuilder), typeof(SvgPainter), typeof(Plans.Plan), typeof(Job),
            typeof(Calc.Quantities.Level) })
            hash.AppendData(assembly.Assembly.ManifestModule.ModuleVersionId.ToByteArray());
        foreach (var (path, bytes) in theme.Files.OrderBy(f => f.Key, StringComparer.Ordinal))
        {
            hash.AppendData(Encoding.UTF8.GetBytes(path));
            hash.AppendData(bytes);
        }
        foreach (var path in SharedFolder.Parts(files).Concat(SharedFolder.Kits(files)).Concat(files.List("_shared/firms")).Append(Firm))
        {
            var file = files.Read(path, FileBounds.PartsBytes);
            // Generic files change with the program and not by hand.
            AppendText(hash, path, SharedFolder.IsGeneric(path) ? file.Text : Said(file));
        }
        foreach (var path in files.List("_shared").Where(p => p.EndsWith(".png", StringComparison.OrdinalIgnoreCase))) AppendPicture(hash, files, path);
        Append(hash, files, tiles, [.. files.List("_shared/stations"), .. files.List("_shared/terrain").Where(TerrainTiles.IsTile)]);
        return hash.GetHashAndReset();
    }

    // A file beyond the bound is never read for a packet either.
    private static void Append(IncrementalHash hash, IJobFiles files, TileHashes tiles, IReadOnlyList<string> paths)
    {
        foreach (var path in paths)
        {
            if (TerrainTiles.IsTile(path)) AppendText(hash, path, tiles.Of(path));
            else
            {
                var file = files.Read(path, FileBounds.StationBytes);
                AppendText(hash, path, $"{file.State}|{file.Text}");
            }
        }
    }

    // A larger one is never read for a packet either.
    private static void AppendPicture(IncrementalHash hash, IJobFiles files, string path)
    {
        using var stream = files.Open(path);
        AppendText(hash, path, stream is null || stream.Length > LogoPicture.MostBytes ? "" : Convert.ToHexStringLower(SHA256.HashData(stream)));
    }

    private static void AppendText(IncrementalHash hash, string path, string text)
    {
        hash.AppendData(Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{path}|{text.Length}|")));
        hash.AppendData(Encoding.UTF8.GetBytes(text));
    }

    // What a YAML file says, without remarks, blank lines and order of columns; its text where it does not read.
    private static string Said(JobFile file)
    {
        if (file.State != FileState.Present) return file.State.ToString();
        var findings = new FindingList();
        if (YamlGate.Load(file, findings) is not { } root || findings.Sorted.Count > 0) return file.Text;
        var said = new StringBuilder();
        Say(root, said);
        return said.ToString();
    }

    private static void Say(YamlNode node, StringBuilder said)
    {
        switch (node)
        {
            case YamlScalar scalar:
                said.Append(scalar.Quoted ? '"' : '\'').Append(scalar.Value.Length).Append(':').Append(scalar.Value);
                break;
            case YamlMap map:
                said.Append('{');
                foreach (var (key, value) in map.Entries)
                {
                    Say(key, said);
                    Say(value, said);
                }
                said.Append('}');
                break;
            case YamlList list:
                said.Append('[');
                foreach (var item in list.Items) Say(item, said);
                said.Append(']');
                break;
        }
    }
}
