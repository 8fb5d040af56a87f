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
        Want(tree);
        new HouseForms(findings).Spell(tree);
        MountForms.Spell(tree);
        new ChainForms(findings).Spell(tree);
        return tree.Root;
    }

    // One wish is a list of one.
    private static void Want(TreeEditor tree)
    {
        if (tree.Find(JobKeys.Reception.Name, ReceptionKeys.Want.Name) is YamlScalar wish)
            tree.Set(new YamlList(wish.At, [wish]), JobKeys.Reception.Name, ReceptionKeys.Want.Name);
    }

    // "44.29 N, 71.61 W"
    private static void Place(TreeEditor tree)
    {
        if (tree.Find("siting", SitingKeys.Place.Name) is not YamlScalar place) return;
        var comma = place.Value.IndexOf(',', StringComparison.Ordinal);
        if (comma < 0 && Cut(tree, place) is { } rest) place = place with { Value = $"{place.Value}, {rest}" };
        comma = place.Value.IndexOf(',', StringComparison.Ordinal);
        var (latitude, longitude) = comma < 0 ? (place.Value, "") : (place.Value[..comma].Trim(), place.Value[(comma + 1)..].Trim());
        tree.Remove("siting", SitingKeys.Place.Name);
        tree.AddIfAbsent(place with { Value = latitude, Quoted = false }, "siting", SitingKeys.Latitude.Name);
        tree.AddIfAbsent(place with { Value = longitude, Quoted = false }, "siting", SitingKeys.Longitude.Name);
    }

    // Without quotes a comma between brackets makes a key of the rest, which is told; that there is no longitude is not told as well.
    private static string? Cut(TreeEditor tree, YamlScalar place) => tree.Find("siting") is not YamlMap siting ? null
        : siting.Entries.SkipWhile(e => e.Value != place).Skip(1).Take(1)
            .Where(e => e.Value is YamlScalar { Value: "", Quoted: false } && e.Key.Value.AsSpan().IndexOfAnyInRange('0', '9') == 0)
            .Select(e => e.Key.Value).FirstOrDefault();
}
