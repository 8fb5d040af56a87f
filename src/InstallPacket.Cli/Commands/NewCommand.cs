using System.Globalization;
using System.Reflection;

namespace InstallPacket.Cli.Commands;

/// <summary>What <c>new</c> was told on the command line; null where it was not.</summary>
internal sealed record NewOptions(string Jobs, string? Name, string? Family, string? Mount, string? Cable, int? Outlets, bool FirmFolder, string? Firm, bool Example)
{
    /// <summary>Whether nothing was said of the kind of job.</summary>
    public bool Silent => Family is null && Mount is null && Cable is null && Outlets is null && !Example;
}

/// <summary><c>new</c>: writes the shortest complete job of a kind, or lays out a firm's folder.</summary>
internal sealed class NewCommand(ITerminal terminal, NewOptions options)
{
    private const string JobCode = "code";

    public int Run()
    {
        if (options.Name is null) return options.FirmFolder ? Firm() : Refuse("`new` needs the NAME of a job; `new --firm` lays out a folder for a firm", ExitCode.WrongCommandLine);
        var name = options.Name;
        if (name.Length is 0 or > 60 || !name.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-') || name[0] == '-')
            return Refuse($"`{name}` does not fit as a name: use lower-case letters, digits and hyphens", ExitCode.WrongCommandLine);
        var folder = Path.Combine(options.Jobs, name);
        if (Directory.Exists(folder)) return Refuse($"{folder} is there already; nothing was written", ExitCode.WrongCommandLine);
        if (Problem() is { Length: > 0 } problem) return Refuse(problem, ExitCode.WrongCommandLine);
        var text = options.Example ? Example() : new JobSketch(Asked()).Text();
        Directory.CreateDirectory(folder);
        var path = Path.Combine(folder, "job.yaml");
        SchemaFiles.Write(options.Jobs);
        File.WriteAllText(path, SchemaFiles.OfJob + text);
        terminal.Out.WriteLine($"{path} is written. Change it line by line; `installpacket check --jobs {options.Jobs} {name}` says what is still missing.");
        return ExitCode.Done;
    }

    /// <summary>The complete example with remarks.</summary>
    public static string Example()
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream("example-job.yaml")!;
        return new StreamReader(stream).ReadToEnd();
    }

    private string Problem()
    {
        if (options.Family is { } family && !JobKindAsked.Families.Contains(family)) return $"`--family {family}`: one of {string.Join(", ", JobKindAsked.Families)}";
        if (options.Mount is { } mount && !JobKindAsked.Mounts.Contains(mount)) return $"`--mount {mount}`: one of {string.Join(", ", JobKindAsked.Mounts)}";
        if (options.Cable is { } cable && cable is not ("new" or "existing")) return $"`--cable {cable}`: new or existing";
        if (options.Outlets is < 1 or > JobKindAsked.MostOutlets) return string.Create(CultureInfo.InvariantCulture, $"`--outlets {options.Outlets}`: 1 to {JobKindAsked.MostOutlets}");
        return options.Firm is { } firm && !File.Exists(PathOf(firm)) ? $"there is no file {PathOf(firm)}" : "";
    }

    private string PathOf(string firm) => Path.Combine(options.Jobs, "_shared", "firms", firm + ".yaml");

    private JobKindAsked Asked()
    {
        var ask = options.Silent && terminal.In is not null;
        var hasFirm = options.Firm is not null || File.Exists(Path.Combine(options.Jobs, "_shared", "firm.yaml"));
        var family = options.Family ?? (hasFirm ? FamilyOfFirm() : null) ?? (ask ? Choice("Code family", JobKindAsked.Families) : "us");
        var mount = options.Mount ?? (ask ? Choice("Where does the antenna go", JobKindAsked.Mounts) : "eave");
        if (mount == "desk") return new(family, mount, false, 1, hasFirm, options.Firm);
        var cable = options.Cable ?? (ask ? Choice("Cable in the house", ["new", "existing"]) : "new");
        var outlets = options.Outlets ?? (ask ? int.Parse(Choice("Outlets", [.. Enumerable.Range(1, JobKindAsked.MostOutlets).Select(n => n.ToString(CultureInfo.InvariantCulture))]), CultureInfo.InvariantCulture) : 2);
        return new(family, mount, cable == "existing", outlets, hasFirm, options.Firm);
    }

    private string? FamilyOfFirm()
    {
        var code = FirmFile.Read(new FolderJobFiles(options.Jobs, InstalledData.Jobs), options.Firm, new FindingList())?.Of(JobCode);
        return JobKindAsked.Families.Contains(code) ? code : null;
    }

    // The first word is taken when nothing is typed; what is none of them is asked again.
    private string Choice(string question, string[] words)
    {
        while (true)
        {
            terminal.Out.Write($"{question} ({string.Join(", ", words)}) [{words[0]}]: ");
            var answer = terminal.In!.ReadLine()?.Trim() ?? "";
            if (answer.Length == 0) return words[0];
            if (words.Contains(answer)) return answer;
        }
    }

    private int Firm()
    {
        if (Problem() is { Length: > 0 } problem) return Refuse(problem, ExitCode.WrongCommandLine);
        var path = Path.Combine(options.Jobs, "_shared", "firm.yaml");
        if (File.Exists(path)) return Refuse($"{path} is there already; nothing was written", ExitCode.WrongCommandLine);
        foreach (var folder in new[] { "kits", "parts", "stations", "terrain" }) Directory.CreateDirectory(Path.Combine(options.Jobs, "_shared", folder));
        SchemaFiles.Write(options.Jobs);
        File.WriteAllText(path, SchemaFiles.OfFirm + JobSketch.Firm(options.Family ?? "us"));
        terminal.Out.WriteLine($"{path} is written: say there what the firm always does. `installpacket new NAME --jobs {options.Jobs}` begins a job.");
        return ExitCode.Done;
    }

    private int Refuse(string problem, int code)
    {
        terminal.Error.WriteLine("installpacket: " + problem);
        return code;
    }
}
