namespace InstallPacket.Plans.Cabling;

/// <summary>One part that the current of an inserter reaches.</summary>
/// <param name="Element">The part.</param>
/// <param name="Before">The part that it comes from; null for the inserter.</param>
/// <param name="Run">The run between them; null when they are screwed together.</param>
internal sealed record FeedNode(Element Element, FeedNode? Before, string? Run)
{
    /// <summary>Whether the current came through the diode of a steered port of the part before.</summary>
    public bool Steered => Before?.Element.Part.SteersPower == true;

    /// <summary>From the inserter to this part, both included.</summary>
    public IReadOnlyList<FeedNode> Path => Before is null ? [this] : [.. Before.Path, this];
}

/// <summary>All that the current of one power inserter reaches: every port that passes direct current joins what hangs on it.</summary>
internal sealed class FeedNet
{
    private readonly ChainView _chain;
    private readonly HashSet<string> _seen = new(StringComparer.Ordinal);

    /// <summary>Follows the current from an inserter.</summary>
    public FeedNet(ChainView chain, Element inserter)
    {
        (_chain, Inserter) = (chain, inserter);
        _seen.Add(inserter.Id);
        var start = new FeedNode(inserter, null, null);
        Up(start, 1);
        // One that passes power lets its own supply out toward the house as well.
        if (inserter.Part.PassesPower(1) && !inserter.Part.SteersPower) Out(start, from: 0);
    }

    /// <summary>The inserter.</summary>
    public Element Inserter { get; }

    /// <summary>The amplifiers that it feeds.</summary>
    public List<FeedNode> Amplifiers { get; } = [];

    /// <summary>Parts that short it.</summary>
    public List<FeedNode> Shorts { get; } = [];

    /// <summary>Outlets that it comes out of.</summary>
    public List<FeedNode> Outlets { get; } = [];

    // Against the signal: from the input of a part to the output that feeds it.
    private void Up(FeedNode node, int input)
    {
        if (_chain.Feeding(node.Element, input) is not { } feeding || !_seen.Add(feeding.Element.Id)) return;
        var (e, port) = (feeding.Element, feeding.Port);
        var next = new FeedNode(e, node, input == 1 ? node.Element.Run : node.Element.SecondRun);
        if (e.Part is AmplifierPart && e.Part.SupplyV is not null) Amplifiers.Add(next);
        else if (e.Part.ShortsPower) Shorts.Add(next); // and what stands behind it is planned as if it were not there
        // The socket of an outlet that passes power everywhere has it too.
        if (e.Part is OutletPart { PowerPass: PowerPass.Yes }) Outlets.Add(next);
        foreach (var further in Enumerable.Range(1, 2).Where(i => e.Part.PassesPower(port, i))) Up(next, further);
        if (e.Part.PassesPower(port) && !e.Part.SteersPower) Out(next, port);
    }

    // Out of every other port of a part that passes power without a diode.
    private void Out(FeedNode node, int from)
    {
        foreach (var (fed, port, input) in _chain.Feeds(node.Element).Where(f => f.Port != from && node.Element.Part.PassesPower(f.Port)))
            Down(node, fed, input);
    }

    // With the signal: into the input of a part.
    private void Down(FeedNode node, Element e, int input)
    {
        if (!_seen.Add(e.Id)) return;
        var next = new FeedNode(e, node, input == 1 ? e.Run : e.SecondRun);
        if (e.Part is OutletPart)
        {
            if (!e.Part.SaysNoPower) Outlets.Add(next);
        }
        else if (e.Part.ShortsPower) Shorts.Add(next);
        else if (e.Part is not (AmplifierPart or PowerInserterPart) && !e.Part.SteersPower && e.Part.PassesPower(1, input))
        {
            Out(next, from: 0);
            if (e.Part.PassesPower(1, 3 - input)) Up(next, 3 - input);
        }
    }
}
