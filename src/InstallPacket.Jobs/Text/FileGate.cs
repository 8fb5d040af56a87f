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
        var id = file.State switch
        {
            FileState.Present => "",
            FileState.Absent => "file-missing",
            FileState.TooLarge => "file-too-large",
            FileState.NotText => "not-utf8",
            FileState.Outside => "path-outside-jobs",
        };
        if (id.Length == 0) return true;
        findings.Add(Severity.Stop, id, at, ("path", file.Path), ("most_kib", maxBytes / 1024));
        return false;
    }
}
