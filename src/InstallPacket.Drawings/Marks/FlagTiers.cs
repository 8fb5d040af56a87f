namespace InstallPacket.Drawings.Marks;

/// <summary>
/// Labels in one or more tiers above a chart, each with a leader to its point. Everything keeps the order of the points from left to
/// right, also where the leader of a higher tier passes a lower one: so no leader crosses another or a label.
/// </summary>
internal sealed class FlagTiers
{
    /// <summary>So many always find room on a sheet of 150 mm.</summary>
    public const int Most = 24;

    private const double SizeMm = 3.2;
    private const double LeadMm = 3.9;
    private const double NameMm = 34;
    private const double FactMm = 46;
    private const double GapMm = 2.4;
    private const double FanMm = 5;
    private const double BetweenMm = 3.4;

    // The ground that a passing leader takes in a tier.
    private const double SlotMm = 0.4;

    private readonly Placed[] _flags;
    private readonly double[] _heights;

    private sealed record Placed(Flag Flag, IReadOnlyList<string> Lines, int Names, double WidthMm, int Tier)
    {
        /// <summary>Where the leader meets each tier, from the chart upwards; the last one is the label's own.</summary>
        public List<double> Way { get; } = [];

        public double Left { get; set; }
    }

    private FlagTiers(Placed[] flags, double[] heights) => (_flags, _heights) = (flags, heights);

    /// <summary>Height that labels and leaders take above the chart.</summary>
    public double HeightMm => _flags.Length == 0 ? 0 : _heights.Sum() + (_heights.Length - 1) * BetweenMm + FanMm;

    /// <summary>Places labels between two edges.</summary>
    /// <param name="flags">At most <see cref="Most"/>.</param>
    /// <param name="left">Left edge.</param>
    /// <param name="right">Right edge.</param>
    /// <param name="measure">Widths of words.</param>
    public static FlagTiers Of(IReadOnlyList<Flag> flags, double left, double right, ITextMeasure measure)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(flags.Count, Most);
        var order = flags.Select((f, i) => (Flag: f, i)).OrderBy(p => p.Flag.At.X).ThenBy(p => p.i).Select(p =>
            Wrapped(p.Flag, measure)).ToArray();
        var tiers = 1;
        while (tiers < order.Length && !Fit(order, tiers, right - left)) tiers++;
        var placed = order.Select((f, i) => f with { Tier = i % tiers }).ToArray();
        for (var t = 0; t < tiers; t++) Pack(placed, t, left, right);
        return new(placed,
            [.. Enumerable.Range(0, tiers).Select(t =>
            placed.Where(f => f.Tier == t).Select(f => f.Lines.Count * LeadMm).DefaultIfEmpty(0).Max())]);
    }

    /// <summary>Draws labels and leaders above the upper edge of the chart.</summary>
    public void Draw(SheetCanvas canvas, double chartTop)
    {
        foreach (var flag in _flags) canvas.Line(new(Ink.Faint, 0.25), [.. Leader(flag, chartTop)]);
        foreach (var flag in _flags)
        {
            var top = Bottom(flag.Tier, chartTop) - flag.Lines.Count * LeadMm;
            for (var i = 0; i < flag.Lines.Count; i++)
                canvas.Text(new(new(flag.Left, top + i * LeadMm + 2.7), flag.Lines[i], SizeMm, flag.Flag.Ink, Strong: flag.Flag.Strong
                    && i < flag.Names));
        }
    }

    private static Placed Wrapped(Flag flag, ITextMeasure measure)
    {
        var name = TextWrap.Lines(flag.Name, SizeMm, flag.Strong, NameMm, 2, measure);
        var facts = flag.Facts.SelectMany(f => TextWrap.Lines(f, SizeMm, false, FactMm, 1, measure)).ToArray();
        var width = name.Select(n => measure.WidthMm(n, SizeMm, flag.Strong)).Concat(facts.Select(f => measure.WidthMm(f, SizeMm))).Max();
        return new(flag, [.. name, .. facts], name.Count, width, 0);
    }

    private static bool Fit(Placed[] flags, int tiers, double room) => Enumerable.Range(0, tiers).All(t =>
        flags.Select((f, i) => (Tier: i % tiers, f.WidthMm)).Where(f => f.Tier >= t).Sum(f => (f.Tier == t ? f.WidthMm : SlotMm)
            + GapMm) <= room + GapMm);

    // Labels of this tier and the leaders that pass it, each as near to where it comes from as its neighbours let it.
    private static void Pack(Placed[] flags, int tier, double left, double right)
    {
        var here = flags.Where(f => f.Tier >= tier).ToArray();
        double Width(Placed f) => f.Tier == tier ? f.WidthMm : SlotMm;
        var edges = ColumnStack.Tops([.. here.Select(f => (f.Way.Count == 0 ? f.Flag.At.X : f.Way[^1], Width(f)))], GapMm, left, right
            + GapMm);
        for (var i = 0; i < here.Length; i++)
        {
            var from = here[i].Way.Count == 0 ? here[i].Flag.At.X : here[i].Way[^1];
            here[i].Left = edges[i];
            // A leader meets its label where it comes from, if the label reaches so far.
            var inset = Math.Min(1, 0.4 * Width(here[i]));
            here[i].Way.Add(Math.Clamp(from, edges[i] + inset, edges[i] + Width(here[i]) - inset));
        }
    }

    private IEnumerable<PaperPoint> Leader(Placed flag, double chartTop)
    {
        yield return flag.Flag.At;
        yield return flag.Flag.At with { Y = chartTop };
        for (var t = 0; t <= flag.Tier; t++)
        {
            yield return new(flag.Way[t], Bottom(t, chartTop) + 0.6);
            if (t < flag.Tier) yield return new(flag.Way[t], Bottom(t, chartTop) - _heights[t]);
        }
    }

    private double Bottom(int tier, double chartTop) => chartTop - FanMm - _heights.Take(tier).Sum() - tier * BetweenMm;
}
