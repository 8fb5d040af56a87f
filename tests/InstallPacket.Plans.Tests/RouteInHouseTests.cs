using InstallPacket.Calc.Quantities;
using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

public class RouteInHouseTests
{
    private static readonly House Gable = new([(0, 0), (10, 0), (10, 8), (0, 8)], Length.FromMetres(5), Length.FromMetres(9)) { Roof = RoofForm.Gable, RidgeAlong = RidgeAxis.Right };

    [Theory]
    [InlineData(5, 4, 8.9, HouseSide.Inside)]
    [InlineData(5, 4, 9.1, HouseSide.Outside)]
    [InlineData(5, 2, 7.1, HouseSide.Outside)] // half way up the slope the roof is 7 m high
    [InlineData(5, 2, 6.9, HouseSide.Inside)]
    [InlineData(10, 4, 8.5, HouseSide.Face)]
    [InlineData(10.3, 4, 3, HouseSide.Outside)]
    [InlineData(5, 2, 7, HouseSide.Face)]
    internal void A_place_is_inside_under_the_slope_and_outside_above_it(double x, double y, double z, HouseSide side) => Assert.Equal(side, new HouseShape(Gable).At(x, y, z));

    [Theory]
    [InlineData(RoofForm.Flat, null, 5, 2, 5)]
    [InlineData(RoofForm.Gable, RidgeAxis.Up, 2.5, 1, 7)]
    [InlineData(RoofForm.Hip, null, 5, 4, 9)]
    [InlineData(RoofForm.Hip, null, 2, 4, 7)]
    [InlineData(RoofForm.Hip, null, 5, 2, 7)]
    public void The_roof_rises_by_its_form(RoofForm roof, RidgeAxis? along, double x, double y, double height) =>
        Assert.Equal(height, new HouseShape(Gable with { Roof = roof, RidgeAlong = along, Ridge = Length.FromMetres(roof == RoofForm.Flat ? 5 : 9) }).RoofM(x, y)!.Value, 9);

    [Fact]
    public void Without_its_form_nothing_is_said_between_eaves_and_ridge() => Assert.Equal(HouseSide.Unknown, new HouseShape(Gable with { Roof = null }).At(5, 4, 6));

    [Fact]
    public void A_leg_through_the_house_goes_in_and_out()
    {
        var found = new HouseShape(Gable).Pierces(Point(-3, 4, 2), Point(13, 4, 2));
        Assert.Equal([(0.0, false), (10.0, false)], found.Select(p => (Math.Round(p.RightM, 1), p.ByRoof)));
    }

    [Fact]
    public void A_leg_from_above_goes_through_the_roof_where_the_slope_is()
    {
        var found = Assert.Single(new HouseShape(Gable).Pierces(Point(5, 2, 12), Point(5, 2, 1)));
        Assert.True(found.ByRoof);
        Assert.Equal(7, found.HeightM, 1);
    }

    [Fact]
    public void A_leg_along_the_face_pierces_nothing() => Assert.Empty(new HouseShape(Gable).Pierces(Point(10, 1, 1), Point(10, 7, 4)));

    [Fact]
    public void Walls_that_cross_are_named_with_their_place() =>
        Assert.Equal((1, 3, 5.0, 4.0), new HouseShape(Gable with { Footprint = [(0, 0), (10, 8), (10, 0), (0, 8)] }).Crossing());

    [Fact]
    public void Entries_fall_outward_by_their_wall()
    {
        var entry = Assert.Single(DemoPlans.Of("brook-terrace").Routing.Entries);
        Assert.Equal(["R2"], entry.Runs);
        Assert.Equal(0.36 * Math.Tan(5 * Math.PI / 180), entry.FallM!.Value, 9);
        Assert.Equal(0.12, entry.DripDepthM);
    }

    [Fact]
    public void Stretches_follow_the_changes_of_way()
    {
        var run = DemoPlans.Of("far-meadow").Routing.Runs.Single(r => r.Id == "R1");
        Assert.Equal([("mast-head", "mast-base", CableWay.Outside), ("mast-base", "entry", CableWay.Conduit)], run.Stretches.Select(s => (s.FromPoint, s.ToPoint, s.Way)));
        Assert.Equal(38 * 0.3048, run.Stretches[0].StraightM, 9);
        Assert.Equal((int)Math.Ceiling(38 * 0.3048 * 1.05 / 0.61) + 1, run.Clips); // the conduit needs none
    }

    [Fact]
    public void Upright_cable_gets_closer_clips_where_the_family_asks_for_it()
    {
        var run = DemoPlans.Of("brook-terrace").Routing.Runs.Single(r => r.Id == "R1");
        Assert.Equal((int)Math.Ceiling((2.0 + Math.Sqrt(0.3 * 0.3 + 1.0)) * 1.05 / 0.3) + 1, run.Clips);
    }

    [Fact]
    public void Outlets_know_their_rooms()
    {
        var points = DemoPlans.Of("alder-lane").Routing.Points.ToDictionary(p => p.Name, p => p.Room);
        Assert.Equal("living-room", points["living-room"]);
        Assert.Equal("den", points["den"]); // above the living room: the storey decides
        Assert.Equal("", points["mast-head"]);
    }

    [Fact]
    public void A_conduit_is_filled_by_all_that_share_it()
    {
        var conduits = DemoPlans.Of("mill-yard").Routing.Conduits;
        Assert.Equal(100 * 2 * 6.9 * 6.9 / (16 * 16), conduits.Single(c => c.Name == "shaft-1").FillPct!.Value, 1e-9);
        Assert.False(DemoPlans.Of("mill-yard").Has("conduit-overfilled"));
        Assert.True(DemoPlans.Of("mill-yard", DemoJobs.Load().With("mill-yard/job.yaml", "shaft-1: { inside: 16 mm", "shaft-1: { inside: 15 mm")).Has("conduit-overfilled"));
    }

    [Fact]
    public void A_point_on_a_wall_stands_where_the_tape_says()
    {
        var point = DemoPlans.Of("brook-terrace").Routing.Points.Single(p => p.Name == "earth-block");
        Assert.Equal((6.2, 5.8, 5.4), (Math.Round(point.RightM, 9), Math.Round(point.UpM, 9), Math.Round(point.HeightM, 9)));
    }

    private static HousePoint Point(double x, double y, double z) => new("p", x, y, z, default);
}
