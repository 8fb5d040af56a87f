using InstallPacket.Calc.Quantities;
using InstallPacket.Plans;

namespace InstallPacket.Drawings.Siting.Horizon;

/// <summary>The horizon strip in words.</summary>
internal static class StripWords
{
    public static string Number(int number) => UnitText.Number(number, 0);

    public static string Times(StripScale scale) => scale.Times == 1 ? "heights and widths at one scale" : $"heights drawn {Number(scale.Times)} times";

    /// <summary>What the strip shows, with the aim of each antenna.</summary>
    public static string Heading(SheetPlan plan)
    {
        var aim = UnitPrinter.Plain.Bearing(plan.Reception.Aim.TrueDeg) + " true in the middle";
        return plan.Reception.MoreAntennas is { Count: > 0 } more
            ? $"All round, the aim of {plan.Reception.AntennaId} {aim}, {string.Join(", ", more.Select(m => $"{m.AntennaId} {UnitPrinter.Plain.Bearing(m.Aim.TrueDeg)} true"))}"
            : $"All round from the antenna, the aim {aim}";
    }

    /// <summary>An angle as people say it.</summary>
    public static string Angle(double deg) => UnitPrinter.Plain.Angle(Math.Abs(deg)) + (Math.Round(deg, 1) < 0 ? " down" : " up");

    public static string Of(SheetPlan plan, StripScale scale)
    {
        var (siting, aim) = (plan.Siting, plan.Reception.Aim);
        var words = new List<string>
        {
            $"All that stands around the antenna, unrolled over 360 degrees with the aim {UnitPrinter.Plain.Bearing(aim.TrueDeg)} true in the middle; {Times(scale)}.",
        };
        words.AddRange(AimWords.More(plan));
        if (aim.Arc is { } arc) words.Add(AimWords.Arc(arc));
        words.Add(Skyline(siting));
        if (siting.Sites.Count > 0) words.Add("Sites: " + string.Join("; ", siting.Sites.Select(s => Site(plan, s))) + ".");
        if (siting.Obstructions.Count > 0)
            words.Add("The survey saw: " + string.Join("; ", siting.Obstructions.Select(o =>
                $"{o.Name} ({o.Kind}) at {UnitPrinter.Plain.Bearing(o.BearingTrueDeg)} true, {UnitPrinter.Plain.Angle(o.WidthDeg)} wide, its top {Angle(o.AngleDeg)}")) + ".");
        if (siting.Landmark is { } mark) words.Add($"Landmark: {mark.What} at {UnitPrinter.Plain.Bearing(mark.BearingTrueDeg)} true.");
        return string.Join(" ", words);
    }

    private static string Site(SheetPlan plan, SitePlan s) =>
        $"{Number(s.Number)} {s.Name} at {UnitPrinter.Plain.Bearing(s.BearingTrueDeg)} true, {(s.ElevationDeg is { } e ? Angle(e) : "height unknown")}"
        + StandingPainter.InSight(plan, s) switch { true => ", in sight", false => ", behind ground", null => "" } + (s.AnyWanted ? "" : ", no wanted station");

    private static string Skyline(SitingPlan siting)
    {
        if (siting.Skyline.Count == 0) return "The skyline is unknown.";
        var words = new List<string>();
        if (siting.Skyline.Where(p => p.AngleDeg is not null).MaxBy(p => p.AngleDeg) is { AngleDeg: { } top } highest)
            words.Add($"The skyline is highest at {UnitPrinter.Plain.Bearing(highest.BearingTrueDeg)} true, {Angle(top)}.");
        foreach (var (from, what) in new[] { ("measured", "It is measured"), ("tiles", "It is known by elevation tiles"), ("tiles in part", "Far tiles are missing"), ("unknown", "It is unknown") })
            if (Arcs(siting.Skyline, from) is { Length: > 0 } arcs) words.Add($"{what} {arcs}.");
        return string.Join(" ", words);
    }

    // Runs of points with one origin, around the circle.
    private static string Arcs(IReadOnlyList<SkylinePoint> skyline, string from)
    {
        var n = skyline.Count;
        if (skyline.All(p => p.From == from)) return "all round";
        var arcs = new List<string>();
        for (var i = 0; i < n; i++)
        {
            if (skyline[i].From != from || skyline[(i + n - 1) % n].From == from) continue;
            var end = i;
            while (skyline[(end + 1) % n].From == from) end++;
            arcs.Add($"{UnitPrinter.Plain.Bearing(skyline[i].BearingTrueDeg)} to {UnitPrinter.Plain.Bearing(skyline[end % n].BearingTrueDeg)}");
        }
        return arcs.Count == 0 ? "" : "from " + string.Join(", ", arcs);
    }
}
