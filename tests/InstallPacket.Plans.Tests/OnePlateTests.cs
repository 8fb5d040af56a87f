using CsCheck;
using InstallPacket.Calc.Mounting;
using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

/// <summary>
/// A mast on one plate: every number again by hand, and what passes and what is stopped. The mast is that of the job at Pine Corner:
/// 7 ft of 38 x 2 mm, 4 ft of it free, 105 mph in exposure C.
/// </summary>
public class OnePlateTests
{
    private const string Pine = "pine-corner/job.yaml";
    private const string Parts = "_shared/parts/hardware.yaml";
    private const string Pattern = "holes: { count: 4, width: 60 mm, height: 120 mm }";
    private const string Bent = "arm: { length: 300 mm, tilt: 30 deg }";
    private const string Lags = "lag-screw-1-4, count: 8, pilot: 1/8 in, into: \"rafter ends, sound wood\", timber: spruce-pine-fir, gap: 3/4 in";
    private const double Width = 0.060;
    private const double Height = 0.120;

    // Of one plate, with its four screws; the fascia is cut out where nothing else is said.
    internal static DemoJobs Jobs(string screws = "lag-screw-5-16, count: 4, pilot: 3/16 in, into: blocking, timber: spruce-pine-fir") => DemoJobs.Load()
        .With(Pine, "  part: eave-bracket\n", "  part: eave-bracket-one-plate\n").With(Pine, "  spacing: 2 ft\n", "").With(Pine, Lags, screws);

    private static Plan Of(DemoJobs jobs) => DemoPlans.House("pine-corner", jobs);

    private static Plan Plate(string holes) => Of(Jobs().With(Parts, Pattern, holes));

    private static (double F, double W, double A, double M, double H, double V) Wind(Plan plan)
    {
        var wind = plan.Mounting.Wind!;
        var (f, w, a) = (wind.ForceN, wind.LineLoadNPerM, 4 * MountHand.Foot);
        return (f, w, a, f * a + w * a * a / 2, f + w * a, plan.Mounting.LoadPath!.WeightN!.Value);
    }

    [Fact]
    public void The_plate_takes_the_wind_and_the_moment_of_the_mast_as_a_clamp()
    {
        var plan = Of(Jobs());
        var (_, _, a, m, h, _) = Wind(plan);
        var wind = plan.Mounting.Wind!;
        Assert.Equal(m, wind.MomentNm, 6);
        Assert.Equal(h, wind.UpperN, 6);
        Assert.Equal((0, 0), (wind.LowerN, wind.SpacingM));
        var support = Assert.Single(wind.Supports);
        Assert.Equal("arm of the mount", support.Name);
        Assert.Equal(h, support.ForceN, 6);
        Assert.Equal(3 * MountHand.Foot, support.HeightM, 9);
        // A cantilever: F a^3 / 3EI + w a^4 / 8EI.
        var stiffness = 200e9 * MountHand.Tube(0.038, 0.002).Second;
        Assert.Equal(wind.ForceN * a * a * a / 3 / stiffness + wind.LineLoadNPerM * Math.Pow(a, 4) / 8 / stiffness, wind.TipM, 6);
    }

    [Fact]
    public void Wind_away_from_the_wall_pulls_the_upper_row()
    {
        var plan = Of(Jobs());
        var (_, _, _, m, h, v) = Wind(plan);
        var (reach, rise) = (0.3 * Math.Cos(Math.PI / 6), 0.15);
        var away = plan.Check("fixing", "away");
        Assert.Equal((m + h * rise + v * reach) / (2 * Height) + h / 4, away.PullN!.Value, 6);
        Assert.Equal(v / 4, away.ShearN!.Value, 6);
    }

