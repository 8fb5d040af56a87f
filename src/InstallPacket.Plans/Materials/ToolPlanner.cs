namespace InstallPacket.Plans.Materials;

/// <summary>Derives the tools from what the plan does: fixings, torques, connectors, ways of the cable, access.</summary>
internal sealed class ToolPlanner(Job job, RoutingPlan routing, MountingPlan mounting, SitingPlan siting, PartLibrary parts,
    FindingList findings)
{
    private static readonly HashSet<string> Ids = PlanTable.Rows("Materials/tools.csv").Select(r =>
        r["id"]).ToHashSet(StringComparer.Ordinal);

    public IReadOnlyList<ToolPlan> Plan(IReadOnlyList<ItemPlan> items) =>
        [.. Holes(), .. Tightening(), .. Connectors(items), .. Ways(items), .. Bonding(), .. Measuring(), .. WorkPlace(), .. Asked()];

    private static ToolPlan Tool(string id, string why) =>
        Ids.Contains(id) ? new(id, why) : throw new InvalidOperationException($"The table of tools has no '{id}'.");

    private IEnumerable<FixingPlan> NewFixings => mounting.Fixings.Where(f => !f.Existing);

    // A run in a new hole, a fixing of the mount, or a drip loop before a hole that nobody described.
    private bool DrillsSomewhere => mounting.Fixings.Any(f => f is { Existing: false, Form: not FixingForm.Clamp }) || routing.Entries.Any(e => !e.Existing)
        || routing.Runs.Any(r => !r.Existing && (r.Lies(CableWay.Wall) || r.DripLoops.Any(p => routing.Entries.All(e => e.Point != p))));

    private IEnumerable<ToolPlan> Holes()
    {
        yield return Tool("tape-measure", "lengths on site");
        if (NewFixings.Any(f => f.Form != FixingForm.Clamp || !job.Mounting.Existing)) yield return Tool("drill", "holes for the mount");
        foreach (var hole in NewFixings.Where(f => f.PilotM is > 0).GroupBy(f => f.PilotM!.Value))
            yield return Tool("drill-bit", string.Join(", ", hole.Select(f => f.Name))) with { SizeM = hole.Key };
        Fixing[] bare = [.. job.Mounting.Fixings.Where(f => f is { Pilot: null, Existing: false })];
        foreach (var f in bare.Where(f => f.Part.Form == FixingForm.Anchor)) yield return Tool("hammer-drill",
            $"{f.Part.Name}, into {f.Into}");
        foreach (var f in bare.Where(f => f.Part.Role != PartRole.AntennaClamp)) yield return Tool("drill-bit-sheet", f.Part.Name);
        if (DrillsSomewhere) yield return Tool("eye-protection", "drilling");
    }

    private IEnumerable<ToolPlan> Tightening()
    {
        if (NewFixings.Any()) yield return Tool("spanners", string.Join(", ", NewFixings.Select(f => f.Name)));
        var torques = NewFixings.Where(f => f.TorqueNm is not null).Select(f => f.TorqueNm!.Value).ToArray();
        if (torques.Length > 0) yield return Tool("torque-wrench",
            "fixings; the maker's sheets govern") with { LowestTorqueNm = torques.Min(), HighestTorqueNm = torques.Max() };
        yield return Tool("spirit-level", "bracket and mast");
    }

    private IEnumerable<ToolPlan> Connectors(IReadOnlyList<ItemPlan> items)
    {
        foreach (var c in items.Where(i => i.Kind == PartKind.Connector)) yield return Tool("compression-tool", c.Name);
        var torques = routing.Cables.Where(c => c.TorqueNm is not null).Select(c => c.TorqueNm!.Value).ToArray();
        if (torques.Length > 0) yield return Tool("connector-torque-wrench",
            "F connectors outdoors and on splitters") with { LowestTorqueNm = torques.Min(), HighestTorqueNm = torques.Max() };
        foreach (var c in items.Where(i => i.Kind == PartKind.Cable)) yield return Tool("cable-stripper", c.Name);
        yield return Tool("cable-cutter", "square ends");
        yield return Tool("marker", "labels at both ends of each piece");
    }

    private IEnumerable<ToolPlan> Ways(IReadOnlyList<ItemPlan> items)
    {
        bool Any(CableWay way) => routing.Runs.Any(r => r.Lies(way) && !r.Existing);
        // A drip loop hangs before a hole; one that is there already needs no bit.
        bool Drilled(string point) => !routing.Entries.Any(e => e.Point == point && e.Existing);
        if (routing.Runs.SelectMany(r => r.DripLoops).Any(Drilled))
        {
            var widest = job.Routing.Runs.Where(r => r.DripLoops.Any(Drilled)).Select(r => r.Cable.DiameterM).Max();
            yield return Tool("long-drill-bit", "entry, falling outward") with { SizeM = widest };
        }
        if (Any(CableWay.Wall)) yield return Tool("fish-tape", "runs in walls");
        if (Any(CableWay.Conduit)) yield return Tool("pulling-line", "runs in conduit");
        if (Any(CableWay.Attic) || Any(CableWay.CrawlSpace)) yield return Tool("head-lamp", "attic or crawl space");
        if (Any(CableWay.CrawlSpace)) yield return Tool("knee-pads", "crawl space");
        if (items.Any(i => parts.Find(i.Part)?.Role == PartRole.Sealant)) yield return Tool("sealant-gun", "entries and holes");
    }

    private IEnumerable<ToolPlan> Bonding()
    {
        if (!job.Bonding.MastExisting || !job.Bonding.ShieldExisting) yield return Tool("conductor-cutter", job.Bonding.Conductor.Name);
        yield return Tool("voltage-tester", "before shields and earth are joined"
            + (job.Cabling.Chain.Any(e => e.Part is PowerInserterPart) ? "; supply of the amplifier" : ""));
    }

    private IEnumerable<ToolPlan> Measuring()
    {
        yield return Tool("level-meter", "test points and scan");
        if (siting.Compass.Usable) yield return Tool("compass", "aim");
        yield return Tool("camera", "mount, bonding, drip loops");
    }

    private IEnumerable<ToolPlan> WorkPlace()
    {
        if (mounting.Ladder is { } ladder) yield return Tool("ladder",
            "rails past the edge at the work place") with { LengthM = ladder.RailM };
        if (mounting.Access == Access.Platform) yield return Tool("platform", "work at height");
        if (mounting.Access == Access.Tower) yield return Tool("tower", "work at height");
        if (mounting.Access == Access.Inside) yield break;
        yield return Tool("fall-arrest", "work at height");
        yield return Tool("wind-meter", job.Mounting.Existing ? "work at height" : "before the mast is raised");
    }

    private IEnumerable<ToolPlan> Asked()
    {
        foreach (var asked in job.Materials.Tools)
        {
            if (Ids.Contains(asked.Value)) yield return Tool(asked.Value, "asked for by the job");
            else
                findings.Add(Severity.Caution, "tool-unknown", asked.At, ("tool", asked.Value),
                    ("known", Ids.Order(StringComparer.Ordinal)));
        }
    }
}
