using InstallPacket.Calc.Mounting;

namespace InstallPacket.Calc.Tests.Mounting;

/// <summary>Rules that go in steps, on both sides of each step, and the wind on both sides of a crest.</summary>
public class StepTests
{
    // 29 CFR 1926.1053: the sections of an extension ladder overlap by 3 ft up to 36 ft, 4 ft up to 48 ft, 5 ft up to 60 ft.
    [Theory]
    [InlineData(33, 36)]
    [InlineData(33.1, 40)]
    [InlineData(36, 40)]
    [InlineData(44, 48)]
    [InlineData(44.1, 52)]
    [InlineData(47, 52)]
    [InlineData(55, 60)]
    public void Sections_of_a_long_ladder_overlap_by_more(double railFt, int sizeFt) =>
        Assert.Equal(sizeFt, LadderSet.ExtensionSizeFt(railFt));

    // ASCE 7, 26.8.1: hills from 15 ft on in exposure C and D, from 60 ft on in B.
    [Theory]
    [InlineData(WindExposure.B, 60)]
    [InlineData(WindExposure.C, 15)]
    [InlineData(WindExposure.D, 15)]
    public void Low_hills_do_not_count(WindExposure exposure, double feet) =>
        Assert.Equal(feet * 0.3048, WindTopography.LeastHillM(exposure), 9);

    // Worked from ASCE 7, figure 26.8-1: a hill of 30 m, 60 m to half its height, exposure C, 10 m above ground, 45 m from the crest.
    // Ridge: K1 = 1.45 x 0.5, K2 = 1 - 45 / (1.5 x 60), K3 = exp(-3 x 10 / 60). Escarpment: K1 = 0.85 x 0.5, K3 = exp(-2.5 x 10 / 60),
    // K2 = 1 - 45 / (4 x 60) behind the crest and 1 - 45 / (1.5 x 60) before it.
    [Theory]
    [InlineData(HillShape.Ridge, 45, 1.488076)]
    [InlineData(HillShape.Escarpment, 45, 1.507110)]
    [InlineData(HillShape.Escarpment, -45, 1.299802)]
    public void Wind_beside_the_crest_is_still_raised(HillShape shape, double fromCrestM, double kzt) =>
        Assert.Equal(kzt, WindTopography.Kzt(new(shape, 30, 60, fromCrestM), WindExposure.C, 10), 1e-6);
}
