using InstallPacket.Cli.Commands;
using InstallPacket.Cli.Console;
using InstallPacket.Cli.Files;
using InstallPacket.Plans;
using InstallPacket.Plans.Json;

namespace InstallPacket.Tests.Fuzz;

/// <summary>A damaged job file: read, planned where it reads, its findings printed.</summary>
internal class JobKind : FuzzKind
{
    /// <summary>The demo jobs.</summary>
    public static readonly string[] Ids = ["alder-lane", "brook-terrace", "far-meadow", "mill-yard", "pine-corner", "quay-loft"];

    private readonly PartLibrary _parts = DemoJobs.Load().Parts();

    protected Scene Scene { get; } = new();

    public override string Depth => "read, plan, findings";

    public override int Share => 100;

    public override int InTests => 60;

    public override void Dispose()
    {
        Scene.Dispose();
        base.Dispose();
    }

    protected override int Try(Random random, ITerminal terminal)
    {
        var id = Pick(random, Ids);
        var path = $"jobs/{id}/job.yaml";
        Scene.Put(path, new Damage(random, HostileWords.Yaml).Of(Scene.Read(path)));
        try
        {
            return Plan(new FolderJobFiles(Scene.Jobs, ""), _parts, id, terminal);
        }
        finally
        {
            Scene.Restore();
        }
    }

    /// <summary>Reads and plans a job as the program does, and prints its findings.</summary>
    protected static int Plan(IJobFiles files, PartLibrary parts, string id, ITerminal terminal)
    {
        var job = PlannedJob.One(files, parts, id);
        new FindingPrinter(files, "jobs/").Print(terminal.Error, job.Findings, job.Units);
        if (job.Plan is { } plan) Promise(PlanJson.Text(PlanJson.Tree(plan)).Length > 0, "the plan is empty");
        else Promise(job.Findings.Any(f => f.Severity == Severity.Stop), "the job is not planned and no finding says why");
        return job.Findings.Any(f => f.Severity == Severity.Stop) ? ExitCode.JobFailed : ExitCode.Done;
    }
}

/// <summary>A job file with other plain numbers, so that many of them are planned: the whole packet is built.</summary>
internal sealed class JobPacketKind : PacketKind
{
    public override string Depth => "whole packet";

    public override int Share => 1;

    public override int InTests => 4;

    protected override int Try(Random random, ITerminal terminal)
    {
        var id = Pick(random, JobKind.Ids);
        var path = $"jobs/{id}/job.yaml";
        Scene.Put(path, new Damage(random, HostileWords.Yaml).Mild(Scene.Read(path)));
        return Build(terminal, id);
    }
}
