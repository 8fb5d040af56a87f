namespace InstallPacket.Jobs.Parts;

/// <summary>All parts that jobs may name.</summary>
public sealed class PartLibrary
{
    private readonly Dictionary<string, Part> _parts = new(StringComparer.Ordinal);
    private readonly HashSet<string> _broken = new(StringComparer.Ordinal);

    /// <summary>All parts by name.</summary>
    public IReadOnlyDictionary<string, Part> Parts => _parts;

    /// <summary>The part, or null.</summary>
    public Part? Find(string id) => _parts.GetValueOrDefault(id);

    /// <summary>The part of a name, where the reader has made sure that it is there and of that kind.</summary>
    /// <typeparam name="T">The kind of part.</typeparam>
    /// <exception cref="InvalidOperationException">There is none.</exception>
    internal T Get<T>(string id) where T : Part => Find(id) as T ?? throw new InvalidOperationException($"'{id}' is no {typeof(T).Name}.");

    /// <summary>The part that the plan takes for a role: one of the firm's own before a generic one, then the first by name; null when no part has
    /// the role.</summary>
    public Part? Of(PartRole role) => _parts.Values.Where(p => p.Role == role).OrderBy(p => SharedFolder.IsGeneric(p.At.File))
        .ThenBy(p => p.Id, StringComparer.Ordinal).FirstOrDefault();

    /// <summary>The library with the parts of one job, which go before those of the same name.</summary>
    public PartLibrary With(IReadOnlyList<Part> own)
    {
        if (own.Count == 0) return this;
        var together = new PartLibrary();
        foreach (var part in own) together.Add(part);
        foreach (var part in _parts.Values) together.Add(part);
        foreach (var name in _broken) together.Break(name);
        return together;
    }

    /// <summary>Whether the library has an entry of that name whose mistakes kept it from being a part.</summary>
    public bool IsBroken(string id) => _broken.Contains(id) && !_parts.ContainsKey(id);

    /// <summary>Remembers an entry that could not become a part, so that the jobs that name it can say why.</summary>
    internal void Break(string id) => _broken.Add(id);

    /// <summary>Takes out a part that names what is not there.</summary>
    internal void TakeOut(Part part)
    {
        _parts.Remove(part.Id);
        Break(part.Id);
    }

    /// <summary>Adds a part; false when the name is taken.</summary>
    internal bool Add(Part part) => _parts.TryAdd(part.Id, part);
}
