using System.Text;
using InstallPacket.Packets.Forms;

namespace InstallPacket.Cli.Commands;

/// <summary><c>form</c>: writes the survey form of a firm, one page for a phone on site.</summary>
internal sealed class FormCommand(ITerminal terminal, JobOptions options, string? theme, string? firm, string output)
{
    public int Run()
    {
        if (!Directory.Exists(options.Jobs)) return Refuse($"there is no folder {options.Jobs}");
        if (Directory.Exists(output)) return Refuse($"{output} is a folder; `--out` names a file");
        if (!Directory.Exists(Path.GetDirectoryName(Path.GetFullPath(output)))) return Refuse($"there is no folder for {output}");
        var files = options.Files();
        var names = FirmFile.Names(files);
        var name = firm ?? (names is [var only] && !HasOwn(files) ? only : null);
        if (name is null && names.Count > 1 && !HasOwn(files)) return Refuse($"name the firm with `--firm`: {string.Join(", ", names)}");
        if (name is not null && !names.Contains(name)) return Refuse($"there is no firm {name}; firms: {string.Join(", ", names)}");
        return Write(files, name);
    }

    private int Write(FolderJobFiles files, string? name)
    {
        var findings = new FindingList();
        var said = FirmFile.Read(files, name, findings);
        var library = FormLibrary.Read(files, said, findings);
        options.Printer(files).Print(terminal.Error, findings.Sorted);
        if (findings.AnyStop) return ExitCode.JobFailed;
        var page = FormWriter.Write(library, InstalledData.ThemeUnder(theme));
        File.WriteAllBytes(output, Encoding.UTF8.GetBytes(page));
        terminal.Out.WriteLine($"{output} is written. Put it on the phone and open it in the browser; it needs no network.");
        return ExitCode.Done;
    }

    // A folder that belongs to one firm needs no name for it.
    private static bool HasOwn(FolderJobFiles files) => FirmFile.Read(files, null, new FindingList()) is not null;

    private int Refuse(string problem)
    {
        terminal.Error.WriteLine("installpacket: " + problem);
        return ExitCode.WrongCommandLine;
    }
}
