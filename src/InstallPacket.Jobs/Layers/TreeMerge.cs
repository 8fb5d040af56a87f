namespace InstallPacket.Jobs.Layers;

/// <summary>Lays one tree over another: the nearer one wins, value by value, and each value keeps its place.</summary>
internal static class TreeMerge
{
    /// <summary>Both trees in one.</summary>
    /// <param name="near">Wins.</param>
    /// <param name="far">Fills what the nearer one does not say. A map with nothing in it says "none" and is not filled.</param>
    /// <param name="twice">Told of each value that both say, with its path; null when nobody asks.</param>
    public static YamlMap Over(YamlMap near, YamlMap far, Action<string, YamlNode, YamlNode>? twice = null) => Over(near, far, "", twice);

    private static YamlMap Over(YamlMap near, YamlMap far, string path, Action<string, YamlNode, YamlNode>? twice)
    {
        var entries = new List<KeyValuePair<YamlScalar, YamlNode>>(near.Entries.Count + far.Entries.Count);
        var others = far.Entries.ToDictionary(e => e.Key.Value, e => e.Value, StringComparer.Ordinal);
        foreach (var (key, value) in near.Entries)
        {
            var full = path.Length == 0 ? key.Value : path + "." + key.Value;
            if (!others.Remove(key.Value, out var other)) entries.Add(new(key, value));
            else if (value is YamlMap { Entries.Count: > 0 } inner && other is YamlMap below) entries.Add(new(key, Over(inner, below, full, twice)));
            else
            {
                twice?.Invoke(full, value, other);
                entries.Add(new(key, value));
            }
        }
        entries.AddRange(far.Entries.Where(e => others.ContainsKey(e.Key.Value)));
        return near with { Entries = entries };
    }
}
