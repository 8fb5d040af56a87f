using InstallPacket.Plans;

namespace InstallPacket.Drawings.Cabling.Chain;

/// <summary>A part of the chain with what it feeds; without an element it is an output that feeds nothing, or the line into the second
/// input of a combiner.</summary>
/// <param name="Element">The part, or null.</param>
/// <param name="Port">Output of the feeding part; 0 when it has only one.</param>
/// <param name="Run">The cable that leads to it; null when it is screwed on.</param>
/// <param name="Fed">What it feeds, in the order of drawing.</param>
internal sealed record ChainNode(ElementPlan? Element, int Port, RunPlan? Run, IReadOnlyList<ChainNode> Fed)
{
    /// <summary>The combiner whose second input the line leads to; empty elsewhere. The combiner itself stands in the tree of its first
    /// input.</summary>
    public string Into { get; init; } = "";

    /// <summary>The element at the end of the line that leads here; empty for an open output.</summary>
    public string Id => Element?.Id ?? "";

    /// <summary>The trees from each antenna on, outputs in order.</summary>
    public static IReadOnlyList<ChainNode> Of(SheetPlan plan)
    {
        var fed = plan.Cabling.Elements.ToLookup(e => e.From, StringComparer.Ordinal);
        var joined = plan.Cabling.Elements.Where(e => e.Second.Length > 0).ToLookup(e => e.Second, StringComparer.Ordinal);
        return [.. fed[""].Select(Node)];

        ChainNode Node(ElementPlan e) => new(e, e.FromPort, Run(e.Run),
            [.. fed[e.Id].Select(Node).Concat(joined[e.Id].Select(c =>
                new ChainNode(null, 0, Run(c.SecondRun), []) { Into = c.Id })).Concat(e.OpenPorts.Select(port =>
                new ChainNode(null, port, null, []))).OrderBy(n => n.Port)]);

        RunPlan? Run(string id) => plan.Routing.Runs.FirstOrDefault(r => r.Id == id);
    }

    /// <summary>The same tree with the largest branch of each part last, where the drawing can turn it back to the left.</summary>
    public ChainNode LargestLast()
    {
        var fed = Fed.Select(n => n.LargestLast()).ToArray();
        var largest = fed.AsEnumerable().Reverse().MaxBy(n => n.Count); // among equals the last, which then stays where it is
        return this with { Fed = [.. fed.OrderBy(n => ReferenceEquals(n, largest))] };
    }

    private int Count => 1 + Fed.Sum(n => n.Count);
}
