using InstallPacket.Packets;

namespace InstallPacket.Cli;

internal static class Program
{
    private static int Main(string[] arguments)
    {
        var terminal = new SystemTerminal();
        try
        {
            return new CommandLine(terminal).Run(arguments);
        }
        catch (DocumentException e)
        {
            terminal.Error.WriteLine("installpacket: the theme cannot be used: " + e.Message);
            return ExitCode.JobFailed;
        }
        catch (Exception e) when (Fault.Of(e) is not null)
        {
            terminal.Error.WriteLine("installpacket: " + Fault.Of(e));
            return ExitCode.JobFailed;
        }
        catch (Exception e)
        {
            // Jobs run side by side; the fault of one comes wrapped.
            if (e is AggregateException { InnerExceptions: [var first, ..] }) e = first;
            terminal.Error.WriteLine($"installpacket {ProgramVersion.Text}: this is a bug in the program, sorry. {e.GetType().Name}: {e.Message}");
            terminal.Error.WriteLine(e.StackTrace);
            terminal.Error.WriteLine("Please report it with the job file that caused it. Earlier packets are untouched.");
            return ExitCode.OurBug;
        }
    }
}
