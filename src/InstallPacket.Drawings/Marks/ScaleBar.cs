using InstallPacket.Plans;

namespace InstallPacket.Drawings.Marks;

/// <summary>A bar of a round length in the units of the job.</summary>
internal static class ScaleBar
{
    private const double MetresPerFoot = 0.3048;
    private static readonly double[] Rounds = [0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];
    private static readonly double[] SmallFeet = [0.25];
    private static readonly double[] SmallMetres = [0.05, 0.1, 0.2];

    /// <summary>The longest round length that is not longer than a width on the sheet, in metres.</summary>
    public static double Metres(double mmPerMetre, double mostMm, bool us)
    {
        var unit = us ? MetresPerFoot : 1;
        return Rounds.Concat(us ? SmallFeet : SmallMetres).Where(r =>
            r * unit * mmPerMetre <= mostMm).DefaultIfEmpty(Rounds[0]).Max() * unit;
    }

    /// <summary>Draws the bar from its left end; the caption stands right of it.</summary>
    public static void Draw(SheetCanvas canvas, PaperPoint left, double mmPerMetre, double mostMm, SheetPlan plan)
    {
        var metres = Metres(mmPerMetre, mostMm, plan.Job.Units == UnitFamily.Us);
        var length = metres * mmPerMetre;
        var pen = new Pen(Ink.Line, 0.35);
        // Half black, half open: the bar shows two lengths and reads in any print.
        canvas.Box(new(left.X, left.Y - 0.8, left.X + length / 2, left.Y + 0.8), pen, Fill.Solid);
        canvas.Box(new(left.X + length / 2, left.Y - 0.8, left.X + length, left.Y + 0.8), pen, Fill.Paper);
        canvas.Text(new(new(left.X + length + 2, left.Y + 1.1), plan.Print.Length(metres), 3.2));
    }
}
