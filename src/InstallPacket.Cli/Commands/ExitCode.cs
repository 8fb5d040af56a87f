namespace InstallPacket.Cli.Commands;

/// <summary>What the program tells the shell.</summary>
internal static class ExitCode
{
    public const int Done = 0;
    public const int JobFailed = 1;
    public const int WrongCommandLine = 2;
    public const int OurBug = 3;
}
