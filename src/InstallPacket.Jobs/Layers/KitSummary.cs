namespace InstallPacket.Jobs.Layers;

/// <summary>A value that a kit takes.</summary>
/// <param name="Name">Its name.</param>
/// <param name="What">What it is for; empty when the kit does not say.</param>
/// <param name="Kind">What it holds.</param>
/// <param name="Absent">The value when the job gives none; null when it has to, or when what asks for it is then left out.</param>
/// <param name="Needed">Whether the job must give it.</param>
public sealed record KitTake(string Name, string What, KeyKind Kind, string? Absent, bool Needed);

/// <summary>What somebody who chooses among the kits of a folder is shown of one.</summary>
/// <param name="Name">Its file without ending.</param>
/// <param name="What">What it is, in one line.</param>
/// <param name="Takes">The values that it takes.</param>
/// <param name="Feeds">Whether elements of a job can be connected to it.</param>
/// <param name="Gives">The piece of a job.</param>
public sealed record KitSummary(string Name, string What, IReadOnlyList<KitTake> Takes, bool Feeds, YamlMap Gives)
{
    /// <summary>The kits of a folder of jobs, by name.</summary>
    /// <param name="files">The folder.</param>
    /// <param name="findings">Receives the mistakes of kits, which are then left out.</param>
    public static IReadOnlyList<KitSummary> All(IJobFiles files, FindingList findings)
    {
        var all = new List<KitSummary>();
        foreach (var name in Kit.Names(files))
            if (Kit.Read(files, new(name, new($"_shared/kits/{name}.yaml", 0, 0)), findings) is { } kit)
                all.Add(new(kit.Name, kit.What, [.. kit.Takes.Select(TakeOf)], kit.Out is not null, kit.Gives));
        return all;
    }

    /// <summary>Whether it says anything at a path of keys.</summary>
    /// <param name="path">Keys from the top.</param>
    public bool Says(params ReadOnlySpan<string> path) => new TreeEditor(Gives).Find(path) is not null;

    private static KitTake TakeOf(Entry<CheckedGroup> entry)
    {
        var (group, absent) = (entry.Value, entry.Value.Maybe(KitValueKeys.Absent)?.Value);
        return new(entry.Name, group.Maybe(KitValueKeys.What)?.Value ?? "", KitValueKeys.KindOf(group.Get(KitValueKeys.Holds)), absent,
            absent is null && group.Get(KitValueKeys.Needed));
    }
}
