namespace InstallPacket.Cli.Files;

/// <summary>Faults of the machine that are nobody's bug: what happened, and what to do.</summary>
internal static class Fault
{
    private const int NoSpace = 28;
    private const int QuotaSpent = 122;
    private const int WindowsDiskFull = unchecked((int)0x80070070);

    /// <summary>The fault in words; null when it is none of the machine.</summary>
    public static string? Of(Exception e) => e switch
    {
        AggregateException { InnerExceptions: [var first, ..] } => Of(first),
        OutputException => e.Message,
        PathTooLongException =>
            $"a name is too long for this file system ({e.Message}); shorten the name of the job or of the output folder",
        UnauthorizedAccessException => $"{e.Message} Look at the permissions of the folder, or choose another with --out",
        FileNotFoundException or DirectoryNotFoundException => $"{e.Message} Somebody removed it during the run; run again",
        IOException { HResult: NoSpace or QuotaSpent or WindowsDiskFull } =>
            "the disk is full; make room and run again. Packets that were finished are whole",
        IOException => $"{e.Message} If another program holds the file open, close it there and run again",
        _ => null,
    };
}
