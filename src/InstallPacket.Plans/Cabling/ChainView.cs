using InstallPacket.Jobs;

namespace InstallPacket.Plans;

/// <summary>The chain as a tree: who feeds whom.</summary>
internal sealed class ChainView(CablingSection cabling)
{
    private readonly Dictionary<string, Element> _byId = cabling.Chain.ToDictionary(e => e.Id, StringComparer.Ordinal);

    /// <summary>The antenna.</summary>
    public Element Root => cabling.Chain.First(e => e.Part.Kind == "antenna");

    /// <summary>The outlets in the order of the job.</summary>
    public IEnumerable<Element> Outlets => cabling.Chain.Where(e => e.Part.Kind == "outlet");

    /// <summary>The elements from the antenna to this one, both included.</summary>
    public IReadOnlyList<Element> PathTo(Element e)
    {
        var path = new List<Element> { e };
        while (path[^1].From is { } from) path.Add(_byId[from]);
        path.Reverse();
        return path;
    }

    /// <summary>What an element feeds.</summary>
    public IEnumerable<Element> FedBy(Element e) => cabling.Chain.Where(c => c.From == e.Id);

    /// <summary>All elements in the order of the signal: each before what it feeds.</summary>
    public IReadOnlyList<Element> InOrder()
    {
        var order = new List<Element>();
        void Visit(Element e)
        {
            order.Add(e);
            foreach (var next in FedBy(e).OrderBy(n => n.FromPort)) Visit(next);
        }
        Visit(Root);
        return order;
    }
}
