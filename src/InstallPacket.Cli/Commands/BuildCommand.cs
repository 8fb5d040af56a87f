using InstallPacket.Packets;

namespace InstallPacket.Cli.Commands;

/// <summary><c>build</c>: reads, plans and writes the packets of all jobs.</summary>
internal sealed class BuildCommand(ITerminal terminal, JobOptions options, string? themeFolder, string outFolder, bool strict,
    bool force = false, bool pictures = false)
{
    // As long as a run under way in the same folder is waited for.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    public int Run()
    {
        var files = options.Files();
        if (options.Problem(files) is { Length: > 0 } problem) return Refuse(problem);
        if (themeFolder is not null && !Directory.Exists(themeFolder)) return Refuse($"there is no folder {themeFolder}");
        var theme = InstalledData.ThemeUnder(themeFolder);
        using var output = OutputFolder.Open(outFolder, Patience);
        var tiles = new TileHashes(files, output.TileStore);
        var inputs = new InputHash(files, theme, tiles, pictures);
        var packet = new PacketBuild(new PacketBuilder(theme, pictures), output, inputs);
        var (shared, results) = PlannedJob.Each(files, options.Only, id => Unchanged(id, inputs, output), packet.Run);
        Report(files, shared, results);
        tiles.Save();
        output.WriteFile(new("index.html", IndexPage(theme, files, output, results)));
        foreach (var font in theme.WebFonts) output.WriteFile(new(font.Key, font.Value));
        return results.Any(r => r.State is "stale" or "not built") || shared.Any(f => f.Severity == Severity.Stop)
            ? ExitCode.JobFailed
            : strict && results.Any(r => r.State == "stopped") ? ExitCode.JobFailed : ExitCode.Done;
    }

    // A job whose inputs are those of the packet that stands there whole is not even read.
    private PacketManifest? Unchanged(string id, InputHash inputs, OutputFolder output) =>
        !force && PacketManifest.Of(output.PacketFolder(id)) is { } manifest && manifest.Inputs == inputs.Of(id, manifest.Placed)
        && manifest.IsWhole(output.PacketFolder(id)) ? manifest : null;

    private void Report(IJobFiles files, IReadOnlyList<Finding> shared, PacketResult[] results)
    {
        var printer = options.Printer(files);
        printer.Print(terminal.Error, shared);
        foreach (var r in results)
        {
            printer.Print(terminal.Error, r.Findings, r.Units);
            if (r.Problem.Length > 0) terminal.Error.WriteLine(FindingPrinter.Safe($"{r.Id}: {r.Problem}"));
        }
        var width = results.Max(r => r.Id.Length);
        foreach (var r in results) terminal.Out.WriteLine($"{FindingPrinter.Safe(r.Id).PadRight(width)}  {r.State,-9}  {r.Summary}{(r.Unchanged ? "  (unchanged)" : "")}");
        terminal.Out.WriteLine($"{results.Count(r => r.State is "planned" or "stopped" or "study")} of {results.Length} packets in {outFolder}");
    }

    private static byte[] IndexPage(Theme theme, IJobFiles files, OutputFolder output, PacketResult[] results)
    {
        var rows = JobReader.JobIds(files).Select(id => results.FirstOrDefault(r => r.Id == id)
            ?? PacketResult.NotAsked(id, PacketManifest.Of(output.PacketFolder(id))));
        return new IndexBuilder(theme).Build([.. rows.Select(r => new IndexRow(r.Id, r.Title, r.Date, r.State, r.Summary))]);
    }

    private int Refuse(string problem)
    {
        terminal.Error.WriteLine("installpacket: " + problem);
        return ExitCode.WrongCommandLine;
    }
}
