using InstallPacket.Plans;

namespace InstallPacket.Drawings.Cabling.Chain;

/// <summary>A part in its place.</summary>
/// <param name="Node">The part.</param>
/// <param name="Size">Its words.</param>
/// <param name="Box">Its ground; a part with several outputs reaches down to the last of them.</param>
/// <param name="LineY">Height of the line that leads to it.</param>
/// <param name="Exits">Heights at which its lines leave, in the order of what it feeds.</param>
internal sealed record ChainPlace(ChainNode Node, ChainSize Size, PaperBox Box, double LineY, IReadOnlyList<double> Exits);

/// <summary>A line between two parts; its last stretch carries the label.</summary>
/// <param name="To">The part that it leads to.</param>
/// <param name="Points">From the feeding part on.</param>
internal sealed record ChainLink(ChainNode To, IReadOnlyList<PaperPoint> Points);

/// <summary>
/// Lays the tree out from left to right, one row for each output. What does not fit beside the last part of a row turns back below
/// it, as words do; only the last branch of a part may, for the others have rows of their own below them.
/// </summary>
internal sealed class ChainLayout
{
    // Room for the sign of an antenna above its box.
    private const double SignMm = 6;
    private const double GapMm = 1;
    private const double TurnMm = 2.5;
    private const double LaneMm = 1.5;
    private const double IndentMm = 2;
    private const double ExitMm = 2.2;

    private readonly Dictionary<ChainNode, ChainSize> _sizes = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<ChainNode, double> _linkMm = new(ReferenceEqualityComparer.Instance);
    private readonly List<ChainPlace> _places = [];
    private readonly List<ChainLink> _links = [];
    private readonly double _right;

    private ChainLayout(IReadOnlyList<ChainNode> roots, double right, Func<ChainNode, ChainSize> size)
    {
        foreach (var root in roots) Measure(root);
        _right = right;

        void Measure(ChainNode node)
        {
            _sizes[node] = size(node);
            foreach (var next in node.Fed) Measure(next);
            // What hangs on one part stands in one column.
            foreach (var next in node.Fed) _linkMm[next] = node.Fed.Max(n => _sizes[n].LinkMm);
        }
    }

    public IReadOnlyList<ChainPlace> Places => _places;

    public IReadOnlyList<ChainLink> Links => _links;

    /// <summary>Lower edge of everything.</summary>
    public double Bottom { get; private set; }

    /// <summary>Right edge of the sheet's ground; beyond the one asked for when a branch needs more.</summary>
    public double Right => _right;

    /// <summary>Lays trees out below each other, in the ground from a corner to a right edge, which moves out only when nothing else
    /// helps.</summary>
    /// <param name="roots">The antennas.</param>
    /// <param name="corner">Upper left corner of the ground, below the sign of the first antenna.</param>
    /// <param name="right">Its right edge.</param>
    /// <param name="size">The room that a part needs.</param>
    public static ChainLayout Of(IReadOnlyList<ChainNode> roots, PaperPoint corner, double right, Func<ChainNode, ChainSize> size)
    {
        if (corner.X + new ChainLayout(roots, right, size).Needed(roots) > right) roots = [.. roots.Select(r => r.LargestLast())];
        var layout = new ChainLayout(roots, Math.Max(right, corner.X + new ChainLayout(roots, right, size).Needed(roots)), size);
        layout.Bottom = corner.Y - SignMm;
        foreach (var root in roots)
        {
            var top = layout.Bottom + SignMm;
            layout.Bottom = layout.Place(root, corner.X, top + ChainSize.LineMm, new(corner.X, top));
        }
        return layout;
    }

    private double Needed(IReadOnlyList<ChainNode> roots) => roots.Max(Inside);

    private double Link(ChainNode node) => _linkMm.GetValueOrDefault(node);

    // Room right of the left edge of a part, when all that can turn back does.
    private double Need(ChainNode node) => _sizes[node].WidthMm + (node.Fed.Count == 0 ? 0
        : node.Fed.SkipLast(1).Select(n => IndentMm + Inside(n)).Append(TurnMm + 0.5).Max());

    // Room right of the start of a row, for a part and all that follows it in turned rows.
    private double Inside(ChainNode node)
    {
        var widest = 0.0;
        for (var at = node; at is not null; at = at.Fed.Count > 0 ? at.Fed[^1] : null) widest = Math.Max(widest, Link(at) + Need(at));
        return widest;
    }

    /// <summary>Where a row may turn back to.</summary>
    /// <param name="Left">Its left edge.</param>
    /// <param name="Bottom">Lower edge of what stands on it so far.</param>
    private readonly record struct Row(double Left, double Bottom);

    // Places a part and all that it feeds; gives the lower edge of them.
    private double Place(ChainNode node, double x, double lineY, Row row)
    {
        var size = _sizes[node];
        var (right, boxBottom, below) = (x + size.WidthMm, lineY - ChainSize.LineMm + size.HeightMm, double.NegativeInfinity);
        var exits = new List<double>();
        for (var i = 0; i < node.Fed.Count; i++)
        {
            var next = node.Fed[i];
            var last = i == node.Fed.Count - 1;
            var turns = last && right + Link(next) + Need(next) > _right;
            var exit = i == 0 ? lineY : below + GapMm + (turns ? ExitMm : ChainSize.LineMm);
            exits.Add(exit);
            boxBottom = Math.Max(boxBottom, exit + ExitMm);
            var onRow = row with { Bottom = Math.Max(row.Bottom, Math.Max(boxBottom, below)) };
            below = Math.Max(below, turns ? Turn(next, new(right, exit), onRow)
                : Straight(next, new(right, exit), last ? onRow : new(right + IndentMm, exit)));
        }
        _places.Add(new(node, size, new(x, lineY - ChainSize.LineMm, right, boxBottom), lineY, exits));
        return Math.Max(boxBottom, below);
    }

    private double Straight(ChainNode next, PaperPoint exit, Row row)
    {
        _links.Add(new(next, [exit, exit with { X = exit.X + Link(next) }]));
        return Place(next, exit.X + Link(next), exit.Y, row);
    }

    private double Turn(ChainNode next, PaperPoint exit, Row row)
    {
        var lane = row.Bottom + LaneMm;
        var lineY = lane + LaneMm + ChainSize.LineMm;
        var turn = exit.X + TurnMm;
        _links.Add(new(next,
            [exit, exit with { X = turn }, new(turn, lane), new(row.Left, lane), new(row.Left, lineY), new(row.Left + Link(next), lineY)]));
        return Place(next, row.Left + Link(next), lineY, row with { Bottom = lineY });
    }
}
