using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs;

/// <summary>Turns checked groups into the records of a job. Runs only when the file has no finding that stops it, so every name resolves.</summary>
internal sealed partial class SectionBinder(PartLibrary parts)
{
    public static Party Party(CheckedGroup g) =>
        new(Text(g, "name"), g.Maybe<string>("address")?.Value, g.Maybe<string>("phone")?.Value, g.Maybe<string>("note")?.Value);

    public static SitingSection Siting(CheckedGroup g, Sourced<string>? terrain) => new(
        g.Get<double>("latitude"), g.Get<double>("longitude"), Metres(g, "ground"), Metres(g, "antenna-height"), Text(g, "surroundings"),
        g.Group("landmark") is { } l ? new(Text(l, "what"), l.Get<Bearing>("bearing").Value) : null,
        [.. g.Entries("obstructions").Select(Obstruction)],
        g.Has("power-lines") ? [.. g.Entries("power-lines").Select(PowerLine)] : null, g.At)
    {
        Terrain = terrain,
        UnderRoof = g.Maybe<string>("under-roof"),
        UtcOffset = g.Maybe<double>("utc-offset") is { } hours ? TimeSpan.FromMinutes(Math.Round(hours.Value * 60)) : null,
        Profiles = [.. g.Items<CheckedGroup>("profiles").Select(p => Profile(p.Value))],
        Horizon = [.. g.Items<CheckedGroup>("horizon").Select(h => new HorizonArc(h.Value.Get<Bearing>("bearing").Value, h.Value.Get<double>("width").Value, h.Value.Get<double>("angle").Value, h.At))],
    };

    public static ReceptionSection Reception(CheckedGroup g, IReadOnlyList<Station> stations) => new(
        stations, g.Items<string>("want"), Length.FromMetres(g.Get<double>("within").Value), g.Maybe<Bearing>("aim"), Gain.FromDb(g.Get<double>("reserve").Value),
        Gain.FromDb(g.Get<double>("multipath").Value), g.At) { WantAt = g.Place("want"), ChancePct = g.Get<double>("chance").Value };

    public CablingSection Cabling(CheckedGroup g)
    {
        var t = g.Group("temperature")!;
        return new(Part(g, "receiver"), Part(g, "fly-cable"), t.Get<double>("cold").Value, t.Get<double>("hot").Value,
            [.. g.Entries("chain").Select(Element)], g.At) { ChainAt = g.Place("chain"), AlsoCarries = g.Items<string>("also-carries") };
    }

    public MountingSection Mounting(CheckedGroup g) => new MountingBinder(parts).Section(g);

    public BondingSection Bonding(CheckedGroup g) => new(
        Text(g, "connection"), Part(g, "conductor"), Metres(g, "mast-length").Value, Metres(g, "shield-length").Value, Text(g, "by"),
        g.Maybe<string>("note")?.Value, g.At)
    {
        ConductorAt = g.Place("conductor"),
        ShieldLengthAt = g.Place("shield-length"),
        ShieldConductor = Part(g, g.Has("shield-conductor") ? "shield-conductor" : "conductor"),
        ShieldConductorAt = g.Place(g.Has("shield-conductor") ? "shield-conductor" : "conductor"),
        MastRoute = g.Group("mast-route") is { } mast ? BondRoute(mast) : null,
        ShieldRoute = g.Group("shield-route") is { } shield ? BondRoute(shield) : null,
        Rod = g.Group("rod") is { } rod ? Rod(rod) : null,
        Zone = g.Group("zone") is { } zone ? new(Metres(zone, "below-edge").Value, Metres(zone, "out").Value, zone.At) : null,
        Lightning = g.Group("lightning") is { } l ? new(l.Maybe<double>("flash-density")?.Value, l.Maybe<int>("thunder-days")?.Value, Text(l, "place"), l.At) : null,
    };

    private static BondRoute BondRoute(CheckedGroup g)
    {
        var power = g.Group("power");
        return new(g.Maybe<int>("bends")?.Value, g.Has("bend-radius") ? Metres(g, "bend-radius") : null, g.Maybe<int>("coils"),
            power is null ? null : Metres(power, "distance"), power is null ? null : Text(power, "circuit"), g.At);
    }

