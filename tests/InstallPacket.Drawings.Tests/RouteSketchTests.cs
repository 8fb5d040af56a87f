using InstallPacket.Plans;

namespace InstallPacket.Drawings.Tests;

public class RouteSketchTests
{
    [Theory]
    [InlineData(0, 0, 1)]
    [InlineData(270, 1, 0)]
    [InlineData(180, 0, -1)]
    [InlineData(90, -1, 0)]
    public void The_north_arrow_turns_against_the_plan(double planUp, int right, int up)
    {
        var plan = Demo.Plan("alder-lane");
        var sketch = Draw(plan with { Routing = plan.Routing with { PlanUpDeg = planUp } });
        var shaft = sketch.Lines(Ink.Line, 0.7).First(l => l.Points.Count == 2);
        Assert.Equal(right, Math.Sign(Math.Round(shaft.Points[1].X - shaft.Points[0].X, 6)));
        Assert.Equal(-up, Math.Sign(Math.Round(shaft.Points[1].Y - shaft.Points[0].Y, 6)));
    }

    [Fact]
    public void A_drip_loop_hangs_below_its_point()
    {
        var plan = Demo.Plan("brook-terrace");
        var (scale, view) = Elevation(plan);
        Assert.True(scale.MmPerMetre > 0);
        var canvas = new SheetCanvas(Demo.Measure);
        new ViewPainter(canvas, Demo.On(plan), view).Draw(dripLoops: true);
        var loop = canvas.Shapes.OfType<Polyline>().Single(l => l.Pen.WeightMm == 0.9);
        var point = view.Place(plan.Routing.Points.First(p => p.Name == "earth-block"));
        Assert.True(loop.Points.Max(p => p.Y) > point.Y + 2);
        Assert.True(loop.Points.Min(p => p.Y) >= point.Y - 1e-9);
        Assert.Equal(point.X, loop.Points.Average(p => p.X), 6);
    }

    [Fact]
    public void Up_is_up_in_both_views()
    {
        var plan = Demo.Plan("alder-lane");
        var (scale, side) = Elevation(plan);
        var above = RouteView.Plan(scale, new(0, 0, 170, 100));
        Assert.True(above.At(0, 2, 0).Y < above.At(0, 1, 0).Y);
        Assert.True(side.At(0, 0, 2).Y < side.At(0, 0, 1).Y);
        Assert.Equal(above.At(3, 0, 0).X, side.At(3, 0, 0).X, 9);
        // One scale across and up, so that a slope on the sheet is the slope of the house.
        Assert.Equal(side.At(1, 0, 0).X - side.At(0, 0, 0).X, side.At(0, 0, 0).Y - side.At(0, 0, 1).Y, 9);
    }

    [Fact]
    public void Runs_that_share_a_leg_lie_side_by_side()
    {
        var plan = Demo.Plan("alder-lane");
        var (_, view) = Elevation(plan);
        var shared = RunLanes.Of(plan.Routing, view).Where(l => l.Run.Id is "R4" or "R5" or "R6" or "R7").Select(l => l.Points[0]).ToArray();
        Assert.Equal(4, shared.Length);
        for (var i = 0; i < shared.Length; i++)
            for (var k = i + 1; k < shared.Length; k++)
                Assert.True(Polar.Distance(shared[i], shared[k]) >= RunLanes.LaneMm - 1e-9);
    }

    [Theory]
    [InlineData("alder-lane")]
    [InlineData("brook-terrace")]
    [InlineData("far-meadow")]
    public void Every_run_has_its_badge_in_both_views(string job)
    {
        var plan = Demo.Plan(job);
        var sketch = Draw(plan);
        Assert.All(plan.Routing.Runs, run => Assert.Equal(2, sketch.Captions().Count(c => c.Text == run.Id)));
    }

    [Theory]
    [InlineData("alder-lane")]
    [InlineData("brook-terrace")]
    [InlineData("far-meadow")]
    public void Every_part_is_named_in_both_views(string job)
    {
        var plan = Demo.Plan(job);
        var words = Draw(plan).Captions().SelectMany(c => c.Text.Split(", ")).ToArray();
        Assert.All(plan.Cabling.Elements, e => Assert.Equal(2, words.Count(w => w == e.Id)));
    }

    [Fact]
    public void The_legend_names_only_the_ways_in_use()
    {
        var words = Draw(Demo.Plan("far-meadow")).Captions().Select(c => c.Text).ToArray();
        Assert.Contains("in conduit", words);
        Assert.DoesNotContain("in the attic", words);
    }

    [Theory]
    [InlineData("alder-lane", 0.1)]
    [InlineData("far-meadow", 0.1)]
    [InlineData("far-meadow", 1)]
    public void A_flat_roof_keeps_its_two_heights_apart(string job, double rise)
    {
        var plan = Demo.Plan(job);
        var sketch = Draw(plan with { Routing = plan.Routing with { RidgeM = plan.Routing.EavesM + rise } });
        Assert.Equal("", sketch.Faults());
        Assert.Equal(2, sketch.Captions().Count(c => c.Text.StartsWith("ridge", StringComparison.Ordinal) || c.Text.StartsWith("eaves", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_house_without_outline_still_shows_its_runs()
    {
        var plan = Demo.Plan("brook-terrace");
        var sketch = Draw(plan with { Routing = plan.Routing with { Outline = [], EavesM = null, RidgeM = null } });
        Assert.Equal("", sketch.Faults());
        Assert.All(plan.Routing.Runs, run => Assert.Equal(2, sketch.Captions().Count(c => c.Text == run.Id)));
    }

    [Fact]
    public void Without_runs_there_is_no_sketch()
    {
        var plan = Demo.Plan("alder-lane");
        Assert.Null(RouteSketchSheet.Draw(Demo.On(plan with { Routing = plan.Routing with { Runs = [] } }), Demo.Measure));
    }

    private static (RouteScale Scale, RouteView View) Elevation(Plan plan)
    {
        var scale = RouteScale.Of(plan.Routing);
        return (scale, RouteView.Elevation(scale, new(0, 0, 170, 100)));
    }

    private static Drawing Draw(Plan plan) => RouteSketchSheet.Draw(Demo.On(plan), Demo.Measure)!;
}
