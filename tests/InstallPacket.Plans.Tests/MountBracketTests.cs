using System.Globalization;
using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

/// <summary>Brackets and their fixings: each number again by hand, and verdicts that move the way and as far as mechanics says.</summary>
public class MountBracketTests
{
    private const string Alder = "alder-lane/job.yaml";
    private const string Parts = "_shared/parts/hardware.yaml";
    private const string GableAcross = "    stand-off: 300 mm\n    plate: 3 mm\n    across: 120 mm\n";
    private const double Plate = 0.003;
    private const double StandOff = 0.3;

    // The maker's figures stand at the provenance too: a part of the job takes the place of the library's.
    private static Plan Gable(string figures) => DemoPlans.House("alder-lane", DemoJobs.Load().With(Parts, GableAcross, figures)
        .With(Parts, "{ mass: \"memory: class of bracket\", stand-off: \"memory: class of bracket\", plate: \"memory: class of bracket\", across: \"memory: class of bracket\" }\n  wall-bracket:", Provenance(figures) + "\n  wall-bracket:"));

    private static string Provenance(string figures) =>
        "{ mass: \"memory: m\"" + string.Concat(figures.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(f => $", {f.Trim().Split(':')[0]}: \"memory: m\"")) + " }";

    private static double WeightN(double antennaKg, double mountKg) => (antennaKg + mountKg + MountHand.Tube(0.038, 0.002).Area * 7850 * 10 * MountHand.Foot) * MountHand.Gravity;

    [Fact]
    public void Pull_and_shear_of_a_screw_follow_step_by_step_from_the_upper_bracket()
    {
        var plan = DemoPlans.House("alder-lane");
        var (upper, spacing) = (plan.Mounting.Wind!.UpperN, 3.5 * MountHand.Foot);
        var weight = WeightN(2.5, 3.6);
        Assert.Equal(weight, plan.Mounting.LoadPath!.WeightN!.Value, 6);
        var couple = weight * StandOff / spacing;
        var away = plan.Check("fixing", "away");
        Assert.Equal((upper + couple) / 4, away.PullN!.Value, 6);
        Assert.Equal(weight / 2 / 4, away.ShearN!.Value, 6);
        var along = plan.Check("fixing", "along");
        Assert.Equal(upper * StandOff / 0.12 / 2 + couple / 4, along.PullN!.Value, 6);
        Assert.Equal(Math.Sqrt(upper * upper + weight * weight / 4) / 4, along.ShearN!.Value, 6);
    }

    [Fact]
    public void Capacity_of_a_lag_screw_follows_step_by_step_from_timber_wind_and_wet()
    {
        var plan = DemoPlans.House("alder-lane");
        // Thread of half the length and 1/2 in, less the tip of 3/16 in.
        var pull = MountHand.LagPull(0.42, 0.3125, 3.5 / 2 + 0.5 - 0.1875) * 1.6 * 0.7;
        var shear = MountHand.Lag516Shear(0.42, Plate) * 1.6 * 0.7;
        Assert.Equal(pull, plan.Result("withdrawal-adjusted"), 6);
        Assert.Equal(shear, plan.Result("lateral-adjusted"), 6);
        foreach (var check in plan.Mounting.LoadPath!.Checks.Where(c => c.Id == "fixing"))
        {
            var bears = MountHand.Together(check.PullN!.Value, check.ShearN!.Value, pull, shear);
            Assert.Equal(bears, check.BearsN!.Value, 6);
            Assert.Equal(check.DemandN!.Value / bears, check.UseShare, 9);
        }
    }

