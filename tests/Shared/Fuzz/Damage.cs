using System.Text;

namespace InstallPacket.Tests.Fuzz;

/// <summary>Damages a sound file. The same random numbers give the same damage.</summary>
/// <param name="random">Seeded by the caller.</param>
/// <param name="hostile">What may stand in the place of a value.</param>
internal sealed class Damage(Random random, string[] hostile)
{
    private const string Separators = " \n\r\t,:;|[]{}()'\"";

    /// <summary>A damaged copy.</summary>
    /// <param name="sound">The bytes of the file.</param>
    /// <param name="most">The most wounds.</param>
    public byte[] Of(byte[] sound, int most = 4)
    {
        var bytes = sound;
        // One wound is the likeliest: it gets farther into the program than many.
        for (var left = 1 + (int)(most * Math.Pow(random.NextDouble(), 2)); left > 0; left--) bytes = Wound(bytes);
        return bytes;
    }

    /// <summary>A copy with another plain number or two: what a slip of the pen gives.</summary>
    public byte[] Mild(byte[] sound)
    {
        var bytes = sound;
        for (var left = 1 + random.Next(2); left > 0; left--) bytes = Text(bytes, t => WithNumber(t, HostileWords.PlainNumbers));
        return bytes;
    }

    private byte[] Wound(byte[] bytes) => random.Next(20) switch
    {
        0 => InBytes(bytes),
        1 => Whole(bytes),
        < 6 => Text(bytes, InLines),
        < 12 => Text(bytes, WithValue),
        < 15 => Text(bytes, t => WithNumber(t, HostileWords.Numbers)),
        < 17 => Text(bytes, WithExchange),
        _ => Text(bytes, WithToken),
    };

    /// <summary>Damages bytes that are no text.</summary>
    /// <param name="sound">The bytes of the file.</param>
    /// <param name="head">How many bytes at the front are hit most often.</param>
    public byte[] OfBytes(byte[] sound, int head)
    {
        if (random.Next(40) == 0) return Whole(sound);
        byte[] bytes = [.. sound];
        for (var left = 1 + random.Next(6); left > 0; left--)
        {
            var at = random.Next(random.Next(4) > 0 ? Math.Min(head, bytes.Length) : bytes.Length);
            var wide = random.Next(3) == 0 ? Math.Min(4, bytes.Length - at) : 1;
            var value = random.Next(4) switch { 0 => 0, 1 => 0xFF, 2 => 0x7F, _ => random.Next(256) };
            if (random.Next(4) == 0) bytes[at] ^= (byte)(1 << random.Next(8));
            else bytes.AsSpan(at, wide).Fill((byte)value);
        }
        return random.Next(12) == 0 ? bytes[..random.Next(bytes.Length)] : bytes;
    }

    private byte[] InBytes(byte[] bytes)
    {
        if (bytes.Length == 0) return [(byte)random.Next(256)];
        var at = random.Next(bytes.Length);
        switch (random.Next(5))
        {
            case 0: return [.. bytes[..at], .. bytes[(at + random.Next(Math.Min(40, bytes.Length - at)))..]];
            case 1: return [.. bytes[..at], .. Junk(1 + random.Next(8)), .. bytes[at..]];
            case 2: return [.. bytes[..at], 0xED, 0xA0, (byte)(0x80 + random.Next(64)), .. bytes[at..]];
            default:
                byte[] changed = [.. bytes];
                changed[at] ^= (byte)(1 << random.Next(8));
                return changed;
        }
    }

    private byte[] Whole(byte[] bytes) => random.Next(9) switch
    {
        0 => [],
        1 => bytes[..random.Next(bytes.Length + 1)],
        2 => [.. bytes, .. bytes],
        3 => [0xEF, 0xBB, 0xBF, .. bytes],
        4 => Encoding.Unicode.GetBytes(Encoding.UTF8.GetString(bytes)),
        5 => Raw(Open(bytes).Replace("\n", "\r\n", StringComparison.Ordinal)),
        6 => Raw(Open(bytes).Replace('\n', '\r')),
        7 => Raw(Open(bytes).Replace("  ", "\t", StringComparison.Ordinal)),
        _ => Junk(random.Next(300)),
    };

    private byte[] Junk(int length)
    {
        var junk = new byte[length];
        random.NextBytes(junk);
        return junk;
    }

    // Each byte is a character here, so that what is no text stays as it is.
    private static string Open(byte[] bytes) => Encoding.Latin1.GetString(bytes);

    private static byte[] Raw(string text) => Encoding.Latin1.GetBytes(text);

    private static byte[] Text(byte[] bytes, Func<string, string> change) => bytes.Length == 0 ? bytes : Raw(change(Open(bytes)));

    private string InLines(string text)
    {
        var lines = text.Split('\n').ToList();
        var (at, other) = (random.Next(lines.Count), random.Next(lines.Count));
        switch (random.Next(8))
        {
            case 0: lines.RemoveAt(at); break;
            case 1: lines.Insert(at, lines[at]); break;
            case 2: (lines[at], lines[other]) = (lines[other], lines[at]); break;
            case 3: lines[at] = new string(' ', random.Next(1, 9)) + lines[at]; break;
            case 4: lines[at] = lines[at].TrimStart(); break;
            case 5: lines[at] = "\t" + lines[at]; break;
            case 6: lines.Insert(at, lines[other]); break;
            default: lines.InsertRange(at, Enumerable.Repeat(lines[at], random.Next(2, 200))); break;
        }
        return string.Join('\n', lines);
    }

    // What stands behind the next colon, to the end of the line.
    private string WithValue(string text)
    {
        var colon = text.IndexOf(": ", random.Next(text.Length), StringComparison.Ordinal);
        if (colon < 0) return WithToken(text);
        var end = text.IndexOf('\n', colon);
        return string.Concat(text.AsSpan(0, colon + 2), Word(), text.AsSpan(end < 0 ? text.Length : end));
    }

    // The next number gets another one and keeps its unit.
    private string WithNumber(string text, string[] numbers)
    {
        var at = random.Next(text.Length);
        while (at < text.Length && !char.IsAsciiDigit(text[at])) at++;
        var end = at;
        while (end < text.Length && (char.IsAsciiDigit(text[end]) || text[end] == '.')) end++;
        return string.Concat(text.AsSpan(0, at), numbers[random.Next(numbers.Length)], text.AsSpan(end));
    }

    private string WithToken(string text)
    {
        var (from, to) = Token(text);
        return string.Concat(text.AsSpan(0, from), Word(), text.AsSpan(to));
    }

    private string WithExchange(string text)
    {
        var ((from, to), (start, end)) = (Token(text), Token(text));
        return string.Concat(text.AsSpan(0, from), text.AsSpan(start, end - start), text.AsSpan(to));
    }

    private (int From, int To) Token(string text)
    {
        var (from, to) = (random.Next(text.Length), 0);
        while (from > 0 && !Separators.Contains(text[from - 1], StringComparison.Ordinal)) from--;
        for (to = from; to < text.Length && !Separators.Contains(text[to], StringComparison.Ordinal);) to++;
        return (from, to);
    }

    private string Word()
    {
        var word = hostile[random.Next(hostile.Length)];
        return Encoding.Latin1.GetString(Encoding.UTF8.GetBytes(word));
    }
}
