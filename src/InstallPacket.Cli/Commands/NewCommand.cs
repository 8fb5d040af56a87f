using System.Reflection;

namespace InstallPacket.Cli.Commands;

/// <summary><c>new</c>: writes a complete example job.</summary>
internal sealed class NewCommand(ITerminal terminal, string jobs, string name)
{
    public int Run()
    {
        if (name.Length is 0 or > 60 || !name.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-') || name[0] == '-')
            return Refuse($"`{name}` does not fit as a name: use lower-case letters, digits and hyphens", ExitCode.WrongCommandLine);
        var folder = Path.Combine(jobs, name);
        if (Directory.Exists(folder)) return Refuse($"{folder} is there already; nothing was written", ExitCode.WrongCommandLine);
        Directory.CreateDirectory(folder);
        var path = Path.Combine(folder, "job.yaml");
        SchemaFiles.Write(jobs);
        File.WriteAllText(path, SchemaFiles.OfJob + Example());
        terminal.Out.WriteLine($"{path} is written. Change it line by line; `installpacket check --jobs {jobs} {name}` says what is still missing.");
        return ExitCode.Done;
    }

    /// <summary>The example.</summary>
    public static string Example()
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream("example-job.yaml")!;
        return new StreamReader(stream).ReadToEnd();
    }

    private int Refuse(string problem, int code)
    {
        terminal.Error.WriteLine("installpacket: " + problem);
        return code;
    }
}
