using InstallPacket.Plans;

namespace InstallPacket.Drawings.Materials.Cutting;

/// <summary>Draws one strip to scale: the stock, its pieces with their numbers, the rest hatched, and the lengths in words below.</summary>
internal sealed class StripPainter(SheetCanvas canvas, SheetPlan plan, double mmPerMetre)
{
    private const double BarMm = 8;
    private const double NumberMm = 3.4;
    private const double WordsMm = 3.2;
    private const double RowMm = 4.6;
    private const double GapMm = 1.4;
    private const int MostRows = 60;

    /// <summary>Draws it and gives its lower edge.</summary>
    public double Draw(StripPlan strip, PaperPoint corner, double right)
    {
        var y = Lines(CuttingWords.Heading(strip, plan), corner, corner.Y, right, strong: true);
        var bar = new PaperBox(corner.X, y + 1, corner.X + strip.LengthM * mmPerMetre, y + 1 + BarMm);
        var boxes = Pieces(strip, bar);
        var rest = bar with { Left = boxes.Length == 0 ? bar.Left : boxes[^1].Right };
        if (rest.Width > 0.2) Left(canvas, rest, strip.Keep);
        canvas.Box(bar, new(Ink.Line, 0.5), Fill.None);
        var numbers = Numbers(strip, boxes, bar, right);
        return Lines(CuttingWords.Pieces(strip, plan), corner, numbers, right, strong: false);
    }

    public static void Piece(SheetCanvas canvas, PaperBox box) => canvas.Box(box, new(Ink.Line, 0.35), Fill.Paper);

    /// <summary>What is left: slanting lines, close together where it is thrown away.</summary>
    public static void Left(SheetCanvas canvas, PaperBox box, bool keep)
    {
        canvas.Box(box, new(Ink.Faint, 0.2, Dash.Dashed), Fill.Paper);
        Hatch.Draw(canvas, box, new(keep ? Ink.Faint : Ink.Line, keep ? 0.2 : 0.3), keep ? 3.5 : 1.1);
    }

    private PaperBox[] Pieces(StripPlan strip, PaperBox bar)
    {
        var boxes = new List<PaperBox>();
        double at = 0;
        foreach (var piece in strip.Pieces)
        {
            boxes.Add(bar with { Left = bar.Left + at * mmPerMetre, Right = bar.Left + (at + piece.LengthM) * mmPerMetre });
            at += piece.LengthM;
            Piece(canvas, boxes[^1]);
        }
        return [.. boxes];
    }

    // Numbers stand below the bar in one row; where pieces are short they spread, each tied to its piece.
    private double Numbers(StripPlan strip, PaperBox[] boxes, PaperBox bar, double right)
    {
        var all = strip.Pieces.Select((p, i) =>
            (Text: Number(p), Middle: (boxes[i].Left + boxes[i].Right) / 2,
            Width: canvas.Measure.WidthMm(Number(p), NumberMm, true))).ToArray();
        // Where they have no room, only every second or third is shown; the words below name all.
        var every = (int)Math.Max(1, Math.Ceiling(all.Sum(n => n.Width + GapMm) / (right - bar.Left - GapMm)));
        var shown = all.Where((_, i) => i % every == 0).ToArray();
        var lefts = ColumnStack.Tops([.. shown.Select(n => (n.Middle, n.Width))], GapMm, bar.Left, right + GapMm);
        for (var i = 0; i < lefts.Length; i++)
        {
            var middle = lefts[i] + shown[i].Width / 2;
            canvas.Line(new(Ink.Line, 0.2), new(shown[i].Middle, bar.Bottom - BarMm / 3), new(shown[i].Middle, bar.Bottom),
                new(middle, bar.Bottom + 2.6));
            canvas.Text(new(new(middle, bar.Bottom + 5.8), shown[i].Text, NumberMm, Ink.Line, Anchor.Middle, Strong: true));
        }
        return bar.Bottom + 6.5;
    }

    private static string Number(StripPiecePlan piece) => FormattableString.Invariant($"{piece.Number}");

    private double Lines(string words, PaperPoint corner, double y, double right, bool strong)
    {
        foreach (var line in TextWrap.Lines(words, WordsMm, strong, right - corner.X, MostRows, canvas.Measure))
        {
            y += RowMm;
            canvas.Text(new(new(corner.X, y - 1), line, WordsMm, Strong: strong));
        }
        return y;
    }
}
