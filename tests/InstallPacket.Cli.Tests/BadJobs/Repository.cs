namespace InstallPacket.Cli.Tests.BadJobs;

/// <summary>Finds the files of this repository from where the tests run.</summary>
internal static class Repository
{
    /// <summary>Whether expected files are to be rewritten instead of compared.</summary>
    public static bool Accepts => Environment.GetEnvironmentVariable("INSTALLPACKET_ACCEPT") == "1";

    public static string Path(params string[] parts) => System.IO.Path.Combine([Root(), .. parts]);

    private static string Root()
    {
        var at = new DirectoryInfo(AppContext.BaseDirectory);
        while (at is not null && !File.Exists(System.IO.Path.Combine(at.FullName, "InstallPacket.sln"))) at = at.Parent;
        return at?.FullName ?? throw new InvalidOperationException("The tests do not run below the checkout.");
    }
}
