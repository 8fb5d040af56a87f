using System.Diagnostics;

namespace InstallPacket.Mutation;

/// <summary>What became of a mutant; <c>InPackets</c>: its own project's tests let it pass, those of the packets and bad jobs did not.</summary>
internal enum Outcome { Killed, InPackets, Survived, Timeout, NotCompiled }

/// <summary>The tests' program, copied within the checkout so that its own build stays as it is.</summary>
internal sealed class TestProgram
{
    private readonly string _program;

    public TestProgram(string built, string copy)
    {
        if (Directory.Exists(copy)) Directory.Delete(copy, true);
        foreach (var file in Directory.EnumerateFiles(built, "*", SearchOption.AllDirectories))
        {
            var to = Path.Combine(copy, Path.GetRelativePath(built, file));
            Directory.CreateDirectory(Path.GetDirectoryName(to)!);
            File.Copy(file, to);
        }
        Folder = copy;
        var name = Directory.EnumerateFiles(copy, "*.Tests.dll").Single();
        _program = OperatingSystem.IsWindows() ? Path.ChangeExtension(name, ".exe") : name[..^4];
    }

    public string Folder { get; }

    /// <summary>Runs the tests of some classes until the first that fails.</summary>
    public Outcome Run(TimeSpan limit, params string[] filter)
    {
        var start = new ProcessStartInfo(_program) { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var word in (string[])["-stopOnFail", "-noColor", "-noLogo", "-maxThreads", "1", .. filter]) start.ArgumentList.Add(word);
        using var process = Process.Start(start)!;
        process.OutputDataReceived += (_, _) => { };
        process.ErrorDataReceived += (_, _) => { };
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        if (process.WaitForExit(limit)) return process.ExitCode == 0 ? Outcome.Survived : Outcome.Killed;
        process.Kill(true);
        process.WaitForExit();
        return Outcome.Timeout;
    }
}
