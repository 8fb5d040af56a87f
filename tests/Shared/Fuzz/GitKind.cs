using System.Diagnostics;
using InstallPacket.Cli;
using InstallPacket.Cli.Console;

namespace InstallPacket.Tests.Fuzz;

/// <summary>A git tree with renames, deletions, links and merge markers: <c>changes</c> between two states of it.</summary>
internal sealed class GitKind : FuzzKind
{
    private static readonly string[] Revisions = ["HEAD", "HEAD^", "HEAD:jobs", "", "-x", "--output=x", "HEAD@{999}", "HEAD^{/x}",
        "\u001b[31m", "x y", "HEAD~9", "..", "main..x"];
    private readonly Scene _scene = new();

    public override string Depth => "read, plan, compare";

    public override int Share => 1;

    public override int InTests => 4;

    public override void Dispose()
    {
        _scene.Dispose();
        base.Dispose();
    }

    protected override int Try(Random random, ITerminal terminal)
    {
        foreach (var id in JobKind.Ids.Skip(2)) Directory.Delete(_scene.Full("jobs/" + id), true);
        Git("init", "-q");
        Change(random);
        Commit();
        Change(random);
        Commit();
        if (random.Next(2) == 0) Change(random);
        var before = _scene.Outside();
        try
        {
            var code = new CommandLine(terminal).Run(["changes", "--jobs", _scene.Jobs,
                "--from=" + (random.Next(4) > 0 ? "HEAD~1" : Pick(random, Revisions))]);
            Promise(_scene.Outside().Where(IsOurs).SequenceEqual(before.Where(IsOurs)), "`changes` wrote something");
            return code;
        }
        finally
        {
            _scene.Renew();
        }
    }

    // Git keeps its own index fresh.
    private bool IsOurs(string entry) => !entry.StartsWith(_scene.Full(".git"), StringComparison.Ordinal);

    private void Change(Random random)
    {
        for (var left = random.Next(3); left > 0; left--)
        {
            string[] files = [.. Directory.EnumerateFiles(_scene.Jobs, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal)];
            if (files.Length == 0) return;
            var file = Pick(random, files);
            switch (random.Next(7))
            {
                case 0: File.Delete(file); break;
                case 1: File.Move(file, file + Pick(random, ["x", " y", "\u001b[31m", "\n", ".yaml"]), true); break;
                case 2: File.WriteAllText(file, "<<<<<<< ours\n" + File.ReadAllText(file) + "=======\n>>>>>>> theirs\n"); break;
                case 3: File.Delete(file); File.CreateSymbolicLink(file, "/etc/passwd"); break;
                case 4: Directory.Move(Path.GetDirectoryName(file)!, Path.GetDirectoryName(file) + Pick(random, ["2", " x", "\u001b", "#",
                    "\u00e4"])); break;
                default:
                    if (new FileInfo(file).LinkTarget is null) File.WriteAllBytes(file, new Damage(random, HostileWords.Yaml)
                        .Of(File.ReadAllBytes(file), 1));
                    break;
            }
        }
    }

    private void Commit()
    {
        Git("add", "-A");
        Git("-c", "user.name=x", "-c", "user.email=x@example.org", "-c", "commit.gpgsign=false", "commit", "-q", "--allow-empty", "-m",
            "x");
    }

    private void Git(params string[] arguments)
    {
        var start = new ProcessStartInfo("git") { WorkingDirectory = _scene.Root, RedirectStandardError = true,
            RedirectStandardOutput = true };
        foreach (var a in arguments) start.ArgumentList.Add(a);
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync();
        var error = process.StandardError.ReadToEnd();
        process.WaitForExit();
        if (process.ExitCode != 0) throw new InvalidOperationException($"git {string.Join(' ', arguments)}: {error}{output.Result}");
    }
}
