using InstallPacket.Plans;

namespace InstallPacket.Drawings.Siting.Horizon;

/// <summary>Draws the skyline as a silhouette; what is not known is left open and says so.</summary>
internal sealed class SkylinePainter(SheetCanvas canvas, SheetPlan plan, StripScale scale)
{
    private const double SizeMm = 3.2;
    private const double MarkMm = 2;

    /// <summary>Outline of the silhouette: the surer, the heavier.</summary>
    public static Pen Edge(string from) => from switch
    {
        "measured" => new(Ink.Line, 1.1),
        "tiles" => new(Ink.Line, 0.5),
        _ => new(Ink.Line, 0.4, Dash.Dashed),
    };

    /// <summary>Ground under the outline; where tiles are missing it is lighter.</summary>
    public static void Ground(SheetCanvas canvas, string from, PaperPoint[] area) =>
        canvas.Area(new(from == "tiles in part" ? Ink.Faint : Ink.Line, 0), Fill.Tint, area);

    public void Draw()
    {
        var pieces = SkylinePiece.Of(plan.Siting.Skyline, scale.AimDeg);
        foreach (var piece in pieces.Where(p => !p.Unknown))
        {
            PaperPoint[] line = [.. piece.Points.Select(p => new PaperPoint(scale.XOfTurn(p.TurnDeg), scale.Y(p.AngleDeg)))];
            Ground(canvas, piece.From, [new(line[0].X, scale.Field.Bottom), .. line, new(line[^1].X, scale.Field.Bottom)]);
            canvas.Line(Edge(piece.From), line);
        }
        if (pieces.Count == 0) Gap(scale.Field.Left, scale.Field.Right);
        foreach (var piece in pieces.Where(p => p.Unknown)) Gap(scale.XOfTurn(piece.Points[0].TurnDeg),
            scale.XOfTurn(piece.Points[^1].TurnDeg));
    }

    private void Gap(double left, double right)
    {
        var word = plan.Print.Words.Unknown;
        var width = canvas.Measure.WidthMm(word, SizeMm);
        var room = Rooms(left, right).MaxBy(r => r.Right - r.Left);
        var middle = (room.Left + room.Right) / 2;
        if (room.Right - room.Left >= width
            + 1) canvas.Text(new(new(middle, scale.Field.Bottom - 1.2), word, SizeMm, Ink.Faint, Anchor.Middle));
        else if (room.Right - room.Left >= SizeMm && scale.Field.Height > width
            + 1.4) canvas.Text(new(new(middle + 1.1, scale.Field.Bottom - 0.7), word, SizeMm, Ink.Faint, TurnDeg: -90));
        else if (right - left >= MarkMm) canvas.Text(new(new((left + right) / 2, scale.Field.Bottom - 1.2), "?", SizeMm, Ink.Faint,
            Anchor.Middle));
    }

    // What is left of a gap beside obstructions and sites.
    private List<(double Left, double Right)> Rooms(double left, double right)
    {
        var taken = plan.Siting.Obstructions.SelectMany(o => scale.Spans(o.BearingTrueDeg - o.WidthDeg / 2, o.WidthDeg))
            .Concat(plan.Siting.Sites.Select(s => (Left: scale.X(s.BearingTrueDeg) - 1.2, Right: scale.X(s.BearingTrueDeg) + 1.2)))
            .Where(t => t.Right > left && t.Left < right).OrderBy(t => t.Left);
        var (rooms, at) = (new List<(double, double)>(), left);
        foreach (var (from, to) in taken)
        {
            if (from > at) rooms.Add((at, from));
            at = Math.Max(at, to);
        }
        if (at < right) rooms.Add((at, right));
        return rooms.Count > 0 ? rooms : [(left, left)];
    }
}
