namespace InstallPacket.Packets.Pdf;

/// <summary>
/// Breaks runs into lines, greedily and ragged right. A line may end at a space, or after a hyphen or dash before a letter
/// (so that <c>-83</c> stays whole); a word wider than the line is cut where it must be.
/// </summary>
internal static class LineBreaker
{
    private const double Tolerance = 0.01;

    /// <summary>Lines no wider than the given width.</summary>
    public static IReadOnlyList<TextLine> Break(IReadOnlyList<TextRun> runs, double width)
    {
        var fill = new LineFill();
        foreach (var atom in Atoms(runs))
        {
            if (atom.EndsLine) { fill.EndLine(); continue; }
            var space = fill.IsEmpty || atom.Space is null ? 0 : atom.Space.Width;
            if (!fill.IsEmpty && fill.Used + space + atom.Width > width + Tolerance) fill.EndLine(atom.Space);
            else if (space > 0) fill.Add(atom.Space!);
            foreach (var piece in atom.Pieces) Place(fill, piece, width);
        }
        if (!fill.IsEmpty) fill.EndLine();
        return fill.Lines.Count == 0 ? [TextLine.Empty] : fill.Lines;
    }

    /// <summary>Width of the widest part that should not be cut.</summary>
    public static double NarrowestWidth(IReadOnlyList<TextRun> runs) => Atoms(runs).Select(a => a.Width).DefaultIfEmpty(0).Max();

    /// <summary>Width when nothing is broken but at forced line ends.</summary>
    public static double NaturalWidth(IReadOnlyList<TextRun> runs)
    {
        double widest = 0, line = 0;
        foreach (var run in runs)
        {
            line = run.IsLineEnd ? 0 : line + run.Width;
            widest = Math.Max(widest, line);
        }
        return widest;
    }

    // An atom that fits a line was moved to a fresh one by the caller; only a longer one is cut here.
    private static void Place(LineFill fill, TextRun piece, double width)
    {
        while (fill.Used + piece.Width > width + Tolerance)
        {
            var fits = LongestFit(piece, width - fill.Used);
            if (fits == 0 && !fill.IsEmpty) { fill.EndLine(); continue; }
            if (fits == 0) fits = char.IsHighSurrogate(piece.Text[0]) ? 2 : 1;
            if (fits >= piece.Text.Length) break;
            fill.Add(piece with { Text = piece.Text[..fits] });
            fill.EndLine();
            piece = piece with { Text = piece.Text[fits..] };
        }
        fill.Add(piece);
    }

    private static int LongestFit(TextRun piece, double room)
    {
        double used = 0;
        var afterSign = 0;
        for (var i = 0; i < piece.Text.Length;)
        {
            var next = i + (char.IsHighSurrogate(piece.Text[i]) && i + 1 < piece.Text.Length ? 2 : 1);
            used += piece.Type.Face.Width(piece.Text.AsSpan(i, next - i)) * piece.Type.Size;
            if (used > room) return afterSign > i / 2 ? afterSign : i;
            // A long address or identifier is easier to read when it is cut after one of its signs.
            if (piece.Text[i] is '/' or '.' or '_' or '-' or '&' or '=' or '?') afterSign = next;
            i = next;
        }
        return piece.Text.Length;
    }

    private static List<Atom> Atoms(IReadOnlyList<TextRun> runs)
    {
        var atoms = new List<Atom>();
        var current = new Atom(null);
        void Finish(TextRun? space)
        {
            if (current.Pieces.Count > 0) atoms.Add(current);
            else space = current.Space ?? space;
            current = new Atom(space);
        }
        foreach (var run in runs)
        {
            if (run.IsLineEnd)
            {
                Finish(null);
                atoms.Add(Atom.Break);
                current = new Atom(null);
                continue;
            }
            var start = 0;
            for (var i = 0; i <= run.Text.Length; i++)
            {
                var atSpace = i < run.Text.Length && run.Text[i] == ' ';
                var afterHyphen = i > start && i < run.Text.Length && IsBreakingHyphen(run.Text, i - 1);
                if (i < run.Text.Length && !atSpace && !afterHyphen) continue;
                if (i > start) current.Add(start == 0 && i == run.Text.Length ? run : run with { Text = run.Text[start..i] });
                if (atSpace) Finish(run with { Text = " " });
                else if (afterHyphen) Finish(null);
                start = atSpace ? i + 1 : i;
            }
        }
        Finish(null);
        return atoms;
    }

    private static bool IsBreakingHyphen(string text, int at) =>
        text[at] is '-' or '–' or '—' && at > 0 && char.IsLetterOrDigit(text[at - 1]) && at + 1 < text.Length
            && char.IsLetter(text[at + 1]);

    /// <summary>What stays together on a line: a word or a part of one, which may change face inside.</summary>
    private sealed class Atom(TextRun? space)
    {
        public static Atom Break { get; } = new(null) { EndsLine = true };

        public TextRun? Space { get; } = space;

        public bool EndsLine { get; private init; }

        public List<TextRun> Pieces { get; } = [];

        public double Width { get; private set; }

        public void Add(TextRun piece)
        {
            Pieces.Add(piece);
            Width += piece.Width;
        }
    }

    /// <summary>The line being filled; neighbours of one look are joined so that the page holds few strings.</summary>
    private sealed class LineFill
    {
        private readonly List<(double X, TextRun Run)> _runs = [];

        public List<TextLine> Lines { get; } = [];

        public double Used { get; private set; }

        public bool IsEmpty => _runs.Count == 0;

        public void Add(TextRun run)
        {
            if (_runs.Count > 0 && _runs[^1].Run is var last && last.Type == run.Type && last.Target == run.Target)
                _runs[^1] = (_runs[^1].X, last with { Text = last.Text + run.Text });
            else
                _runs.Add((Used, run));
            Used += run.Width;
        }

        /// <param name="space">The space at which the line is broken; kept in the text, so that a reader hears two words.</param>
        public void EndLine(TextRun? space = null)
        {
            var ink = Used;
            if (space is not null && !IsEmpty) Add(_runs[^1].Run with { Text = " " });
            Lines.Add(new TextLine([.. _runs], ink));
            _runs.Clear();
            Used = 0;
        }
    }
}
