namespace InstallPacket.Jobs.Layers;

/// <summary>
/// Gives other names to the things of a tree: elements, runs and points where they are named and wherever they are asked for. What a scalar
/// asks for is read from the key catalogue, so that words which happen to be alike stay as they are.
/// </summary>
/// <param name="element">The new name of an element, without its output; the same when it keeps it.</param>
/// <param name="run">The new name of a run.</param>
/// <param name="point">The new name of a point.</param>
/// <param name="definitions">Whether the names by which the things are defined change too, and not only what asks for them.</param>
internal sealed class KitNames(Func<string, string> element, Func<string, string> run, Func<string, string> point, bool definitions = true)
{
    /// <summary>The tree with the new names.</summary>
    public YamlMap In(YamlMap map, GroupKind kind) => map with
    {
        Entries = [.. map.Entries.Select(e => new KeyValuePair<YamlScalar, YamlNode>(e.Key,
            kind.Keys.FirstOrDefault(k => k.Name == e.Key.Value) is { } key ? In(e.Value, key.Kind) : e.Value))],
    };

    private YamlNode In(YamlNode node, KeyKind kind) => (node, kind) switch
    {
        (YamlMap map, GroupKind group) => In(map, group),
        (_, IShortKind spelled) => In(node, node is YamlMap == spelled.Other is GroupKind ? spelled.Other : spelled.Full),
        (YamlMap map, IMapKind named) => map with
        {
            Entries = [.. map.Entries.Select(e => new KeyValuePair<YamlScalar, YamlNode>(Named(e.Key, named.What), In(e.Value, named.Item)))],
        },
        (YamlList list, IListKind items) => list with { Items = [.. list.Items.Select(i => In(i, items.Item))] },
        (YamlScalar name, ReferenceKind reference) => name with { Value = Asked(name.Value, reference.Target) },
        _ => node,
    };

    private YamlScalar Named(YamlScalar key, string what) => key with
    {
        Value = !definitions ? key.Value : what switch { "element" => element(key.Value), "run" => run(key.Value), "point" => point(key.Value), _ => key.Value },
    };

    private string Asked(string name, ReferenceTarget target) => target switch
    {
        ReferenceTarget.Element => name.IndexOf('.') is >= 0 and var dot ? element(name[..dot]) + name[dot..] : element(name),
        ReferenceTarget.Run => run(name),
        ReferenceTarget.Point => point(name),
        _ => name,
    };
}
