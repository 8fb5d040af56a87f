using System.Text;

namespace InstallPacket.Cli.Files;

/// <summary>
/// The author's files in a folder. The generic parts and kits that are installed with the program are seen beside them, below
/// <c>_generic</c>.
/// </summary>
/// <param name="folder">The jobs folder.</param>
/// <param name="installed">The folder that holds the installed <c>_shared</c>; empty for none.</param>
internal sealed class FolderJobFiles(string folder, string installed) : IJobFiles
{
    private static readonly UTF8Encoding Strict = new(false, true);

    public JobFile Read(string path, int maxBytes)
    {
        if (SharedFolder.IsGeneric(path)) return Installed(path, maxBytes);
        var (root, full) = (folder, FullPath(folder, path));
        try
        {
            if (!File.Exists(full)) return new(path, FileState.Absent, "");
            if (LeadsOut(root, full)) return new(path, FileState.Outside, "");
            var length = new FileInfo(full).Length;
            if (length > maxBytes) return new(path, FileState.TooLarge, "");
            // A pipe or a device has no length, and reading it might never end.
            if (length == 0) return new(path, FileState.Present, "");
            var bytes = File.ReadAllBytes(full);
            var start = bytes.AsSpan().StartsWith("\uFEFF"u8) ? 3 : 0;
            return new(path, FileState.Present, Strict.GetString(bytes, start, bytes.Length - start).ReplaceLineEndings("\n"));
        }
        catch (DecoderFallbackException)
        {
            return new(path, FileState.NotText, "");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new(path, FileState.Absent, "");
        }
    }

    public Stream? Open(string path)
    {
        var full = FullPath(folder, path);
        try
        {
            return File.Exists(full) && !LeadsOut(folder, full) && new FileInfo(full).Length > 0
                ? new FileStream(full, FileMode.Open, FileAccess.Read, FileShare.Read, 1, FileOptions.RandomAccess) : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    public IReadOnlyList<string> List(string below)
    {
        if (!SharedFolder.IsGeneric(below)) return [.. Below(folder, below).Where(p => !SharedFolder.IsGeneric(p))];
        return installed.Length == 0 ? []
            : [.. Below(installed, SharedFolder.Installed(below)).Select(p => SharedFolder.Generic + p[SharedFolder.Own.Length..])];
    }

    private JobFile Installed(string path, int maxBytes) => installed.Length == 0 ? new(path, FileState.Absent, "")
        : new FolderJobFiles(installed, "").Read(SharedFolder.Installed(path), maxBytes) with { Path = path };

    /// <summary>The symbolic links in the folder, which are not followed: a job must not reach other files of the machine.</summary>
    public IReadOnlyList<string> Links()
    {
        var options = new EnumerationOptions { RecurseSubdirectories = true, MaxRecursionDepth = 4,
            AttributesToSkip = FileAttributes.System };
        var all = new System.IO.Enumeration.FileSystemEnumerable<string>(folder, (ref System.IO.Enumeration.FileSystemEntry e) =>
            e.ToFullPath(), options)
        {
            ShouldIncludePredicate = (ref System.IO.Enumeration.FileSystemEntry e) => e.Attributes.HasFlag(FileAttributes.ReparsePoint),
            ShouldRecursePredicate = (ref System.IO.Enumeration.FileSystemEntry e) => !e.Attributes.HasFlag(FileAttributes.ReparsePoint),
        };
        return [.. all.Select(p => Path.GetRelativePath(folder, p).Replace('\\', '/')).Order(StringComparer.Ordinal)];
    }

    private static List<string> Below(string root, string below)
    {
        var full = FullPath(root, below);
        if (!Directory.Exists(full)) return [];
        var options = new EnumerationOptions { RecurseSubdirectories = true, MaxRecursionDepth = 4,
            AttributesToSkip = FileAttributes.ReparsePoint | FileAttributes.System };
        return [.. Directory.EnumerateFiles(full, "*", options).Select(p =>
            Path.GetRelativePath(root, p).Replace('\\', '/')).Order(StringComparer.Ordinal)];
    }

    private static string FullPath(string root, string path) => Path.GetFullPath(Path.Combine(root, path.Length == 0 ? "." : path));

    // A link in the jobs folder must not reach other files of the machine.
    private static bool LeadsOut(string root, string full)
    {
        if (new FileInfo(full).LinkTarget is not null) return true;
        var top = Path.GetFullPath(root).TrimEnd(Path.DirectorySeparatorChar);
        for (var at = Directory.GetParent(full); at is not null && at.FullName.Length > top.Length; at = at.Parent)
            if (at.LinkTarget is not null) return true;
        return false;
    }
}
