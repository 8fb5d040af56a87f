using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

/// <summary>Screws in timber: ends, gaps, threads, thin wood screws.</summary>
public class MountScrewTests
{
    private const string Alder = "alder-lane/job.yaml";
    private const string Parts = "_shared/parts/hardware.yaml";
    private const double Plate = 0.003;

    private static Plan Fixing(string old, string with) => DemoPlans.House("alder-lane", DemoJobs.Load().With(Alder, old, with));

    // The full value needs seven diameters, 2 3/16 in.
    [Fact]
    public void A_screw_near_the_end_of_the_timber_bears_less_shear_and_the_same_pull()
    {
        var (full, near) = (DemoPlans.House("alder-lane"), Fixing("end-distance: 4 in", "end-distance: 1 1/2 in"));
        Assert.Equal(1.5 / (7 * 0.3125), near.Result("lateral-adjusted") / full.Result("lateral-adjusted"), 9);
        Assert.Equal(full.Result("withdrawal-adjusted"), near.Result("withdrawal-adjusted"), 9);
        Assert.False(near.Has("fixing-too-near"));
        Assert.True(Fixing("end-distance: 4 in", "end-distance: 1 in").Has("fixing-too-near"));
    }

    [Fact]
    public void A_gap_shortens_the_thread_and_makes_a_lever_of_the_screw()
    {
        var (tight, gap) = (DemoPlans.House("alder-lane"), Fixing("edge-distance: 1 3/4 in", "edge-distance: 1 3/4 in, gap: 1 1/2 in"));
        var left = 3.5 - Plate / MountHand.Inch - 1.5 - 0.1875;
        Assert.Equal(left / 2.0625, gap.Result("withdrawal-adjusted") / tight.Result("withdrawal-adjusted"), 9);
        var plain = MountHand.Lag516Shear(0.42, Plate, 1.5 * MountHand.Inch);
        Assert.Equal(plain, gap.Result("lag-lateral"), 6);
        Assert.Equal(plain * left / (8 * 0.3125) * 1.6 * 0.7, gap.Result("lateral-adjusted"), 6);
        Assert.InRange(plain / tight.Result("lag-lateral"), 0.1, 0.5);
        Assert.True(gap.Check("fixing", "along").UseShare > tight.Check("fixing", "along").UseShare);
    }

    [Fact]
    public void A_stated_thread_goes_before_the_standard_one()
    {
        var jobs = DemoJobs.Load().With(Parts, "    length: 3 1/2 in\n    torque: 10 lbf ft\n    provenance: { ", "    length: 3 1/2 in\n    thread: 1 1/2 in\n    torque: 10 lbf ft\n    provenance: { thread: \"memory: m\", ");
        Assert.Equal((1.5 - 0.1875) / 2.0625, DemoPlans.House("alder-lane", jobs).Result("withdrawal-adjusted") / DemoPlans.Of("alder-lane").Result("withdrawal-adjusted"), 9);
    }

    private static Plan Thin(string diameter, string length, string more = "") => DemoPlans.House("alder-lane", DemoJobs.Load()
        .With(Parts, "    form: lag-screw\n    diameter: 5/16 in\n    length: 3 1/2 in\n    torque: 10 lbf ft\n    provenance: { ", $"    form: wood-screw\n    diameter: {diameter}\n    length: {length}\n    thread: 2 in\n    torque: 10 lbf ft\n    provenance: {{ thread: \"memory: m\", ")
        .With(Alder, "pilot: 3/16 in, into: \"4x4 blocking between the gable studs", $"pilot: 1/8 in{more}, into: \"4x4 blocking between the gable studs"));

    // 2850 G^2 D a pound an inch; Fe = 16600 G^1.84; root 0.152 in, 80 000 psi, reduction 2.2; tip of two diameters not counted.
    [Fact]
    public void A_thin_wood_screw_follows_step_by_step()
    {
        var plan = Thin("0.190 in", "3 in");
        var pull = 2850 * 0.42 * 0.42 * 0.190 * (2 - 0.380) * MountHand.Pound * 1.6 * 0.7;
        Assert.Equal(pull, plan.Result("withdrawal-adjusted"), 6);
        var shear = MountHand.Shear(0.152, 80000, 16600 * Math.Pow(0.42, 1.84), Plate / MountHand.Inch, 10 * 0.190, 0, 2.2) * 1.6 * 0.7;
        Assert.Equal(shear, plan.Result("wood-screw-lateral-adjusted"), 6);
        var check = plan.Check("fixing", "along");
        Assert.Equal("memory", check.Provenance);
        Assert.Equal(MountHand.Together(check.PullN!.Value, check.ShearN!.Value, pull, shear), check.BearsN!.Value, 6);
    }

    // Seven diameters in the timber of ten for the full value; then less than the six that it needs.
    [Fact]
    public void A_thin_wood_screw_that_does_not_reach_deep_bears_less_and_then_nothing()
    {
        var (deep, shallow) = (Thin("0.190 in", "3 in"), Thin("0.190 in", "3 in", ", gap: 1.1719 in"));
        var depth = 3 - Plate / MountHand.Inch - 1.1719 - 0.380;
        Assert.InRange(depth / 0.190, 6, 10);
        Assert.Equal(depth / 1.90, shallow.Result("wood-screw-lateral-adjusted") / (shallow.Result("wood-screw-lateral") * 1.6 * 0.7), 6);
        Assert.True(deep.Check("fixing", "along").UseShare < shallow.Check("fixing", "along").UseShare);
        var nothing = Thin("0.190 in", "3 in", ", gap: 1 1/2 in");
        Assert.True(double.IsPositiveInfinity(nothing.Check("fixing", "along").UseShare));
        Assert.True(nothing.Has("fixing-not-in-framing") && nothing.Has("capacity-exceeded"));
    }

    [Fact]
    public void A_wood_screw_of_no_size_is_unknown_not_guessed()
    {
        var plan = Thin("0.200 in", "3 in");
        Assert.True(plan.Has("capacity-unknown"));
        Assert.DoesNotContain(plan.Mounting.LoadPath!.Checks, c => c.Id == "fixing");
    }
}
