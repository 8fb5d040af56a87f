using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

/// <summary>A surge protector is bonded by the block that it is screwed to.</summary>
public class ProtectorTests
{
    private const string Job = "alder-lane/job.yaml";

    private static Plan Of(string old, string replacement) => DemoPlans.House("alder-lane", DemoJobs.Load().With(Job, old, replacement));

    [Fact]
    public void Protector_on_the_house_side_of_the_block_is_bonded_and_gets_its_adapter()
    {
        var plan = Of("    I1: { part: power-inserter-12v, at: utility, from: G1, run: R3 }\n",
            "    D1: { part: surge-protector, at: ground-block, from: G1 }\n    I1: { part: power-inserter-12v, at: utility, from: D1, run: R3 }\n");
        Assert.False(plan.Has("surge-unbonded") || plan.Has("surge-before-block"));
        Assert.Equal(1, plan.Materials.Items.Single(i => i.Part == "f-adapter-male").Count);
        Assert.Equal("G1", Assert.Single(plan.Handover.Steps, s => s.Id == "bond-surge").Name);
    }

    [Fact]
    public void Protector_behind_a_run_is_not_bonded_and_gets_none()
    {
        var plan = Of("    I1: { part: power-inserter-12v, at: utility, from: G1, run: R3 }\n",
            "    D1: { part: surge-protector, at: utility, from: G1, run: R3 }\n    I1: { part: power-inserter-12v, at: utility, from: D1 }\n");
        Assert.True(plan.Has("surge-unbonded"));
        Assert.DoesNotContain(plan.Materials.Items, i => i.Part == "f-adapter-male");
        Assert.DoesNotContain(plan.Handover.Steps, s => s.Id == "bond-surge");
    }
}
