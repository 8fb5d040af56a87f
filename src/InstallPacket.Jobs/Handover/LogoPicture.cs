using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text.Json.Serialization;
using InstallPacket.Calc.Checksums;

namespace InstallPacket.Jobs.Handover;

/// <summary>The logo of a firm: a sound PNG file within bounds.</summary>
/// <param name="File">Path below the jobs folder.</param>
/// <param name="Sha256">Hash of its bytes.</param>
/// <param name="WidthPx">Points of a row.</param>
/// <param name="HeightPx">Rows.</param>
/// <param name="Bytes">The file.</param>
public sealed record LogoPicture(string File, string Sha256, int WidthPx, int HeightPx, [property: JsonIgnore] ReadOnlyMemory<byte> Bytes)
{
    /// <summary>Largest file that is read.</summary>
    public const int MostBytes = 256 * 1024;

    /// <summary>Largest width and height [points].</summary>
    public const int MostPx = 2000;

    private static ReadOnlySpan<byte> Signature => [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A];

    /// <inheritdoc/>
    public bool Equals(LogoPicture? other) => other is not null && (File, Sha256) == (other.File, other.Sha256);

    /// <inheritdoc/>
    public override int GetHashCode() => Sha256.GetHashCode(StringComparison.Ordinal);

    /// <summary>Reads the picture; null with a finding when it is missing or unfit.</summary>
    internal static LogoPicture? Read(IJobFiles files, Sourced<string> name, FindingList findings)
    {
        var path = $"_shared/{name.Value}";
        var (way, picture) = name.Value.Split('/').Any(s => s is "" or "." or "..") || name.Value.AsSpan().IndexOfAny('\\', ':') >= 0
            ? ("outside", null) : Opened(files, path);
        if (way.Length > 0) findings.Add(Severity.Caution, "logo-unfit", way, name.At, ("path", path), ("most_kib", MostBytes / 1024), ("most_px", MostPx));
        return picture;
    }

    private static (string Way, LogoPicture? Picture) Opened(IJobFiles files, string path)
    {
        using var stream = files.Open(path);
        if (stream is null) return ("absent", null);
        if (stream.Length > MostBytes) return ("large", null);
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        if (!bytes.AsSpan().StartsWith(Signature)) return ("other", null);
        if (!IsWhole(bytes)) return ("damaged", null);
        var (width, height) = (BinaryPrimitives.ReadInt32BigEndian(bytes.AsSpan(16)), BinaryPrimitives.ReadInt32BigEndian(bytes.AsSpan(20)));
        return width is < 1 or > MostPx || height is < 1 or > MostPx ? ("large", null)
            : ("", new(path, Convert.ToHexStringLower(SHA256.HashData(bytes)), width, height, bytes));
    }

    // Head first, end last, each chunk with its checksum.
    private static bool IsWhole(ReadOnlySpan<byte> bytes)
    {
        var first = true;
        for (var rest = bytes[Signature.Length..]; rest.Length >= 12; first = false)
        {
            var length = BinaryPrimitives.ReadUInt32BigEndian(rest);
            if (length > rest.Length - 12 || (first && !(length == 13 && rest[4..].StartsWith("IHDR"u8)))) return false;
            var end = 8 + (int)length;
            if (BinaryPrimitives.ReadUInt32BigEndian(rest[end..]) != Crc32.Of(rest[4..end])) return false;
            if (rest[4..].StartsWith("IEND"u8)) return true;
            rest = rest[(end + 4)..];
        }
        return false;
    }
}
