using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Siting;

namespace InstallPacket.Plans.Siting.Ground;

/// <summary>Judges the ground toward each site: sight, Fresnel clearance, the edges that govern.</summary>
internal sealed class PathPlanner(Job job, GroundView ground, IReadOnlyList<ObstructionPlan> obstructions, Workings work)
{
    private const int DrawnPoints = 240;

    public PathPlan? Plan(SitePlan site, Station station)
    {
        if (station.AboveSeaM is not { } top || ground.Toward(station) is not { Whole: true } path || path.LengthM < 1) return null;
        var own = work.Apply(SitingFormulas.AboveSea, $"antenna, toward {site.Name}", Term.Ground("house", path.HeightsM[0]),
            job.AntennaHeight());
        var frequency = ChannelRaster.Find(station.Raster, station.Channel)!.CentreMHz;
        PathPoint At(int i) => Point(path, i, own, top, frequency);
        var (tightest, share) = Tightest(path, At);
        var worst = At(tightest);
        ShowTightest(path, worst, own, site, station);
        var edges = share < 0 ? Horizons(path, own, top, site) : [];
        return new PathPlan(site.Name, site.Number, station.Id, path.From, frequency, path.LengthM / 1000, own, top, share >= 0, share,
            worst.DistanceKm,
            [.. edges.Select(e => Edge(path, e))], Thin(path, [tightest, .. edges.Select(e => e.Index)], At))
        {
            Tightest = worst,
            Obstructions = [.. obstructions.Where(o => Stands(o, site)).OrderBy(o => o.DistanceM).ThenBy(o => o.Name,
                StringComparer.Ordinal).Select(o => o.Name)],
        };
    }

    private void ShowTightest(GroundPath path, PathPoint worst, Term own, SitePlan site, Station station)
    {
        var (plan, place) = ($"siting.paths[{site.Name}]", $"{site.Name} at {UnitText.Number(worst.DistanceKm, 2)} km");
        Term length = Term.Plan(plan + ".distance_km", path.LengthM / 1000),
            d1 = Term.Plan(plan + ".tightest.distance_km", worst.DistanceKm);
        Subject about = $"{site.Name} at {UnitText.Number(worst.DistanceKm, 2)} km";
        work.Apply(EffectiveEarth.ClearanceFormula, $"{site.Name}, ground at {UnitText.Number(worst.DistanceKm, 2)} km",
            own, station.AboveSea(), length.In(1000), d1.In(1000), Term.Ground(place, worst.GroundM));
        if (worst.FresnelM <= 0) return;
        var d2 = work.Apply(SitingFormulas.Rest, about, length, d1);
        work.Apply(FresnelZone.RadiusFormula, about, FresnelZone.First, station.Centre(), d1, d2);
    }

    private static PathPoint Point(GroundPath path, int i, double own, double top, double frequency)
    {
        var (d, length) = (i * path.StepM, path.LengthM);
        var bulge = EffectiveEarth.BulgeM(d, Math.Max(0, length - d));
        return new(d / 1000, path.HeightsM[i], path.HeightsM[i] + bulge, bulge, own + (top - own) * d / length,
            FresnelZone.RadiusM(1, frequency, d / 1000, Math.Max(0, length - d) / 1000));
    }

    // As for the loss over them: the site lies within the width of the obstruction and behind it.
    private static bool Stands(ObstructionPlan o, SitePlan site) =>
        Math.Abs(Bearing.Turn(o.BearingTrueDeg, site.BearingTrueDeg)) <= o.WidthDeg / 2 && o.DistanceM < site.DistanceKm * 1000;

    // The Fresnel radius vanishes at both ends, where any ground would count as blocking: the nearest and the last step are left out.
    private static (int Index, double Share) Tightest(GroundPath path, Func<int, PathPoint> at) =>
        Enumerable.Range(1, path.HeightsM.Length - 2).Select(i => (i, Share: Share(at(i)))).MinBy(p => p.Share);

    private static double Share(PathPoint p) => (p.RayM - p.CurvedM) / p.FresnelM;

    private sealed record GoverningEdge(string What, int Index, double AngleDeg);

    private GoverningEdge[] Horizons(GroundPath path, Term own, double top, SitePlan site)
    {
        var near = Horizon(path, own, i => i * path.StepM);
        var far = Horizon(path, top, i => path.LengthM - i * path.StepM);
        Subject hill = $"horizon toward {site.Name}";
        work.Apply(EffectiveEarth.ElevationFormula, hill, own, Term.Ground(hill.ToString(), path.HeightsM[near.Index]),
            Term.Plan($"siting.paths[{site.Name}].edges[horizon of the antenna].distance_km", near.Index * path.StepM / 1000).In(1000));
        var first = new GoverningEdge("horizon of the antenna", near.Index, near.AngleDeg);
        return far.Index == near.Index ? [first] : [first, new("horizon of the transmitter", far.Index, far.AngleDeg)];
    }

    private static PathEdge Edge(GroundPath path, GoverningEdge e) => new(e.What, e.Index * path.StepM / 1000, path.HeightsM[e.Index],
        path.HeightsM[e.Index] + EffectiveEarth.BulgeM(e.Index * path.StepM, path.LengthM - e.Index * path.StepM), e.AngleDeg);

    private static (int Index, double AngleDeg) Horizon(GroundPath path, double from, Func<int, double> distance) =>
        Enumerable.Range(1, path.HeightsM.Length - 2).Select(i =>
            (i, EffectiveEarth.ElevationAngleDeg(from, path.HeightsM[i], distance(i)))).MaxBy(p => p.Item2);

    // The highest sample of each group, so that no summit is lost, both ends, and the points that are marked on the drawing.
    private static PathPoint[] Thin(GroundPath path, int[] marked, Func<int, PathPoint> at)
    {
        var last = path.HeightsM.Length - 1;
        var group = Math.Max(1, (last + DrawnPoints - 1) / DrawnPoints);
        var summits = Enumerable.Range(1, last - 1).Chunk(group).Select(c => c.MaxBy(i => path.HeightsM[i]));
        return [.. new[] { 0, last }.Concat(summits).Concat(marked).Distinct().Order().Select(at)];
    }
}
