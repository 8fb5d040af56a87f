using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Siting;

namespace InstallPacket.Calc.Tests.Reception;

public class MinimumFieldTests
{
    [Fact]
    public void Both_ways_to_the_least_field_agree()
    {
        var noise = ThermalNoise.Dbm(7.61, ThermalNoise.ReferenceK);
        var byDipole = PlanningThreshold.FieldDbuVm(20, DipoleFactor.Kd(650), 11, 4, noise, 6);
        var flux = MinimumField.FluxDbwm2(MinimumField.InputDbw(20, 6, 7.61), MinimumField.ApertureDbm2(11, Wavelength.Metres(650)), 4);
        // The dipole factor is rounded to 0.01 dB.
        Assert.Equal(byDipole, MinimumField.FieldDbuVm(flux), 0.006);
    }

    [Fact]
    public void A_pair_without_a_row_is_unknown()
    {
        Assert.Null(ManMadeAllowance.Find("rural", "vehicle", 600));
        Assert.Null(ManMadeAllowance.Find("urban", "roof", 300));
        Assert.Null(ReferenceInstallation.Find("american", 90));
        Assert.Null(ReferenceInstallation.Find("martian", 600));
    }

    [Theory, InlineData(582, 10), InlineData(583, 12), InlineData(200, 7)]
    public void A_band_has_its_reference_gain(double f, double gain) => Assert.Equal(gain, ReferenceInstallation.Find("european", f)!.GainDbd);

    [Theory, InlineData(174, 12), InlineData(350, 14), InlineData(862, 18)]
    public void Height_loss_runs_straight_between_its_values(double f, double loss) => Assert.Equal(loss, ReferenceInstallation.HeightLossDb(f), 1e-9);

    [Theory, InlineData(100), InlineData(300), InlineData(900)]
    public void European_planning_knows_its_bands_only(double f) => Assert.Throws<ArgumentOutOfRangeException>(() => ReferenceInstallation.PlanningGainDbd(f));
}
