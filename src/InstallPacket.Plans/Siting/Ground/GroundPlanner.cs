using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Siting;

namespace InstallPacket.Plans.Siting.Ground;

/// <summary>States which ground the plan rests on, and reports what is missing, unfit or contradicts the job.</summary>
internal sealed class GroundPlanner(Job job, GroundView ground, FindingList findings)
{
    private const double LargestDifferenceM = 16;
    private const double LengthTolerance = 0.02;
    private readonly UnitPrinter _print = UnitPrinter.Of(job);

    /// <summary>The ground used, or null when the job names no tiles. Call after every path was sampled.</summary>
    public GroundPlan? Plan(IReadOnlyList<Station> near)
    {
        foreach (var profile in job.Siting.Profiles) CheckProfile(profile);
        if (ground.Terrain is not { } terrain || job.Siting.Terrain is not { } folder) return null;
        var site = terrain.At(job.Siting.LatitudeDeg.Value, job.Siting.LongitudeDeg.Value);
        double? siteM = site.State is HeightState.Known or HeightState.Partial ? site.HeightM : null;
        foreach (var unfit in terrain.UnfitTiles)
            findings.Add(Severity.Caution, "tile-unfit", folder.At, $"the elevation tile {unfit.Split("; ")[0]}", unfit.Contains("; ") ? unfit[(unfit.IndexOf("; ", StringComparison.Ordinal) + 2)..] : "",
                "fetch the tile again, or remove it; until then the ground under it counts as unknown");
        if (siteM is { } height) CheckGround(height, folder.At);
        else ReportOutside(terrain, folder);
        if (siteM is not null) ReportUnknownPaths(terrain, folder, near);
        return new GroundPlan(folder.Value, terrain.SpacingArcSeconds, siteM,
            [.. terrain.Used.Select(t => new TilePlan(t.Path, t.Sha256, t.SpacingArcSeconds, t.Datum))], terrain.MissingTiles);
    }

    private void ReportOutside(ITerrain terrain, Sourced<string> folder) =>
        findings.Add(Severity.Caution, "site-outside-tiles", folder.At, $"no tile of {folder.Value} knows the ground at the antenna",
            terrain.MissingTiles.Count == 0 ? "the tile there is void or unfit" : "the tile needed there: " + string.Join(", ", terrain.MissingTiles.Take(4)),
            "check the coordinates, or add the tile; until then every path is judged by the curves alone");

    private void ReportUnknownPaths(ITerrain terrain, Sourced<string> folder, IReadOnlyList<Station> near)
    {
        var holes = near.Where(s => ground.Toward(s) is { Whole: false }).ToArray();
        if (holes.Length == 0) return;
        var wanted = holes.Where(s => job.Reception.Want.Any(w => w.Value == s.Id)).Select(s => $"`{s.Id}`").ToArray();
        var severity = wanted.Length > 0 ? Severity.Caution : Severity.Note;
        findings.Add(severity, "path-unknown", folder.At,
            $"the ground toward {holes.Length} of {near.Count} stations has holes{(wanted.Length > 0 ? "; wanted among them: " + string.Join(", ", wanted.Take(8)) + (wanted.Length > 8 ? " and others" : "") : ", none of them wanted")}",
            $"holes up to {_print.Height(PathSampler.BridgeM)} are bridged (our rule); {(terrain.MissingTiles.Count > 0 ? "tiles that are not there: " + string.Join(", ", terrain.MissingTiles.Take(8)) : terrain.UnfitTiles.Count > 0 ? "tiles that cannot be used lie there" : "the tiles have voids there")}",
            "add the tiles; until then these stations are judged by the curves, which do not see the hills");
    }

    private void CheckGround(double tileM, SourceSpan at)
    {
        var given = job.Siting.Ground;
        if (Math.Abs(tileM - given.Value.Metres) <= LargestDifferenceM) return;
        findings.Add(Severity.Caution, "ground-differs", given.At, $"siting.ground is {_print.Height(given.Value.Metres)}, and the tiles say {_print.Height(tileM)} at this place",
            $"they should agree within {_print.Height(LargestDifferenceM)} (memory: the height accuracy that the makers of such tiles state)",
            tileM == 0 ? "the tiles hold 0 where the sea is: check the coordinates first" : "check the coordinates first, then the height; the ground of the tiles is used for the paths");
    }

    private void CheckProfile(MeasuredProfile profile)
    {
        var station = job.Reception.Stations.First(s => s.Id == profile.Station);
        var length = Geodesic.Inverse(job.Siting.LatitudeDeg.Value, job.Siting.LongitudeDeg.Value, station.LatitudeDeg, station.LongitudeDeg).DistanceM;
        var last = profile.Points[^1].DistanceM;
        if (Math.Abs(last - length) > LengthTolerance * length)
            findings.Add(Severity.Stop, "profile-unfit", profile.At, $"the measured profile toward `{station.Id}` ends at {_print.Distance(last / 1000)}, and the station stands {_print.Distance(length / 1000)} away",
                "the last point lies at the transmitter, within 2 % of the distance (our rule)", "complete the profile, or correct the coordinates");
    }
}
