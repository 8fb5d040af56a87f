namespace InstallPacket.Jobs.Parts;

/// <summary>All parts that jobs may name.</summary>
public sealed class PartLibrary
{
    private readonly Dictionary<string, Part> _parts = new(StringComparer.Ordinal);

    /// <summary>All parts by name.</summary>
    public IReadOnlyDictionary<string, Part> Parts => _parts;

    /// <summary>The part, or null.</summary>
    public Part? Find(string id) => _parts.GetValueOrDefault(id);

    /// <summary>The library with the parts of one job, which go before those of the same name.</summary>
    public PartLibrary With(IReadOnlyList<Part> own)
    {
        if (own.Count == 0) return this;
        var together = new PartLibrary();
        foreach (var part in own) together.Add(part);
        foreach (var part in _parts.Values) together.Add(part);
        return together;
    }

    /// <summary>Adds a part; false when the name is taken.</summary>
    internal bool Add(Part part) => _parts.TryAdd(part.Id, part);
}
