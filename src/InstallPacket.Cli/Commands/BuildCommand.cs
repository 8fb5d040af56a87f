using InstallPacket.Packets;

namespace InstallPacket.Cli.Commands;

/// <summary><c>build</c>: reads, plans and writes the packets of all jobs.</summary>
internal sealed class BuildCommand(ITerminal terminal, JobOptions options, string? themeFolder, string outFolder, bool strict)
{
    public int Run()
    {
        var files = options.Files();
        if (options.Problem(files) is { Length: > 0 } problem) return Refuse(problem);
        if (themeFolder is not null && !Directory.Exists(themeFolder)) return Refuse($"there is no folder {themeFolder}");
        var theme = Theme.FromFolder(InstalledData.Theme, themeFolder);
        var output = new OutputFolder(outFolder);
        output.Recover();
        var set = PlannedJob.All(files, options.Only, Unchanged(files, theme, output));
        var builder = new PacketBuilder(theme);
        var results = set.Jobs.AsParallel().AsOrdered().Select(job => new PacketBuild(builder, output).Run(job)).ToArray();
        Report(files, set, results);
        output.WriteFile(new("index.html", IndexPage(theme, files, output, results)));
        foreach (var font in theme.WebFonts) output.WriteFile(new(font.Key, font.Value));
        return results.Any(r => r.State is "stale" or "not built") || set.SharedFindings.Any(f => f.Severity == Severity.Stop) ? ExitCode.JobFailed
            : strict && results.Any(r => r.State == "stopped") ? ExitCode.JobFailed : ExitCode.Done;
    }

    // A job whose inputs are those of the packet that stands there is not even read.
    private static Func<string, (string, PacketManifest?)> Unchanged(IJobFiles files, Theme theme, OutputFolder output)
    {
        var hash = new InputHash(files, theme);
        return id =>
        {
            var inputs = hash.Of(id);
            var manifest = PacketManifest.Of(output.PacketFolder(id));
            return (inputs, manifest?.Inputs == inputs ? manifest : null);
        };
    }

    private void Report(IJobFiles files, JobSet set, PacketResult[] results)
    {
        var printer = options.Printer(files);
        printer.Print(terminal.Error, set.SharedFindings);
        foreach (var r in results)
        {
            printer.Print(terminal.Error, r.Findings, r.Units);
            if (r.Problem.Length > 0) terminal.Error.WriteLine($"{r.Id}: {r.Problem}");
        }
        var width = results.Max(r => r.Id.Length);
        foreach (var r in results) terminal.Out.WriteLine($"{r.Id.PadRight(width)}  {r.State,-9}  {r.Summary}{(r.Unchanged ? "  (unchanged)" : "")}");
        terminal.Out.WriteLine($"{results.Count(r => r.State is "planned" or "stopped")} of {results.Length} packets in {outFolder}");
    }

    private static byte[] IndexPage(Theme theme, IJobFiles files, OutputFolder output, PacketResult[] results)
    {
        var rows = JobReader.JobIds(files).Select(id => results.FirstOrDefault(r => r.Id == id) ?? PacketResult.NotAsked(id, PacketManifest.Of(output.PacketFolder(id))));
        return new IndexBuilder(theme).Build([.. rows.Select(r => new IndexRow(r.Id, r.Title, r.Date, r.State, r.Summary))]);
    }

    private int Refuse(string problem)
    {
        terminal.Error.WriteLine("installpacket: " + problem);
        return ExitCode.WrongCommandLine;
    }
}
