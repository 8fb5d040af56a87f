using InstallPacket.Calc.Quantities;

namespace InstallPacket.Plans.Siting.Ground;

/// <summary>The height of the ground at the house.</summary>
internal static class HouseGround
{
    /// <summary>The job with the ground that the tiles give where it states none.</summary>
    /// <param name="job">The job.</param>
    /// <param name="terrain">The tiles, or null.</param>
    /// <param name="findings">Receives that nobody knows the ground.</param>
    public static Job Known(Job job, ITerrain? terrain, FindingList findings)
    {
        if (job.Siting.GroundKnown) return job;
        if (terrain?.At(job.Siting.LatitudeDeg.Value, job.Siting.LongitudeDeg.Value) is { State: HeightState.Known } height)
            return job with { Siting = job.Siting with { Ground = new(Length.FromMetres(height.HeightM), job.Siting.At) } };
        findings.Add(Severity.Stop, "ground-unknown", job.Siting.At);
        return job;
    }
}
