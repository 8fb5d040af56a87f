using InstallPacket.Calc.Quantities;
using InstallPacket.Plans;

namespace InstallPacket.Drawings.Siting.Horizon;

/// <summary>Draws the scales of the strip: angles at its side, bearings below it, the aim with its arc between.</summary>
internal sealed class StripAxis(SheetCanvas canvas, SheetPlan plan, StripScale scale)
{
    /// <summary>Height of all that stands below the field.</summary>
    public const double HeightMm = 15.5;

    private const double SizeMm = 3.2;
    private const double RowMm = 4.2;
    private const double EndMm = 3;
    private static readonly string[] Points = ["N", "NE", "E", "SE", "S", "SW", "W", "NW"];

    /// <summary>Angles with their lines.</summary>
    public void Levels()
    {
        var step = RoundNumbers.StepAtLeast(RowMm / (scale.MmPerDeg * scale.Times));
        foreach (var angle in RoundNumbers.Multiples(step, scale.AngleDeg(scale.Field.Bottom - 1.2), scale.AngleDeg(scale.Field.Top + 1)))
        {
            canvas.Line(new(Ink.Faint, 0.15), new(scale.Field.Left, scale.Y(angle)), new(scale.Field.Right, scale.Y(angle)));
            canvas.Text(new(new(scale.Field.Left - 1.2, scale.Y(angle) + 1.1), plan.Print.Number(angle, RoundNumbers.Decimals(step)) + "°",
                SizeMm, Anchor: Anchor.End, Strong: Math.Abs(angle) < step / 2));
        }
    }

    /// <summary>The level of the antenna.</summary>
    public void Level() =>
        canvas.Line(new(Ink.Line, 0.35, Dash.DashDot), new(scale.Field.Left, scale.Y(0)), new(scale.Field.Right, scale.Y(0)));

    /// <summary>Bearings, points of the compass, aim and arc.</summary>
    public void Bearings()
    {
        var bottom = scale.Field.Bottom;
        Aim(bottom);
        canvas.Line(new(Ink.Line, 0.5), new(scale.Field.Left, bottom), new(scale.Field.Right, bottom));
        foreach (var (x, deg) in Round(30))
        {
            canvas.Line(new(Ink.Line, 0.35), new(x, bottom), new(x, bottom + 2));
            canvas.Text(new(new(x, bottom + 10.4), plan.Print.Bearing(deg), SizeMm, Anchor: Anchor.Middle));
        }
        foreach (var (x, deg) in Round(45)) canvas.Text(new(new(x, bottom + 14.6),
            plan.Word("point", Points[(int)Math.Round(deg / 45) % 8]), SizeMm, Anchor: Anchor.Middle, Strong: true));
    }

    // The seam behind the antenna may itself be a round bearing: it then stands at both ends.
    private IEnumerable<(double X, double Deg)> Round(int stepDeg) =>
        RoundNumbers.Multiples(stepDeg, scale.AimDeg - 180, scale.AimDeg + 180).Select(deg =>
            (scale.XOfTurn(deg - scale.AimDeg), Bearing.Wrap(deg)));

    private void Aim(double bottom)
    {
        var middle = scale.XOfTurn(0);
        if (plan.Reception.Aim.Arc is { } arc)
        {
            foreach (var (left, right) in scale.Spans(arc.FromDeg, arc.WidthDeg)) canvas.Line(new(Ink.Accent, 1.6), new(left, bottom + 1),
                new(right, bottom + 1));
            if (!arc.AllRound) Ends(arc, bottom + 5.4);
        }
        canvas.Head(new(middle, bottom + 1.9), 0, 4, 1.9, Ink.Accent);
    }

    // Under the arc where the arrow leaves room, else beside both; when the arc is nearly closed its ends make room for each other.
    private void Ends(AimArc arc, double y)
    {
        var (from, to, arrow) = (scale.X(arc.FromDeg), scale.X(arc.ToDeg), scale.XOfTurn(0));
        var width = canvas.Measure.WidthMm(plan.Print.Bearing(arc.FromDeg), EndMm, strong: true);
        bool Under(double turnDeg) => turnDeg * scale.MmPerDeg > 10;
        var (fromUnder, toUnder) = (Under(Bearing.Wrap(scale.AimDeg - arc.FromDeg)), Under(Bearing.Wrap(arc.ToDeg - scale.AimDeg)));
        var fromLeft = fromUnder ? Math.Min(from, scale.Field.Right - 2) : Math.Min(from - 0.8, arrow - 2.6) - width;
        var toLeft = toUnder ? to - width : Math.Max(to + 0.8, arrow + 2.6);
        if (Math.Abs(fromLeft - toLeft) < width + 0.8)
        {
            if (fromUnder) fromLeft = toLeft + width + 0.8;
            else toLeft = fromLeft - width - 0.8;
            // At the seam both make room together.
            var shift = Math.Min(0, scale.Field.Right - 2 - Math.Max(fromLeft, toLeft))
                + Math.Max(0, scale.Field.Left + 2 - width - Math.Min(fromLeft, toLeft));
            (fromLeft, toLeft) = (fromLeft + shift, toLeft + shift);
        }
        canvas.Text(new(new(fromLeft, y), plan.Print.Bearing(arc.FromDeg), EndMm, Ink.Accent, Strong: true));
        canvas.Text(new(new(toLeft, y), plan.Print.Bearing(arc.ToDeg), EndMm, Ink.Accent, Strong: true));
    }
}
