namespace InstallPacket.Plans.Cabling;

/// <summary>The chain as a tree: who feeds whom.</summary>
internal sealed class ChainView(CablingSection cabling)
{
    private readonly Dictionary<string, Element> _byId = cabling.Chain.ToDictionary(e => e.Id, StringComparer.Ordinal);

    // Without a second input anywhere the way is the same at every frequency.
    private readonly bool _oneWay = cabling.Chain.All(e => e.Second is null);
    private readonly Dictionary<(string Id, double? FrequencyMHz), IReadOnlyList<Element>> _paths = [];

    /// <summary>The first antenna: the one at the first inputs.</summary>
    public Element Root => PathTo(Outlets.FirstOrDefault() ?? cabling.Chain[0])[0];

    /// <summary>All antennas in the order of the job.</summary>
    public IEnumerable<Element> Antennas => cabling.Chain.Where(e => e.Part is AntennaPart);

    /// <summary>The outlets in the order of the job.</summary>
    public IEnumerable<Element> Outlets => cabling.Chain.Where(e => e.Part is OutletPart);

    /// <summary>The antenna that serves a frequency.</summary>
    public Element AntennaFor(double frequencyMHz) => PathTo(Outlets.FirstOrDefault() ?? cabling.Chain[0], frequencyMHz)[0];

    /// <summary>Whether the signal of a frequency [MHz] goes through an element on its way from the antenna that serves it.</summary>
    public bool Passes(Element element, double frequencyMHz) => PathTo(element, frequencyMHz)[0] == AntennaFor(frequencyMHz);

    /// <summary>The elements from the antenna to this one, both included.</summary>
    /// <param name="e">The element.</param>
    /// <param name="frequencyMHz">At a combiner the way leads through the input whose band holds this frequency; without one, through the
    /// first input.</param>
    public IReadOnlyList<Element> PathTo(Element e, double? frequencyMHz = null)
    {
        if (_oneWay) frequencyMHz = null;
        if (!_paths.TryGetValue((e.Id, frequencyMHz), out var path)) _paths.Add((e.Id, frequencyMHz), path = Way(e, frequencyMHz));
        return path;
    }

    private List<Element> Way(Element e, double? frequencyMHz)
    {
        var path = new List<Element> { e };
        while (Feeder(path[^1], frequencyMHz) is { } from) path.Add(_byId[from]);
        path.Reverse();
        return path;
    }

    /// <summary>What an element feeds.</summary>
    public IEnumerable<Element> FedBy(Element e) => cabling.Chain.Where(c => c.From == e.Id || c.Second == e.Id);

    /// <summary>What an element feeds, with the output of its own and the input of the other; a combiner has two.</summary>
    public IEnumerable<(Element Element, int Port, int Input)> Feeds(Element e) =>
        cabling.Chain.Where(c => c.From == e.Id).Select(c => (c, c.FromPort, 1))
            .Concat(cabling.Chain.Where(c => c.Second == e.Id).Select(c => (c, c.SecondPort, 2)));

    /// <summary>What feeds an input of an element, with its output; null where nothing does.</summary>
    public (Element Element, int Port)? Feeding(Element e, int input) => (input == 1 ? e.From : e.Second) is { } from
        ? (_byId[from], input == 1 ? e.FromPort : e.SecondPort) : null;

    /// <summary>All elements in the order of the signal: each before what it feeds; antennas one after the other.</summary>
    public IReadOnlyList<Element> InOrder()
    {
        var order = new List<Element>();
        foreach (var antenna in Antennas) Visit(antenna);
        return order;

        // A combiner stands behind both of its branches.
        void Visit(Element e)
        {
            if (order.Contains(e)) return;
            if (e.Second is not null && !(order.Contains(_byId[e.Second]) && order.Contains(_byId[e.From!]))) return;
            order.Add(e);
            foreach (var next in FedBy(e).OrderBy(n => n.FromPort)) Visit(next);
        }
    }

    private static string? Feeder(Element e, double? frequencyMHz) =>
        e is { Second: not null, Part: CombinerPart combiner } && frequencyMHz is { } f && !Holds(combiner.FromMHz, combiner.ToMHz, f)
        && Holds(combiner.SecondFromMHz, combiner.SecondToMHz, f) ? e.Second : e.From;

    private static bool Holds(double? fromMHz, double? toMHz, double frequencyMHz) => frequencyMHz >= (fromMHz ?? 0)
        && frequencyMHz <= (toMHz ?? double.PositiveInfinity);
}
