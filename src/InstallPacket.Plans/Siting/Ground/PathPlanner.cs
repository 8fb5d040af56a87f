using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Siting;
using InstallPacket.Jobs;
using InstallPacket.Jobs.Stations;

namespace InstallPacket.Plans;

/// <summary>Judges the ground toward each site: sight, Fresnel clearance, the edges that govern.</summary>
internal sealed class PathPlanner(Job job, GroundView ground, WorkLog log)
{
    private const int DrawnPoints = 240;

    public PathPlan? Plan(SitePlan site, Station station)
    {
        if (station.AboveSeaM is not { } top || ground.Toward(station) is not { Whole: true } path || path.LengthM < 1) return null;
        var own = path.HeightsM[0] + job.Siting.AntennaHeight.Value.Metres;
        var frequency = ChannelRaster.Find(station.Raster, station.Channel)!.CentreMHz;
        PathPoint At(int i) => Point(path, i, own, top, frequency);
        var (worst, share) = Worst(path, At);
        log.Record(EffectiveEarth.ClearanceFormula, $"{site.Name}, ground at {Calc.Quantities.UnitText.Number(worst.DistanceKm, 2)} km", worst.RayM - worst.CurvedM,
            own, top, path.LengthM, worst.DistanceKm * 1000, worst.GroundM);
        if (worst.FresnelM > 0)
            log.Record(FresnelZone.RadiusFormula, $"{site.Name} at {Calc.Quantities.UnitText.Number(worst.DistanceKm, 2)} km", worst.FresnelM, 1, frequency, worst.DistanceKm, path.LengthM / 1000 - worst.DistanceKm);
        return new PathPlan(site.Name, site.Number, station.Id, path.From, frequency, path.LengthM / 1000, own, top, share >= 0, share, worst.DistanceKm,
            Edges(path, own, top, site, share < 0), Thin(path, At));
    }

    private static PathPoint Point(GroundPath path, int i, double own, double top, double frequency)
    {
        var (d, length) = (i * path.StepM, path.LengthM);
        var bulge = EffectiveEarth.BulgeM(d, Math.Max(0, length - d));
        return new(d / 1000, path.HeightsM[i], path.HeightsM[i] + bulge, bulge, own + (top - own) * d / length,
            FresnelZone.RadiusM(1, frequency, d / 1000, Math.Max(0, length - d) / 1000));
    }

    // The Fresnel radius vanishes at both ends, where any ground would count as blocking: the nearest and the last step are left out.
    private static (PathPoint Point, double Share) Worst(GroundPath path, Func<int, PathPoint> at) =>
        Enumerable.Range(1, path.HeightsM.Length - 2).Select(at).Select(p => (p, (p.RayM - p.CurvedM) / p.FresnelM)).MinBy(p => p.Item2);

    private PathEdge[] Edges(GroundPath path, double own, double top, SitePlan site, bool blocked)
    {
        if (!blocked) return [];
        var near = Horizon(path, own, i => i * path.StepM);
        var far = Horizon(path, top, i => path.LengthM - i * path.StepM);
        log.Record(EffectiveEarth.ElevationFormula, $"horizon toward {site.Name}", near.AngleDeg, own, path.HeightsM[near.Index], near.Index * path.StepM);
        var edges = new List<PathEdge> { Edge("horizon of the antenna", near) };
        if (far.Index != near.Index) edges.Add(Edge("horizon of the transmitter", far));
        return [.. edges];

        PathEdge Edge(string what, (int Index, double AngleDeg) e) =>
            new(what, e.Index * path.StepM / 1000, path.HeightsM[e.Index], path.HeightsM[e.Index] + EffectiveEarth.BulgeM(e.Index * path.StepM, path.LengthM - e.Index * path.StepM), e.AngleDeg);
    }

    private static (int Index, double AngleDeg) Horizon(GroundPath path, double from, Func<int, double> distance) =>
        Enumerable.Range(1, path.HeightsM.Length - 2).Select(i => (i, EffectiveEarth.ElevationAngleDeg(from, path.HeightsM[i], distance(i)))).MaxBy(p => p.Item2);

    // The highest sample of each group, so that no summit is lost, and both ends.
    private static PathPoint[] Thin(GroundPath path, Func<int, PathPoint> at)
    {
        var last = path.HeightsM.Length - 1;
        var group = Math.Max(1, (last + DrawnPoints - 1) / DrawnPoints);
        var inner = Enumerable.Range(1, last - 1).Chunk(group).Select(c => c.MaxBy(i => path.HeightsM[i]));
        return [at(0), .. inner.Select(at), at(last)];
    }
}
