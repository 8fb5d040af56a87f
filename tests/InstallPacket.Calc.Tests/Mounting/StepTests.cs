using InstallPacket.Calc.Mounting;

namespace InstallPacket.Calc.Tests.Mounting;

/// <summary>Rules that go in steps, on both sides of each step.</summary>
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
}
