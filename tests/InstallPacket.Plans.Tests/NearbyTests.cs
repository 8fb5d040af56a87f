using InstallPacket.Calc.Reception;
using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

/// <summary>What stands near the antenna or disturbs it: trees, roofs, other stations, the wrong plane.</summary>
public class NearbyTests
{
    private const string Job = "alder-lane/job.yaml";

    [Fact]
    public void Attic_costs_what_the_table_says_and_widens_the_spread()
    {
        var outdoors = DemoPlans.Of("alder-lane").Station("kes-21").Budget!;
        var attic = DemoPlans.Of("alder-lane", DemoJobs.Load().With(Job, "  terrain: tamarack\n", "  terrain: tamarack\n  under-roof: asphalt-shingles\n")).Station("kes-21").Budget!;
        var row = AtticLoss.Find("asphalt-shingles", 515)!;
        Assert.Equal(row.TypicalDb!.Value, attic.RoofLossDb);
        Assert.Equal(attic.RoofLossDb, outdoors.FieldDbuvM - attic.FieldDbuvM, 9);
        Assert.Equal(Math.Sqrt(1.5 * 1.5 + row.SigmaDb!.Value * row.SigmaDb.Value), attic.Spread.InstallDb, 9);
    }

    [Fact]
    public void Shallow_trees_are_received_through_and_deep_ones_over()
    {
        double Loss(string trees) => DemoPlans.Of("alder-lane", DemoJobs.Load().With(Job, "depth: 130 ft, leaf: in-leaf", trees)).Station("blu-15").Budget!.ObstructionLossDb;
        var over = Loss("leaf: in-leaf");
        Assert.Equal(over, Loss("depth: 300 ft"), 9);
        Assert.Equal(Vegetation.Through(479, 10 * 0.3048).HighDb, Loss("depth: 10 ft"), 9);
        Assert.InRange(Loss("depth: 10 ft"), 0.5, over - 1);
    }

    [Fact]
    public void Bare_trees_cost_less_above_500_MHz()
    {
        double Loss(string trees) => DemoPlans.Of("alder-lane", DemoJobs.Load().With(Job, "depth: 130 ft, leaf: in-leaf", trees)).Station("blu-33").Budget!.ObstructionLossDb;
        Assert.Equal(Loss("depth: 20 ft") / 1.2, Loss("depth: 20 ft, leaf: bare"), 9);
    }

    [Fact]
    public void Other_plane_of_polarisation_is_received_16_dB_weaker()
    {
        var mux = DemoPlans.Of("brook-terrace").Station("mux-r").Budget!;
        var same = DemoPlans.Of("brook-terrace", DemoJobs.Load().With("_shared/stations/lindmark.csv", "2,70,142,vertical", "2,70,142,horizontal")).Station("mux-r").Budget!;
        Assert.Equal(16, mux.PolarisationLossDb, 9);
        Assert.Equal(16, same.LevelDbm - mux.LevelDbm, 1);
    }

    [Fact]
    public void Same_channel_disturbs_through_the_pattern_and_a_turn_away_helps()
    {
        var list = DemoJobs.Load().Read("_shared/stations/tamarack.csv", 1 << 20).Text;
        var row = list.Split('\n').Single(l => l.StartsWith("pin-27,", StringComparison.Ordinal));
        DemoJobs Jobs(string channel) => DemoJobs.Load().With("_shared/stations/tamarack.csv", row, row.Replace("us-6,27,", $"us-6,{channel},", StringComparison.Ordinal).Replace(",12,150,690,", ",900,250,790,", StringComparison.Ordinal));
        var clear = DemoPlans.Of("alder-lane", Jobs("27"));
        var disturbed = DemoPlans.Of("alder-lane", Jobs("33"));
        var (a, b) = (clear.At("O4", "blu-33"), disturbed.At("O4", "blu-33"));
        Assert.Equal(a.LevelDbm, b.LevelDbm, 3);
        Assert.True(b.MarginDb < a.MarginDb);
        var d = Assert.Single(disturbed.Station("blu-33").Budget!.Disturbers, d => d.Station == "pin-27");
        Assert.Equal(0, d.OffsetChannels);
        // The noise of the other station added to the chain's own gives the new C/N exactly.
        var expected = -10 * Math.Log10(Math.Pow(10, -a.CnDb / 10) + Math.Pow(10, -d.RatioDb / 10));
        Assert.Equal(expected, b.CnDb, 4);
    }

    [Fact]
    public void Measured_skyline_lowers_the_curves_as_the_recommendation_says()
    {
        double Field(string angle) => DemoPlans.Of("far-meadow", DemoJobs.Load().With("far-meadow/job.yaml", "angle: 0.4 deg", "angle: " + angle)).Station("kes-21").Budget!.Estimates[0].ServiceDbuvM;
        Assert.Equal(TerrainClearance.CorrectionDb(515, 2) - TerrainClearance.CorrectionDb(515, 0.4), Field("2 deg") - Field("0.4 deg"), 9);
    }
}
