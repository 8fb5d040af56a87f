namespace InstallPacket.Jobs.Keys;

/// <summary>
/// Every key of a job file, declared once. The reader's checks, the hints, the JSON Schema and the reference page come from here.
/// Top-level keys are the domain words of the project.
/// </summary>
public static class KeyCatalogue
{
    /// <summary>The number of the job format that this program reads.</summary>
    public const int Format = 1;

    /// <summary>The whole job file.</summary>
    public static GroupKind Job => JobKeys.Group;

    /// <summary>Every key with its full path, in the order of the file; named things appear as <c>NAME</c>.</summary>
    public static IReadOnlyList<(string Path, Key Key)> AllKeys()
    {
        var all = new List<(string, Key)>();
        Walk(Job, "", all);
        return all;
    }

    private static void Walk(GroupKind group, string path, List<(string, Key)> all)
    {
        foreach (var key in group.Keys)
        {
            var full = path.Length == 0 ? key.Name : $"{path}.{key.Name}";
            all.Add((full, key));
            if (Inner(key.Kind) is { } inner) Walk(inner, key.Kind is IMapKind ? full + ".NAME" : full, all);
        }
    }

    private static GroupKind? Inner(KeyKind kind) => kind switch
    {
        GroupKind g => g,
        IShortKind { Full: GroupKind g } => g,
        IMapKind { Item: GroupKind g } => g,
        IMapKind { Item: IShortKind { Full: GroupKind g } } => g,
        IListKind { Item: GroupKind g } => g,
        _ => null,
    };
}
