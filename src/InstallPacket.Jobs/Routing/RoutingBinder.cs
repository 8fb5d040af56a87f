using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Routing;

/// <summary>Turns the checked group <c>routing</c> into its record.</summary>
internal sealed class RoutingBinder(PartLibrary parts)
{
    public RoutingSection Section(CheckedGroup g)
    {
        var house = g.Maybe(RoutingKeys.House) is { } h ? House(h.Value) : null;
        WallPoint[] onWalls = [.. g.Entries(RoutingKeys.WallPoints).Select(WallPoint)];
        var points = g.Entries(RoutingKeys.Points)
            .ToDictionary(e => e.Name, e => new HousePoint(e.Name, e.Value[0], e.Value[1], e.Value[2], e.At), StringComparer.Ordinal);
        foreach (var p in onWalls) points.TryAdd(p.Name, Placed(p, house));
        return new(g.Get(RoutingKeys.PlanUp).Degrees, house, points, [.. g.Entries(RoutingKeys.Runs).Select(Run)], g.At)
        {
            WallPoints = onWalls,
            Unmeasured = g.Entries(RoutingKeys.Places).ToDictionary(e => e.Name, e => e.Value.Maybe(PlaceKeys.Room)?.Value, StringComparer.Ordinal),
            Entries = [.. g.Entries(RoutingKeys.Entries).Select(Entry)],
            Conduits = [.. g.Entries(RoutingKeys.Conduits).Select(Conduit)],
        };
    }

    private Run Run(Entry<CheckedGroup> e)
    {
        var g = e.Value;
        return new(
            e.Name, parts.Get<CablePart>(g.Get(RunKeys.Cable)), [.. g.Items(RunKeys.Path).Select(p => p.Value)], g.Get(RunKeys.Way),
            [.. g.Items(RunKeys.DripLoops).Select(p => p.Value)], g.PlacedMetres(RunKeys.DripDepth), g.Metres(RunKeys.ServiceLoop),
            g.Maybe(RunKeys.Note)?.Value, e.At)
        {
            Existing = g.Get(RunKeys.Existing), PathAt = g.Place(RunKeys.Path), DripLoopsAt = g.Place(RunKeys.DripLoops),
            Ways = [.. g.Entries(RunKeys.Ways).Select(w => new WayChange(w.Name, w.Value, w.At))], Slack = g.Metres(RunKeys.Slack),
            Dip = g.MaybeMetres(RunKeys.Dip)?.Value, Messenger = g.Get(RunKeys.Messenger), FromPower = g.MaybeMetres(RunKeys.FromPower),
            Supports = g.Get(RunKeys.Supports), NewConnectors = g.Get(RunKeys.NewConnectors), Given = g.MaybeMetres(RunKeys.Length)?.Value,
        };
    }

    private static House House(CheckedGroup g) => new(
        Corners(g.Items(HouseKeys.Footprint)), g.Metres(HouseKeys.Eaves), g.Metres(HouseKeys.Ridge))
    {
        FootprintAt = g.Place(HouseKeys.Footprint), RidgeAt = g.Place(HouseKeys.Ridge), Roof = g.Maybe(HouseKeys.Roof)?.Value,
        RidgeAlong = g.Maybe(HouseKeys.RidgeAlong)?.Value, Wall = g.MaybeMetres(HouseKeys.Wall)?.Value,
        Storeys = [.. g.Entries(HouseKeys.Storeys).Select(s => new Storey(s.Name, s.Value.Get(StoreyKeys.Floor)))],
        Rooms = [.. g.Entries(HouseKeys.Rooms).Select(Room)],
    };

    private static Room Room(Entry<CheckedGroup> e) =>
        new(e.Name, e.Value.Placed(RoomKeys.Storey), Box(Corners(e.Value.Items(RoomKeys.Corners))), e.At);

    private static (double Right, double Up)[] Corners(IReadOnlyList<Sourced<double[]>> points) =>
        [.. points.Select(p => (p.Value[0], p.Value[1]))];

    // Two corners stand for a box.
    private static (double Right, double Up)[] Box((double Right, double Up)[] c) =>
        c.Length == 2 ? [c[0], (c[1].Right, c[0].Up), c[1], (c[0].Right, c[1].Up)] : c;

    private static WallPoint WallPoint(Entry<CheckedGroup> e) =>
        new(e.Name, e.Value.Placed(WallPointKeys.Wall), e.Value.Placed(WallPointKeys.Along), e.Value.Get(WallPointKeys.Height), e.At);

    // A wall that the house does not have gets a finding from the rules; until then the point stands at the corner.
    private static HousePoint Placed(WallPoint p, House? house)
    {
        if (house is null || p.Wall.Value > house.Footprint.Count) return new(p.Name, 0, 0, p.HeightM, p.At);
        var (a, b) = (house.Footprint[p.Wall.Value - 1], house.Footprint[p.Wall.Value % house.Footprint.Count]);
        var length = Math.Sqrt((b.Right - a.Right) * (b.Right - a.Right) + (b.Up - a.Up) * (b.Up - a.Up));
        var share = length > 0 ? p.AlongM.Value / length : 0;
        return new(p.Name, a.Right + share * (b.Right - a.Right), a.Up + share * (b.Up - a.Up), p.HeightM, p.At);
    }

    private static CableEntry Entry(Entry<CheckedGroup> e) => new(
        e.Name, e.Value.Get(EntryKeys.Through), e.Value.MaybeMetres(EntryKeys.Hole), e.Value.Placed(EntryKeys.Slope),
        e.Value.MaybeMetres(EntryKeys.Thickness)?.Value, e.At)
    {
        Existing = e.Value.Get(EntryKeys.Existing),
    };

    private static Conduit Conduit(Entry<CheckedGroup> e) =>
        new(e.Name, e.Value.PlacedMetres(ConduitKeys.Inside), [.. e.Value.Items(ConduitKeys.Runs).Select(r => r.Value)], e.At);
}