    [Fact]
    public void Wind_along_the_wall_turns_the_plate_on_its_screws()
    {
        var plan = Of(Jobs());
        var (_, _, _, m, h, v) = Wind(plan);
        var (reach, rise) = (0.3 * Math.Cos(Math.PI / 6), 0.15);
        var along = plan.Check("fixing", "along");
        Assert.Equal(h * reach / (2 * Width) + v * reach / (2 * Height), along.PullN!.Value, 6);
        // The corner stands at half the diagonal; four of them hold the moment in the plane of the plate.
        var radius = Math.Sqrt(Width * Width + Height * Height) / 2;
        var turn = (m + h * rise) / (4 * radius);
        var (level, upright) = (h / 4 + turn * Height / 2 / radius, v / 4 + turn * Width / 2 / radius);
        Assert.Equal(Math.Sqrt(level * level + upright * upright), along.ShearN!.Value, 6);
    }

    // The same mast, screws and wind: as two brackets 2 ft apart it passes with room, on its true plate it is stopped.
    [Fact]
    public void The_same_mast_passes_on_two_brackets_and_is_stopped_on_one_small_plate()
    {
        var screws = "lag-screw-5-16, count: 8, pilot: 3/16 in, into: blocking, timber: spruce-pine-fir";
        var pair = Of(DemoJobs.Load().With(Pine, Lags, screws));
        var small = Plate("holes: { count: 4, width: 50 mm, height: 50 mm }");
        double Worst(Plan plan) => plan.Mounting.LoadPath!.Checks.Where(c => c.Id == "fixing").Max(c => c.UseShare);
        Assert.InRange(Worst(pair), 0.1, 0.5);
        Assert.False(pair.Has("capacity-exceeded"));
        Assert.True(Worst(small) > 1 && small.Has("capacity-exceeded"));
        // By hand: capacity of the lag in its place against the forces of the small plate.
        var (_, _, _, m, h, v) = Wind(small);
        var (reach, rise) = (0.3 * Math.Cos(Math.PI / 6), 0.15);
        var turn = (m + h * rise) / (4 * 0.05 / Math.Sqrt(2)) / Math.Sqrt(2);
        var shear = Math.Sqrt(Math.Pow(h / 4 + turn, 2) + Math.Pow(v / 4 + turn, 2));
        var pull = (h + v) * reach / 0.1;
        var bears = MountHand.Together(pull, shear, MountHand.LagPull(0.42, 0.3125, 3.5 / 2 + 0.5 - 0.1875) * 1.6 * 0.7, MountHand.Lag516Shear(0.42, 0.003) * 1.6 * 0.7);
        Assert.Equal(Math.Sqrt(pull * pull + shear * shear) / bears, small.Check("fixing", "along").UseShare, 9);
    }

    // 60 x 120 mm is stopped even on bare timber, and more so over 3/4 in of fascia; 150 x 200 mm passes.
    [Fact]
    public void A_wide_plate_passes_and_a_small_one_is_stopped_with_and_without_the_fascia()
    {
        Assert.False(Plate("holes: { count: 4, width: 150 mm, height: 200 mm }").Has("capacity-exceeded"));
        Assert.InRange(Of(Jobs()).Check("fixing", "along").UseShare, 1.105, 1.115);
        Assert.True(Of(Jobs("lag-screw-5-16, count: 4, pilot: 3/16 in, into: blocking, timber: spruce-pine-fir, gap: 3/4 in")).Has("capacity-exceeded"));
    }

    [Fact]
    public void A_pattern_that_nobody_states_counts_as_a_small_one_and_is_said()
    {
        var (silent, small) = (Plate("holes: { count: 4 }"), Plate("holes: { count: 4, width: 50 mm, height: 50 mm }"));
        Assert.True(silent.Has("plate-pattern-unknown") && silent.Mounting.Plate!.PatternAssumed);
        Assert.False(small.Has("plate-pattern-unknown"));
        Assert.Equal(small.Check("fixing", "along").UseShare, silent.Check("fixing", "along").UseShare, 9);
    }

