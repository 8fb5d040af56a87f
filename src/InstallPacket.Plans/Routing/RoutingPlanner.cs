using InstallPacket.Calc.Routing;

namespace InstallPacket.Plans.Routing;

/// <summary>The route in the house: lengths to cut, entries, conduits, and whether it can be laid so.</summary>
internal sealed class RoutingPlanner(Job job, CodeFamily code, PartLibrary parts)
{
    private readonly Workings _work = new();
    private readonly FindingList _findings = new();
    public Planned<RoutingPlan> Plan() => new(Route(), _work, _findings);

    private RoutingPlan Route()
    {
        var r = job.Routing;
        var shape = r.House is { } house && new HouseRules(_findings).Sound(house) ? new HouseShape(house) : null;
        var lengths = new RunPlanner(job, code, _work, _findings);
        RunPlan[] runs = [.. r.Runs.Select((run, i) => lengths.Plan(run, i + 1))];
        new RunRules(job, code, _work, _findings).Check();
        if (shape is not null) new InsideRules(job, shape, _findings).Check();
        return new RoutingPlan(
            r.PlanUpDeg, Corners(r.House?.Footprint), r.House?.Eaves.Metres, r.House?.Ridge.Metres,
                [.. r.Points.Values.Select(p => Point(p, shape))], runs,
            [.. r.Runs.Select(run => run.Cable).Distinct().Select(Cable)], code.RulesOf("routing"))
        {
            Roof = r.House?.Roof, RidgeAlong = r.House?.RidgeAlong,
            Storeys = [.. (r.House?.Storeys ?? []).OrderBy(s => s.FloorM).Select(s => new StoreyPlan(s.Name, s.FloorM))],
            Rooms = [.. (r.House?.Rooms ?? []).Select(room => new RoomPlan(room.Name, room.Storey.Value, Corners(room.Corners)))],
            Sides = r.House is null ? [] : [.. PlanSide.Others.Where(side => r.Runs.Any(run => PlanSide.RunsOn(r, run, side)))],
            Entries = new EntryPlanner(job, shape, _work, _findings).Plan(), Conduits = [.. r.Conduits.Select(Conduit)],
        };
    }

    private static PlanCorner[] Corners(IReadOnlyList<(double Right, double Up)>? corners) =>
        [.. (corners ?? []).Select(c => new PlanCorner(c.Right, c.Up))];

    private PointPlan Point(HousePoint p, HouseShape? shape) =>
        new(p.Name, p.RightM, p.UpM, p.HeightM,
            [.. job.Cabling.Chain.Where(e => e.Point == p.Name).Select(e => e.Id)]) { Room = shape?.RoomAt(p.RightM, p.UpM,
            p.HeightM)?.Name ?? "" };

    private CablePlan Cable(CablePart cable)
    {
        var connector = cable.Connector is { } id ? parts.Find(id) as ConnectorPart : null;
        return new CablePlan(cable.Id, cable.Name, cable.BendRadiusM, connector?.Name ?? "", connector?.TorqueNm,
            connector?.TorqueNm is null ? "" : connector.ProvenanceOf(PartKeys.Torque));
    }

    private ConduitPlan Conduit(Conduit conduit)
    {
        var cables = conduit.Runs.Select(id => job.Routing.Runs.First(r => r.Id == id).Cable).ToArray();
        var limit = code.ConduitFill(cables.Length);
        var inside = conduit.Inside.Value.Metres;
        double? fill = null, squares = null;
        if (cables.All(c => c.DiameterM is not null))
        {
            double[] diameters = [.. cables.Select(c => c.DiameterM!.Value)];
            squares = diameters.Sum(d => d * d);
            var plan = $"routing.conduits[{conduit.Name}]";
            fill = _work.Apply(ConduitFill.ShareFormula, diameters, conduit.Name, Term.Plan(plan + ".cables", cables.Length),
                Term.Plan(plan + ".squares_m2", squares.Value),
                Term.Key($"routing.conduits.{conduit.Name}.inside", inside));
        }
        if (fill > limit.Value + 1e-9)
            _findings.Add(Severity.Caution, "conduit-overfilled", conduit.Inside.At, ("conduit", conduit.Name), ("inside_m", inside),
                ("cables", cables.Length),
                ("fill_pct", fill), ("most_pct", limit.Value), ("rule", limit.Source()));
        return new(conduit.Name, inside, conduit.Runs, fill, limit.Value) { Cables = cables.Length, SquaresM2 = squares };
    }
}
