using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

public class GroundTests
{
    private const string Job = "alder-lane/job.yaml";

    // The ridge stands south-west of the village. Behind it the station is lost; in front of it the station is in sight.
    [Fact]
    public void Moving_to_the_other_side_of_the_ridge_brings_the_station_into_sight()
    {
        var behind = DemoPlans.Of("alder-lane");
        var before = DemoPlans.Of("alder-lane", DemoJobs.Load().With(Job, "latitude: 43.62000 N", "latitude: 43.57400 N").With(Job, "longitude: 99.14000 W", "longitude: 99.24500 W")
            .With(Job, "ground: 1640 ft", "ground: 1650 ft"));
        Assert.False(Path(behind, "Bluestem Hill").InSight);
        Assert.True(Path(before, "Bluestem Hill").InSight);
        double Gain(string model) => BelowFreeSpace(behind, "blu-15", model) - BelowFreeSpace(before, "blu-15", model);
        var blind = Gain("curves"); // the curves see no ridge, only that the new place is nearer
        Assert.InRange(blind, 0, 8);
        Assert.InRange(Gain("itm"), blind + 5, 40);
        Assert.InRange(Gain("p1812"), blind + 5, 40);
    }

    [Theory]
    [InlineData("alder-lane", "itm")]
    [InlineData("brook-terrace", "p1812")]
    [InlineData("far-meadow", "curves")]
    public void Code_family_and_known_ground_choose_the_model(string job, string model)
    {
        var plan = DemoPlans.Of(job);
        Assert.All(plan.Reception.Wanted, s => Assert.Equal(model, s.Budget!.PlannedBy));
        Assert.All(plan.Reception.Wanted, s => Assert.Equal(model == "curves" ? 1 : 3, s.Budget!.Estimates.Count));
    }

    [Fact]
    public void Difference_of_the_models_widens_the_spread()
    {
        var s = DemoPlans.Of("alder-lane").Station("blu-15").Budget!;
        var seeing = s.Estimates.Select(v => v.ServiceDbuvM).ToArray();
        Assert.All(s.Estimates, v => Assert.Equal("path", v.Ground));
        var path = Math.Clamp(6.5 + 3.5 * (DemoPlans.Of("alder-lane").Station("blu-15").DistanceKm - 20) / 80, 6.5, 10);
        Assert.Equal(Math.Sqrt(path * path + Math.Pow((seeing.Max() - seeing.Min()) / 2, 2)), s.Spread.ModelDb, 9);
        Assert.Equal(Math.Sqrt(5.5 * 5.5 + s.Spread.ModelDb * s.Spread.ModelDb + 1.5 * 1.5), s.Spread.TotalDb, 9);
    }

    [Fact]
    public void Measured_profile_goes_before_the_curves()
    {
        var plan = DemoPlans.Of("far-meadow");
        Assert.Equal("itm", plan.Station("blu-15").Budget!.PlannedBy);
        Assert.Equal("itm", plan.Station("blu-33").Budget!.PlannedBy); // stands on the same site
        Assert.Equal("measured", Path(plan, "Bluestem Hill").From);
        Assert.Null(plan.Siting.Ground);
    }

    [Fact]
    public void Hill_of_the_survey_counts_only_where_no_tile_sees_the_ground()
    {
        string Hill(string kind) => $"maples: {{ kind: {kind}, bearing: 240 deg true, width: 18 deg, distance: 260 ft, height: 36 ft, depth: 130 ft, leaf: in-leaf }}";
        double Loss(DemoJobs jobs) => DemoPlans.Of("alder-lane", jobs).Station("blu-15").Budget!.ObstructionLossDb;
        var trees = Hill("trees");
        Assert.Equal(0, Loss(DemoJobs.Load().With(Job, trees, Hill("hill"))));
        Assert.True(Loss(DemoJobs.Load().With(Job, trees, Hill("hill")).With(Job, "  terrain: tamarack\n", "")) > 5);
    }

    [Fact]
    public void Tiles_are_cited_with_their_hash()
    {
        var tile = Assert.Single(DemoPlans.Of("alder-lane").Siting.Ground!.Tiles);
        Assert.Equal("_shared/terrain/tamarack/N43W100.hgt.zip", tile.Path);
        Assert.Equal(64, tile.Sha256.Length);
        Assert.Contains("EGM96", tile.Datum, StringComparison.Ordinal);
    }

    [Fact]
    public void Profile_keeps_both_ends_and_the_summit()
    {
        var path = Path(DemoPlans.Of("alder-lane"), "Bluestem Hill");
        Assert.Equal(0, path.Points[0].DistanceKm);
        Assert.Equal(path.DistanceKm, path.Points[^1].DistanceKm, 9);
        Assert.Equal(path.AntennaM, path.Points[0].RayM, 9);
        Assert.Equal(path.TransmitterM, path.Points[^1].RayM, 9);
        var edge = path.Edges[0];
        Assert.Contains(path.Points, p => Math.Abs(p.GroundM - edge.GroundM) < 1 && Math.Abs(p.DistanceKm - edge.DistanceKm) < 0.3);
        Assert.All(path.Points, p => Assert.Equal(p.GroundM + p.BulgeM, p.CurvedM, 9));
    }

