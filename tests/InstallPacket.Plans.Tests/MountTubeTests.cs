using System.Globalization;
using InstallPacket.Calc.Mounting;
using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

/// <summary>The tube that a finding names really bears the mast.</summary>
public class MountTubeTests
{
    private const string Mill = "mill-yard/job.yaml";

    [Fact]
    public void The_named_tube_stays_below_its_limit_when_it_is_planned()
    {
        var tube = MastTubes.All.Single(t => t.Name == (string?)DemoPlans.House("mill-yard").Finding("mast-near-limit").Values["stronger"]);
        string Mm(double metres) => (1000 * metres).ToString(CultureInfo.InvariantCulture) + " mm";
        var jobs = DemoJobs.Load().With("_shared/parts/hardware.yaml", "    diameter: 50 mm\n    wall: 2 mm\n", $"    diameter: {Mm(tube.Section.OuterM)}\n    wall: {Mm(tube.Section.WallM)}\n");
        var plan = DemoPlans.House("mill-yard", jobs);
        Assert.InRange(plan.Mounting.Wind!.UseShare, 0, 0.81);
        Assert.False(plan.Has("mast-overstressed"));
    }

    [Fact]
    public void A_mast_that_no_tube_bears_names_none()
    {
        var plan = DemoPlans.House("mill-yard", DemoJobs.Load().With(Mill, "speed: 24 m/s", "speed: 110 m/s"));
        Assert.Null(plan.Finding("mast-overstressed").Values["stronger"]);
    }
}
