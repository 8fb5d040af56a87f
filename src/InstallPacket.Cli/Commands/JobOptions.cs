namespace InstallPacket.Cli.Commands;

/// <summary>What every command that reads jobs is told.</summary>
/// <param name="Jobs">The jobs folder as the user wrote it.</param>
/// <param name="Only">Names of jobs; empty for all.</param>
internal sealed record JobOptions(string Jobs, IReadOnlyList<string> Only)
{
    /// <summary>The folder that holds the generic parts and kits.</summary>
    public string Installed { get; init; } = InstalledData.Jobs;

    /// <summary>The author's files.</summary>
    public FolderJobFiles Files() => new(Jobs, Installed);

    /// <summary>Prints findings with paths as the user can click them.</summary>
    public FindingPrinter Printer(IJobFiles files) => new(files, Jobs.TrimEnd('/', '\\') is "" or "." ? "" : Jobs.TrimEnd('/', '\\') + "/");

    /// <summary>Says what is wrong with the options, or nothing.</summary>
    public string Problem(IJobFiles files)
    {
        if (!Directory.Exists(Jobs)) return $"there is no folder {Jobs}";
        var ids = InstallPacket.Jobs.JobReader.JobIds(files);
        var unknown = Only.Where(id => !ids.Contains(id)).ToArray();
        if (unknown.Length > 0) return $"there is no job {string.Join(", ", unknown)} in {Jobs}; jobs: {string.Join(", ", ids)}";
        return ids.Count == 0 ? $"there is no job in {Jobs}: a job is a folder with a job.yaml; `installpacket new NAME` writes one" : "";
    }
}
