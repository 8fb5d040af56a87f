using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs;

/// <summary>Binds what <c>routing</c> says of the house and the runs in it.</summary>
internal sealed partial class SectionBinder
{
    public RoutingSection Routing(CheckedGroup g)
    {
        var house = g.Group("house") is { } h ? House(h) : null;
        WallPoint[] onWalls = [.. g.Entries("wall-points").Select(WallPoint)];
        var points = g.Entries("points").ToDictionary(e => e.Name, Point, StringComparer.Ordinal);
        foreach (var p in onWalls) points.TryAdd(p.Name, Placed(p, house));
        return new(g.Get<Bearing>("plan-up").Value.Degrees, house, points, [.. g.Entries("runs").Select(Run)], g.At)
        {
            WallPoints = onWalls, Entries = [.. g.Entries("entries").Select(Entry)], Conduits = [.. g.Entries("conduits").Select(Conduit)],
        };
    }

    private Run Run(CheckedEntry e)
    {
        var g = e.Group;
        return new(e.Name, Part(g, "cable"), [.. g.Items<string>("path").Select(p => p.Value)], Text(g, "way"),
            [.. g.Items<string>("drip-loops").Select(p => p.Value)], Metres(g, "drip-depth"), Metres(g, "service-loop").Value, g.Maybe<string>("note")?.Value, e.At)
        {
            Existing = g.Get<string>("existing").Value == "yes", PathAt = g.Place("path"), DripLoopsAt = g.Place("drip-loops"),
            Ways = [.. g.Entries("ways").Select(w => new WayChange(w.Name, (string)w.Value, w.At))], Slack = Metres(g, "slack").Value, Dip = MaybeMetres(g, "dip")?.Value,
            Messenger = g.Get<string>("messenger").Value == "yes", FromPower = MaybeMetres(g, "from-power"), Supports = g.Get<int>("supports").Value,
        };
    }

    private static House House(CheckedGroup g) => new(Corners(g, "footprint"), Metres(g, "eaves").Value, Metres(g, "ridge").Value)
    {
        FootprintAt = g.Place("footprint"), RidgeAt = g.Place("ridge"), Roof = g.Maybe<string>("roof")?.Value, RidgeAlong = g.Maybe<string>("ridge-along")?.Value,
        Wall = MaybeMetres(g, "wall")?.Value,
        Storeys = [.. g.Entries("storeys").Select(s => new Storey(s.Name, s.Group.Get<double>("floor").Value))],
        Rooms = [.. g.Entries("rooms").Select(r => new Room(r.Name, r.Group.Get<string>("storey"), Box(Corners(r.Group, "corners")), r.At))],
    };

    private static (double Right, double Up)[] Corners(CheckedGroup g, string key) => [.. g.Items<double[]>(key).Select(p => (p.Value[0], p.Value[1]))];

    // Two corners stand for a box.
    private static (double Right, double Up)[] Box((double Right, double Up)[] c) =>
        c.Length == 2 ? [c[0], (c[1].Right, c[0].Up), c[1], (c[0].Right, c[1].Up)] : c;

    private static HousePoint Point(CheckedEntry e)
    {
        var p = (double[])e.Value;
        return new(e.Name, p[0], p[1], p[2], e.At);
    }

    private static WallPoint WallPoint(CheckedEntry e) =>
        new(e.Name, e.Group.Get<int>("wall"), e.Group.Get<double>("along"), e.Group.Get<double>("height").Value, e.At);

    // A wall that the house does not have gets a finding from the rules; until then the point stands at the corner.
    private static HousePoint Placed(WallPoint p, House? house)
    {
        if (house is null || p.Wall.Value > house.Footprint.Count) return new(p.Name, 0, 0, p.HeightM, p.At);
        var (a, b) = (house.Footprint[p.Wall.Value - 1], house.Footprint[p.Wall.Value % house.Footprint.Count]);
        var length = Math.Sqrt((b.Right - a.Right) * (b.Right - a.Right) + (b.Up - a.Up) * (b.Up - a.Up));
        var share = length > 0 ? p.AlongM.Value / length : 0;
        return new(p.Name, a.Right + share * (b.Right - a.Right), a.Up + share * (b.Up - a.Up), p.HeightM, p.At);
    }

    private static CableEntry Entry(CheckedEntry e) => new(
        e.Name, Text(e.Group, "through"), MaybeMetres(e.Group, "hole"), e.Group.Get<double>("slope"), MaybeMetres(e.Group, "thickness")?.Value, e.At);

    private static Conduit Conduit(CheckedEntry e) => new(e.Name, Metres(e.Group, "inside"), [.. e.Group.Items<string>("runs").Select(r => r.Value)], e.At);

    private static Sourced<Length>? MaybeMetres(CheckedGroup g, string key) =>
        g.Maybe<double>(key) is { } v ? new Sourced<Length>(Length.FromMetres(v.Value), v.At) : null;
}
