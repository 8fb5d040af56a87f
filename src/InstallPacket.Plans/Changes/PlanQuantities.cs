namespace InstallPacket.Plans.Changes;

/// <summary>Lists the facts of a plan that a reviewer compares.</summary>
public static class PlanQuantities
{
    /// <summary>All facts, in the order of the domain words.</summary>
    public static IReadOnlyList<PlanQuantity> Of(Plan plan) =>
    [
        .. Job(plan), .. Siting(plan.Siting), .. Reception(plan.Reception), .. Cabling(plan.Cabling), .. Routing(plan.Routing),
        .. Mounting(plan.Mounting), .. Bonding(plan.Bonding), .. Materials(plan.Materials),
    ];

    private static IEnumerable<PlanQuantity> Job(Plan plan)
    {
        yield return Text("job", "state", plan.Stopped ? "stopped" : "planned");
        yield return Text("job", "title", plan.Job.Title);
        yield return Text("job", "day of work", plan.Job.Date.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
        yield return Text("job", "code family", plan.Job.Code);
    }

    private static IEnumerable<PlanQuantity> Siting(SitingPlan s)
    {
        yield return Number("place", "latitude", s.LatitudeDeg, "deg", 5);
        yield return Number("place", "longitude", s.LongitudeDeg, "deg", 5);
        yield return Number("place", "ground above sea", s.GroundM, "m", 1);
        yield return Number("antenna", "height above ground", s.AntennaHeightM, "m", 2);
        if (s.Compass.DeclinationDeg is { } d) yield return Number("compass", "declination", d, "deg", 1);
        foreach (var site in s.Sites)
        {
            yield return Number($"site {site.Name}", "distance", site.DistanceKm, "km", 2);
            yield return Number($"site {site.Name}", "true bearing", site.BearingTrueDeg, "deg", 1);
        }
        foreach (var path in s.Paths) yield return Text($"path {path.Site}", "in sight", path.InSight ? "yes" : "no");
    }

    private static IEnumerable<PlanQuantity> Reception(ReceptionPlan r)
    {
        yield return Text("antenna", "part", r.AntennaPart);
        yield return Number("aim", "true bearing", r.Aim.TrueDeg, "deg", 0);
        if (r.Aim.Arc is { } arc) yield return Number("aim", "width of the arc", arc.WidthDeg, "deg", 0);
        foreach (var more in r.MoreAntennas) yield return Number($"aim of {more.AntennaId}", "true bearing", more.Aim.TrueDeg, "deg", 0);
        foreach (var s in r.Stations)
        {
            yield return Text($"station {s.Id}", "wanted", s.Wanted ? "yes" : "no");
            if (s.Budget is null) continue;
            yield return Text($"station {s.Id}", "planned by", s.Budget.PlannedBy);
            yield return Number($"station {s.Id}", "field at the antenna", s.Budget.FieldDbuvM, "dBµV/m", 1);
            yield return Number($"station {s.Id}", "level at the terminals", s.Budget.LevelDbm, "dBm", 1);
        }
    }

    private static IEnumerable<PlanQuantity> Cabling(CablingPlan c)
    {
        foreach (var e in c.Elements)
        {
            yield return Text($"element {e.Id}", "part", e.Part);
            yield return Text($"element {e.Id}", "point", e.Point);
            yield return Text($"element {e.Id}", "fed from", e.From.Length == 0 ? "the air" : e.From + (e.FromPort > 0 ? "." + e.FromPort : ""));
            if (e.SettingDb is { } g) yield return Number($"element {e.Id}", "setting", g, "dB", 1);
        }
        foreach (var w in c.Windows) yield return Text($"element {w.Amplifier}", "window of the control", System.FormattableString.Invariant($"{w.FromDb:0} to {w.ToDb:0} dB"));
        foreach (var f in c.Feeds.Where(f => f.ArrivesV is not null)) yield return Number($"element {f.Amplifier}", "supply that arrives", f.ArrivesV!.Value, "V", 1);
        foreach (var o in c.Outlets)
        {
            foreach (var ch in o.Channels)
            {
                yield return Number($"outlet {o.Id}, {ch.Station}", "level", ch.LevelDbm, "dBm", 1);
                yield return Number($"outlet {o.Id}, {ch.Station}", "C/N", ch.CnDb, "dB", 1);
                yield return Number($"outlet {o.Id}, {ch.Station}", "margin", ch.MarginDb, "dB", 1);
                yield return Number($"outlet {o.Id}, {ch.Station}", "chance", ch.ChancePct, "%", 0);
                yield return Text($"outlet {o.Id}, {ch.Station}", "verdict", ch.Verdict);
            }
        }
    }

    private static IEnumerable<PlanQuantity> Routing(RoutingPlan r)
    {
        foreach (var run in r.Runs)
        {
            yield return Text($"run {run.Id}", "cable", run.Cable);
            yield return Text($"run {run.Id}", "path", string.Join(" - ", run.Path));
            yield return Number($"run {run.Id}", "length to cut", run.LengthM, "m", 2);
            yield return Number($"run {run.Id}", "drip loops", run.DripLoops.Count, "", 0);
            yield return Number($"run {run.Id}", "clips", run.Clips, "", 0);
            yield return Number($"run {run.Id}", "corners", run.Corners, "", 0);
        }
        foreach (var e in r.Entries)
        {
            yield return Text($"entry {e.Point}", "through", Word.Of(e.Through));
            if (e.HoleM is { } hole) yield return Number($"entry {e.Point}", "drill", 1000 * hole, "mm", 1);
            yield return Number($"entry {e.Point}", "fall to the outside", e.SlopeDeg, "deg", 1);
        }
        foreach (var c in r.Conduits.Where(c => c.FillPct is not null)) yield return Number($"conduit {c.Name}", "fill", c.FillPct!.Value, "%", 0);
    }

    private static IEnumerable<PlanQuantity> Mounting(MountingPlan m)
    {
        yield return Text("mount", "kind", Word.Of(m.Kind));
        yield return Number("mast", "length", m.MastLengthM, "m", 2);
        yield return Number("mast", "free length", m.FreeLengthM, "m", 2);
        yield return Number("work", "height", m.WorkHeightM, "m", 2);
        foreach (var f in m.Fixings) yield return Number($"fixing {f.Part}", "count", f.Count, "", 0);
        if (m.Wind is { } wind)
        {
            yield return Number("wind", "pressure at the antenna", wind.PressurePa, "Pa", 0);
            yield return Number("mast", "moment", wind.MomentNm, "N m", 0);
            yield return Number("mast", "share of its strength", wind.UseShare, "", 2);
        }
        foreach (var c in m.Hold?.Checks ?? []) yield return Number(c.What, "share of what it bears", c.UseShare, "", 2);
        if (m.Hold?.Ballast is { } b) yield return Number("ballast", "blocks", b.Blocks, "", 0);
        if (m.Ladder is { } ladder) yield return Number("ladder", "length of its rails", ladder.RailM, "m", 2);
        foreach (var h in m.Hazards) yield return Text($"hazard {h.Id}", "state", h.State);
        foreach (var l in m.PowerLines) yield return Number($"power line {l.Name}", "distance", l.DistanceM, "m", 1);
    }

    private static IEnumerable<PlanQuantity> Bonding(BondingPlan b)
    {
        yield return Text("bonding", "conductor", b.ConductorPart);
        yield return Number("bonding", "from the mast", b.MastLengthM, "m", 2);
        yield return Number("bonding", "from the shield", b.ShieldLengthM, "m", 2);
        yield return Text("bonding", "conductor of the shield", b.ShieldConductorPart);
        yield return Text("bonding", "conductor from the mast needed", b.MastNeeded ? "yes" : "no");
        foreach (var s in b.Sizes) yield return Number($"bonding, {s.Use}", "size asked for over size planned", s.UseShare, "", 2);
        if (b.Strikes is { } strikes) yield return Number("bonding", "flashes to be expected in a year", strikes.PerYear, "", 4);
        if (b.Rod is not { } rod) yield break;
        yield return Text("rod of the mast", "part", rod.Part);
        yield return Number("rod of the mast", "count", rod.Count, "", 0);
        yield return Text("rod of the mast", "jumper", rod.JumperPart);
        yield return Number("rod of the mast", "length of the jumper", rod.JumperLengthM, "m", 2);
        if (rod.HighOhm is { } ohm) yield return Number("rod of the mast", "highest resistance", ohm, "ohm", 0);
    }

    private static IEnumerable<PlanQuantity> Materials(MaterialsPlan m) => m.Items.Select(i => i.Count is { } count
        ? Number($"material {i.Part}", "count", count, "", 0) : Number($"material {i.Part}", "length", i.LengthM ?? 0, "m", 2));

    private static PlanQuantity Number(string subject, string name, double value, string unit, int decimals) => new(subject, name, value, "", unit, decimals);

    private static PlanQuantity Text(string subject, string name, string text) => new(subject, name, null, text, "", 0);
}
