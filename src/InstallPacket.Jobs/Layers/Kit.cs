namespace InstallPacket.Jobs.Layers;

/// <summary>A kit: a piece of a job with values to fill in.</summary>
/// <param name="Name">Its file without ending.</param>
/// <param name="What">What it is.</param>
/// <param name="Takes">The values that it takes.</param>
/// <param name="Out">The element that feeds what is connected to the kit, or null.</param>
/// <param name="Gives">The piece of a job.</param>
internal sealed record Kit(string Name, string What, IReadOnlyList<Entry<CheckedGroup>> Takes, Sourced<string>? Out, YamlMap Gives)
{
    private const string Folder = "/kits/";
    private const string Ending = ".yaml";

    /// <summary>The names of the kits of a folder of jobs: those of the firm and the generic ones.</summary>
    public static IReadOnlyList<string> Names(IJobFiles files) =>
        [.. SharedFolder.Kits(files).Select(NameOf).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];

    /// <summary>Reads a kit; null when it is not there or has mistakes, which are then among the findings.</summary>
    public static Kit? Read(IJobFiles files, Sourced<string> name, FindingList findings)
    {
        if (SharedFolder.Kits(files).FirstOrDefault(p => NameOf(p) == name.Value) is not { } path)
        {
            var known = Names(files);
            findings.Add(Severity.Stop, "unknown-reference", "kit", name.At, ("path", "kits"), ("name", name.Value),
                ("near", NearestWord.Of(name.Value, known)), ("known", known.Take(NameResolver.MostNames)),
                ("more", known.Count > NameResolver.MostNames));
            return null;
        }
        var file = files.Read(path, FileBounds.JobBytes);
        if (!FileGate.Allows(file, FileBounds.JobBytes, name.At, findings) || YamlGate.Load(file, findings) is not { } root) return null;
        var own = new FindingList();
        var group = new NodeChecker(own).Group(root, KitKeys.Group, "");
        findings.AddRange(own.Sorted);
        if (own.AnyStop) return null;
        return new(name.Value, group.Get(KitKeys.What), group.Entries(KitKeys.Takes), group.Maybe(KitKeys.Out), group.Get(KitKeys.Gives));
    }

    private static string NameOf(string path) => path[(path.IndexOf(Folder, StringComparison.Ordinal) + Folder.Length)..^Ending.Length];
}
