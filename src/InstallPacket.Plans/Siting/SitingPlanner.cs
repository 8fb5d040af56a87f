using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Siting;

namespace InstallPacket.Plans.Siting;

/// <summary>Finds the transmitters: distance, true bearing, compass reading, elevation angle.</summary>
internal sealed class SitingPlanner(Job job, GroundView ground)
{
    private readonly Workings _work = new();
    private readonly FindingList _findings = new();
    private const int MostPaths = 6;

    private readonly SitingSection _siting = job.Siting;

    public Planned<SitingPlan> Plan() => new(Place(), _work, _findings);

    private SitingPlan Place()
    {
        var compass = new CompassPlanner(job, _work, _findings).Plan();
        var within = job.Reception.Stations.Select(s => (Station: s, Line: LineTo(s))).ToArray();
        var near = within.Where(p => p.Line.DistanceM <= job.Reception.Within.Metres).ToArray();
        foreach (var want in job.Reception.Want.Where(w => !near.Any(p => p.Station.Id == w.Value)))
            if (within.FirstOrDefault(p => p.Station.Id == want.Value) is { Station: not null } far) ReportFar(want, far.Station, far.Line);
        var sites = Sites(near, compass);
        var obstructions = Obstructions(compass);
        var (paths, leftOut) = Paths(sites, obstructions);
        var groundPlan = new GroundPlanner(job, ground,
            _findings).Plan([.. near.Select(p => p.Station)]); // before the skyline, which asks for more tiles than the plan needs
        return new SitingPlan(
            _siting.LatitudeDeg.Value, _siting.LongitudeDeg.Value, _siting.Ground.Value.Metres, _siting.AntennaHeight.Value.Metres, compass,
            sites, within.Length - near.Length,
            _siting.Landmark is { } l ? new(l.What, TrueBearing.Of(l.Bearing, compass)) : null,
            obstructions)
        {
            Paths = paths,
            PathsLeftOut = leftOut,
            PathsUnknown = [.. sites.Where(s => s.AnyWanted).Select(Unknown).OfType<UnknownPath>()],
            Ground = groundPlan,
            Skyline = new SkylinePlanner(job, compass, ground.Terrain).Plan(),
        };
    }

    private ObstructionPlan[] Obstructions(CompassPlan compass) =>
        [.. _siting.Obstructions.Select(o =>
            new ObstructionPlan(o.Name, o.Kind, TrueBearing.Of(o.Bearing, compass), o.WidthDeg, o.Distance.Metres, o.Height.Metres,
            EffectiveEarth.ElevationAngleDeg(_siting.AntennaHeight.Value.Metres, o.Height.Metres,
                o.Distance.Metres)) { DepthM = o.Depth?.Metres, InLeaf = o.InLeaf })];

    private UnknownPath? Unknown(SitePlan site)
    {
        var path = ground.Toward(job.Reception.Stations.First(s => site.Stations.Contains(s.Id)));
        return path is { Whole: true } ? null : new(site.Name, site.Number, path is null ? "nothing" : "in-part");
    }

    // A page each: more than these nobody reads. Wanted stations come first; among equals the nearer.
    private (PathPlan[] Paths, string[] LeftOut) Paths(SitePlan[] sites, ObstructionPlan[] obstructions)
    {
        var planner = new PathPlanner(job, ground, obstructions, _work);
        var order = new Queue<SitePlan>(sites.OrderByDescending(s => s.AnyWanted).ThenBy(s => s.Number));
        var paths = new List<PathPlan>();
        while (paths.Count < MostPaths && order.TryDequeue(out var site))
            if (Path(planner, site) is { } path) paths.Add(path);
        return ([.. paths.OrderBy(p => p.Number)], [.. order.Select(s => s.Name)]);
    }

    // A site is drawn for its wanted station with the highest channel: there the Fresnel zone is narrowest and the loss behind an edge
    // largest.
    private PathPlan? Path(PathPlanner planner, SitePlan site) => job.Reception.Stations.Where(s => site.Stations.Contains(s.Id))
        .OrderByDescending(s => job.Reception.Want.Any(w => w.Value == s.Id)).ThenByDescending(s =>
            s.AboveSeaM is not null).ThenByDescending(s => s.Channel).ThenBy(s => s.Id, StringComparer.Ordinal)
        .Select(s => planner.Plan(site, s)).FirstOrDefault();

