namespace InstallPacket.Jobs.Layers;

/// <summary>Spells out elements of the chain: an outlet in one word, a run written where it ends, ends and places that follow from it.</summary>
/// <param name="findings">Receives what cannot be spelled out.</param>
internal sealed class ChainForms(FindingList findings)
{
    private const string Cabling = "cabling";
    private const string Routing = "routing";

    /// <summary>Changes the tree.</summary>
    public void Spell(TreeEditor tree)
    {
        if (tree.Find(Cabling, CablingKeys.Chain.Name) is not YamlMap chain) return;
        var part = tree.Find(Cabling, CablingKeys.Outlet.Name);
        foreach (var (name, node) in chain.Entries)
        {
            if (node is not YamlMap element) continue;
            Outlet(tree, name, element, part);
            Run(tree, name, element, ElementKeys.Run.Name, name.Value);
            Run(tree, name, element, ElementKeys.SecondRun.Name, name.Value + "-second");
        }
        Places(tree, [.. chain.Entries.Where(e => e.Value is YamlMap).Select(e => e.Key)]);
        Cables(tree);
        Ends(tree, [.. chain.Entries.Where(e => e.Value is YamlMap).Select(e => e.Key.Value)]);
    }

    private static void Outlet(TreeEditor tree, YamlScalar name, YamlMap element, YamlNode? part)
    {
        if (TreeEditor.Below(element, ElementKeys.Outlet.Name) is not YamlScalar room) return;
        tree.Remove(Cabling, CablingKeys.Chain.Name, name.Value, ElementKeys.Outlet.Name);
        tree.AddIfAbsent(room, Cabling, CablingKeys.Chain.Name, name.Value, ElementKeys.Serves.Name);
        if (part is not null) tree.AddIfAbsent(part, Cabling, CablingKeys.Chain.Name, name.Value, ElementKeys.Part.Name);
    }

    // A run that is written where it ends is a run like the others, called like the element that it feeds.
    private void Run(TreeEditor tree, YamlScalar name, YamlMap element, string key, string called)
    {
        if (TreeEditor.Below(element, key) is not YamlMap run) return;
        if (tree.Find(Routing, RoutingKeys.Runs.Name, called) is { } other)
            findings.Add(Severity.Stop, "run-written-twice", run.Named, ("run", called), ("place", other.At.ToString()));
        tree.Set(new YamlScalar(run.Named, called, false), Cabling, CablingKeys.Chain.Name, name.Value, key);
        tree.AddIfAbsent(run, Routing, RoutingKeys.Runs.Name, called);
    }

    // What is screwed on sits where its feeder sits; what a run of known length feeds sits where nobody measured.
    private static void Places(TreeEditor tree, YamlScalar[] names)
    {
        foreach (var name in names)
        {
            if (Of(tree, name.Value, ElementKeys.At.Name) is not null) continue;
            if (Of(tree, name.Value, ElementKeys.Run.Name) is not YamlScalar run)
            {
                if (At(tree, Feeder(tree, name.Value, ElementKeys.From.Name)) is { } place)
                    tree.Set(place with { At = name.At }, Cabling, CablingKeys.Chain.Name, name.Value, ElementKeys.At.Name);
            }
            else if (tree.Find(Routing, RoutingKeys.Runs.Name, run.Value, RunKeys.Length.Name) is not null)
            {
                tree.Set(new YamlScalar(name.At, name.Value, false), Cabling, CablingKeys.Chain.Name, name.Value, ElementKeys.At.Name);
                YamlMap room = Of(tree, name.Value, ElementKeys.Serves.Name) is { } serves
                    ? new(name.At, [new(new(name.At, PlaceKeys.Room.Name, false), serves)]) : new(name.At, []);
                tree.AddIfAbsent(room, Routing, RoutingKeys.Places.Name, name.Value);
            }
        }
    }

    private static void Cables(TreeEditor tree)
    {
        if (tree.Find(Routing, RoutingKeys.Runs.Name) is not YamlMap runs) return;
        foreach (var (name, run) in runs.Entries)
        {
            // What lies in the wall already is not what the firm lays.
            var usual = TreeEditor.Below(run, RunKeys.Existing.Name) is YamlScalar { Value: "yes" } ? CablingKeys.OldCable : CablingKeys.Cable;
            if (run is YamlMap && tree.Find(Cabling, usual.Name) is { } cable)
                tree.AddIfAbsent(cable, Routing, RoutingKeys.Runs.Name, name.Value, RunKeys.Cable.Name);
        }
    }

    // A run of known length leads from part to part, and an existing one that does not say otherwise lies in the wall.
    private static void Ends(TreeEditor tree, string[] names)
    {
        foreach (var name in names)
        {
            End(tree, name, ElementKeys.Run.Name, ElementKeys.From.Name);
            End(tree, name, ElementKeys.SecondRun.Name, ElementKeys.Second.Name);
        }
    }

    private static void End(TreeEditor tree, string name, string key, string feed)
    {
        if (Of(tree, name, key) is not YamlScalar called || tree.Find(Routing, RoutingKeys.Runs.Name, called.Value) is not YamlMap run) return;
        if (TreeEditor.Below(run, RunKeys.Length.Name) is { } length && At(tree, Feeder(tree, name, feed)) is { } start && At(tree, name) is { } end)
            tree.AddIfAbsent(new YamlList(length.At, [start with { At = length.At }, end with { At = length.At }]), Routing, RoutingKeys.Runs.Name,
                called.Value, RunKeys.Path.Name);
        if (TreeEditor.Below(run, RunKeys.Existing.Name) is YamlScalar { Value: "yes" } existing)
            tree.AddIfAbsent(existing with { Value = Word.Of(CableWay.Wall) }, Routing, RoutingKeys.Runs.Name, called.Value, RunKeys.Way.Name);
    }

    private static string? Feeder(TreeEditor tree, string name, string key) =>
        Of(tree, name, key) is YamlScalar from ? ElementName.Split(from.Value).Name : null;

    private static YamlScalar? At(TreeEditor tree, string? element) => element is null ? null : Of(tree, element, ElementKeys.At.Name) as YamlScalar;

    private static YamlNode? Of(TreeEditor tree, string element, string key) => tree.Find(Cabling, CablingKeys.Chain.Name, element, key);
}
