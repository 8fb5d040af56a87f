using InstallPacket.Cli.Console;

namespace InstallPacket.Tests;

/// <summary>A terminal that remembers what was printed.</summary>
internal sealed class RecordedTerminal : ITerminal
{
    private readonly StringWriter _out = new() { NewLine = "\n" };
    private readonly StringWriter _error = new() { NewLine = "\n" };

    public TextWriter Out => _out;

    public TextWriter Error => _error;

    public string Output => _out.ToString();

    public string Errors => _error.ToString();
}
