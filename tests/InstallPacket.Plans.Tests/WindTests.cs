using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

/// <summary>The mast in the wind: the verdict moves in the direction and by the size that mechanics says.</summary>
public class WindTests
{
    private const string Us = "alder-lane/job.yaml";
    private const string Eu = "mill-yard/job.yaml";

    // 105 mph in exposure B at 31 ft: Kz = 2.01 (31 / 1200)^(2/7), not below 0.70; q = 0.613 Kz 0.95 V^2.
    [Fact]
    public void Pressure_force_and_moment_follow_step_by_step_from_the_speed()
    {
        var wind = DemoPlans.House("alder-lane").Mounting.Wind!;
        var kz = Math.Max(0.70, 2.01 * Math.Pow(31 / 1200.0, 2 / 7.0));
        var speed = 105 * 0.44704;
        Assert.Equal(0.613 * kz * 0.95 * speed * speed, wind.PressurePa, 6);
        Assert.Equal(0.6 * wind.PressurePa * 0.16, wind.ForceN, 6);
        Assert.Equal(0.6 * wind.PressurePa * 1.2 * (0.038 + 0.0069), wind.LineLoadNPerM, 6);
        var free = 6 * 0.3048;
        Assert.Equal(wind.ForceN * free + wind.LineLoadNPerM * free * free / 2, wind.MomentNm, 6);
        Assert.Equal(wind.MomentNm / (3.5 * 0.3048), wind.LowerN, 6);
        Assert.Equal(wind.ForceN + wind.LineLoadNPerM * free + wind.LowerN, wind.UpperN, 6);
    }

    [Fact]
    public void Twice_the_free_length_more_than_doubles_the_moment()
    {
        var shortMast = DemoPlans.House("alder-lane").Mounting.Wind!;
        var longMast = DemoPlans.House("alder-lane", DemoJobs.Load().With(Us, "free-length: 6 ft", "free-length: 12 ft").With(Us, "  mast-length: 10 ft", "  mast-length: 16 ft"));
        Assert.InRange(longMast.Mounting.Wind!.MomentNm / shortMast.MomentNm, 2, 4);
        Assert.True(longMast.Has("mast-overstressed"));
        Assert.False(DemoPlans.House("alder-lane").Has("mast-overstressed"));
    }

    [Fact]
    public void Open_ground_asks_for_more_than_town_and_the_sea_for_more_than_a_village()
    {
        double Us(string exposure) => DemoPlans.House("alder-lane", DemoJobs.Load().With(WindTests.Us, "exposure: B", "exposure: " + exposure)).Mounting.Wind!.UseShare;
        Assert.True(Us("B") < Us("C") && Us("C") < Us("D"));
        double Eu(string exposure) => DemoPlans.House("mill-yard", DemoJobs.Load().With(WindTests.Eu, "exposure: III", "exposure: " + exposure)).Mounting.Wind!.UseShare;
        Assert.True(Eu("IV") < Eu("III") && Eu("III") < Eu("II") && Eu("II") < Eu("0"));
    }

    [Fact]
    public void Force_grows_with_the_square_of_the_speed()
    {
        double Force(string speed) => DemoPlans.House("mill-yard", DemoJobs.Load().With(Eu, "speed: 24 m/s", "speed: " + speed)).Mounting.Wind!.ForceN;
        Assert.Equal(4, Force("40 m/s") / Force("20 m/s"), 6);
        Assert.Equal(Force("20 m/s"), Force("72 km/h"), 6);
    }

    [Fact]
    public void Stronger_material_and_thicker_wall_bear_more()
    {
        double Bears(string old, string with) => DemoPlans.House("mill-yard", DemoJobs.Load().With("_shared/parts/hardware.yaml", old, with)).Mounting.Wind!.AllowableNm;
        var plain = DemoPlans.House("mill-yard").Mounting.Wind!;
        Assert.True(plain.MaterialAssumed);
        Assert.Equal(355 / 207.0, Bears("    diameter: 50 mm\n    wall: 2 mm\n", "    diameter: 50 mm\n    wall: 2 mm\n    material: steel-s355\n") / plain.AllowableNm, 6);
        Assert.InRange(Bears("    diameter: 50 mm\n    wall: 2 mm\n", "    diameter: 50 mm\n    wall: 3 mm\n") / plain.AllowableNm, 1.3, 1.5);
    }

    [Fact]
    public void Without_a_wind_speed_nothing_is_said_of_the_strength()
    {
        var plan = DemoPlans.House("mill-yard", DemoJobs.Load().With(Eu, "  wind: { speed: 24 m/s, exposure: III }\n", ""));
        Assert.Null(plan.Mounting.Wind);
        Assert.True(plan.Has("wind-unknown"));
    }
}
