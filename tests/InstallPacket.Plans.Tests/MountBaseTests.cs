using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

/// <summary>Ballast, tripods and chimneys.</summary>
public class MountBaseTests
{
    private const string Quay = "quay-loft/job.yaml";
    private const string Alder = "alder-lane/job.yaml";

    private static Plan Ballast(string old, string with) => DemoPlans.House("quay-loft", DemoJobs.Load().With(Quay, old, with));

    // The family eu: 1.5 of the wind against 0.9 of the weight; friction 0.4.
    [Fact]
    public void Weights_against_turning_and_sliding_follow_step_by_step()
    {
        var plan = DemoPlans.House("quay-loft");
        var (wind, ballast) = (plan.Mounting.Wind!, plan.Mounting.LoadPath!.Ballast!);
        var (top, line) = (1.5 * wind.PressurePa * 0.09, 1.5 * wind.PressurePa * 1.2);
        var width = wind.LineLoadNPerM / line;
        Assert.InRange(width, 0.050, 0.060);
        var (force, moment) = (top + wind.LineLoadNPerM * 2, top * 2 + wind.LineLoadNPerM * 2);
        Assert.Equal(force, ballast.ForceN, 6);
        Assert.Equal(2 * moment / 1.2, ballast.TurnN, 6);
        Assert.Equal(force / 0.4, ballast.SlideN, 6);
        var own = (2.0 + 28 + MountHand.Tube(0.050, 0.002).Area * 7850 * 2) * MountHand.Gravity;
        Assert.Equal(own, ballast.OwnN, 6);
        var total = own + 8 * 20 * MountHand.Gravity;
        Assert.Equal(total, ballast.TotalN, 6);
        Assert.Equal(total / (1.2 * 1.2), ballast.RoofPa, 6);
        Assert.Equal(ballast.TurnN / 0.9 / total, plan.Check("ballast-turn").UseShare, 9);
        Assert.Equal(ballast.SlideN / 0.9 / total, plan.Check("ballast-slide").UseShare, 9);
        Assert.Equal(total / 1.44 / 2000, plan.Check("roof-load").UseShare, 9);
    }

    [Fact]
    public void Blocks_that_are_left_out_are_as_many_as_needed_and_one_less_fails()
    {
        var needed = Ballast("    blocks: 8\n", "").Mounting.LoadPath!.Ballast!;
        var need = Math.Max(needed.TurnN, needed.SlideN) / 0.9 - needed.OwnN;
        Assert.Equal((int)Math.Ceiling(need / (20 * MountHand.Gravity)), needed.Blocks);
        Assert.True(needed.Blocks > 0);
        Assert.False(Ballast("    blocks: 8\n", "").Has("capacity-exceeded"));
        Assert.True(Ballast("    blocks: 8\n", $"    blocks: {needed.Blocks - 1}\n").Has("capacity-exceeded"));
    }

    [Fact]
    public void A_wider_base_needs_less_against_turning_and_the_same_against_sliding()
    {
        var (narrow, wide) = (DemoPlans.House("quay-loft").Mounting.LoadPath!.Ballast!, Ballast("side: 1.2 m", "side: 1.8 m").Mounting.LoadPath!.Ballast!);
        Assert.Equal(1.2 / 1.8, wide.TurnN / narrow.TurnN, 9);
        Assert.Equal(narrow.SlideN, wide.SlideN, 9);
        Assert.Equal(1.44 / 3.24, wide.RoofPa / narrow.RoofPa, 9);
    }

    [Fact]
    public void Measured_friction_takes_the_place_of_the_low_one()
    {
        var (low, high) = (DemoPlans.House("quay-loft").Mounting.LoadPath!.Ballast!, Ballast("    blocks: 8\n", "    blocks: 8\n    friction: 0.6\n").Mounting.LoadPath!.Ballast!);
        Assert.Equal(0.4 / 0.6, high.SlideN / low.SlideN, 9);
        Assert.Equal(low.TurnN, high.TurnN, 9);
    }

    [Fact]
    public void A_roof_of_which_nobody_knows_is_not_passed_and_a_weak_one_stops_the_job()
    {
        var unknown = Ballast("    roof-bears: 2.0 kPa\n    stated: structural note of the house, roof besides snow (invented)\n", "");
        Assert.Contains("the roof under the base", unknown.Mounting.LoadPath!.Unproved);
        var weak = Ballast("roof-bears: 2.0 kPa", "roof-bears: 1.0 kPa");
        Assert.InRange(weak.Check("roof-load").UseShare, 1.2, 1.5);
        Assert.True(weak.Has("capacity-exceeded"));
        Assert.True(Ballast("roof-pitch: 1 deg", "roof-pitch: 12 deg").Has("ballast-unfit"));
    }