    private void ReportFar(Sourced<string> want, Station station, GeodesicLine line)
    {
        var slip = Misread(station);
        _findings.Add(Severity.Stop, "wanted-station-far", want.At, ("station", want.Value), ("distance_km", line.DistanceM / 1000),
            ("within_km", job.Reception.Within.Metres / 1000), ("mixed_up", slip?.What), ("then_km", slip?.Km));
    }

    // The usual slips in coordinates; a sign turned at the house or at the station comes to the same distance.
    private (string What, double Km)? Misread(Station s)
    {
        var (lat, lon) = (_siting.LatitudeDeg.Value, _siting.LongitudeDeg.Value);
        foreach (var (what, toLat, toLon) in new[] { ("east-and-west", s.LatitudeDeg, -s.LongitudeDeg),
            ("north-and-south", -s.LatitudeDeg, s.LongitudeDeg), ("latitude-and-longitude", s.LongitudeDeg, s.LatitudeDeg) })
        {
            if (Math.Abs(toLat) > 90) continue;
            var distance = Geodesic.Inverse(lat, lon, toLat, toLon).DistanceM;
            if (distance <= job.Reception.Within.Metres) return (what, distance / 1000);
        }
        return null;
    }

    private GeodesicLine LineTo(Station s)
    {
        var (lat, lon) = (_siting.LatitudeDeg.Value, _siting.LongitudeDeg.Value);
        return Geodesic.Inverse(lat, lon, s.LatitudeDeg, s.LongitudeDeg);
    }

    private SitePlan[] Sites((Station Station, GeodesicLine Line)[] near, CompassPlan compass)
    {
        var number = 0;
        return [.. near.GroupBy(p => p.Station.Site, StringComparer.Ordinal)
            .OrderBy(g => g.Min(p => p.Line.DistanceM)).ThenBy(g => g.Key, StringComparer.Ordinal)
            .Select(g => Site([.. g], ++number, compass))];
    }

    private SitePlan Site((Station Station, GeodesicLine Line)[] members, int number, CompassPlan compass)
    {
        var wanted = members.Where(m => job.Reception.Want.Any(w => w.Value == m.Station.Id)).ToArray();
        var (station, line) = (wanted.Length > 0 ? wanted : members)[0];
        var name = station.Site;
        Term[] places = [job.Latitude(), job.Longitude(), station.Latitude(), station.Longitude()];
        var distance = _work.Apply(Geodesic.DistanceFormula, name, places);
        var bearing = _work.Apply(Geodesic.BearingFormula, name, places);
        foreach (var m in members.Where(m => Math.Abs(Bearing.Turn(m.Line.AzimuthDeg, line.AzimuthDeg)) > 1))
            _findings.Add(Severity.Caution, "site-spread", m.Station.At, ("station", m.Station.Id),
                ("turn_deg", Math.Abs(Bearing.Turn(m.Line.AzimuthDeg, line.AzimuthDeg))), ("other", station.Id), ("site", name));
        return new SitePlan(name, number, line.DistanceM / 1000, line.AzimuthDeg, Magnetic(name, bearing, compass),
            CompassBearing.SixteenPoint(line.AzimuthDeg), Elevation(station, distance), [.. members.Select(m => m.Station.Id)],
                wanted.Length > 0);
    }

    private double? Magnetic(string name, Term trueDeg, CompassPlan compass)
    {
        if (!compass.Usable || compass.DeclinationDeg is not { } d) return null;
        return _work.Apply(CompassBearing.MagneticFormula, $"toward {name}", trueDeg,
            Term.Plan("siting.compass.declination_deg", d)).Number;
    }

    private double? Elevation(Station s, Term distanceM)
    {
        if (s.AboveSeaM is null || distanceM < 1) return null;
        return _work.Apply(EffectiveEarth.ElevationFormula, $"toward {s.Site}", job.AntennaAboveSea(_work, job.Ground()), s.AboveSea(),
            distanceM).Number;
    }
}
