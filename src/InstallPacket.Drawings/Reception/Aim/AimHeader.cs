using InstallPacket.Plans;

namespace InstallPacket.Drawings.Reception.Aim;

/// <summary>The box that says where to aim, large enough to read at arm's length.</summary>
internal static class AimHeader
{
    private const double RowMm = 7;

    /// <summary>Height of the box: a line for each antenna and one for the help.</summary>
    public static double HeightMm(SheetPlan plan) => 10 + RowMm * (1 + plan.Reception.MoreAntennas.Count);

    public static void Draw(SheetCanvas canvas, SheetPlan plan, double width)
    {
        var box = new PaperBox(1.5, 1.5, width - 1.5, HeightMm(plan));
        canvas.Box(box, new(Ink.Accent, 0.7), Fill.Paper);
        var more = plan.Reception.MoreAntennas;
        if (more.Count == 0) Arrow(canvas, new(10, (box.Top + box.Bottom) / 2), plan.Reception.Aim, 5.5, 1.3);
        else Arrow(canvas, new(10, 6.3), plan.Reception.Aim, 3.1, 1.3);
        for (var i = 0; i < more.Count; i++) Arrow(canvas, new(10, 6.3 + RowMm * (i + 1)), more[i].Aim, 3.1, FieldPainter.MoreMm);
        var readings = Readings(plan);
        for (var i = 0; i < readings.Count; i++) canvas.Text(new(new(19, 8.2 + RowMm * i), readings[i], 5.4, Strong: true));
        canvas.Text(new(new(19, box.Bottom - 3), TextWrap.Lines(Help(plan), 3.6, false, width - 24, 1, canvas.Measure)[0], 3.6));
    }

    /// <summary>A heading by both norths.</summary>
    public static string Bearings(SheetPlan plan, double trueDeg, double? magneticDeg) => magneticDeg is { } m
        ? plan.List([plan.True(trueDeg), plan.Say("on-compass", ("bearing", plan.Print.Bearing(m)))]) : plan.True(trueDeg);

    /// <summary>The aim of each antenna; with its name when there are several.</summary>
    public static IReadOnlyList<string> Readings(SheetPlan plan) => plan.Reception is { MoreAntennas.Count: > 0 } r
        ? [Reading(plan, r.AntennaId, r.Aim), .. r.MoreAntennas.Select(m => Reading(plan, m.AntennaId, m.Aim))]
        : [plan.Say("aim.reading", ("bearings", Bearings(plan, plan.Reception.Aim.TrueDeg, plan.Reception.Aim.MagneticDeg)))];

    /// <summary>A turn to one side.</summary>
    public static string Turn(SheetPlan plan, double turnDeg) =>
        plan.Say(turnDeg < 0 ? "aim.left" : "aim.right", ("degrees", plan.Print.Number(Math.Abs(turnDeg), 0)));

    private static string Reading(SheetPlan plan, string antenna, AimPlan aim) =>
        plan.Say("aim.reading-of", ("antenna", antenna), ("bearings", Bearings(plan, aim.TrueDeg, aim.MagneticDeg)));

    private static void Arrow(SheetCanvas canvas, PaperPoint middle, AimPlan aim, double half, double weight) =>
        canvas.Arrow(Polar.From(middle, aim.TrueDeg + 180, half), Polar.From(middle, aim.TrueDeg, half), weight, Math.Min(4.5, half),
            Ink.Accent);

    // Nobody turns a mast finer than a degree. The turn from the landmark is what still helps when steel or a current disturbs the needle.
    private static string Help(SheetPlan plan) => plan switch
    {
        { Siting.Landmark: { } mark, Reception: { Aim.LandmarkTurnDeg: { } turn, MoreAntennas: var more } } =>
            plan.Say("aim.help", ("antenna", more.Count > 0 ? plan.Reception.AntennaId : ""), ("turn", Turn(plan, turn)),
                ("what", mark.What),
                ("more", string.Concat(more.Where(m => m.Aim.LandmarkTurnDeg is not null)
                    .Select(m =>
                        plan.Say("aim.help-more", ("antenna", m.AntennaId), ("turn", Turn(plan, m.Aim.LandmarkTurnDeg!.Value))))))),
        { Reception.Aim.MagneticDeg: null } => plan.Say("aim.no-compass", ("why", plan.Name(plan.Siting.Compass.Why))),
        _ => plan.Say("aim.no-landmark"),
    };
}
