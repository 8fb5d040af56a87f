namespace InstallPacket.Calc.Checksums;

/// <summary>The checksum of zip archives, which the platform does not compare with the bytes that it unpacks, and of PNG files.</summary>
public static class Crc32
{
    private const uint Polynomial = 0xEDB88320;

    private static readonly uint[] Table = [.. Enumerable.Range(0, 256).Select(b =>
        Enumerable.Range(0, 8).Aggregate((uint)b, (c, _) => (c & 1) == 0 ? c >> 1 : (c >> 1) ^ Polynomial))];

    /// <summary>The checksum of some bytes.</summary>
    public static uint Of(ReadOnlySpan<byte> bytes)
    {
        var crc = ~0u;
        foreach (var b in bytes) crc = Table[(byte)(crc ^ b)] ^ (crc >> 8);
        return ~crc;
    }
}
