using InstallPacket.Packets;

namespace InstallPacket.Cli.Files;

/// <summary>
/// Writes packets so that a reader never sees half of one: the new packet is written and flushed in a folder of the program, and takes the
/// place
/// of the old one in two renames; if the program dies between them, the next run puts the old packet back. One run at a time works in an
/// output
/// folder. Only what the program wrote itself is ever moved or deleted.
/// </summary>
internal sealed class OutputFolder : IDisposable
{
    /// <summary>Marks an output folder, and is the lock of the run that works in it.</summary>
    public const string Mark = ".installpacket";

    private const string Work = ".installpacket-work";
    private const string MarkText = "This folder is written by installpacket: the packets in it are replaced when their jobs change.\n";
    private const string Tiles = ".installpacket-tiles";
    private static readonly string[] Known = [Mark, Work, Tiles, "index.html", "fonts"];
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(100);
    private readonly string _root;
    private readonly FileStream _lock;

    private OutputFolder(string root, FileStream held) => (_root, _lock) = (root, held);

    private string New => Path.Combine(_root, Work, "new");

    private string Old => Path.Combine(_root, Work, "old");

    /// <summary>Opens an output folder for this run, and clears up after one that was killed.</summary>
    /// <param name="root">The folder; it is made where it is missing.</param>
    /// <param name="patience">How long a run that is under way there is waited for.</param>
    /// <exception cref="OutputException">It belongs to somebody else, is in use, or cannot be written.</exception>
    public static OutputFolder Open(string root, TimeSpan patience)
    {
        if (File.Exists(root)) throw new OutputException($"{root} is a file; --out names a folder");
        if (!IsOurs(root))
            throw new OutputException($"{root} is not empty, and nothing in it says that it is an output folder; it is left alone. Name an empty or new folder with --out");
        Directory.CreateDirectory(root);
        RefuseLink(new FileInfo(Path.Combine(root, Mark)));
        var folder = new OutputFolder(root, Locked(Path.Combine(root, Mark), patience));
        folder.Recover();
        return folder;
    }

    /// <summary>The file that keeps hashes of elevation tiles.</summary>
    public string TileStore => Path.Combine(_root, Tiles);

    /// <summary>Whether a job may not be called so, because the output folder has a file of its own by that name.</summary>
    public static bool Takes(string id) => Known.Contains(id, StringComparer.OrdinalIgnoreCase);

    /// <summary>The folder of one packet.</summary>
    public string PacketFolder(string id) => Path.Combine(_root, id);

    /// <summary>Whether a folder or file of that name is there that no packet was ever written into.</summary>
    public bool IsForeign(string id)
    {
        var place = PacketFolder(id);
        if (File.Exists(place) || new DirectoryInfo(place).LinkTarget is not null) return true;
        return Directory.Exists(place) && PacketManifest.Of(place) is null && Directory.EnumerateFileSystemEntries(place).Any();
    }

    /// <summary>Replaces a packet. Files that somebody else put into its folder stay in it.</summary>
    /// <param name="id">The job.</param>
    /// <param name="files">The files of the packet.</param>
    /// <param name="manifest">What says so.</param>
    public void Write(string id, IReadOnlyList<OutputFile> files, PacketManifest manifest)
    {
        var (half, place, old) = (Path.Combine(New, id), PacketFolder(id), Path.Combine(Old, id));
        if (Directory.Exists(half)) Directory.Delete(half, true);
        foreach (var file in files) Put(Path.Combine(half, file.Path), file.Bytes);
        Put(Path.Combine(half, PacketManifest.FileName), System.Text.Encoding.UTF8.GetBytes(manifest.Text()));
        if (Directory.Exists(place))
        {
            KeepOthers(place, half);
            Directory.CreateDirectory(Old);
            if (Directory.Exists(old)) Directory.Delete(old, true);
            Directory.Move(place, old);
        }
        Directory.Move(half, place);
        if (Directory.Exists(old)) Directory.Delete(old, true);
    }