    private static DemoJobs Mount(string kind, string part, string fixing, string more = "") => DemoJobs.Load()
        .With(Alder, "kind: gable-bracket", "kind: " + kind).With(Alder, "  part: gable-bracket", "  part: " + part)
        .With(Alder, "lag-screw-5-16, count: 8", "lag-screw-5-16, count: " + fixing).With(Alder, "  wind: { speed: 105", more + "  wind: { speed: 105");

    [Fact]
    public void A_foot_of_a_tripod_pulls_step_by_step_from_the_moment_at_the_feet()
    {
        var plan = DemoPlans.House("alder-lane", Mount("tripod", "tripod-90", "12"));
        var (wind, length) = (plan.Mounting.Wind!, 10 * MountHand.Foot);
        var moment = wind.ForceN * length + wind.LineLoadNPerM * length * length / 2;
        var check = plan.Check("fixing", "one foot upwind");
        Assert.Equal(moment / (1.5 * 0.45) / 4, check.PullN!.Value, 6);
        Assert.Equal((wind.ForceN + wind.LineLoadNPerM * length) / 12, check.ShearN!.Value, 6);
        // Plate of 4 mm: the thread does not change, for the screw is long enough.
        Assert.Equal(MountHand.Together(check.PullN.Value, check.ShearN.Value, MountHand.LagPull(0.42, 0.3125, 2.0625) * 1.12, MountHand.Lag516Shear(0.42, 0.004) * 1.12), check.BearsN!.Value, 6);
        Assert.Equal(2, DemoPlans.House("alder-lane", Mount("tripod", "tripod-90", "6")).Check("fixing", "upwind").PullN!.Value / check.PullN.Value, 9);
        Assert.Contains("the fixing of the mount", DemoPlans.House("alder-lane", Mount("tripod", "tripod-90", "2")).Mounting.LoadPath!.Unproved);
    }

    private static Plan Chimney(string state, string allowed, string side = "1.2 m") => DemoPlans.House("alder-lane",
        Mount("chimney-lashing", "chimney-strap-pair", "8", $"  chimney: {{ side: {side}, height: 1.5 m, strap-spacing: 3 ft 6 in, state: {state}, allowed: {allowed} }}\n"));

    [Theory]
    [InlineData("cracked", "yes"), InlineData("leaning", "yes"), InlineData("unknown", "yes"), InlineData("sound", "no"), InlineData("sound", "unknown")]
    public void A_chimney_is_refused_unless_it_is_sound_and_allowed(string state, string allowed) =>
        Assert.Equal(Severity.Stop, Chimney(state, allowed).Finding("chimney-refused").Severity);

    // The upper strap takes the push of the wind and the couple of its moment; two legs share it; half the breaking strength counts.
    [Fact]
    public void Straps_and_foot_of_a_sound_chimney_follow_step_by_step()
    {
        var plan = Chimney("sound", "yes");
        Assert.False(plan.Has("chimney-refused"));
        Assert.Equal(plan.Mounting.Wind!.UpperN / 2, plan.Check("strap").DemandN!.Value, 6);
        Assert.Equal(4000, plan.Check("strap").BearsN!.Value, 6);
        // The ultimate wind against the plain weight: 0.6 of allowable stress stands on both sides.
        var moment = plan.Mounting.Wind.MomentNm / 0.6 + plan.Mounting.Wind.ForceN / 0.6 * 1.5 + plan.Mounting.Wind.LineLoadNPerM / 0.6 * 6 * MountHand.Foot * 1.5;
        var foot = plan.Check("chimney-foot");
        Assert.Equal(6 * moment / Math.Pow(1.2, 3), foot.DemandPa!.Value, 6);
        Assert.Equal(1900 * MountHand.Gravity * 1.5, foot.BearsPa!.Value, 6);
        Assert.False(plan.Has("capacity-exceeded"));
    }

    [Fact]
    public void A_slim_chimney_tears_at_its_foot()
    {
        var slim = Chimney("sound", "yes", "0.4 m");
        Assert.Equal(Math.Pow(3, 3), slim.Check("chimney-foot").UseShare / Chimney("sound", "yes").Check("chimney-foot").UseShare, 9);
        Assert.True(slim.Has("capacity-exceeded"));
    }
}
