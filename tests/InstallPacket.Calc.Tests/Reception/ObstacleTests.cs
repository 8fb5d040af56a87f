using CsCheck;
using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Siting;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Tests.Reception;

public class ObstacleTests
{
    // What the last bits of a double may turn round.
    private const double Hair = 1e-9;

    [Fact]
    public void More_trees_never_cost_less() =>
        Gen.Select(Gen.Double[230, 900], Gen.Double[0, 200], Gen.Double[0, 200]).Sample((f, depth, more) =>
        {
            Assert.True(WoodlandLoss.Db(f, depth + more) >= WoodlandLoss.Db(f, depth) - Hair);
            Assert.True(Vegetation.EarlyDb(f, depth + more) >= Vegetation.EarlyDb(f, depth) - Hair);
            // At 14 m the published branches step down by 0.4 %.
            Assert.True(Vegetation.WeissbergerDb(f, depth + more) >= 0.996 * Vegetation.WeissbergerDb(f, depth) - Hair);
        });

    [Fact]
    public void Woodland_never_costs_more_than_its_greatest_loss() =>
        Gen.Select(Gen.Double[30, 2117], Gen.Double[0, 1e5]).Sample((f, depth) =>
            Assert.InRange(WoodlandLoss.Db(f, depth), 0, WoodlandLoss.Constants(f).MostDb));

    [Theory]
    [InlineData(600, false, Provenance.Read)]
    [InlineData(230, false, Provenance.Read)]
    [InlineData(200, false, Provenance.Memory)]
    [InlineData(60, true, Provenance.Memory)]
    public void Through_says_how_its_range_is_known(double f, bool belowMeasured, Provenance provenance)
    {
        var loss = Vegetation.Through(f, 20);
        Assert.Equal((belowMeasured, provenance), (loss.BelowMeasured, loss.Provenance));
        Assert.Equal(WoodlandLoss.Db(f, 20), loss.LowDb);
        Assert.Equal(f >= 230 ? Vegetation.WeissbergerDb(f, 20) : Vegetation.EarlyDb(f, 20), loss.HighDb);
    }

    [Fact]
    public void Through_gives_a_range_that_a_screen_caps() =>
        Gen.Select(Gen.Double[30, 2117], Gen.Double[0, 400], Gen.Double[-2, 5]).Sample((f, depth, nu) =>
        {
            var loss = Vegetation.Through(f, depth);
            var capped = loss.CappedBy(KnifeEdge.LossDb(nu));
            Assert.True(loss.LowDb <= loss.HighDb && capped.LowDb <= capped.HighDb);
            Assert.True(capped.HighDb <= loss.HighDb && capped.HighDb <= KnifeEdge.LossDb(nu));
        });

    [Theory]
    [InlineData(600, -1)]
    [InlineData(600, 401)]
    [InlineData(600, double.NaN)]
    [InlineData(29, 10)]
    [InlineData(2118, 10)]
    [InlineData(double.NaN, 10)]
    public void Through_refuses_what_no_form_covers(double f, double depth) => Assert.Throws<ArgumentOutOfRangeException>(() => Vegetation.Through(f, depth));

    [Theory, InlineData(2), InlineData(3), InlineData(4), InlineData(5)]
    public void Walls_are_not_calculated_at_the_lowest_channels(int channel) => Assert.Throws<ArgumentOutOfRangeException>(
        () => BuildingEntry.LossDb(BuildingKind.Traditional, ChannelRaster.Find("us-6", channel)!.CentreMHz, 0.5));

