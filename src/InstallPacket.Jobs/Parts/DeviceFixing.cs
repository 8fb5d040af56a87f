namespace InstallPacket.Jobs.Parts;

/// <summary>What a device is fixed to its place with; it takes no part in the check of the mount.</summary>
public sealed record DeviceFixing
{
    internal DeviceFixing(CheckedGroup g)
    {
        Part = g.Get(DeviceFixingKeys.Part);
        Count = g.Get(DeviceFixingKeys.Count);
    }

    /// <summary>Name of the fixing in the library.</summary>
    public string Part { get; init; }

    /// <summary>How many.</summary>
    public int Count { get; init; }
}

/// <summary>The keys of a device's fixings.</summary>
internal static class DeviceFixingKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<string> Part = Keys.Required(
        "part", new ReferenceKind(ReferenceTarget.Part, PartKind.Fixing), "The fixing.");

    public static readonly Key<int> Count = Keys.Required("count", new IntegerKind(0, 50), "How many; 0 when it needs none here.");

    public static GroupKind Group => Keys.Group;
}
