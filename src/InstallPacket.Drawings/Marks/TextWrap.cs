namespace InstallPacket.Drawings.Marks;

/// <summary>Breaks a name into lines that fit a width.</summary>
internal static class TextWrap
{
    private const string More = "…";

    /// <summary>At most the given number of lines, each within the width; what does not fit is cut with an ellipsis.</summary>
    public static IReadOnlyList<string> Lines(string text, double size, bool strong, double width, int most, ITextMeasure measure)
    {
        bool Fits(string s) => measure.WidthMm(s, size, strong) <= width;
        var words = new Queue<string>(Words(text));
        var lines = new List<string>();
        while (words.Count > 0 && lines.Count < most)
        {
            var line = words.Dequeue();
            while (words.Count > 0 && Fits((line + words.Peek()).TrimEnd())) line += words.Dequeue();
            if (lines.Count == most - 1 && words.Count > 0) line += words.Dequeue() + More;
            lines.Add(Fits(line.TrimEnd()) ? line.TrimEnd() : Cut(line, Fits));
        }
        return lines;
    }

    // A line may end after a space or a hyphen; each word keeps the mark that ends it.
    private static IEnumerable<string> Words(string text)
    {
        var start = 0;
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] is not (' ' or '-') && i < text.Length - 1) continue;
            if (i > start || text[i] != ' ') yield return text[start..(i + 1)];
            start = i + 1;
        }
    }

    private static string Cut(string line, Func<string, bool> fits)
    {
        var length = line.TrimEnd(More[0]).Length;
        while (length > 1 && !fits(line[..length].TrimEnd() + More)) length--;
        if (length > 1 && char.IsHighSurrogate(line[length - 1])) length--;
        return line[..length].TrimEnd() + More;
    }
}