    [Fact]
    public void A_measured_pattern_of_the_job_goes_before_that_of_the_part()
    {
        var measured = Of(Jobs().With(Pine, "  free-length: 4 ft\n", "  free-length: 4 ft\n  plate: { width: 50 mm, height: 80 mm }\n"));
        Assert.Equal((0.05, 0.08), (measured.Mounting.Plate!.WidthM, measured.Mounting.Plate.HeightM));
        Assert.Equal(Plate("holes: { count: 4, width: 50 mm, height: 80 mm }").Check("fixing", "away").PullN, measured.Check("fixing", "away").PullN);
    }

    [Fact]
    public void Spacing_and_guys_are_refused_and_hold_nothing()
    {
        var spaced = Of(Jobs().With(Pine, "  free-length: 4 ft\n", "  free-length: 4 ft\n  spacing: 2 ft\n"));
        Assert.True(spaced.Has("one-plate-unfit"));
        Assert.Equal(Of(Jobs()).Check("fixing", "away").PullN, spaced.Check("fixing", "away").PullN);
    }

    [Fact]
    public void One_upright_line_needs_the_edge_of_the_plate_as_lever()
    {
        var line = Plate("holes: { count: 4, height: 120 mm }");
        Assert.DoesNotContain(line.Mounting.LoadPath!.Checks, c => c.What.Contains("along", StringComparison.Ordinal));
        Assert.Contains("the fixing of the plate in wind along the wall", line.Mounting.LoadPath.Unproved);
        var edged = Of(Jobs().With(Parts, Pattern, "holes: { count: 4, height: 120 mm }\n    edge: 25 mm")
            .With(Parts, "holes: \"memory: class of bracket, measure yours\"", "holes: \"memory: m\", edge: \"memory: m\""));
        var (_, _, _, m, h, v) = Wind(edged);
        var reach = 0.3 * Math.Cos(Math.PI / 6);
        Assert.Equal(h * reach / (4 * 0.025) + v * reach / Height, edged.Check("fixing", "along").PullN!.Value, 6);
        Assert.Equal((m + h * 0.15 + v * reach) / Height + h / 4, edged.Check("fixing", "away").PullN!.Value, 6);
    }

    // Moment and shear of the screws fall as the rows stand farther apart, whatever the load.
    [Fact]
    public void The_same_couple_over_a_taller_plate_is_never_worse() =>
        Gen.Select(Gen.Double[0, 2000], Gen.Double[0, 3000], Gen.Double[0.02, 0.6], Gen.Double[0.001, 0.4], Gen.Double[0, 0.4]).Sample((m, h, b, more, g) =>
        {
            Assert.True(OnePlate.RowPullN(m, 2, b + more, h, 4) <= OnePlate.RowPullN(m, 2, b, h, 4));
            Assert.True(OnePlate.SidePullN(h, 0.3, 2, 0.1, 100, 2, b + more) <= OnePlate.SidePullN(h, 0.3, 2, 0.1, 100, 2, b));
            // Turning alone: the corners stand farther out. With two corners in one line as well.
            Assert.True(OnePlate.TurnShearN(0, 0, 4, m, 4, g, b + more) <= OnePlate.TurnShearN(0, 0, 4, m, 4, g, b) * (1 + 1e-12));
        });

    [Fact]
    public void A_longer_arm_never_relieves_the_screws()
    {
        var (near, far) = (Of(Jobs()), Of(Jobs().With(Parts, Bent, "arm: { length: 600 mm, tilt: 30 deg }")));
        foreach (var wind in new[] { "away", "along" })
        {
            Assert.True(far.Check("fixing", wind).PullN > near.Check("fixing", wind).PullN);
            Assert.True(far.Check("fixing", wind).UseShare > near.Check("fixing", wind).UseShare);
        }
    }