    /// <summary>Replaces a single file of the output folder, unless it has these bytes already.</summary>
    public void WriteFile(OutputFile file)
    {
        if (ManifestFile.Of(file).IsIn(_root)) return;
        var (path, half) = (Path.Combine(_root, file.Path), Path.Combine(New, "file"));
        var folder = new DirectoryInfo(Path.GetDirectoryName(path)!);
        if (folder.FullName != Path.GetFullPath(_root).TrimEnd(Path.DirectorySeparatorChar)) RefuseLink(folder);
        folder.Create();
        Put(half, file.Bytes);
        File.Move(half, path, true);
    }

    /// <summary>Ends the run.</summary>
    public void Dispose()
    {
        if (Directory.Exists(Path.Combine(_root, Work))) TryDelete(Path.Combine(_root, Work));
        _lock.Dispose();
    }

    // Empty or new; marked; or written before there was a mark: then each folder in it is a packet.
    private static bool IsOurs(string root)
    {
        if (!Directory.Exists(root) || File.Exists(Path.Combine(root, Mark))) return true;
        var entries = Directory.GetFileSystemEntries(root);
        return entries.Length == 0 || entries.All(e => Known.Contains(Path.GetFileName(e)) || PacketManifest.Of(e) is not null)
            && entries.Any(e => PacketManifest.Of(e) is not null);
    }

    private static FileStream Locked(string path, TimeSpan patience)
    {
        for (var left = patience; ; left -= Pause)
        {
            try
            {
                var held = new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
                if (!held.CanSeek)
                {
                    held.Dispose();
                    throw new OutputException($"{path} is no file; remove it and run again");
                }
                if (held.Length == 0) held.Write(System.Text.Encoding.UTF8.GetBytes(MarkText));
                held.Flush(true);
                return held;
            }
            catch (IOException e) when (e.HResult is SharingViolation or WouldBlock or WouldBlockMac)
            {
                if (left <= TimeSpan.Zero)
                    throw new OutputException($"another run is writing into {Path.GetDirectoryName(path)}; start this one again when it has ended", e);
                Thread.Sleep(Pause);
            }
        }
    }

    private const int SharingViolation = unchecked((int)0x80070020);
    private const int WouldBlock = 11;
    private const int WouldBlockMac = 35;

    // What a link below the output folder leads to is somebody else's.
    private static void RefuseLink(FileSystemInfo entry)
    {
        if (entry.LinkTarget is not null)
            throw new OutputException($"{entry.FullName} is a link; nothing is written through it. Remove it and run again");
    }

    private void Recover()
    {
        // A link in the place of the work folder would make somebody else's folders look like packets.
        if (new DirectoryInfo(Path.Combine(_root, Work)) is { LinkTarget: not null } link) link.Delete();
        if (Directory.Exists(Old))
            foreach (var old in Directory.GetDirectories(Old))
            {
                var place = PacketFolder(Path.GetFileName(old));
                if (!Directory.Exists(place) && PacketManifest.Of(old) is not null) Directory.Move(old, place);
            }
        if (Directory.Exists(Path.Combine(_root, Work))) Directory.Delete(Path.Combine(_root, Work), true);
    }

    private static void KeepOthers(string place, string half)
    {
        var own = (PacketManifest.Of(place)?.Files ?? []).Select(f =>
            f.Path).Append(PacketManifest.FileName).ToHashSet(StringComparer.Ordinal);
        if (own.Count == 1) return; // an older manifest names no files: all of them are the program's
        foreach (var file in Directory.EnumerateFiles(place, "*", SearchOption.AllDirectories))
        {
            var path = Path.GetRelativePath(place, file).Replace('\\', '/');
            var kept = Path.Combine(half, path);
            if (own.Contains(path) || File.Exists(kept)) continue;
            Directory.CreateDirectory(Path.GetDirectoryName(kept)!);
            File.Copy(file, kept);
        }
    }

    private static void Put(string path, byte[] bytes)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        using var stream = new FileStream(path, FileMode.Create, FileAccess.Write, FileShare.None, 1);
        stream.Write(bytes);
        stream.Flush(true);
    }

    private static void TryDelete(string folder)
    {
        try
        {
            Directory.Delete(folder, true);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // The next run clears it.
        }
    }
}

/// <summary>The output folder cannot be used; the message says why and what to do.</summary>
internal sealed class OutputException(string message, Exception? cause = null) : Exception(message, cause);
