using InstallPacket.Plans;

namespace InstallPacket.Cli.Commands;

/// <summary><c>explain</c>: what a finding or a key means; the key reference; the schema; a job in full with who said each value.</summary>
internal sealed class ExplainCommand(ITerminal terminal, JobOptions options, string topic)
{
    public int Run()
    {
        var text = topic switch
        {
            "keys" => KeyReference.Page(NewCommand.Example()),
            "schema" => PlanJson.Text(JobSchema.Tree()),
            "schema-firm" => PlanJson.Text(JobSchema.Firm()),
            "schema-kit" => PlanJson.Text(JobSchema.Kit()),
            "schema-parts" => PlanJson.Text(JobSchema.Parts()),
            "findings" => FindingPages.List(),
            _ => FindingPages.Of(topic) ?? KeyReference.Of(topic),
        };
        if (text is null && Job() is { } told) return told;
        if (text is null)
        {
            terminal.Error.WriteLine($"installpacket: `{topic}` is no finding, no key and no job; `installpacket explain findings` and `installpacket explain keys` list them");
            return ExitCode.WrongCommandLine;
        }
        terminal.Out.Write(text);
        return ExitCode.Done;
    }

    // Null when there is no such job.
    private int? Job()
    {
        if (!Directory.Exists(options.Jobs)) return null;
        var files = options.Files();
        if (!JobReader.JobIds(files).Contains(topic)) return null;
        var findings = new FindingList();
        var text = JobInFull.Of(files, topic, findings);
        options.Printer(files).Print(terminal.Error, findings.Sorted);
        terminal.Out.Write(text);
        return findings.AnyStop ? ExitCode.JobFailed : ExitCode.Done;
    }
}
