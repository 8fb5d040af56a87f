namespace InstallPacket.Cli.Commands;

/// <summary><c>check</c>: reads and plans all jobs, writes nothing, fails on any stop.</summary>
internal sealed class CheckCommand(ITerminal terminal, JobOptions options)
{
    public int Run()
    {
        var files = options.Files();
        if (options.Problem(files) is { Length: > 0 } problem)
        {
            terminal.Error.WriteLine("installpacket: " + problem);
            return ExitCode.WrongCommandLine;
        }
        var set = PlannedJob.All(files, options.Only);
        var printer = options.Printer(files);
        printer.Print(terminal.Out, set.SharedFindings);
        foreach (var job in set.Jobs) printer.Print(terminal.Out, job.Findings, job.Units);
        var width = set.Jobs.Max(j => j.Id.Length);
        foreach (var job in set.Jobs)
            terminal.Out.WriteLine($"{FindingPrinter.Safe(job.Id).PadRight(width)}  {job.Plan?.State ?? "unread",-7}  {Summary.Count(job.Findings)}");
        return set.Jobs.Any(j => j.Findings.Any(f => f.Severity == Severity.Stop))
            || set.SharedFindings.Any(f => f.Severity == Severity.Stop)
            ? ExitCode.JobFailed : ExitCode.Done;
    }
}
