using InstallPacket.Cli.Console;
using InstallPacket.Cli.Files;

namespace InstallPacket.Tests.Fuzz;

/// <summary>A damaged shared file (parts, a firm, kits): all parts are read, then a job is planned.</summary>
internal sealed class PartKind : JobKind
{
    private readonly string[] _shared;

    public PartKind() => _shared = [.. Directory.EnumerateFiles(Scene.Full("jobs/_shared"), "*.yaml", SearchOption.AllDirectories)
        .Select(p => Path.GetRelativePath(Scene.Root, p).Replace('\\', '/')).Order(StringComparer.Ordinal)];

    public override int Share => 10;

    public override int InTests => 8;

    protected override int Try(Random random, ITerminal terminal)
    {
        var path = Pick(random, _shared);
        Scene.Put(path, new Damage(random, HostileWords.Yaml).Of(Scene.Read(path)));
        try
        {
            var files = new FolderJobFiles(Scene.Jobs, "");
            var findings = new FindingList();
            var parts = PartLibraryReader.Read(files, findings);
            new FindingPrinter(files, "jobs/").Print(terminal.Error, findings.Sorted);
            var code = Plan(files, parts, Pick(random, Ids), terminal);
            return findings.AnyStop ? 1 : code;
        }
        finally
        {
            Scene.Restore();
        }
    }
}
