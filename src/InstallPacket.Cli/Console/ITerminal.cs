namespace InstallPacket.Cli.Console;

/// <summary>Where commands print; a test reads what they wrote.</summary>
internal interface ITerminal
{
    /// <summary>Results.</summary>
    TextWriter Out { get; }

    /// <summary>Answers of a person; null when nobody sits there.</summary>
    TextReader? In => null;

    /// <summary>Findings and faults.</summary>
    TextWriter Error { get; }
}

/// <summary>The real one.</summary>
internal sealed class SystemTerminal : ITerminal
{
    public TextWriter Out { get; } = Writer(System.Console.OpenStandardOutput());

    public TextReader? In => System.Console.IsInputRedirected ? null : System.Console.In;

    public TextWriter Error { get; } = Writer(System.Console.OpenStandardError());

    private static StreamWriter Writer(Stream stream) =>
        new(stream, new System.Text.UTF8Encoding(false)) { AutoFlush = true, NewLine = "\n" };
}
