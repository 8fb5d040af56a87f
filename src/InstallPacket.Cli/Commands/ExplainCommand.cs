using InstallPacket.Plans;

namespace InstallPacket.Cli.Commands;

/// <summary><c>explain</c>: what a finding or a key means; the key reference; the schema.</summary>
internal sealed class ExplainCommand(ITerminal terminal, string topic)
{
    public int Run()
    {
        var text = topic switch
        {
            "keys" => KeyReference.Page(NewCommand.Example()),
            "schema" => PlanJson.Text(JobSchema.Tree()),
            "findings" => FindingPages.List(),
            _ => FindingPages.Of(topic) ?? KeyReference.Of(topic),
        };
        if (text is null)
        {
            terminal.Error.WriteLine($"installpacket: `{topic}` is neither a finding nor a key; `installpacket explain findings` and `installpacket explain keys` list them");
            return ExitCode.WrongCommandLine;
        }
        terminal.Out.Write(text);
        return ExitCode.Done;
    }
}
