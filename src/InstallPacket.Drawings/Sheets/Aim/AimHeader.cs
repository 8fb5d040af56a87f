using InstallPacket.Calc.Quantities;
using InstallPacket.Plans;

namespace InstallPacket.Drawings;

/// <summary>The box that says where to aim, large enough to read at arm's length.</summary>
internal static class AimHeader
{
    public const double HeightMm = 17;

    public static void Draw(SheetCanvas canvas, Plan plan, double width)
    {
        var box = new PaperBox(1.5, 1.5, width - 1.5, HeightMm);
        canvas.Box(box, new(Ink.Accent, 0.7), Fill.Paper);
        var middle = new PaperPoint(10, (box.Top + box.Bottom) / 2);
        var aim = plan.Reception.Aim.TrueDeg;
        canvas.Arrow(Polar.From(middle, aim + 180, 5.5), Polar.From(middle, aim, 5.5), 1.3, 4.5, Ink.Accent);
        canvas.Text(new(new(19, 8.2), Reading(plan.Reception.Aim), 5.4, Strong: true));
        canvas.Text(new(new(19, 14), TextWrap.Lines(Help(plan), 3.6, false, width - 24, 1, canvas.Measure)[0], 3.6));
    }

    /// <summary>The aim by both norths.</summary>
    public static string Reading(AimPlan aim) => "Aim " + UnitPrinter.Bearing(aim.TrueDeg) + " true"
        + (aim.MagneticDeg is { } m ? ", " + UnitPrinter.Bearing(m) + " on the compass" : "");

    // Nobody turns a mast finer than a degree. The turn from the landmark is what still helps when steel or a current disturbs the needle.
    private static string Help(Plan plan) => plan switch
    {
        { Siting.Landmark: { } mark, Reception.Aim.LandmarkTurnDeg: { } turn } =>
            UnitText.Number(Math.Abs(turn), 0) + "°" + (turn < 0 ? " to the left of " : " to the right of ") + mark.What,
        { Reception.Aim.MagneticDeg: null } => "No compass readings: " + plan.Siting.Compass.Why,
        _ => "No landmark in the job: take the bearing away from steel and currents",
    };
}
