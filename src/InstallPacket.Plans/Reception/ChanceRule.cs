using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans.Reception;

/// <summary>
/// The chance of a plan: that this house has the channel for at least the demanded share of the time. The doubt is about the house and the
/// work; what the field does over time is known from the climate and is taken off the margin instead. No estimate is surer than its basis.
/// </summary>
internal static class ChanceRule
{
    private static readonly Constant MostByCurves = new("most-sure-by-curves", 0.95, "project-notes", Provenance.Derived);
    private static readonly Constant MostByTerrain = new("most-sure-by-terrain-model", 0.98, "project-notes", Provenance.Derived);

    /// <summary>The most that an estimate may promise, 0 to 1.</summary>
    /// <param name="ground">How the ground toward the station is known.</param>
    public static Constant Most(string ground) => ground == "path" ? MostByTerrain : MostByCurves;

    /// <summary>The chance of an arrival, 0 to 1.</summary>
    /// <param name="a">The arrival.</param>
    /// <param name="marginDb">Margin for the demanded share of the time [dB].</param>
    public static double Chance(this Arrival a, double marginDb) =>
        Math.Min(Probability.OfMargin(marginDb, a.Spread.TotalDb), Most(a.Ground).Number);

    /// <summary>The share of the time for which a channel must come in [%].</summary>
    /// <param name="job">The job, which may say it.</param>
    /// <param name="code">The code family, which says it otherwise.</param>
    public static Term ServedTime(this Job job, CodeFamily code) =>
        job.Reception.TimePct is { } pct ? Term.Key("reception.time", pct) : code.Limit("served-time").Term;
}
