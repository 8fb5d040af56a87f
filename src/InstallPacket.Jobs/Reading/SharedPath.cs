namespace InstallPacket.Jobs.Reading;

/// <summary>Resolves a file that a job names: first in the job's own folder, then among the shared station lists.</summary>
internal static class SharedPath
{
    public static string? Resolve(IJobFiles files, string jobId, Sourced<string> name, FindingList findings)
    {
        var text = name.Value;
        if (text.StartsWith('/') || text.Contains('\\') || text.Contains(':') || text.Split('/').Any(s => s is "" or "." or ".."))
        {
            findings.Add(Severity.Stop, "path-outside-jobs", name.At, $"the path `{text}` could lead out of the jobs folder",
                "a plain file name, with folders below the job at most", "copy the file into the job's folder or into _shared/stations, and name it from there");
            return null;
        }
        var own = $"{jobId}/{text}";
        return files.Read(own, 1).State == FileState.Absent ? "_shared/stations/" + text : own;
    }
}
