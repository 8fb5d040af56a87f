using InstallPacket.Plans;

namespace InstallPacket.Cli.Commands;

/// <summary><c>changes</c>: plans the jobs as they were at a revision and as they are now, and prints what differs, as Markdown.</summary>
internal sealed class ChangesCommand(ITerminal terminal, JobOptions options, string? themeFolder, string from)
{
    public int Run()
    {
        var files = options.Files();
        if (!Directory.Exists(options.Jobs)) return Refuse($"there is no folder {options.Jobs}");
        var (earlier, problem) = GitRevision.Read(options.Jobs, from);
        if (earlier is null) return Refuse(problem);
        var before = PlannedJob.All(earlier, options.Only).Jobs;
        var now = PlannedJob.All(files, options.Only).Jobs;
        if (themeFolder is not null && !Directory.Exists(themeFolder)) return Refuse($"there is no folder {themeFolder}");
        terminal.Out.WriteLine($"# Changes since {from}");
        if (themeFolder is not null) List("The theme differs; packets are printed anew",
            GitRevision.Changed(themeFolder, from).Select(Cell));
        // Both plans read the tiles that are here now, so that a changed tile shows in neither.
        List("Elevation tiles differ; every number that depends on them may differ too",
            GitRevision.Changed(options.Jobs, from).Where(TerrainTiles.IsTile).Select(Cell));
        foreach (var id in before.Concat(now).Select(j => j.Id).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal))
            Print(id, before.FirstOrDefault(j => j.Id == id), now.FirstOrDefault(j => j.Id == id));
        return now.Any(j => j.Plan is null) ? ExitCode.JobFailed : ExitCode.Done;
    }

    private void Print(string id, PlannedJob? before, PlannedJob? now)
    {
        terminal.Out.WriteLine();
        terminal.Out.WriteLine($"## {id}");
        terminal.Out.WriteLine();
        if (now is null) terminal.Out.WriteLine("The job is gone.");
        else if (now.Plan is null) terminal.Out.WriteLine($"The job cannot be planned now: {Summary.Count(now.Findings)}. `installpacket check {id}` says why.");
        else if (before is null) terminal.Out.WriteLine($"The job is new: {now.Plan.State}, {Summary.Count(now.Findings)}.");
        else if (before.Plan is null) terminal.Out.WriteLine($"The job could not be planned before; now it is {now.Plan.State}, {Summary.Count(now.Findings)}.");
        else Print(PlanComparer.Compare(before.Plan, now.Plan), now.Units);
    }

    private void Print(PlanComparison c, JobUnits units)
    {
        if (c.Same) { terminal.Out.WriteLine("No change of plan."); return; }
        if (c.Differences.Count > 0)
        {
            terminal.Out.WriteLine("| Quantity | Before | After | Difference |");
            terminal.Out.WriteLine("|---|---:|---:|---:|");
            foreach (var d in c.Differences) terminal.Out.WriteLine($"| {Cell(d.Quantity)} | {Cell(d.Before)} | {Cell(d.After)} | {d.Difference} |");
        }
        List("Findings that appeared", c.Appeared.Select(f => Finding(f, units)));
        List("Findings that went", c.Went.Select(f => Finding(f, units)));
    }

    private void List(string title, IEnumerable<string> items)
    {
        var lines = items.ToArray();
        if (lines.Length == 0) return;
        terminal.Out.WriteLine();
        terminal.Out.WriteLine(title + ":");
        terminal.Out.WriteLine();
        foreach (var line in lines) terminal.Out.WriteLine("- " + line);
    }

    private static string Finding(Finding f, JobUnits units) =>
        $"**{FindingPrinter.Word(f.Severity)}** {f.Id}: {Cell(ConsoleWords.Spoken(f, units).Found)}";

    private static string Cell(string text) => text.Replace("\\", "\\\\").Replace("|", "\\|").Replace("<", "\\<").ReplaceLineEndings(" ");

    private int Refuse(string problem)
    {
        terminal.Error.WriteLine("installpacket: " + problem);
        return ExitCode.WrongCommandLine;
    }
}
