using CsCheck;
using InstallPacket.Calc.Mounting;

namespace InstallPacket.Calc.Tests.Mounting;

public class WindTests
{
    private static readonly Gen<WindExposure> Exposure = Gen.Int[0, 2].Select(i => (WindExposure)i);

    private static readonly Gen<AsceEdition> Edition = Gen.Int[0, 1].Select(i => (AsceEdition)i);

    [Fact]
    public void The_exposure_factor_never_falls_as_the_height_grows() =>
        Gen.Select(Edition, Exposure, Gen.Double[0, 100], Gen.Double[0, 100], Gen.Bool).Sample((edition, exposure, height, more, floor) =>
            Assert.True(WindAsce.Kz(edition, exposure, height + more, floor) >= WindAsce.Kz(edition, exposure, height, floor)));

    [Fact]
    public void More_open_ground_never_has_less_wind() =>
        Gen.Select(Edition, Gen.Double[0, 60]).Sample((edition, height) =>
        {
            Assert.True(WindAsce.Kz(edition, WindExposure.C, height) >= WindAsce.Kz(edition, WindExposure.B, height));
            Assert.True(WindAsce.Kz(edition, WindExposure.D, height) >= WindAsce.Kz(edition, WindExposure.C, height));
        });

    [Fact]
    public void The_floor_of_exposure_B_is_taken_unless_it_is_declined()
    {
        Assert.Equal(0.70, WindAsce.Kz(AsceEdition.Asce716, WindExposure.B, 5));
        Assert.InRange(WindAsce.Kz(AsceEdition.Asce716, WindExposure.B, 5, floorB: false), 0.5, 0.62);
        Assert.InRange(WindAsce.Kz(AsceEdition.Asce716, WindExposure.B, 12), 0.75, 0.80);
    }

    [Fact]
    public void A_hill_never_slows_the_wind_and_counts_most_at_its_crest() =>
        Gen.Select(Gen.Int[0, 2].Select(i => (HillShape)i), Exposure, Gen.Double[0, 200], Gen.Double[1, 500], Gen.Double[-300, 300])
            .Sample((shape, exposure, high, half, from) =>
            {
                var there = WindTopography.Kzt(new(shape, high, half, from), exposure, 8);
                Assert.InRange(there, 1, WindTopography.Kzt(new(shape, high, half, 0), exposure, 8));
            });

    [Theory]
    [InlineData(3.0, WindExposure.C, false)]
    [InlineData(18.0, WindExposure.B, false)]
    [InlineData(18.0, WindExposure.C, true)]
    public void Low_hills_do_not_count(double high, WindExposure exposure, bool counts) =>
        Assert.Equal(counts, WindTopography.Kzt(new(HillShape.Hill, high, 2 * high, 0), exposure, 5) > 1);

    [Fact]
    public void Slight_slopes_do_not_count() => Assert.Equal(1, WindTopography.Kzt(new(HillShape.Ridge, 19.9, 100, 0), WindExposure.C, 5));

    // Beyond a slope of 0.5 the hill acts as one of 0.5.
    [Fact]
    public void A_steeper_hill_than_one_half_counts_as_one_half() => Assert.Equal(
        WindTopography.Kzt(new(HillShape.Escarpment, 30, 60, 20), WindExposure.C, 5), WindTopography.Kzt(new(HillShape.Escarpment, 30, 10, 20), WindExposure.C, 5), 1e-12);

    [Fact]
    public void The_speed_for_allowable_stress_gives_the_load_for_allowable_stress() => Gen.Double[0, 150].Sample(speed => Assert.Equal(
        AllowableStress.WindLoad(WindAsce.VelocityPressurePa(speed, 0.9, 0.95)), WindAsce.VelocityPressurePa(AllowableStress.SpeedMS(speed), 0.9, 0.95), 1e-6));

    [Fact]
    public void What_lies_outside_is_refused_with_value_and_unit()
    {
        Assert.Contains("-1", Assert.Throws<ArgumentOutOfRangeException>(() => WindAsce.VelocityPressurePa(-1, 1, 1)).Message, StringComparison.Ordinal);
        Assert.Contains("m/s", Assert.Throws<ArgumentOutOfRangeException>(() => WindAsce.VelocityPressurePa(151, 1, 1)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => WindAsce.VelocityPressurePa(double.NaN, 1, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => WindAsce.VelocityPressurePa(50, 1, 1.2));
        Assert.Throws<ArgumentOutOfRangeException>(() => WindAsce.Kz(AsceEdition.Asce716, WindExposure.D, 214));
        Assert.Throws<ArgumentOutOfRangeException>(() => WindAsce.Ke(9001));
        Assert.Throws<ArgumentOutOfRangeException>(() => WindAsce.GustEffect(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => AllowableStress.WindLoad(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => WindTopography.Kzt(new(HillShape.Hill, 30, 0, 0), WindExposure.C, 5));
    }
}
