namespace InstallPacket.Jobs.Text;

/// <summary>Resolves what a job names: first in the job's own folder, then in one of the shared folders.</summary>
internal sealed class SharedPath(IJobFiles files, string jobId, FindingList findings)
{
    /// <summary>Path of a station list; null when there is none, and then a finding says so.</summary>
    public string? StationList(Sourced<string> name) => Resolve(name, "_shared/stations/", "station-list",
        path => files.Read(path, 1).State != FileState.Absent, path => path.EndsWith(".csv", StringComparison.Ordinal) ? path : null);

    /// <summary>Path of a folder of elevation tiles; null when there is none, and then a finding says so.</summary>
    public string? TerrainFolder(Sourced<string> name) => Resolve(name, "_shared/terrain/", "terrain",
        path => files.List(path).Count > 0, path => path.LastIndexOf('/') is > 0 and var end && TerrainTiles.IsTile(path) ? path[..end]
            : null);

    private string? Resolve(Sourced<string> name, string shared, string way, Func<string, bool> exists, Func<string, string?> candidate)
    {
        var text = name.Value;
        if (text.StartsWith('/') || text.Contains('\\') || text.Contains(':') || text.Split('/').Any(s => s is "" or "." or ".."))
        {
            findings.Add(Severity.Stop, "path-outside-jobs", way, name.At, ("path", text), ("shared", shared.TrimEnd('/')));
            return null;
        }
        foreach (var path in new[] { $"{jobId}/{text}", shared + text })
            if (exists(path)) return path;
        string[] near = [.. Names(jobId + "/", candidate), .. Names(shared, candidate)];
        findings.Add(Severity.Stop, "file-missing", way, name.At, ("path", text), ("job", jobId), ("shared", shared.TrimEnd('/')),
            ("near", NearestWord.Of(text, near)), ("known", near.Take(NameResolver.MostNames)));
        return null;
    }

    private IEnumerable<string> Names(string folder, Func<string, string?> candidate) =>
        files.List(folder.TrimEnd('/')).Select(candidate).OfType<string>().Where(p => p.Length > folder.Length).Select(p =>
            p[folder.Length..]).Distinct(StringComparer.Ordinal);
}