    private EarthRod Rod(CheckedGroup g)
    {
        var jumper = g.Group("jumper");
        return new(Part(g, "part"), g.Get<int>("count").Value, g.Has("spacing") ? Metres(g, "spacing").Value : null, g.Maybe<string>("soil")?.Value, g.Maybe<double>("resistivity")?.Value,
            jumper is null ? null : Part(jumper, "part"), jumper is null ? Length.FromMetres(0) : Metres(jumper, "length").Value, g.Has("clamp") ? Part(g, "clamp") : null, g.At)
        {
            JumperAt = jumper?.Place("part") ?? g.At,
        };
    }

    public IReadOnlyList<ExtraPart> Extras(CheckedGroup g) =>
        [.. g.Items<CheckedGroup>("extra").Select(e => new ExtraPart(Part(e.Value, "part"), e.Value.Get<int>("count").Value, Text(e.Value, "for")))];

    public static Station Transmitter(CheckedEntry e) => new(
        e.Name, Text(e.Group, "name"), Text(e.Group, "site"), Text(e.Group, "system"), e.Group.Maybe<string>("mode")?.Value ?? "", Text(e.Group, "raster"),
        e.Group.Get<int>("channel").Value, e.Group.Maybe<string>("shows-as")?.Value ?? "", e.Group.Get<double>("latitude").Value,
        e.Group.Get<double>("longitude").Value, e.Group.Get<double>("power").Value, e.Group.Maybe<double>("height")?.Value,
        e.Group.Maybe<double>("above-sea")?.Value, Text(e.Group, "polarisation"), e.At);

    public static HandoverSection Handover(CheckedGroup g) => new(Text(g, "existing-internet"), g.Maybe<string>("words")?.Value);

    private Element Element(CheckedEntry e)
    {
        var g = e.Group;
        var (second, secondPort) = g.Maybe<string>("second") is { } s2 ? ElementName.Split(s2.Value) : (null, 1);
        var (from, port) = g.Maybe<string>("from") is { } f ? ElementName.Split(f.Value) : (null, 1);
        return new(e.Name, Part(g, "part"), Text(g, "at"), from, port, g.Maybe<string>("run")?.Value,
            g.Maybe<double>("setting") is { } s ? Gain.FromDb(s.Value) : null, g.Maybe<string>("serves")?.Value, Metres(g, "fly-lead").Value, e.At)
        {
            Second = second, SecondPort = secondPort, SecondRun = g.Maybe<string>("second-run")?.Value, SecondAt = g.Place("second"), Aim = g.Maybe<Bearing>("aim"),
            FromAt = g.Place("from"), RunAt = g.Place("run"), SettingAt = g.Place("setting"),
        };
    }

    private static MeasuredProfile Profile(CheckedGroup g) => new(
        Text(g, "station"), [.. g.Items<CheckedGroup>("points").Select(p => (p.Value.Get<double>("distance").Value, p.Value.Get<double>("ground").Value))], g.At);

    private static Obstruction Obstruction(CheckedEntry e) => new(
        e.Name, Text(e.Group, "kind"), e.Group.Get<Bearing>("bearing").Value, e.Group.Get<double>("width").Value, Metres(e.Group, "distance").Value,
        Metres(e.Group, "height").Value, e.At)
    {
        Depth = e.Group.Maybe<double>("depth") is { } depth ? Length.FromMetres(depth.Value) : null,
        InLeaf = e.Group.Get<string>("leaf").Value == "in-leaf",
    };

    private static PowerLine PowerLine(CheckedEntry e) =>
        new(e.Name, Text(e.Group, "what"), Metres(e.Group, "distance").Value, Metres(e.Group, "height").Value, e.At)
        {
            VoltageKv = e.Group.Maybe<double>("voltage")?.Value / 1000,
        };

    private Part Part(CheckedGroup g, string key) => parts.Find(Text(g, key))!;

    private static string Text(CheckedGroup g, string key) => g.Get<string>(key).Value;

    private static Sourced<Length> Metres(CheckedGroup g, string key)
    {
        var v = g.Get<double>(key);
        return new(Length.FromMetres(v.Value), v.At);
    }
}
