using InstallPacket.Cli.Console;
using InstallPacket.Cli.Files;

namespace InstallPacket.Tests.Fuzz;

/// <summary>A damaged file of shared parts: all parts are read, then a job that uses them is planned.</summary>
internal sealed class PartKind : JobKind
{
    private static readonly string[] Shared = ["actives", "antennas", "cables", "hardware", "passives"];

    public override int Share => 10;

    public override int InTests => 15;

    protected override int Try(Random random, ITerminal terminal)
    {
        var path = $"jobs/_shared/parts/{Pick(random, Shared)}.yaml";
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
