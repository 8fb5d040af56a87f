namespace InstallPacket.Cli;

internal static class Program
{
    private static int Main(string[] arguments)
    {
        var terminal = new SystemTerminal();
        return ExitGuard.Run(terminal, () => new CommandLine(terminal).Run(arguments));
    }
}
