namespace InstallPacket.Jobs.Parts;

/// <summary>All parts that jobs may name.</summary>
public sealed class PartLibrary
{
    private readonly Dictionary<string, Part> _parts = new(StringComparer.Ordinal);

    /// <summary>All parts by name.</summary>
    public IReadOnlyDictionary<string, Part> Parts => _parts;

    /// <summary>The part, or null.</summary>
    public Part? Find(string id) => _parts.GetValueOrDefault(id);

    /// <summary>Adds a part; false when the name is taken.</summary>
    internal bool Add(Part part) => _parts.TryAdd(part.Id, part);
}
