using System.Security.Cryptography;
using System.Text;
using InstallPacket.Packets;

namespace InstallPacket.Cli.Files;

/// <summary>One hash over everything that a packet is made from: program, theme, shared data, the job's own files.</summary>
/// <param name="files">The author's files.</param>
/// <param name="theme">The theme.</param>
internal sealed class InputHash(IJobFiles files, Theme theme)
{
    private const int Most = 64 * 1024 * 1024;
    private readonly byte[] _common = Common(files, theme);

    public string Of(string jobId)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(_common);
        Append(hash, files, files.List(jobId));
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    private static byte[] Common(IJobFiles files, Theme theme)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var assembly in new[] { typeof(InputHash), typeof(PacketBuilder), typeof(SvgPainter), typeof(Plans.Plan), typeof(Job), typeof(Calc.Quantities.Level) })
            hash.AppendData(assembly.Assembly.ManifestModule.ModuleVersionId.ToByteArray());
        foreach (var (path, bytes) in theme.Files.OrderBy(f => f.Key, StringComparer.Ordinal))
        {
            hash.AppendData(Encoding.UTF8.GetBytes(path));
            hash.AppendData(bytes);
        }
        Append(hash, files, [.. files.List("_shared/parts"), .. files.List("_shared/stations"), .. files.List("_shared/terrain").Where(TerrainTiles.IsTile)]);
        return hash.GetHashAndReset();
    }

    private static void Append(IncrementalHash hash, IJobFiles files, IReadOnlyList<string> paths)
    {
        foreach (var path in paths)
        {
            if (TerrainTiles.IsTile(path))
            {
                using var tile = files.Open(path);
                hash.AppendData(Encoding.UTF8.GetBytes($"{path}|"));
                hash.AppendData(tile is null ? [] : SHA256.HashData(tile));
                continue;
            }
            var file = files.Read(path, Most);
            hash.AppendData(Encoding.UTF8.GetBytes($"{path}|{file.State}|{file.Text.Length}|"));
            hash.AppendData(Encoding.UTF8.GetBytes(file.Text));
        }
    }
}
