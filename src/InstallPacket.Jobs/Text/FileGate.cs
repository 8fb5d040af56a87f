namespace InstallPacket.Jobs.Text;

/// <summary>Turns the state of a file into a finding.</summary>
internal static class FileGate
{
    /// <summary>Whether the file can be read; reports otherwise.</summary>
    /// <param name="file">The file as it was found.</param>
    /// <param name="maxBytes">The bound that was applied.</param>
    /// <param name="at">Where the author names it.</param>
    /// <param name="findings">Receives the finding.</param>
    public static bool Allows(JobFile file, int maxBytes, SourceSpan at, FindingList findings)
    {
        var (id, found, limit, remedy) = file.State switch
        {
            FileState.Present => ("", "", "", ""),
            FileState.Absent => ("file-missing", $"there is no file {file.Path}", "", "check the name, or add the file"),
            FileState.TooLarge => ("file-too-large", $"{file.Path} is too large to be one", $"at most {maxBytes / 1024} KiB", "check that it is the right file; split it if it is"),
            FileState.NotText => ("not-utf8", $"{file.Path} is not UTF-8 text", "UTF-8", "save the file as UTF-8"),
            _ => ("path-outside-jobs", $"{file.Path} leads out of the jobs folder", "files below the jobs folder only", "copy the file into the job's folder"),
        };
        if (id.Length == 0) return true;
        findings.Add(Severity.Stop, id, at, found, limit, remedy);
        return false;
    }
}