    [Fact]
    public void Unknown_timber_is_taken_as_the_lightest_and_dry_timber_bears_more()
    {
        double Pull(string timber) => DemoPlans.House("alder-lane", DemoJobs.Load().With(Alder, "timber: spruce-pine-fir, ", timber)).Result("withdrawal-adjusted");
        Assert.Equal(Math.Pow(0.36 / 0.50, 1.5), Pull("") / Pull("timber: douglas-fir-larch, "), 9);
        Assert.Equal(0.7, DemoPlans.House("alder-lane").Result("withdrawal-adjusted") / Pull("timber: spruce-pine-fir, wet: no, "), 9);
        var dry = DemoPlans.House("alder-lane", DemoJobs.Load().With(Alder, "timber: spruce-pine-fir, ", "timber: spruce-pine-fir, wet: no, "));
        Assert.Equal(0.7, DemoPlans.House("alder-lane").Result("lateral-adjusted") / dry.Result("lateral-adjusted"), 9);
        Assert.Equal(1 / 0.7, DemoPlans.House("alder-lane").Check("fixing", "along").UseShare / dry.Check("fixing", "along").UseShare, 9);
    }

    [Fact]
    public void One_upright_line_of_screws_has_only_the_edge_of_the_plate_as_lever()
    {
        var across = DemoPlans.House("alder-lane");
        var line = Gable("    stand-off: 300 mm\n    plate: 3 mm\n    edge: 20 mm\n");
        var couple = across.Mounting.LoadPath!.WeightN!.Value * StandOff / (3.5 * MountHand.Foot) / 4;
        // 120 mm between two columns, shared by two; 20 mm to the edge, shared by four: three times the pull.
        Assert.Equal(120 / 20.0 * 2 / 4, (line.Check("fixing", "along").PullN!.Value - couple) / (across.Check("fixing", "along").PullN!.Value - couple), 9);
        Assert.Equal(across.Check("fixing", "away").PullN!.Value, line.Check("fixing", "away").PullN!.Value, 9);
    }

    // Along the wall both the couple of the wind and that of the weight have the stand-off as lever; the shear has none.
    [Fact]
    public void Twice_the_stand_off_doubles_the_pull_of_the_wind_along_the_wall()
    {
        var (near, far) = (DemoPlans.House("alder-lane"), Gable("    stand-off: 600 mm\n    plate: 3 mm\n    across: 120 mm\n"));
        Assert.Equal(2, far.Check("fixing", "along").PullN!.Value / near.Check("fixing", "along").PullN!.Value, 9);
        Assert.Equal(near.Check("fixing", "along").ShearN!.Value, far.Check("fixing", "along").ShearN!.Value, 9);
    }

    [Fact]
    public void Without_its_levers_the_bracket_is_not_proved()
    {
        var plan = Gable("    stand-off: 300 mm\n    plate: 3 mm\n");
        Assert.DoesNotContain(plan.Mounting.LoadPath!.Checks, c => c.What.Contains("along", StringComparison.Ordinal));
        Assert.Contains(plan.Mounting.LoadPath.Unproved, u => u.Contains("along the wall", StringComparison.Ordinal));
    }

    // Moment F a + w a^2 / 2, and from it the pull: twice the free length gives more than twice the pull, less than four times.
    [Fact]
    public void Twice_the_free_mast_pulls_harder_by_its_moment()
    {
        Plan Of(string free, string length) => DemoPlans.House("alder-lane", DemoJobs.Load().With(Alder, "free-length: 6 ft", "free-length: " + free).With(Alder, "  mast-length: 10 ft", "  mast-length: " + length));
        var (a, b) = (Of("5 ft", "9 ft"), Of("10 ft", "14 ft"));
        double Upper(Plan plan, double free)
        {
            var w = plan.Mounting.Wind!;
            return w.ForceN + w.LineLoadNPerM * free + (w.ForceN * free + w.LineLoadNPerM * free * free / 2) / (3.5 * MountHand.Foot);
        }
        Assert.Equal(Upper(a, 5 * MountHand.Foot), a.Mounting.Wind!.UpperN, 6);
        Assert.Equal(Upper(b, 10 * MountHand.Foot), b.Mounting.Wind!.UpperN, 6);
        Assert.InRange(b.Mounting.Wind!.MomentNm / a.Mounting.Wind!.MomentNm, 2, 4);
        Assert.Equal(b.Mounting.Wind.UpperN / a.Mounting.Wind.UpperN, b.Result("mount-along-wall") / a.Result("mount-along-wall"), 9);
        Assert.True(b.Check("fixing", "along").UseShare > 1.8 * a.Check("fixing", "along").UseShare);
    }

