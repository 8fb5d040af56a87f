using System.Text;

namespace InstallPacket.Terrain.GeoTiff;

/// <summary>Where the whole numbers of a tag lie.</summary>
/// <param name="At">First byte.</param>
/// <param name="Count">How many.</param>
/// <param name="Bytes">Bytes of each: 2, 4 or 8.</param>
internal readonly record struct TiffArray(ulong At, ulong Count, int Bytes);

/// <summary>
/// The first directory of a TIFF or BigTIFF file. Further directories (overviews, masks) are never followed, so that a ring of them
/// does no harm.
/// </summary>
internal sealed class TiffDirectory
{
    private const int MostEntries = 1000;
    private const int Ascii = 2, Short = 3, Long = 4, DoubleFloat = 12, Long8 = 16;

    private readonly Dictionary<int, Entry> _entries = [];

    private TiffDirectory(TiffBytes bytes) => Bytes = bytes;

    public TiffBytes Bytes { get; }

    /// <summary>Reads header and entries; no value is read yet.</summary>
    /// <exception cref="UnfitTileException">The file is no TIFF, or its directory is unsound.</exception>
    public static TiffDirectory Read(Stream stream)
    {
        if (stream.Length < 8) throw new UnfitTileException($"holds {stream.Length} bytes, too few for a TIFF", "fetch it again");
        var start = new TiffBytes(stream, false).Read(0, 4);
        var bytes = (start[0], start[1]) switch
        {
            ((byte)'I', (byte)'I') => new TiffBytes(stream, false),
            ((byte)'M', (byte)'M') => new TiffBytes(stream, true),
            _ => throw NoTiff(),
        };
        var directory = new TiffDirectory(bytes);
        var version = bytes.UInt16(start.AsSpan(2));
        if (version == 42) directory.ReadEntries(bytes.UInt32(bytes.Read(4, 4)), false);
        else if (version == 43
            && bytes.UInt32(bytes.Read(4, 4)) == (bytes.BigEndian ? 0x0008_0000u
            : 0x0000_0008u)) directory.ReadEntries(bytes.UInt64(bytes.Read(8, 8)), true);
        else throw NoTiff();
        return directory;
    }

    public bool Has(TiffTag tag) => _entries.ContainsKey((int)tag);

    /// <summary>A single whole number, or the value that its absence means; refuses the file when that is null.</summary>
    public ulong Whole(TiffTag tag, ulong? absent = null)
    {
        if (!Has(tag)) return absent ?? throw Missing(tag);
        var array = Wholes(tag);
        return array.Count == 1 ? Value(array, 0) : throw new UnfitTileException($"has {array.Count} values of {Name(tag)}", "one is read");
    }

    /// <summary>Where the whole numbers of a tag lie; none is read yet.</summary>
    public TiffArray Wholes(TiffTag tag)
    {
        var entry = Find(tag);
        var size = entry.Type switch { Short => 2, Long => 4, Long8 => 8, _ => throw WrongType(tag, entry.Type) };
        return new(entry.At, entry.Count, size);
    }

    /// <summary>How many values a tag has.</summary>
    public ulong Count(TiffTag tag) => Find(tag).Count;

    public ulong Value(TiffArray array, ulong index) => Bytes.Whole(Bytes.Read(array.At + index * (ulong)array.Bytes, array.Bytes));

    public ushort[] Shorts(TiffTag tag, int most)
    {
        var bytes = All(tag, Short, 2, most);
        return [.. Enumerable.Range(0, bytes.Length / 2).Select(i => Bytes.UInt16(bytes.AsSpan(2 * i)))];
    }

    public double[] Doubles(TiffTag tag, int most)
    {
        var bytes = All(tag, DoubleFloat, 8, most);
        return [.. Enumerable.Range(0, bytes.Length / 8).Select(i => Bytes.Double(bytes.AsSpan(8 * i)))];
    }

    /// <summary>A text without its closing zero.</summary>
    public string Text(TiffTag tag, int most) => Encoding.Latin1.GetString(All(tag, Ascii, 1, most)).TrimEnd('\0');

    public static string Name(TiffTag tag) => $"{tag} (tag {(int)tag})";

    private void ReadEntries(ulong at, bool big)
    {
        var head = Bytes.Read(at, big ? 8 : 2);
        var count = Bytes.Whole(head);
        if (count is 0 or > MostEntries) throw new UnfitTileException($"has a directory of {count} tags", $"1 to {MostEntries} are read");
        var (size, inline) = big ? (20, 8) : (12, 4);
        var first = at + (ulong)head.Length;
        var table = Bytes.Read(first, (int)count * size);
        for (var i = 0; i < (int)count; i++)
        {
            var row = table.AsSpan(i * size, size);
            var (tag, type) = (Bytes.UInt16(row), Bytes.UInt16(row[2..]));
            var values = Bytes.Whole(row.Slice(4, inline));
            var field = row.Slice(4 + inline, inline);
            var fits = values <= (ulong)(inline / SizeOf(type));
            var place = fits ? first + (ulong)(i * size + 4 + inline) : Bytes.Whole(field);
            if (!_entries.TryAdd(tag, new(type, values, place))) throw new UnfitTileException($"has tag {tag} twice", "each is read once");
        }
    }

    private byte[] All(TiffTag tag, int type, int size, int most)
    {
        var entry = Find(tag);
        if (entry.Type != type) throw WrongType(tag, entry.Type);
        if (entry.Count > (ulong)most) throw new UnfitTileException($"has {entry.Count} values of {Name(tag)}", $"at most {most} are read");
        return Bytes.Read(entry.At, (int)entry.Count * size);
    }

    private Entry Find(TiffTag tag) => _entries.TryGetValue((int)tag, out var entry) ? entry : throw Missing(tag);

    // Types of the standards; of one that nobody defined no value is ever read.
    private static int SizeOf(int type) =>
        type switch { Short or 8 => 2, Long or 9 or 11 or 13 => 4, 5 or 10 or DoubleFloat or Long8 or 17 or 18 => 8, _ => 1 };

    private static UnfitTileException NoTiff() => new("does not begin as a TIFF file", "TIFF and BigTIFF are read");

    private static UnfitTileException Missing(TiffTag tag) => new($"has no {Name(tag)}", "a GeoTIFF tile states it");

    private static UnfitTileException WrongType(TiffTag tag, int type) =>
        new($"has {Name(tag)} of type {type}", "the type of the standard is read");

    private readonly record struct Entry(int Type, ulong Count, ulong At);
}
