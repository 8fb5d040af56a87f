using System.Diagnostics;

namespace InstallPacket.Cli.Files;

/// <summary>Asks git for the jobs folder as it was at a revision.</summary>
internal static class GitRevision
{
    /// <summary>The files at a revision, or the words of git when it refuses.</summary>
    /// <param name="jobsFolder">The jobs folder, inside a git work tree.</param>
    /// <param name="revision">Any name of a commit.</param>
    public static (IJobFiles? Files, string Problem) Read(string jobsFolder, string revision)
    {
        if (revision.Length == 0 || revision[0] == '-') return (null, $"`{revision}` is not a revision");
        var (code, output, error) = Run(jobsFolder, "rev-parse", "--verify", "--quiet", "--end-of-options", revision + "^{commit}");
        if (code != 0) return (null, error.Length > 0 ? error : $"git knows no revision `{revision}` in {jobsFolder}");
        var commit = System.Text.Encoding.ASCII.GetString(output).Trim();
        (code, output, error) = Run(jobsFolder, "archive", "--format=tar", commit, "--", ".", ":(exclude,glob)**/*.hgt",
            ":(exclude,glob)**/*.hgt.zip", ":(exclude,glob)**/*.tif", ":(exclude,glob)**/*.tiff");
        if (code != 0) return (null, error);
        return (new TarJobFiles(new MemoryStream(output), InstalledData.Jobs, new FolderJobFiles(jobsFolder, "")), "");
    }

    /// <summary>Files of a folder that differ from a revision, new ones too.</summary>
    /// <param name="folder">A folder inside a git work tree.</param>
    /// <param name="revision">A commit that git knows.</param>
    public static IReadOnlyList<string> Changed(string folder, string revision)
    {
        var changed = Run(folder, "diff", "--name-only", "--relative", "--no-ext-diff", "--no-textconv", revision, "--", ".");
        var added = Run(folder, "ls-files", "--others", "--exclude-standard", "--", ".");
        return [.. Lines(changed.Output).Concat(Lines(added.Output)).Order(StringComparer.Ordinal)];
    }

    private static string[] Lines(byte[] output) =>
        System.Text.Encoding.UTF8.GetString(output).Split('\n', StringSplitOptions.RemoveEmptyEntries);

    private static (int Code, byte[] Output, string Error) Run(string folder, params string[] arguments)
    {
        var start = new ProcessStartInfo("git") { WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var a in arguments) start.ArgumentList.Add(a);
        try
        {
            using var process = Process.Start(start)!;
            var error = process.StandardError.ReadToEndAsync();
            var output = new MemoryStream();
            process.StandardOutput.BaseStream.CopyTo(output);
            process.WaitForExit();
            return (process.ExitCode, output.ToArray(), error.Result.Trim());
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return (1, [], "git is not installed");
        }
    }
}