    // Kz = 2.01 (z / zg)^(2 / alpha) at 31 ft; all forces follow the pressure.
    [Fact]
    public void Exposure_moves_the_wind_on_the_screws_by_its_pressure()
    {
        Plan Of(string exposure) => DemoPlans.House("alder-lane", DemoJobs.Load().With(Alder, "exposure: B", "exposure: " + exposure));
        var (b, c, d) = (Of("B"), Of("C"), Of("D"));
        var (kb, kc, kd) = (Math.Max(0.70, 2.01 * Math.Pow(31 / 1200.0, 2 / 7.0)), 2.01 * Math.Pow(31 / 900.0, 2 / 9.5), 2.01 * Math.Pow(31 / 700.0, 2 / 11.5));
        Assert.Equal(kc / kb, c.Mounting.Wind!.UpperN / b.Mounting.Wind!.UpperN, 6);
        Assert.Equal(kd / kc, d.Mounting.Wind!.UpperN / c.Mounting.Wind!.UpperN, 6);
        Assert.True(b.Check("fixing", "along").UseShare < c.Check("fixing", "along").UseShare && c.Check("fixing", "along").UseShare < d.Check("fixing", "along").UseShare);
    }

    [Fact]
    public void Anchors_use_the_makers_figures_in_a_straight_line()
    {
        var check = DemoPlans.House("brook-terrace").Check("fixing", "along");
        Assert.Equal(check.PullN!.Value / 1400 + check.ShearN!.Value / 1800, check.UseShare, 9);
        Assert.Equal("stated", check.Provenance);
        var weak = DemoPlans.House("brook-terrace", DemoJobs.Load().With("brook-terrace/job.yaml", "pull: 1.4 kN", "pull: 0.9 kN"));
        Assert.Equal(check.PullN.Value / 900 + check.ShearN.Value / 1800, weak.Check("fixing", "along").UseShare, 9);
        Assert.True(weak.Check("fixing", "along").UseShare > 1 && weak.Has("capacity-exceeded"));
        Assert.False(DemoPlans.House("brook-terrace").Has("capacity-exceeded"));
    }

    [Fact]
    public void Four_fixings_to_a_bracket_are_common_practice()
    {
        Plan Of(int count) => DemoPlans.House("alder-lane", DemoJobs.Load().With(Alder, "lag-screw-5-16, count: 8", "lag-screw-5-16, count: " + count));
        var row = File.ReadLines(Path.Combine(DemoJobs.Checkout, "tests/Reference/mounting/common_practice.csv")).Single(l => l.Contains(",fixings-of-a-bracket,", StringComparison.Ordinal)).Split(',');
        Assert.Equal("common practice", row[7]);
        Assert.False(Of(8).Has("bracket-fixings-few"));
        var few = Of(6).Finding("bracket-fixings-few");
        Assert.Equal(row[5], ((int)few.Values["usual"]!).ToString(CultureInfo.InvariantCulture));
        Assert.True(Of(6).Check("fixing", "along").UseShare > Of(8).Check("fixing", "along").UseShare);
    }

    [Fact]
    public void One_screw_for_two_brackets_is_not_passed_in_silence()
    {
        var plan = DemoPlans.House("alder-lane", DemoJobs.Load().With(Alder, "lag-screw-5-16, count: 8", "lag-screw-5-16, count: 1"));
        Assert.Contains("the fixing of the mount", plan.Mounting.LoadPath!.Unproved);
        Assert.True(plan.Has("capacity-unknown"));
    }
}
