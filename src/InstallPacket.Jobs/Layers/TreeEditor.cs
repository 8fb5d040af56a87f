namespace InstallPacket.Jobs.Layers;

/// <summary>Changes single values of a tree; maps on the way are made where they are missing.</summary>
/// <param name="root">The tree at the beginning.</param>
internal sealed class TreeEditor(YamlMap root)
{
    /// <summary>The tree as it is now.</summary>
    public YamlMap Root { get; private set; } = root;

    /// <summary>The node at a path, or null.</summary>
    public YamlNode? Find(params ReadOnlySpan<string> path)
    {
        YamlNode? node = Root;
        foreach (var key in path) node = Below(node, key);
        return node;
    }

    /// <summary>The node below a key of a map, or null.</summary>
    public static YamlNode? Below(YamlNode? node, string key) => (node as YamlMap)?.Entries.FirstOrDefault(e => e.Key.Value == key).Value;

    /// <summary>Puts a value at a path, in place of one that is there.</summary>
    public void Set(YamlNode value, params ReadOnlySpan<string> path) => Root = Put(Root, path, value);

    /// <summary>Puts a value at a path where nothing is.</summary>
    public void AddIfAbsent(YamlNode value, params ReadOnlySpan<string> path)
    {
        if (Find(path) is null) Set(value, path);
    }

    /// <summary>The tree with a value put in.</summary>
    public YamlMap With(YamlNode value, params ReadOnlySpan<string> path) => Put(Root, path, value);

    /// <summary>Takes a value away.</summary>
    public void Remove(params ReadOnlySpan<string> path)
    {
        if (Find(path) is not null) Root = Put(Root, path, null);
    }

    private static YamlMap Put(YamlMap map, ReadOnlySpan<string> path, YamlNode? value)
    {
        var entries = map.Entries.ToList();
        var name = path[0];
        var at = entries.FindIndex(e => e.Key.Value == name);
        var key = at >= 0 ? entries[at].Key : new YamlScalar(value?.At ?? map.At, name, false);
        YamlNode? next = path.Length == 1 ? value : Put(at >= 0 && entries[at].Value is YamlMap inner ? inner
            : new YamlMap(key.At, []) { Named = key.At }, path[1..], value);
        if (next is null) entries.RemoveAt(at);
        else if (at >= 0) entries[at] = new(key, next);
        else entries.Add(new(key, next));
        return map with { Entries = entries };
    }
}
