using InstallPacket.Tests;

namespace InstallPacket.Cli.Tests;

/// <summary>What one run of the program gave.</summary>
internal sealed record RunResult(int Code, string Output, string Errors);

/// <summary>A folder of its own for each test, with the program run inside it.</summary>
internal sealed class Workshop : IDisposable
{
    private const string MemoryDisk = "/dev/shm";
    private const long RoomForPackets = 4L * 1024 * 1024 * 1024;

    public Workshop()
    {
        Root = OnMemoryDisk ? Path.Combine(MemoryDisk, "packets-" + Guid.NewGuid().ToString("N")) : Directory.CreateTempSubdirectory("packets-").FullName;
        Directory.CreateDirectory(Root);
    }

    // Thousands of small files come and go: without a disk below them that costs a tenth of the tests' processor time less.
    private static bool OnMemoryDisk { get; } = Directory.Exists(MemoryDisk) && new DriveInfo(MemoryDisk).AvailableFreeSpace > RoomForPackets;

    private static readonly Lazy<(Workshop Shop, RunResult Run)> Once = new(() =>
    {
        var shop = WithDemoJobs();
        AppDomain.CurrentDomain.ProcessExit += (_, _) => shop.Dispose();
        return (shop, shop.Build());
    });

    /// <summary>The demo jobs with their packets, built once for all tests that only look.</summary>
    public static Workshop Built => Once.Value.Shop;

    /// <summary>What the run that built them said.</summary>
    public static RunResult FirstRun => Once.Value.Run;

    public string Root { get; }

    public string Jobs => Path.Combine(Root, "jobs");

    public string Out => Path.Combine(Root, "out");

    /// <summary>A workshop with the demo jobs in it.</summary>
    public static Workshop WithDemoJobs()
    {
        var shop = new Workshop();
        var from = Path.Combine(DemoJobs.Checkout, "jobs");
        foreach (var path in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories)) shop.Copy(path, "jobs/" + Path.GetRelativePath(from, path));
        foreach (var folder in Directory.EnumerateDirectories(DemoJobs.WrittenOut))
            shop.Write($"jobs/{Path.GetFileName(folder)}/job.yaml", File.ReadAllText(Path.Combine(folder, "job.yaml")));
        return shop;
    }

    /// <summary>A workshop with the demo jobs and their packets, to be changed.</summary>
    public static Workshop WithPackets()
    {
        var shop = WithDemoJobs();
        foreach (var path in Directory.EnumerateFiles(Built.Out, "*", SearchOption.AllDirectories)) shop.Copy(path, "out/" + Path.GetRelativePath(Built.Out, path));
        return shop;
    }

    public void Copy(string from, string path)
    {
        var full = Path.Combine(Root, path);
        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
        File.Copy(from, full);
    }

    public void Write(string path, string text)
    {
        var full = Path.Combine(Root, path);
        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
        File.WriteAllText(full, text);
    }

    public string Read(string path) => File.ReadAllText(Path.Combine(Root, path));

    /// <summary>Replaces a text that must stand exactly once.</summary>
    public void Edit(string path, string old, string replacement)
    {
        var text = Read(path);
        Assert.Equal(2, text.Split(old).Length);
        Write(path, text.Replace(old, replacement, StringComparison.Ordinal));
    }

    public RunResult Build(params string[] more) => Run(["build", "--jobs", Jobs, "--out", Out, .. more]);

    /// <summary>A short job knows no ground: that is told, and nothing else is wrong.</summary>
    public static void AssertOnlyHillsUnseen(RunResult run)
    {
        Assert.Contains("caution hills-not-seen", run.Errors, StringComparison.Ordinal);
        Assert.Single(run.Errors.Split('\n'), l => l.Contains("job.yaml(", StringComparison.Ordinal));
    }

    public static RunResult Run(params string[] arguments)
    {
        var terminal = new RecordedTerminal();
        var code = new CommandLine(terminal).Run(arguments);
        return new(code, terminal.Output, terminal.Errors);
    }

    /// <summary>All files below a folder, each with its hash.</summary>
    public static SortedDictionary<string, string> Files(string folder) => new(
        Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).ToDictionary(p => Path.GetRelativePath(folder, p).Replace('\\', '/'),
            p => Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(p)))), StringComparer.Ordinal);

    public void Dispose() => Directory.Delete(Root, true);
}
