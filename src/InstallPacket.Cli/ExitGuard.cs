using InstallPacket.Packets;

namespace InstallPacket.Cli;

/// <summary>Turns what a command throws into words and an exit code.</summary>
internal static class ExitGuard
{
    /// <summary>Runs a command.</summary>
    /// <param name="terminal">Takes the words.</param>
    /// <param name="command">Gives the exit code when all goes well.</param>
    /// <returns>The exit code.</returns>
    public static int Run(ITerminal terminal, Func<int> command)
    {
        // A message of the system names files, and their names may hold anything.
        var clean = new CleanTerminal(terminal);
        try
        {
            return command();
        }
        catch (DocumentException e)
        {
            return Failed(clean, "the theme cannot be used: " + e.Message);
        }
        catch (Exception e) when (Fault.Of(e) is not null)
        {
            return Failed(clean, Fault.Of(e)!);
        }
        catch (Exception e)
        {
            // Jobs run side by side; the fault of one comes wrapped.
            if (e is AggregateException { InnerExceptions: [var first, ..] }) e = first;
            clean.Error.WriteLine($"installpacket {ProgramVersion.Text}: this is a bug in the program, sorry. "
                + $"{e.GetType().Name}: {e.Message}");
            clean.Error.WriteLine(e.StackTrace);
            clean.Error.WriteLine("Please report it with the job file that caused it. Earlier packets are untouched.");
            return ExitCode.OurBug;
        }
    }

    private static int Failed(CleanTerminal terminal, string problem)
    {
        terminal.Error.WriteLine("installpacket: " + problem);
        return ExitCode.JobFailed;
    }
}
