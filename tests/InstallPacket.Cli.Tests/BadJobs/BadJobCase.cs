namespace InstallPacket.Cli.Tests.BadJobs;

/// <summary>
/// One folder of <c>tests/BadJobs</c>: the base job with the smallest complete difference, and what <c>installpacket check</c> prints.
/// A difference is an <c>edit.txt</c>, whole files that replace those of the base, or both.
/// </summary>
/// <param name="name">The folder's name.</param>
internal sealed class BadJobCase(string name)
{
    private const string Expected = "expected.txt";
    private const string Edit = "edit.txt";
    private readonly string _folder = Path.Combine(Root, name);

    private static string Root => Repository.Path("tests", "BadJobs");

    public static IEnumerable<string> Names => Directory.GetDirectories(Root).Select(d => Path.GetFileName(d)!).Where(n => n[0] != '_').Order(StringComparer.Ordinal);

    /// <summary>The base job itself; its name stands for no difference.</summary>
    public static BadJobCase Base => new("_base");

    /// <summary>What is expected, or nothing when the case is new.</summary>
    public string ExpectedText
    {
        get
        {
            var path = Path.Combine(_folder, Expected);
            return File.Exists(path) ? File.ReadAllText(path).ReplaceLineEndings("\n") : "";
        }
    }

    public void Accept(string actual) => File.WriteAllText(Path.Combine(_folder, Expected), actual);

    /// <summary>Runs the real command on a copy and gives exit code and text, with paths below the jobs folder.</summary>
    public string Run() => On(jobs =>
    {
        var terminal = new TestTerminal();
        var code = new CommandLine(terminal, installed: "").Run(["check", "--jobs", jobs]);
        return $"exit: {code}\n" + terminal.Text.Replace(jobs + "/", "", StringComparison.Ordinal);
    });

    /// <summary>The findings themselves.</summary>
    public IReadOnlyList<Finding> Findings() => On(jobs =>
    {
        var set = PlannedJob.All(new FolderJobFiles(jobs, ""), []);
        return (IReadOnlyList<Finding>)[.. set.SharedFindings, .. set.Jobs.SelectMany(j => j.Findings)];
    });

    private T On<T>(Func<string, T> look)
    {
        var jobs = Path.Combine(Path.GetTempPath(), "installpacket-bad-job-" + Guid.NewGuid().ToString("N"));
        try
        {
            Copy(Path.Combine(Root, "_base"), jobs);
            if (name != "_base") Copy(_folder, jobs);
            var edit = Path.Combine(_folder, Edit);
            if (File.Exists(edit)) new BadJobEdit(jobs).Apply(File.ReadAllText(edit).ReplaceLineEndings("\n"));
            return look(jobs);
        }
        finally
        {
            if (Directory.Exists(jobs)) Directory.Delete(jobs, true);
        }
    }

    private static void Copy(string from, string to)
    {
        foreach (var file in Directory.GetFiles(from, "*", SearchOption.AllDirectories))
        {
            var path = Path.GetRelativePath(from, file);
            if (path is Expected or Edit) continue;
            var target = Path.Combine(to, path);
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target, true);
        }
    }
}
