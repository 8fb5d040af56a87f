using InstallPacket.Plans;

namespace InstallPacket.Drawings.Reception.Aim;

/// <summary>The aim card in words.</summary>
internal static class AimWords
{
    public static string Of(SheetPlan plan)
    {
        var (print, siting, aim) = (plan.Print, plan.Siting, plan.Reception.Aim);
        var words = new List<string> { plan.Say("aim.what", ("reading", AimHeader.Readings(plan)[0]),
            ("width", print.Angle(aim.BeamwidthDeg))) };
        words.AddRange(More(plan));
        if (aim.Arc is { } arc) words.Add(Arc(plan, arc));
        if (aim.Second is { } second)
            words.Add(plan.Say("aim.second", ("bearings", AimHeader.Bearings(plan, second.TrueDeg, second.MagneticDeg)),
                ("stations", plan.List(second.Stations))));
        if (siting.Compass is { Usable: true, DeclinationDeg: { } d })
            words.Add(plan.Say("aim.ring", ("angle", plan.Say(d < 0 ? "aim.west" : "aim.east", ("angle", print.Angle(Math.Abs(d)))))));
        if (siting.Sites.Count > 0) words.Add(plan.Say("aim.sites", ("sites", string.Join("; ", siting.Sites.Select(s => Site(plan, s))))));
        if (siting.Landmark is { } mark)
            words.Add(aim.LandmarkTurnDeg is { } turn
                ? plan.Say("aim.landmark-turn", ("what", mark.What), ("bearing", plan.True(mark.BearingTrueDeg)),
                    ("turn", AimHeader.Turn(plan, turn)))
                : plan.Say("aim.landmark", ("what", mark.What), ("bearing", plan.True(mark.BearingTrueDeg))));
        if (siting.Obstructions.Count > 0) words.Add(plan.Say("aim.obstructions",
            ("things", string.Join("; ", siting.Obstructions.Select(o => Thing(plan, o))))));
        return string.Join(" ", words);
    }

    /// <summary>The aims of further antennas, a sentence each.</summary>
    public static IEnumerable<string> More(SheetPlan plan) => plan.Reception.MoreAntennas.Select(m => plan.Say("aim.more",
        ("antenna", m.AntennaId), ("bearings", AimHeader.Bearings(plan, m.Aim.TrueDeg, m.Aim.MagneticDeg)),
            ("width", plan.Print.Angle(m.Aim.BeamwidthDeg))));

    /// <summary>The headings that keep every channel.</summary>
    public static string Arc(SheetPlan plan, AimArc arc) => arc.AllRound ? plan.Say("aim.keeps-all")
        : plan.Say("aim.keeps", ("from", plan.Print.Bearing(arc.FromDeg)), ("to", plan.Print.Bearing(arc.ToDeg)),
            ("compass_from", arc.FromMagneticDeg is { } from ? plan.Print.Bearing(from) : ""),
                ("compass_to", arc.ToMagneticDeg is { } to ? plan.Print.Bearing(to) : ""));

    private static string Site(SheetPlan plan, SitePlan s) =>
        plan.Say("aim.site", ("number", s.Number), ("name", s.Name), ("bearing", plan.True(s.BearingTrueDeg)),
        ("distance", plan.Print.Distance(s.DistanceKm)), ("wanted", s.AnyWanted));

    private static string Thing(SheetPlan plan, ObstructionPlan o) =>
        plan.Say("aim.thing", ("name", o.Name), ("kind", plan.Word("obstruction", o.Kind)),
        ("bearing", plan.True(o.BearingTrueDeg)), ("width", plan.Print.Angle(o.WidthDeg)), ("distance", plan.Print.Length(o.DistanceM)),
            ("height", plan.Print.Length(o.HeightM)));
}
