using System.Buffers.Binary;
using System.Text;

namespace InstallPacket.Drawings.Canvas;

/// <summary>
/// The directory of a TrueType file. Each table has a checksum there: a damaged file is found before anything draws with it.
/// </summary>
internal static class FontTables
{
    private const int DirectoryAt = 12;
    private const int EntryBytes = 16;
    private const string Head = "head";
    // The word of the head table that is made from all the others counts as zero.
    private const int Adjustment = 8;

    /// <summary>Where each table begins.</summary>
    /// <param name="name">Name for messages: the file name.</param>
    /// <param name="bytes">The whole file.</param>
    /// <exception cref="InvalidDataException">A table is cut off or does not have its checksum.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The directory is cut off.</exception>
    public static Dictionary<string, int> Of(string name, byte[] bytes)
    {
        // Its first word says what it is: outlines of one kind, of the same under another name, or of the other kind.
        if (U32(bytes, 0) is not (0x00010000 or 0x74727565 or 0x4F54544F))
            throw new InvalidDataException($"font '{name}' is not a TrueType file with a Unicode character map");
        var tables = new Dictionary<string, int>(StringComparer.Ordinal);
        var count = BinaryPrimitives.ReadUInt16BigEndian(bytes.AsSpan(4, 2));
        for (var i = 0; i < count; i++)
        {
            var entry = bytes.AsSpan(DirectoryAt + i * EntryBytes, EntryBytes);
            var tag = Encoding.ASCII.GetString(entry[..4]);
            var (sum, at, length) = (U32(entry, 4), U32(entry, 8), U32(entry, 12));
            if (at + (long)length > bytes.Length)
                throw new InvalidDataException($"font '{name}' is cut off or damaged: its table '{Tag(tag)}' goes beyond the end");
            if (Sum(bytes.AsSpan((int)at, (int)length), tag == Head) != sum)
                throw new InvalidDataException(
                    $"font '{name}' is damaged: its table '{Tag(tag)}' does not have the checksum that the file states");
            tables[tag] = (int)at;
        }
        return tables;
    }

    private static uint Sum(ReadOnlySpan<byte> table, bool isHead)
    {
        var sum = 0u;
        for (var at = 0; at < table.Length; at += 4)
        {
            if (isHead && at == Adjustment) continue;
            sum += at + 4 <= table.Length ? U32(table, at) : Last(table[at..]);
        }
        return sum;
    }

    // Filled up with zeros.
    private static uint Last(ReadOnlySpan<byte> rest)
    {
        Span<byte> word = [0, 0, 0, 0];
        rest.CopyTo(word);
        return U32(word, 0);
    }

    private static string Tag(string tag) => string.Concat(tag.Select(c => char.IsAsciiLetterOrDigit(c) || c == '/' ? c : '?'));

    private static uint U32(ReadOnlySpan<byte> bytes, int at) => BinaryPrimitives.ReadUInt32BigEndian(bytes[at..]);
}
