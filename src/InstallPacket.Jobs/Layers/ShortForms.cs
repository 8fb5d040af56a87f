namespace InstallPacket.Jobs.Layers;

/// <summary>
/// Spells out what a job may say shorter, so that everything behind the reader knows one form: a place on one line, a run written where it
/// ends, an outlet by its room, a box of a house, places on its walls in words.
/// </summary>
/// <param name="findings">Receives what cannot be spelled out.</param>
internal sealed class ShortForms(FindingList findings)
{
    /// <summary>The tree in full.</summary>
    public YamlMap Spell(YamlMap job)
    {
        var tree = new TreeEditor(job);
        Place(tree);
        Elements(tree);
        new HouseForms(findings).Spell(tree);
        return tree.Root;
    }

    // "44.29 N, 71.61 W"
    private static void Place(TreeEditor tree)
    {
        if (tree.Find("siting", SitingKeys.Place.Name) is not YamlScalar place) return;
        var comma = place.Value.IndexOf(',', StringComparison.Ordinal);
        var (latitude, longitude) = comma < 0 ? (place.Value, "") : (place.Value[..comma].Trim(), place.Value[(comma + 1)..].Trim());
        tree.Remove("siting", SitingKeys.Place.Name);
        tree.AddIfAbsent(place with { Value = latitude, Quoted = false }, "siting", SitingKeys.Latitude.Name);
        tree.AddIfAbsent(place with { Value = longitude, Quoted = false }, "siting", SitingKeys.Longitude.Name);
    }

    private void Elements(TreeEditor tree)
    {
        if (tree.Find("cabling", CablingKeys.Chain.Name) is not YamlMap chain) return;
        var part = tree.Find("cabling", CablingKeys.Outlet.Name);
        foreach (var (name, node) in chain.Entries)
        {
            if (node is not YamlMap element) continue;
            Outlet(tree, name, element, part);
            Run(tree, name, element, ElementKeys.Run.Name, name.Value);
            Run(tree, name, element, ElementKeys.SecondRun.Name, name.Value + "-second");
        }
    }

    private static void Outlet(TreeEditor tree, YamlScalar name, YamlMap element, YamlNode? part)
    {
        if (TreeEditor.Below(element, ElementKeys.Outlet.Name) is not YamlScalar room) return;
        tree.Remove("cabling", CablingKeys.Chain.Name, name.Value, ElementKeys.Outlet.Name);
        tree.AddIfAbsent(room, "cabling", CablingKeys.Chain.Name, name.Value, ElementKeys.Serves.Name);
        if (part is not null) tree.AddIfAbsent(part, "cabling", CablingKeys.Chain.Name, name.Value, ElementKeys.Part.Name);
    }

    // A run that is written where it ends is a run like the others, called like the element that it feeds.
    private void Run(TreeEditor tree, YamlScalar name, YamlMap element, string key, string called)
    {
        if (TreeEditor.Below(element, key) is not YamlMap run) return;
        if (tree.Find("routing", RoutingKeys.Runs.Name, called) is { } other)
            findings.Add(Severity.Stop, "run-written-twice", run.Named, ("run", called), ("place", other.At.ToString()));
        tree.Set(new YamlScalar(run.Named, called, false), "cabling", CablingKeys.Chain.Name, name.Value, key);
        tree.AddIfAbsent(run with { Named = run.Named }, "routing", RoutingKeys.Runs.Name, called);
    }
}