    [Theory, InlineData(0), InlineData(1), InlineData(double.NaN)]
    public void Walls_refuse_certainty(double probability) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => BuildingEntry.LossDb(BuildingKind.Traditional, 600, probability));

    [Fact]
    public void A_surer_share_of_places_loses_more() =>
        Gen.Select(Gen.Enum<BuildingKind>(), Gen.Double[80, 900], Gen.Double[0.01, 0.9], Gen.Double[0, 0.09], Gen.Double[-90, 90]).Sample((kind, f, share, more, elevation) =>
        {
            Assert.True(BuildingEntry.LossDb(kind, f, share + more, elevation) >= BuildingEntry.LossDb(kind, f, share, elevation) - Hair);
            Assert.Equal(BuildingEntry.LossDb(kind, f, share, elevation), BuildingEntry.LossDb(kind, f, share, -elevation));
            Assert.True(BuildingEntry.LossDb(kind, f, share, elevation) >= -3);
        });

    [Fact]
    public void Metallised_walls_lose_more_than_ordinary_ones() =>
        Gen.Select(Gen.Double[80, 900], Gen.Double[0.05, 0.95]).Sample((f, share) => Assert.True(
            BuildingEntry.LossDb(BuildingKind.ThermallyEfficient, f, share) > BuildingEntry.LossDb(BuildingKind.Traditional, f, share)));

    [Fact]
    public void Roofs_can_be_keys() => Assert.All(AtticLoss.Roofs, r => Assert.Matches("^[a-z]+(-[a-z]+)*$", r));

    [Theory]
    [InlineData("metal-roof", 57, true)]
    [InlineData("foil-insulation", 605, true)]
    [InlineData("radiant-barrier", 1e6, true)]
    [InlineData("stucco-mesh", 177, true)]
    [InlineData("asphalt-shingles", 57, false)]
    [InlineData("slate", 605, false)]
    public void Foil_and_metal_are_a_stop_at_every_frequency(string roof, double f, bool blocks) => Assert.Equal(blocks, AtticLoss.Find(roof, f)!.Blocks);

    [Fact]
    public void A_roof_without_a_figure_is_unknown()
    {
        Assert.Null(AtticLoss.Find("slate", 177));
        Assert.Null(AtticLoss.Find("wet-deck", 800));
        Assert.Null(AtticLoss.Find("thatch", 600));
        Assert.Null(AtticLoss.Find("light-building", 600));
        Assert.Null(IndoorLoss.Find("light-building", 200));
    }

    [Theory, InlineData(-30, 0.55), InlineData(0, 0.55), InlineData(60, 40)]
    public void The_clearance_angle_counts_within_limits(double angle, double counted) =>
        Assert.Equal(TerrainClearance.CorrectionDb(600, counted), TerrainClearance.CorrectionDb(600, angle));

    [Fact]
    public void Higher_ground_in_front_never_helps() =>
        Gen.Select(Gen.Double[30, 1000], Gen.Double[-5, 45], Gen.Double[0, 10]).Sample((f, angle, more) =>
            Assert.True(TerrainClearance.CorrectionDb(f, angle + more) <= TerrainClearance.CorrectionDb(f, angle) + Hair));

    [Theory, InlineData(29, 1), InlineData(4001, 1), InlineData(600, 91), InlineData(600, double.NaN)]
    public void The_clearance_correction_refuses_what_lies_outside(double f, double angle) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => TerrainClearance.CorrectionDb(f, angle));

    [Fact]
    public void The_clearance_angle_is_the_steepest_of_all() =>
        Gen.Select(Gen.Double[0, 800].Array[2, 60], Gen.Double[30, 3000], Gen.Double[0, 30]).Sample((ground, step, antenna) =>
        {
            var found = TerrainClearance.Angle(new TerrainProfile(ground, step), antenna);
            var own = ground[^1] + antenna;
            var angles = Enumerable.Range(1, ground.Length - 1).Where(i => i * step <= 16000).Select(i => Math.Atan2(ground[^(i + 1)] - own, i * step) * 180 / Math.PI);
            Assert.Equal(angles.Max(), found.AngleDeg, 1e-9);
            Assert.Equal(Math.Tan(found.AngleDeg * Math.PI / 180) * found.DistanceM, found.GroundM - found.AntennaM, 1e-6);
        });

    [Fact]
    public void A_profile_coarser_than_the_reach_gives_no_angle() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => TerrainClearance.Angle(new TerrainProfile([100, 200], 16001), 10));
}
