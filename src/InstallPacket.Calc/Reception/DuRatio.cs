using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>The levels of the wanted channel at which receivers are tried.</summary>
public enum DesiredLevel
{
    /// <summary>-68 dBm.</summary>
    Weak,

    /// <summary>-53 dBm.</summary>
    Moderate,

    /// <summary>-28 dBm.</summary>
    Strong,
}

/// <summary>Whose ratio it is.</summary>
public enum DuKind
{
    /// <summary>What regulators plan with.</summary>
    Planning,

    /// <summary>What a receiver should stand.</summary>
    Receiver,
}

/// <summary>The least ratio of a wanted channel to another one at the tuner.</summary>
/// <param name="System">System of the wanted channel; the other one carries the same.</param>
/// <param name="Kind">Whose ratio it is.</param>
/// <param name="Nearest">Nearest offset for which it holds, in channels, without sign.</param>
/// <param name="Farthest">Farthest offset for which it holds, in channels, without sign.</param>
/// <param name="Below">Whether it holds for the other channel below the wanted one.</param>
/// <param name="Above">Whether it holds for the other channel above the wanted one.</param>
/// <param name="Level">Level of the wanted channel; none when it holds for all.</param>
/// <param name="RatioDb">Wanted over other [dB]; negative when the other one may be stronger.</param>
/// <param name="SourceText">Document of the row.</param>
/// <param name="Provenance">How it is known.</param>
public sealed record DuRatio(
    string System, DuKind Kind, int Nearest, int Farthest, bool Below, bool Above, DesiredLevel? Level, double RatioDb,
    string SourceText, Provenance Provenance)
{
    /// <summary>The ratio of a table row.</summary>
    public static readonly Formula RowFormula = new(
        "du-ratio",
        "Least ratio of the wanted to another channel",
        "D/U = value of the table for the offset and the level of the wanted channel",
        new("D/U", "dB", "least ratio at the tuner"), [new("N", "", "offset in channels"), new("D", "dBm", "level of the wanted channel")],
        "du-ratio-table", "the row of the offset; its document and provenance are printed beside it", Provenance.Derived);

    private static readonly Lazy<IReadOnlyList<DuRatio>> Loaded = new(Load);

    /// <summary>All rows of the table.</summary>
    public static IReadOnlyList<DuRatio> All => Loaded.Value;

    /// <summary>The ratio for one neighbour.</summary>
    /// <param name="system">System of both channels.</param>
    /// <param name="kind">Whose ratio is wanted.</param>
    /// <param name="offset">How many channels the other one lies above the wanted one, see <see cref="ChannelRaster.Offset"/>.</param>
    /// <param name="level">Level of the wanted channel.</param>
    /// <returns>The row, or null when the table has none: unknown, not harmless.</returns>
    public static DuRatio? Find(string system, DuKind kind, int offset, DesiredLevel level) =>
        All.FirstOrDefault(r => r.System == system && r.Kind == kind && r.HoldsAt(offset) && (r.Level ?? level) == level);

    /// <summary>The level whose ratios hold for a wanted channel: the next stronger one, because stronger channels stand less.</summary>
    /// <param name="wantedDbm">Level of the wanted channel at the tuner [dBm].</param>
    /// <returns>Level; strong above -53 dBm.</returns>
    public static DesiredLevel LevelOf(double wantedDbm) => wantedDbm switch
    {
        <= -68 => DesiredLevel.Weak,
        <= -53 => DesiredLevel.Moderate,
        _ => DesiredLevel.Strong,
    };

    private bool HoldsAt(int offset) =>
        Math.Abs(offset) >= Nearest && Math.Abs(offset) <= Farthest && (offset < 0 ? Below : offset == 0 || Above);

    private static DuRatio[] Load() =>
    [
        .. EmbeddedTable.Rows("Reception/du-ratios.csv").Select(r => new DuRatio(
            r["system"], KindIn(r["kind"]), CsvNumber.Whole(r["nearest"]), CsvNumber.Whole(r["farthest"]),
            r["side"] is "both" or "below", r["side"] is "both" or "above", LevelIn(r["level"]), CsvNumber.Of(r["ratio_db"]),
            r["source"], CsvProvenance.Of(r["provenance"]))),
    ];

    private static DuKind KindIn(string cell) => cell switch
    {
        "planning" => DuKind.Planning,
        "receiver" => DuKind.Receiver,
        _ => throw new FormatException($"Unknown kind '{cell}'."),
    };

    private static DesiredLevel? LevelIn(string cell) => cell switch
    {
        "any" => null,
        "weak" => DesiredLevel.Weak,
        "moderate" => DesiredLevel.Moderate,
        "strong" => DesiredLevel.Strong,
        _ => throw new FormatException($"Unknown level '{cell}'."),
    };
}
