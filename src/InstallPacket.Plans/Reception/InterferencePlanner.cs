using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans.Reception;

/// <summary>A station that disturbs a wanted one.</summary>
/// <param name="Other">The disturber.</param>
/// <param name="Offset">How many channels it lies above the wanted one; 0 on the same channel.</param>
/// <param name="LimitDb">Least ratio of wanted to other at the tuner; null when no document tells.</param>
/// <param name="LimitSource">How the limit is known.</param>
/// <param name="AddsDb">What to add to its power so that it counts as noise; null when it does not count so, or when that is
/// unknown.</param>
internal sealed record Disturber(Arrival Other, int Offset, double? LimitDb, string LimitSource, double? AddsDb);

/// <summary>Finds the stations on the same and on near channels. Disturbers are taken as strong as they are for the share of the
/// time that the wanted ones may fail.</summary>
internal static class InterferencePlanner
{
    // Beyond this offset the tables of the trade end.
    private const int FarthestOffset = 15;

    /// <summary>The disturbers of each wanted arrival, by its station.</summary>
    public static IReadOnlyDictionary<string, IReadOnlyList<Disturber>> Of(IReadOnlyList<Arrival> arrivals)
    {
        var heard = arrivals.Where(a => a.WhyNot.Length == 0).ToArray();
        return heard.ToDictionary(a => a.Station.Id, a =>
            (IReadOnlyList<Disturber>)[.. heard.Select(o => Between(a, o)).OfType<Disturber>()], StringComparer.Ordinal);
    }

    /// <summary>Whether two stations send the same signal on the same channel, as a single-frequency network does.</summary>
    public static bool OneNetwork(Arrival a, Arrival b) =>
        a.Station.Name == b.Station.Name && a.Station.System == b.Station.System && a.Station.Mode == b.Station.Mode
            && ChannelRaster.Offset(a.Channel, b.Channel) == 0;

    private static Disturber? Between(Arrival wanted, Arrival other)
    {
        if (wanted == other || OneNetwork(wanted, other) || ChannelRaster.Offset(wanted.Channel, other.Channel) is not { } offset
            || Math.Abs(offset) > FarthestOffset) return null;
        if (offset == 0) return new(other, 0, wanted.RequiredCnDb, "both are noise to each other", 0);
        // An outlet is planned to be no stronger than moderate; the ratio of a weaker wanted channel is easier to keep.
        var row = DuRatio.Find(wanted.Station.System, DuKind.Planning, offset, DesiredLevel.Moderate)
            ?? DuRatio.Find(wanted.Station.System, DuKind.Receiver, offset, DesiredLevel.Moderate);
        if (row is null && Math.Abs(offset) > 1) return null;
        // At the limit a neighbour disturbs as much as noise at the threshold would. Farther off the trouble is no noise but overload of
        // the tuner,
        // which begins at the limit.
        var noise = row is not null && Math.Abs(offset) == 1;
        return new(other, offset, row?.RatioDb, row is null ? "unknown" : $"{ProvenanceWord.Of(row.Provenance)}: {row.SourceText}", noise
            ? row!.RatioDb - wanted.RequiredCnDb : null);
    }
}
