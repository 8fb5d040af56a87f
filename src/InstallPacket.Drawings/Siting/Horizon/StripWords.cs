using InstallPacket.Plans;

namespace InstallPacket.Drawings.Siting.Horizon;

/// <summary>The horizon strip in words.</summary>
internal static class StripWords
{
    public static string Times(SheetPlan plan, StripScale scale) =>
        scale.Times == 1 ? plan.Say("horizon.same-scale") : plan.Say("horizon.times", ("times", scale.Times));

    /// <summary>What the strip shows, with the aim of each antenna.</summary>
    public static string Heading(SheetPlan plan)
    {
        var aim = plan.True(plan.Reception.Aim.TrueDeg);
        if (plan.Reception.MoreAntennas.Count == 0) return plan.Say("horizon.heading", ("bearing", aim));
        var more = plan.Reception.MoreAntennas.Select(m =>
            plan.Say("horizon.antenna-at", ("antenna", m.AntennaId), ("bearing", plan.True(m.Aim.TrueDeg))));
        return plan.Say("horizon.heading-more", ("antenna", plan.Reception.AntennaId), ("bearing", aim), ("more", plan.List(more)));
    }

    /// <summary>An angle as people say it.</summary>
    public static string Angle(SheetPlan plan, double deg) =>
        plan.Say(Math.Round(deg, 1) < 0 ? "down" : "up", ("angle", plan.Print.Angle(Math.Abs(deg))));

    public static string Of(SheetPlan plan, StripScale scale)
    {
        var (siting, aim) = (plan.Siting, plan.Reception.Aim);
        var words = new List<string> { plan.Say("horizon.what", ("bearing", plan.True(aim.TrueDeg)), ("times", Times(plan, scale))) };
        words.AddRange(AimWords.More(plan));
        if (aim.Arc is { } arc) words.Add(AimWords.Arc(plan, arc));
        words.Add(Skyline(plan));
        if (siting.Sites.Count > 0) words.Add(plan.Say("horizon.sites",
            ("sites", string.Join("; ", siting.Sites.Select(s => Site(plan, s))))));
        if (siting.Obstructions.Count > 0) words.Add(plan.Say("horizon.survey",
            ("things", string.Join("; ", siting.Obstructions.Select(o => Thing(plan, o))))));
        if (siting.Landmark is { } mark) words.Add(plan.Say("horizon.landmark", ("what", mark.What),
            ("bearing", plan.True(mark.BearingTrueDeg))));
        return string.Join(" ", words);
    }

    private static string Thing(SheetPlan plan, ObstructionPlan o) =>
        plan.Say("horizon.thing", ("name", o.Name), ("kind", plan.Word("obstruction", o.Kind)),
        ("bearing", plan.True(o.BearingTrueDeg)), ("width", plan.Print.Angle(o.WidthDeg)), ("top", Angle(plan, o.AngleDeg)));

    private static string Site(SheetPlan plan, SitePlan s) =>
        plan.Say("horizon.site", ("number", s.Number), ("name", s.Name), ("bearing", plan.True(s.BearingTrueDeg)),
        ("angle", s.ElevationDeg is { } e ? Angle(plan, e) : plan.Say("horizon.height-unknown")),
        ("sight", StandingPainter.InSight(plan, s) switch { true => "yes", false => "no", null => "" }), ("wanted", s.AnyWanted));

    private static string Skyline(SheetPlan plan)
    {
        var skyline = plan.Siting.Skyline;
        if (skyline.Count == 0) return plan.Say("horizon.skyline-unknown");
        var words = new List<string>();
        if (skyline.Where(p => p.AngleDeg is not null).MaxBy(p => p.AngleDeg) is { AngleDeg: { } top } highest)
            words.Add(plan.Say("horizon.highest", ("bearing", plan.True(highest.BearingTrueDeg)), ("angle", Angle(plan, top))));
        foreach (var from in new[] { "measured", "tiles", "tiles in part", "unknown" })
            if (Arcs(plan, from) is { Length: > 0 } arcs) words.Add(plan.Say("horizon.known." + from, ("arcs", arcs)));
        return string.Join(" ", words);
    }

    // Runs of points with one origin, around the circle.
    private static string Arcs(SheetPlan plan, string from)
    {
        var (skyline, print) = (plan.Siting.Skyline, plan.Print);
        var n = skyline.Count;
        if (skyline.All(p => p.From == from)) return plan.Say("horizon.all-round");
        var arcs = new List<string>();
        for (var i = 0; i < n; i++)
        {
            if (skyline[i].From != from || skyline[(i + n - 1) % n].From == from) continue;
            var end = i;
            while (skyline[(end + 1) % n].From == from) end++;
            arcs.Add(plan.Say("horizon.arc", ("from", print.Bearing(skyline[i].BearingTrueDeg)),
                ("to", print.Bearing(skyline[end % n].BearingTrueDeg))));
        }
        return arcs.Count == 0 ? "" : plan.Say("horizon.from", ("arcs", plan.List(arcs)));
    }
}
