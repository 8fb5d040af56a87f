namespace InstallPacket.Jobs.Layers;

/// <summary>The file of a firm, for those who ask what it says without reading a job.</summary>
/// <param name="Name">The name by which jobs call it; null when the folder belongs to one firm.</param>
/// <param name="Says">Its keys.</param>
public sealed record FirmFile(string? Name, YamlMap Says)
{
    private const string Only = "_shared/firm.yaml";
    private const string Folder = "_shared/firms";
    private const string Ending = ".yaml";

    /// <summary>The firms that a folder of jobs names.</summary>
    /// <param name="files">The folder.</param>
    public static IReadOnlyList<string> Names(IJobFiles files) =>
        [.. files.List(Folder).Where(p => p.EndsWith(Ending, StringComparison.Ordinal)).Select(p => p[(Folder.Length + 1)..^Ending.Length])];

    /// <summary>A firm; null when there is no such file or it has mistakes, which are then among the findings.</summary>
    /// <param name="files">The folder.</param>
    /// <param name="name">Its name, or null for the firm to which the folder belongs.</param>
    /// <param name="findings">Receives what is wrong.</param>
    public static FirmFile? Read(IJobFiles files, string? name, FindingList findings)
    {
        var path = name is null ? Only : $"{Folder}/{name}{Ending}";
        var file = files.Read(path, FileBounds.JobBytes);
        if (file.State == FileState.Absent || !FileGate.Allows(file, FileBounds.JobBytes, new(path, 0, 0), findings)) return null;
        return YamlGate.Load(file, findings) is { } map ? new(name, map) : null;
    }

    /// <summary>What it says at a path of keys; null when that is nothing or no single value.</summary>
    /// <param name="path">Keys from the top, joined by points.</param>
    public string? Of(string path) => (new TreeEditor(Says).Find(path.Split('.')) as YamlScalar)?.Value;
}