    [Theory]
    [InlineData("alder-lane")]
    [InlineData("brook-terrace")]
    [InlineData("far-meadow")]
    public void Profile_keeps_the_edges_and_the_tightest_spot(string job)
    {
        foreach (var path in DemoPlans.Of(job).Siting.Paths)
        {
            Assert.Contains(path.Tightest, path.Points);
            Assert.Equal(path.ClearAtKm, path.Tightest.DistanceKm);
            Assert.Equal(path.ClearShare, (path.Tightest.RayM - path.Tightest.CurvedM) / path.Tightest.FresnelM, 9);
            Assert.All(path.Edges, e => Assert.Contains(path.Points, p => p.DistanceKm == e.DistanceKm && p.CurvedM == e.CurvedM));
            Assert.Equal(path.Points.OrderBy(p => p.DistanceKm), path.Points);
            Assert.Equal(path.InSight, path.Edges.Count == 0);
        }
    }

    [Fact]
    public void Of_many_sites_the_wanted_and_the_nearest_others_are_looked_at()
    {
        var knolls = string.Concat(Enumerable.Range(1, 8).Select(i =>
            FormattableString.Invariant($"kno-{i},Knoll {i},Knoll {i},ATSC 1.0,us-6,{20 + 2 * i - 1},{60 + i}.1,{43.58 - 0.01 * i:0.0000},{-99.16 - 0.01 * i:0.0000},0.01,50,560,horizontal,\n")));
        var siting = DemoPlans.Of("alder-lane", DemoJobs.Load().With("_shared/stations/tamarack.csv", "kes-9,", knolls + "kes-9,")).Siting;
        Assert.Equal(["Knoll 1", "Knoll 2", "Knoll 3", "Knoll 4", "Kestrel Ridge", "Bluestem Hill"], siting.Paths.Select(p => p.Site));
        Assert.Equal(["Knoll 5", "Knoll 6", "Knoll 7", "Knoll 8", "Pine Butte"], siting.PathsLeftOut);
        Assert.Empty(DemoPlans.Of("alder-lane").Siting.PathsLeftOut);
    }

    [Fact]
    public void Profile_names_the_obstructions_of_its_direction()
    {
        var plan = DemoPlans.Of("alder-lane");
        Assert.Equal(["maples"], Path(plan, "Bluestem Hill").Obstructions);
        Assert.Empty(Path(plan, "Kestrel Ridge").Obstructions);
    }

    [Fact]
    public void Skyline_rises_toward_the_ridge_and_a_measured_arc_goes_before_the_tiles()
    {
        var tiles = DemoPlans.Of("alder-lane").Siting.Skyline;
        Assert.Equal(180, tiles.Count);
        var ridge = tiles.Single(p => p.BearingTrueDeg == 236);
        Assert.Equal("tiles", ridge.From);
        Assert.InRange(ridge.AngleDeg!.Value, 0.4, 1.5);
        Assert.InRange(ridge.DistanceKm!.Value, 6, 8);
        var measured = DemoPlans.Of("alder-lane", DemoJobs.Load().With(Job, "  terrain: tamarack\n", "  terrain: tamarack\n  horizon:\n    - { bearing: 236 deg true, width: 4 deg, angle: 2 deg }\n")).Siting.Skyline;
        Assert.Equal(new SkylinePoint(236, 2, null, "measured"), measured.Single(p => p.BearingTrueDeg == 236));
        Assert.Equal("tiles", measured.Single(p => p.BearingTrueDeg == 240).From);
    }

    [Fact]
    public void Hole_up_to_three_hundred_metres_is_bridged_and_a_longer_one_is_not()
    {
        Assert.Equal(0, Sampled(2).HoleM);
        Assert.InRange(Sampled(2).Bridged, 1, 2);
        Assert.False(Sampled(8).Whole);
        Assert.InRange(Sampled(8).HoleM, 600, 900);
    }

    private static GroundPath Sampled(int voidCells) =>
        new PathSampler(43.5, -99.5, new Flat(voidCells)).Tiles(Calc.Siting.Geodesic.Inverse(43.5, -99.5, 43.7, -99.5))!;

    private static PathPlan Path(Plan plan, string site) => plan.Siting.Paths.Single(p => p.Site == site);

    private static double BelowFreeSpace(Plan plan, string station, string model)
    {
        var b = plan.Station(station).Budget!;
        return b.FreeSpaceDbuvM - b.Estimates.Single(v => v.Model == model).ServiceDbuvM;
    }

    // Flat ground with a band of voids some cells of 3 arc-seconds high.
    private sealed class Flat(int voidCells) : ITerrain
    {
        public double SpacingArcSeconds => 3;

        public IReadOnlyList<TileUse> Used => [];

        public IReadOnlyList<string> UnfitTiles => [];

        public IReadOnlyList<string> MissingTiles => [];

        public GroundHeight At(double latitudeDeg, double longitudeDeg) =>
            latitudeDeg > 43.6 && latitudeDeg < 43.6 + voidCells * 3 / 3600.0 ? new(0, HeightState.Void) : new(200, HeightState.Known);
    }
}
