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
        (code, output, error) = Run(jobsFolder, "archive", "--format=tar", commit, "--", ".", ":(exclude,glob)**/*.hgt", ":(exclude,glob)**/*.hgt.zip", ":(exclude,glob)**/*.tif", ":(exclude,glob)**/*.tiff");
        if (code != 0) return (null, error);
        return (new TarJobFiles(new MemoryStream(output), InstalledData.Jobs, new FolderJobFiles(jobsFolder, "")), "");
    }

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
