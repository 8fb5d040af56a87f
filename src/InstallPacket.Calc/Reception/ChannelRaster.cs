using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>One television channel. A channel is a plan and a number, never a number alone.</summary>
/// <param name="Plan">Short name of the raster, for example <c>us-6</c>.</param>
/// <param name="Number">Channel number in that plan.</param>
/// <param name="Band">Band, for example <c>UHF</c>.</param>
/// <param name="LowerMHz">Lower edge [MHz].</param>
/// <param name="CentreMHz">Centre [MHz].</param>
/// <param name="UpperMHz">Upper edge [MHz].</param>
/// <param name="WidthMHz">Width [MHz].</param>
public sealed record TvChannel(string Plan, int Number, string Band, double LowerMHz, double CentreMHz, double UpperMHz, double WidthMHz)
{
    /// <summary>How the frequencies are known.</summary>
    public Provenance Provenance { get; init; }
}

/// <summary>The channel rasters: <c>us-6</c>, <c>eu-7</c> (VHF III), <c>eu-8</c> (UHF), <c>au-7</c>, <c>jp-6</c>, <c>br-6</c>.</summary>
public static class ChannelRaster
{
    private static readonly Lazy<IReadOnlyList<TvChannel>> Loaded = new(Load);

    /// <summary>The centre of an American UHF channel, as an example of the raster rules.</summary>
    public static readonly Formula CentreFormula = new(
        "channel-centre",
        "Centre frequency of a channel",
        "f = table of the channel plan (us-6, n >= 14: 473 + 6 (n - 14); eu-8: 306 + 8 n; eu-7: 177.5 + 7 (n - 5))",
        new("f", "MHz", "centre frequency"), [new("n", "", "channel number in its plan")],
        "cfr-73-603", "paragraph (a), channel table; European plan by its listed centres");

    /// <summary>All channels, by plan and number.</summary>
    public static IReadOnlyList<TvChannel> All => Loaded.Value;

    /// <summary>The channel of a plan.</summary>
    /// <param name="plan">Short name of the plan.</param>
    /// <param name="channel">Number in it.</param>
    /// <returns>The channel, or null when the plan has no such number.</returns>
    public static TvChannel? Find(string plan, int channel) => All.FirstOrDefault(c => c.Number == channel && c.Plan == plan);

    /// <summary>Whether two channels touch: the American 4 and 5, 6 and 7, 13 and 14 do not.</summary>
    /// <param name="a">One channel.</param>
    /// <param name="b">The other.</param>
    /// <returns>True when an edge of one is an edge of the other.</returns>
    public static bool AreNeighbours(TvChannel a, TvChannel b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        return Math.Abs(a.UpperMHz - b.LowerMHz) < 1e-6 || Math.Abs(b.UpperMHz - a.LowerMHz) < 1e-6;
    }

    /// <summary>How many channels one lies above another, counted by frequency: across a gap in the raster there is no such
    /// number.</summary>
    /// <param name="wanted">The channel counted from.</param>
    /// <param name="other">The other one.</param>
    /// <returns>Channels, negative below, 0 for the same frequency; null when the widths differ or the distance is not a whole number of
    /// channels.</returns>
    public static int? Offset(TvChannel wanted, TvChannel other)
    {
        ArgumentNullException.ThrowIfNull(wanted);
        ArgumentNullException.ThrowIfNull(other);
        if (Math.Abs(wanted.WidthMHz - other.WidthMHz) > 1e-6) return null;
        var channels = (other.CentreMHz - wanted.CentreMHz) / wanted.WidthMHz;
        var whole = Math.Round(channels);
        // Services that sit an eighth or a seventh of a megahertz beside the raster still count as their channel.
        return Math.Abs(channels - whole) * wanted.WidthMHz < 0.2 ? (int)whole : null;
    }

    private static TvChannel[] Load() =>
    [
        .. EmbeddedTable.Rows("Reception/channels.csv").Select(r => new TvChannel(
            r["plan"], CsvNumber.Whole(r["channel"]), r["band"], CsvNumber.Of(r["lower_mhz"]),
            CsvNumber.Of(r["centre_mhz"]), CsvNumber.Of(r["upper_mhz"]), CsvNumber.Of(r["width_mhz"]))
        { Provenance = CsvProvenance.Of(r["provenance"]) }),
    ];
}
