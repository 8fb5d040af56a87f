using InstallPacket.Cli;
using InstallPacket.Cli.Commands;
using InstallPacket.Cli.Console;

namespace InstallPacket.Tests.Fuzz;

/// <summary>What came of one input.</summary>
/// <param name="Code">The exit code.</param>
/// <param name="Fault">What must not be; empty when all is well.</param>
/// <param name="Printed">What the program printed.</param>
internal sealed record FuzzOutcome(int Code, string Fault, string Printed);

/// <summary>One kind of input: how it is damaged, and how far into the program it goes.</summary>
internal abstract class FuzzKind : IDisposable
{
    private const string Fuzzed = "fuzz: ";

    /// <summary>How far an input goes.</summary>
    public abstract string Depth { get; }

    /// <summary>Its share when inputs of all kinds are asked for; the cheap ones have most.</summary>
    public abstract int Share { get; }

    /// <summary>How many inputs the tests try.</summary>
    public abstract int InTests { get; }

    /// <summary>Every kind by its name; each copies the demo jobs when it is made.</summary>
    public static IReadOnlyList<(string Name, Func<FuzzKind> Make)> All { get; } =
    [
        ("job", () => new JobKind()), ("stations", () => new StationKind()), ("tile", () => new TileKind()),
        ("shared", () => new PartKind()), ("template", () => new TemplateKind()), ("words", () => new WordKind()),
        ("job-packet", () => new JobPacketKind()), ("theme-packet", () => new ThemeKind()), ("folders", () => new FolderKind()),
        ("git", () => new GitKind()),
    ];

    /// <summary>Makes the input of a seed and runs the program with it.</summary>
    public FuzzOutcome Run(int seed)
    {
        var terminal = new RecordedTerminal();
        var code = ExitGuard.Run(terminal, () => Try(new Random(seed), terminal));
        var printed = terminal.Output + terminal.Errors;
        if (code is not (ExitCode.Done or ExitCode.JobFailed or ExitCode.WrongCommandLine)) return new(code, terminal.Errors, printed);
        var stray = printed.FirstOrDefault(c => char.IsControl(c) && c != '\n');
        return new(code, stray == default ? "" : $"the control character U+{(int)stray:X4} is printed", printed);
    }

    public virtual void Dispose()
    {
    }

    /// <summary>Makes an input and runs the program with it.</summary>
    /// <returns>The exit code.</returns>
    protected abstract int Try(Random random, ITerminal terminal);

    /// <summary>One of several.</summary>
    protected static T Pick<T>(Random random, IReadOnlyList<T> of) => of[random.Next(of.Count)];

    /// <summary>Says that a promise is broken; the run ends as with a fault of the program.</summary>
    protected static void Promise(bool kept, string what)
    {
        if (!kept) throw new FuzzException(Fuzzed + what);
    }
}

/// <summary>A broken promise that is no exception of the program.</summary>
internal sealed class FuzzException(string message) : Exception(message);
