using InstallPacket.Plans;

namespace InstallPacket.Drawings.Mounting.Access;

/// <summary>Draws house, ladder, mast, its fall, and the wires with the distance that they need.</summary>
internal sealed class AccessPainter(SheetCanvas canvas, SheetPlan plan, AccessView view)
{
    private readonly MountingPlan _m = plan.Mounting;

    public void Draw()
    {
        var ground = view.Side.Y(0);
        if (_m.Ladder is { } ladder) Ladder(ladder);
        canvas.Line(new(Ink.Line, 0.6), new(2, ground), new(168, ground));
        foreach (var (line, i) in _m.PowerLines.Select((l, i) => (l, i))) Wire(line, i);
        if (_m.PowerLines.Count > 0) Fall();
        Mast();
    }

    private void Mast()
    {
        var (foot, head) = (view.Side.At(0, view.FootM), view.Side.At(0, view.TopM));
        canvas.Line(new(Ink.Line, 0.9), foot, head);
        AntennaMark.Draw(canvas, head);
    }

    private void Ladder(LadderSetPlan ladder)
    {
        var (left, right, top) = (view.Side.X(view.WallM), view.Side.X(0) - 1, view.Side.Y(_m.WorkHeightM));
        canvas.Area(new(Ink.Line, 0.5), Fill.Tint, new(left, view.Side.Y(0)), new(left, top), new(right, top), new(right, view.Side.Y(0)));
        var foot = view.Side.At(view.WallM - ladder.FootM, 0);
        var share = ladder.RailM / ladder.WorkingM;
        var lean = view.Side.At(view.WallM, _m.WorkHeightM);
        PaperPoint end = new(foot.X + (lean.X - foot.X) * share, foot.Y + (lean.Y - foot.Y) * share);
        foreach (var side in new[] { -0.6, 0.6 }) canvas.Line(new(Ink.Accent, 0.6), new(foot.X + side, foot.Y), new(end.X + side, end.Y));
    }

    // The arc that the top of mast and antenna sweeps when it falls toward the wires.
    private void Fall()
    {
        var centre = view.Side.At(0, view.FootM);
        var radius = (view.TopM - view.FootM) * view.Side.MmPerMetre;
        var arc = Enumerable.Range(0, 31).Select(i => Polar.From(centre, 3.0 * i, radius)).Where(p => p.Y <= view.Side.Y(0)
            + 0.01).ToArray();
        if (arc.Length > 1) canvas.Line(new(Ink.Line, 0.35, Dash.Dashed), arc);
    }

    private void Wire(PowerLinePlan line, int index)
    {
        var at = view.Side.At(line.DistanceM, line.HeightM);
        canvas.Line(new(Ink.Line, 0.4), new(at.X, at.Y), new(at.X, view.Side.Y(0)));
        canvas.Line(new(line.Clear ? Ink.Line : Ink.Warning, 0.35, Dash.Dotted),
            Polar.Arc(at, line.KeepClearM * view.Side.MmPerMetre, 0, 360));
        canvas.Ring(at, 1.6, new(line.Clear ? Ink.Line : Ink.Warning, 0.8), Fill.Solid);
        canvas.Centred(new(at.X + 4, at.Y), (index + 1).ToString(System.Globalization.CultureInfo.InvariantCulture), 3.6, strong: true,
            ink: line.Clear ? Ink.Line : Ink.Warning);
    }
}
