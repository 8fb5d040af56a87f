namespace InstallPacket.Jobs.Reading;

/// <summary>Resolves a file that a job names: first in the job's own folder, then among the shared station lists.</summary>
internal static class SharedPath
{
    private const string Shared = "_shared/stations/";

    public static string? Resolve(IJobFiles files, string jobId, Sourced<string> name, FindingList findings)
    {
        var text = name.Value;
        if (text.StartsWith('/') || text.Contains('\\') || text.Contains(':') || text.Split('/').Any(s => s is "" or "." or ".."))
        {
            findings.Add(Severity.Stop, "path-outside-jobs", name.At, $"the path `{text}` could lead out of the jobs folder",
                "a plain file name, with folders below the job at most", "copy the file into the job's folder or into _shared/stations, and name it from there");
            return null;
        }
        foreach (var path in new[] { $"{jobId}/{text}", Shared + text })
            if (files.Read(path, 1).State != FileState.Absent) return path;
        string[] near = [.. files.List(jobId).Where(IsList).Select(p => p[(jobId.Length + 1)..]), .. files.List(Shared.TrimEnd('/')).Where(IsList).Select(p => p[Shared.Length..])];
        findings.Add(Severity.Stop, "file-missing", name.At, $"there is no file `{text}`, neither in {jobId} nor in {Shared.TrimEnd('/')}",
            near.Length == 0 ? "no station list is there yet" : "station lists here: " + string.Join(", ", near.Take(20)),
            Catalogue.NearestWord.Hint(text, near) + "check the name, or add the file");
        return null;
    }
    private static bool IsList(string path) => path.EndsWith(".csv", StringComparison.Ordinal);
}
