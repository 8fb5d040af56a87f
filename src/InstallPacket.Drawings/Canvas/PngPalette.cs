using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace InstallPacket.Drawings.Canvas;

/// <summary>
/// At most 256 colours for a picture: those that cover most of it as they are (grounds and inks), the soft edges between them in 16 steps
/// of each of red, green and blue.
/// </summary>
internal sealed class PngPalette
{
    private const int Most = 256;
    private const int Exact = 32;
    private const uint Colour = 0x00FFFFFF; // the fourth byte of a pixel says nothing

    private readonly Dictionary<uint, byte> _index = [];
    private readonly List<byte> _entries = [];

    /// <summary>Red, green and blue of each entry.</summary>
    public ReadOnlySpan<byte> Entries => CollectionsMarshal.AsSpan(_entries);

    /// <summary>The palette of a picture; null where it has more colours.</summary>
    public static PngPalette? Of(ReadOnlySpan<byte> pixels, int width, int height, int rowBytes)
    {
        var counts = new Dictionary<uint, int>();
        for (var y = 0; y < height; y++) Count(MemoryMarshal.Cast<byte, uint>(pixels.Slice(y * rowBytes, width * 4)), counts);
        var palette = new PngPalette();
        var coloursByUse = counts.OrderByDescending(c => c.Value).ThenBy(c => c.Key).Select(c => c.Key).ToArray();
        foreach (var colour in coloursByUse.Take(Exact)) palette.Add(colour, colour);
        foreach (var colour in coloursByUse.Skip(Exact))
            if (!palette.Add(colour, Stepped(colour))) return null;
        return palette;
    }

    /// <summary>The entries of a row of pixels.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Row(ReadOnlySpan<byte> from, Span<byte> to)
    {
        var (last, index) = (uint.MaxValue, (byte)0);
        var pixels = MemoryMarshal.Cast<byte, uint>(from);
        for (var i = 0; i < pixels.Length; i++)
        {
            var colour = pixels[i] & Colour;
            if (colour != last) (last, index) = (colour, _index[colour]);
            to[i] = index;
        }
    }

    // Line art is long runs of one colour: each run is looked up once.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Count(ReadOnlySpan<uint> row, Dictionary<uint, int> counts)
    {
        for (int i = 0, from = 0; i < row.Length; from = i)
        {
            var colour = row[i] & Colour;
            while (i < row.Length && (row[i] & Colour) == colour) i++;
            CollectionsMarshal.GetValueRefOrAddDefault(counts, colour, out _) += i - from;
        }
    }

    private bool Add(uint colour, uint shown)
    {
        if (!_index.TryGetValue(shown, out var at))
        {
            if (_entries.Count == 3 * Most) return false;
            _index.Add(shown, at = (byte)(_entries.Count / 3));
            _entries.AddRange((byte)shown, (byte)(shown >> 8), (byte)(shown >> 16));
        }
        _index[colour] = at;
        return true;
    }

    private static uint Stepped(uint colour) => Step(colour) | Step(colour >> 8) << 8 | Step(colour >> 16) << 16;

    private static uint Step(uint value) => ((value & 0xFF) + 8) / 17 * 17;
}
