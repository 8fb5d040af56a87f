using System.Runtime.InteropServices;
using System.Text;
using InstallPacket.Cli.Console;

namespace InstallPacket.Tests.Fuzz;

/// <summary>Files and folders that something else stands in the place of: folders, links, pipes, strange names, foreign output.</summary>
internal sealed class FolderKind : PacketKind
{
    private static readonly string[] Places =
    [
        "jobs/{0}/job.yaml", "jobs/{0}", "jobs/{0}/notes.yaml", "jobs/_shared", "jobs/_shared/parts", "jobs/_shared/parts/cables.yaml",
        "jobs/_shared/stations", "jobs/_shared/stations/lindmark.csv",
        "jobs/_shared/stations/tamarack.csv", "jobs/more", "theme/templates", "theme/templates/crew.md.liquid", "theme/words",
        "theme/words/en-US.yaml", "theme/documents.yaml", "theme/fonts", "theme/style/packet.css",
        "out", "out/{0}", "out/{0}/packet.json", "out/{0}/crew.pdf", "out/index.html", "out/fonts",
        "out/fonts/SourceSans3-Regular.ttf.woff2", "out/.installpacket", "out/.installpacket-work",
        "out/.installpacket-work/old/{0}", "out/.installpacket-work/new/{0}", "out/.installpacket-tiles",
    ];

    private static readonly string[] Names = ["a b", "#", "50%", "\u001b[31m", "x\ny", "\u202E", "\uFFFD", "index.html", "fonts", "-x",
        "..x", "~", "con", "a\\b", "'", "\"", "&lt;", new('n', 255)];

    public override string Depth => "whole packet";

    public override int Share => 1;

    public override int InTests => 9;

    protected override int Try(Random random, ITerminal terminal)
    {
        var id = Pick(random, JobKind.Ids);
        Directory.CreateDirectory(Scene.Full("elsewhere/deep"));
        File.WriteAllText(Scene.Full("elsewhere/mine.txt"), "mine");
        File.WriteAllText(Scene.Full("elsewhere/deep/mine.txt"), "mine");
        if (random.Next(2) == 0) OutputOf(id, random);
        for (var left = 1 + random.Next(3); left > 0; left--) Replace(string.Format(null, Pick(random, Places), id), random);
        if (random.Next(4) == 0 && Directory.Exists(Scene.Full("jobs/" + id)))
        {
            var name = Pick(random, Names);
            if (!Path.Exists(Scene.Full("jobs/" + name))) Directory.Move(Scene.Full("jobs/" + id), Scene.Full("jobs/" + name));
            id = name;
        }
        return Build(terminal, id, anew: true);
    }

    // An output folder as an earlier run leaves it, sound or not.
    private void OutputOf(string id, Random random)
    {
        Write($"out/{id}/crew.pdf", "old");
        Write($"out/{id}/packet.json", random.Next(2) == 0 ? "{\"inputs\":\"x\",\"files\":[{\"path\":\"../../elsewhere/mine.txt\",\"size\":4,\"sha256\":\"x\"}]}"
            : Encoding.Latin1.GetString(new Damage(random, HostileWords.Yaml)
                .Of("{\"inputs\": \"x\", \"title\": \"t\", \"files\": [{\"path\": \"crew.pdf\", \"size\": 3, \"sha256\": \"x\"}]}"u8.ToArray())));
        Write("out/.installpacket", "");
    }

    private void Replace(string path, Random random)
    {
        var full = Scene.Full(path);
        if (random.Next(4) > 0) Remove(full);
        // A link on the way would lead the damage itself out of the scene's own places.
        for (var at = new DirectoryInfo(full).Parent!; at.FullName.Length > Scene.Root.Length; at = at.Parent!)
            if (at.LinkTarget is not null || File.Exists(at.FullName)) return;
        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
        if (Path.Exists(full) || new FileInfo(full).LinkTarget is not null) return;
        switch (random.Next(9))
        {
            case 0: Directory.CreateDirectory(full); break;
            case 1: File.WriteAllText(full, ""); break;
            case 2: File.WriteAllBytes(full, new Damage(random, HostileWords.Yaml).Of("x: y"u8.ToArray())); break;
            case 3: File.CreateSymbolicLink(full, Scene.Full("elsewhere/mine.txt")); break;
            case 4: File.CreateSymbolicLink(full, Scene.Full("elsewhere")); break;
            case 5: File.CreateSymbolicLink(full, "/nowhere/at/all"); break;
            case 6: File.CreateSymbolicLink(full, full); break;
            case 7: Pipe(full); break;
            default: Write(path + "/deep/er/x.txt", "x"); break;
        }
    }

    private static void Remove(string full)
    {
        if (new FileInfo(full) is { LinkTarget: not null } link) link.Delete();
        else if (Directory.Exists(full)) Directory.Delete(full, true);
        else if (File.Exists(full)) File.Delete(full);
    }

    private void Write(string path, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Scene.Full(path))!);
        File.WriteAllText(Scene.Full(path), text);
    }

    private static void Pipe(string full)
    {
        if (!OperatingSystem.IsWindows()) _ = MakePipe(full, 0x1B6);
    }

    [DllImport("libc", EntryPoint = "mkfifo", CharSet = CharSet.Ansi, BestFitMapping = false, ThrowOnUnmappableChar = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int MakePipe(string path, uint mode);
}
