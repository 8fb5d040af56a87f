namespace InstallPacket.Cli.Tests.BadJobs;

/// <summary>Keeps what a command prints, results and faults in one text as a person sees them.</summary>
internal sealed class TestTerminal : ITerminal
{
    public TextWriter Out { get; } = Writer();

    public TextWriter Error => Out;

    public string Text => Out.ToString()!;

    private static StringWriter Writer() => new() { NewLine = "\n" };
}
