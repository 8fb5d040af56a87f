using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Siting;

namespace InstallPacket.Plans.Siting.Ground;

/// <summary>States which ground the plan rests on, and reports what is missing, unfit or contradicts the job.</summary>
internal sealed class GroundPlanner(Job job, GroundView ground, FindingList findings)
{
    private const double LargestDifferenceM = 16;
    private const double LengthTolerance = 0.02;
    private const int MostNames = 8;

    /// <summary>The ground used, or null when the job names no tiles. Call after every path was sampled.</summary>
    public GroundPlan? Plan(IReadOnlyList<Station> near)
    {
        foreach (var profile in job.Siting.Profiles) CheckProfile(profile);
        if (ground.Terrain is not { } terrain || job.Siting.Terrain is not { } folder) return null;
        var site = terrain.At(job.Siting.LatitudeDeg.Value, job.Siting.LongitudeDeg.Value);
        double? siteM = site.State is HeightState.Known or HeightState.Partial ? site.HeightM : null;
        foreach (var unfit in terrain.UnfitTiles)
            findings.Add(Severity.Caution, "tile-unfit", folder.At, ("problem", unfit.Split("; ")[0]), ("limit", Limit(unfit)));
        if (siteM is { } height) CheckGround(height, folder.At);
        else ReportOutside(terrain, folder);
        if (siteM is not null) ReportUnknownPaths(terrain, folder, near);
        return new GroundPlan(folder.Value, terrain.SpacingArcSeconds, siteM,
            [.. terrain.Used.Select(t => new TilePlan(t.Path, t.Sha256, t.SpacingArcSeconds, t.Datum))], terrain.MissingTiles);
    }

    private static string? Limit(string unfit) => unfit.IndexOf("; ", StringComparison.Ordinal) is > 0 and var at ? unfit[(at + 2)..]
        : null;

    private void ReportOutside(ITerrain terrain, Sourced<string> folder) =>
        findings.Add(Severity.Caution, "site-outside-tiles", folder.At, ("folder", folder.Value),
            ("missing", terrain.MissingTiles.Take(4)));

    private void ReportUnknownPaths(ITerrain terrain, Sourced<string> folder, IReadOnlyList<Station> near)
    {
        var holes = near.Where(s => ground.Toward(s) is { Whole: false }).ToArray();
        if (holes.Length == 0) return;
        var wanted = holes.Where(s => job.Reception.Want.Any(w => w.Value == s.Id)).Select(s => s.Id).ToArray();
        var severity = wanted.Length > 0 ? Severity.Caution : Severity.Note;
        findings.Add(severity, "path-unknown", folder.At, ("holes", holes.Length), ("stations", near.Count),
            ("wanted", wanted.Take(MostNames)),
            ("more", wanted.Length > MostNames), ("bridge_m", PathSampler.BridgeM), ("missing", terrain.MissingTiles.Take(MostNames)),
                ("unfit", terrain.UnfitTiles.Count > 0));
    }

    private void CheckGround(double tileM, SourceSpan at)
    {
        var given = job.Siting.Ground;
        if (Math.Abs(tileM - given.Value.Metres) <= LargestDifferenceM) return;
        findings.Add(Severity.Caution, "ground-differs", given.At, ("given_m", given.Value.Metres), ("tiles_m", tileM),
            ("most_m", LargestDifferenceM));
    }

    private void CheckProfile(MeasuredProfile profile)
    {
        var station = job.Reception.Stations.First(s => s.Id == profile.Station);
        var length = Geodesic.Inverse(job.Siting.LatitudeDeg.Value, job.Siting.LongitudeDeg.Value, station.LatitudeDeg,
            station.LongitudeDeg).DistanceM;
        var last = profile.Points[^1].DistanceM;
        if (Math.Abs(last - length) > LengthTolerance * length)
            findings.Add(Severity.Stop, "profile-unfit", "end", profile.At, ("station", station.Id), ("end_km", last / 1000),
                ("distance_km", length / 1000));
    }
}
