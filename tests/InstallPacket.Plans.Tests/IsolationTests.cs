using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

/// <summary>Dwellings that share a tree are kept apart by what lies between their outlets.</summary>
public class IsolationTests
{
    private const string Job = "mill-yard/job.yaml";
    private const string Passives = "_shared/parts/passives.yaml";

    [Fact]
    public void Looped_outlets_and_the_splitter_keep_the_dwellings_apart()
    {
        var plan = DemoPlans.Of("mill-yard");
        var least = plan.Cabling.Isolation.Single(i => i.Between == "dwellings");
        // Below one splitter: its 20 dB, twice 1 dB on and 10 dB to the socket make 42 dB with no cable at all.
        Assert.InRange(least.IsolationDb, 42, 55);
        Assert.Equal(42, least.LeastDb);
        Assert.False(plan.Has("isolation-low") || plan.Has("isolation-unknown"));
    }

    [Fact]
    public void Plain_wall_plates_on_a_splitter_are_not_enough_for_two_dwellings_and_enough_for_one()
    {
        static DemoJobs Plain() => DemoJobs.Load().With(Job, "outlet-loop-14, at: upper-1", "outlet-loop-1, at: upper-1").With(Job, "outlet-loop-14, at: upper-2", "outlet-loop-1, at: upper-2")
            .With(Passives, "  outlet-loop-10:\n", "  outlet-loop-1:\n    kind: outlet\n    name: Wall outlet that passes on\n    loss: 1 dB\n    port-losses: [1.0 dB]\n    isolation: 42 dB\n    provenance: { loss: memory, port-losses: memory, isolation: memory }\n  outlet-loop-10:\n");
        var finding = DemoPlans.Of("mill-yard", Plain()).Finding("isolation-low");
        Assert.Equal(("U1", "U2"), ((string)finding.Values["one"]!, (string)finding.Values["other"]!));
        Assert.InRange((double)finding.Values["isolation_db"]!, 22, 42);
        var one = Plain();
        for (var i = 1; i <= 8; i++) one = one.With(Job, $"dwelling: \"{i}\", ", "");
        Assert.False(DemoPlans.Of("mill-yard", one).Has("isolation-low"));
    }

    [Fact]
    public void Outlet_that_passes_on_at_the_end_of_its_line_gets_a_terminator_and_a_step()
    {
        var plan = DemoPlans.House("mill-yard", DemoJobs.Load().With(Job, "L1: { part: outlet-end-10,", "L1: { part: outlet-loop-10,"));
        Assert.Equal("L1", plan.Finding("loop-open").Values["element"]);
        Assert.Equal([1], plan.Cabling.Elements.Single(e => e.Id == "L1").OpenPorts);
        Assert.Contains("L1", plan.Materials.Items.Single(i => i.Part == "terminator-75").For);
        Assert.Equal("L1", Assert.Single(plan.Handover.Steps, s => s.Id == "loop-end").Subject);
        Assert.False(DemoPlans.House("mill-yard").Has("loop-open"));
    }

    [Fact]
    public void Amplifier_in_a_branch_takes_its_gain_from_the_isolation()
    {
        static IsolationPlan Of(string before) => DemoPlans.Of("mill-yard", DemoJobs.Load()
            .With(Job, "    U1: { part: outlet-loop-14, at: upper-1, from: S1.1, run: R3,", before)).Cabling.Isolation.Single(i => i.Between == "dwellings");
        var plain = DemoPlans.Of("mill-yard").Cabling.Isolation.Single(i => i.Between == "dwellings");
        var raised = Of("    D2: { part: indoor-amplifier-15, at: attic-board, from: S1.1 }\n    U1: { part: outlet-loop-14, at: upper-1, from: D2, run: R3,");
        Assert.True(raised.IsolationDb < plain.IsolationDb - 5);
        Assert.Contains(raised.One, new[] { "U1", "L1" });
    }
}
