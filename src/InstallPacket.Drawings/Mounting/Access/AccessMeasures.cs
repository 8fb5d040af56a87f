using InstallPacket.Plans;

namespace InstallPacket.Drawings.Mounting.Access;

/// <summary>Lines of measure below the ground: the foot of the ladder, and of each wire the distance that it has and needs.</summary>
internal static class AccessMeasures
{
    private const double StepMm = 7;

    /// <summary>Draws them.</summary>
    /// <returns>The lowest millimetre that was used.</returns>
    public static double Draw(SheetCanvas canvas, SheetPlan plan, AccessView view, double top)
    {
        var (print, m) = (plan.Print, plan.Mounting);
        var y = top;
        if (m.Ladder is { } ladder)
        {
            var left = view.Side.X(view.WallM - ladder.FootM);
            var right = view.Side.X(view.WallM);
            Measures.Level(canvas, left, right, y, plan.Say("access.out", ("length", print.Length(ladder.FootM))));
            y += StepMm;
        }
        foreach (var (l, i) in m.PowerLines.Select((l, i) => (l, i)))
        {
            Measures.Level(canvas, view.Side.X(0), view.Side.X(l.DistanceM), y,
                plan.Say("access.wire-away", ("wire", i + 1), ("distance", print.Length(l.DistanceM))), l.Clear ? Ink.Line : Ink.Warning);
            Measures.Level(canvas, view.Side.X(0), view.Side.X(l.RequiredM), y + StepMm,
                plan.Say("access.wire-needs", ("distance", print.AtLeast(l.RequiredM))), l.Clear ? Ink.Line : Ink.Warning);
            y += 2 * StepMm;
        }
        return y - 2;
    }
}