    [Fact]
    public void The_makers_moment_and_wind_area_are_checked()
    {
        Plan Rated(string rating) => Of(Jobs().With(Parts, Bent, Bent + "\n    rating: " + rating).With(Parts, "holes: \"memory: class of bracket, measure yours\"", "holes: \"memory: m\", rating: \"read: sheet\""));
        var plan = Rated("{ moment: 200 N m, wind-area: 0.2 m2 }");
        Assert.Equal(plan.Mounting.Wind!.MomentNm / 200, plan.Check("mount-moment").UseShare, 9);
        Assert.Equal(plan.Mounting.Wind.AreaM2 / 0.2, plan.Check("mount-area").UseShare, 9);
        Assert.Equal("read", plan.Check("mount-area").Provenance);
        Assert.True(Rated("{ moment: 100 N m }").Has("capacity-exceeded"));
    }

    [Fact]
    public void A_mast_that_comes_with_the_mount_is_not_bought_and_its_tube_is_checked()
    {
        const string own = "own-mast: { diameter: 32 mm, wall: 1.5 mm, length: 1.5 m }";
        var jobs = Jobs().With(Parts, Bent, Bent + "\n    " + own).With(Parts, "holes: \"memory: class of bracket, measure yours\"", "holes: \"memory: m\", own-mast: \"memory: m\"")
            .With(Pine, "  mast: mast-38\n  mast-length: 7 ft\n", "");
        var plan = Of(jobs);
        Assert.Equal(1.5, plan.Mounting.MastLengthM, 9);
        Assert.DoesNotContain(plan.Materials.Items, i => i.For.Contains("mast", StringComparison.Ordinal) && i.Kind == PartKind.Mast);
        Assert.Equal(MountHand.Tube(0.032, 0.0015).Modulus * 1e9, plan.Mounting.Wind!.SectionMm3, 3);
        // Its mass is that of the mount: 1.8 kg and the antenna, nothing twice.
        var antenna = plan.Mounting.LoadPath!.AntennasKg!.Value;
        Assert.Equal((antenna + 1.8) * MountHand.Gravity, plan.Mounting.LoadPath.WeightN!.Value, 6);
        Assert.False(plan.Has("mast-held-short"));
    }

    [Fact]
    public void Steps_and_plan_speak_of_the_plate()
    {
        var steps = Of(Jobs()).Handover.Steps;
        Assert.Equal(4, steps.Single(s => s.Id == "plate-mark").Count);
        Assert.Contains(steps, s => s.Id == "set-arm");
        Assert.DoesNotContain(steps, s => s.Id == "level-mark");
        Assert.Contains(DemoPlans.House("pine-corner").Handover.Steps, s => s.Id == "level-mark");
        Assert.Null(DemoPlans.House("pine-corner").Mounting.Plate);
    }

    // Boxes on the wall have screws of their own, which no check of the mount counts.
    [Fact]
    public void Fixings_of_devices_are_bought_and_stand_in_their_step_and_hold_no_mast()
    {
        var (plain, fixedOn) = (DemoPlans.House("pine-corner"), Of(Device(DemoJobs.Load())));
        var item = fixedOn.Materials.Items.Single(i => i.Part == "pan-head-screw-4x30");
        Assert.Equal((3, "G1"), (item.Count, item.For));
        Assert.Equal((3, "pan-head-screw-4x30"), (fixedOn.Cabling.Elements.Single(e => e.Id == "G1").Fixing!.Count, fixedOn.Cabling.Elements.Single(e => e.Id == "G1").Fixing!.Part));
        Assert.Equal(plain.Mounting.LoadPath!.Checks, fixedOn.Mounting.LoadPath!.Checks);
        Assert.Equal(plain.Mounting.Fixings, fixedOn.Mounting.Fixings);
    }

    private static DemoJobs Device(DemoJobs jobs)
    {
        var text = jobs.Text(Pine);
        var line = text.Split('\n').Single(l => l.TrimStart().StartsWith("G1:", StringComparison.Ordinal));
        return jobs.With(Pine, line, line[..line.LastIndexOf('}')].TrimEnd() + ", fixings: { part: pan-head-screw-4x30, count: 3 } }");
    }
}
