using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

/// <summary>The guyed mast of the farmhouse, its forces solved again by another method.</summary>
public class MountGuyTests
{
    private const string Far = "far-meadow/job.yaml";
    private static readonly double[] Supports = [0, 12 * MountHand.Foot, 22 * MountHand.Foot, 33 * MountHand.Foot];
    private const double Length = 40 * MountHand.Foot;

    private static Plan Of(string old, string with) => DemoPlans.House("far-meadow", DemoJobs.Load().With(Far, old, with));

    // Method of forces: the mast as a free beam on foot and upper ring, the two supports between give no way. Deflections by the beam's influence
    // coefficients (unit loads, integrated numerically), the stiffness cancels.
    private static double[] Reactions(double top, double line)
    {
        var span = Supports[3];
        const int steps = 60000;
        var dz = Length / steps;
        double Outer(double z)
        {
            var right = (top * Length + line * Length * Length / 2) / span;
            return -(top * (Length - z) + line * (Length - z) * (Length - z) / 2) + (z < span ? right * (span - z) : 0);
        }
        double Unit(double z, double at) => z >= span ? 0 : z < at ? -z * (span - at) / span : -at * (span - z) / span;
        double Together(Func<double, double> f) => Enumerable.Range(0, steps).Sum(i => f((i + 0.5) * dz)) * dz;
        var (a, b) = (Supports[1], Supports[2]);
        var (aa, ab, bb) = (Together(z => Unit(z, a) * Unit(z, a)), Together(z => Unit(z, a) * Unit(z, b)), Together(z => Unit(z, b) * Unit(z, b)));
        var (wa, wb) = (-Together(z => Outer(z) * Unit(z, a)), -Together(z => Outer(z) * Unit(z, b)));
        var det = aa * bb - ab * ab;
        var (ra, rb) = ((wa * bb - wb * ab) / det, (wb * aa - wa * ab) / det);
        var upper = (top * Length + line * Length * Length / 2 - ra * a - rb * b) / span;
        return [top + line * Length - ra - rb - upper, ra, rb, upper];
    }

    [Fact]
    public void Forces_of_foot_stand_off_and_rings_agree_with_the_method_of_forces()
    {
        var wind = DemoPlans.House("far-meadow").Mounting.Wind!;
        var expected = Reactions(wind.ForceN, wind.LineLoadNPerM);
        Assert.Equal(4, wind.Supports.Count);
        for (var i = 0; i < 4; i++)
        {
            Assert.Equal(Supports[i], wind.Supports[i].HeightM, 9);
            Assert.Equal(expected[i], wind.Supports[i].ForceN, 1e-3 * wind.ForceN);
        }
        Assert.Equal(wind.ForceN + wind.LineLoadNPerM * Length, wind.Supports.Sum(s => s.ForceN), 6);
    }

    [Theory]
    [InlineData(4, 1.0), InlineData(3, 1.1547005383792517)]
    public void The_worst_guy_pulls_the_push_over_the_sine_and_its_still_pull(int count, double worst)
    {
        var plan = Of("ring: 33 ft, count: 4", "ring: 33 ft, count: " + count);
        var ring = plan.Mounting.LoadPath!.Guys[1];
        var push = plan.Mounting.Wind!.Supports[3].ForceN;
        var wire = Math.Sqrt(33 * 33 + 20 * 20);
        Assert.Equal(wire * MountHand.Foot, ring.LengthM, 9);
        Assert.Equal(Math.Atan2(20, 33) * 180 / Math.PI, ring.AngleDeg, 9);
        Assert.Equal(worst * push / (20 / wire) + 100 * MountHand.Pound, ring.TensionN, 6);
        Assert.Equal(ring.TensionN / 7000, plan.Check("guy-wire").UseShare, 9);
        Assert.Equal(ring.TensionN / (1200 * MountHand.Pound), plan.Check("guy-anchor").UseShare, 9);
    }

    [Fact]
    public void The_mast_is_a_column_under_all_that_the_guys_push_down()
    {
        var plan = DemoPlans.House("far-meadow");
        double Down(int ring, double height)
        {
            var push = Math.Abs(plan.Mounting.Wind!.Supports[ring + 2].ForceN);
            // Two of four guys pull when the wind stands midway: each push / sqrt 2 level, and height over radius of that down.
            return 2 * push / Math.Sqrt(2) * height / 20 + 4 * 100 * MountHand.Pound * height / Math.Sqrt(height * height + 400);
        }
        var tube = MountHand.Tube(0.060, 0.003);
        var weight = (2.5 + 9 + tube.Area * 7850 * Length) * MountHand.Gravity;
        var euler = Math.PI * Math.PI * 200e9 * tube.Second / Math.Pow(12 * MountHand.Foot, 2);
        var column = plan.Check("mast-column");
        Assert.Equal(1, column.BearsN!.Value / (euler / 1.92), 0.06);
        Assert.Equal(Down(0, 22) + Down(1, 33) + weight, column.DemandN!.Value, 1.0);
        Assert.Equal(plan.Mounting.Wind!.UseShare + column.UseShare, plan.Check("mast-together").UseShare, 9);
    }

    [Fact]
    public void More_pull_in_still_air_loads_wire_anchor_and_column()
    {
        var (some, more) = (DemoPlans.House("far-meadow"), Of("pretension: 100 lbf", "pretension: 200 lbf"));
        Assert.Equal(100 * MountHand.Pound, more.Mounting.LoadPath!.Guys[1].TensionN - some.Mounting.LoadPath!.Guys[1].TensionN, 6);
        var down = 4 * (22 / Math.Sqrt(22 * 22 + 400) + 33 / Math.Sqrt(33 * 33 + 400)) * 100 * MountHand.Pound;
        Assert.Equal(down, more.Check("mast-column").DemandN!.Value - some.Check("mast-column").DemandN!.Value, 6);
        Assert.Equal(some.Mounting.Wind!.MomentNm, more.Mounting.Wind!.MomentNm, 9);
    }

    [Fact]
    public void Anchors_too_near_the_mast_stop_the_job()
    {
        var plan = Of("ring: 33 ft, count: 4, anchor-radius: 20 ft", "ring: 33 ft, count: 4, anchor-radius: 18 ft");
        Assert.Equal(Severity.Stop, plan.Finding("guy-angle-small").Severity);
        Assert.False(DemoPlans.House("far-meadow").Has("guy-angle-small"));
    }

    // European practice: the tube must be safe without its guys.
    [Fact]
    public void In_europe_the_tube_is_judged_without_its_guys()
    {
        var guys = "  guys:\n    part: guy-wire-5\n    pretension: 300 N\n    sets:\n      - { ring: 3 m, count: 4, anchor-radius: 3 m }\n    anchor: ring bolts\n    anchor-pull: 5 kN\n";
        var (free, guyed) = (DemoPlans.House("mill-yard"), DemoPlans.Of("mill-yard", DemoJobs.Load().With("mill-yard/job.yaml", "  wind: {", guys + "  wind: {")));
        Assert.Equal(free.Mounting.Wind!.MomentNm, guyed.Mounting.Wind!.MomentNm, 6);
        Assert.Equal(2, guyed.Mounting.Wind.Supports.Count);
        Assert.Single(guyed.Mounting.LoadPath!.Guys);
        // In the family us the ring takes part: the free mast is shorter.
        var us = DemoPlans.House("far-meadow").Mounting.Wind!;
        Assert.Equal(7 * MountHand.Foot, us.FreeM, 9);
    }
}
