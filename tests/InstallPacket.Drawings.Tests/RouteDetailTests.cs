using InstallPacket.Plans;

namespace InstallPacket.Drawings.Tests;

public class RouteDetailTests
{
    [Theory]
    [InlineData(20, 7)]
    [InlineData(10, 7)]
    [InlineData(7, 7)]
    public void The_loop_hangs_to_its_depth_and_rises_into_the_hole(double depth, double radius)
    {
        var hole = new PaperPoint(50, 30);
        var line = EntryCable.Loop(hole, depth, radius, 5);
        Assert.Equal(hole.Y + depth, line.Max(p => p.Y), 0.05);
        Assert.Equal(hole.X, line[^1].X, 6);
        Assert.Equal(hole.Y, line[^1].Y, 6);
        Assert.True(line.Skip(1).All(p => p.X <= hole.X + 1e-9));
        // No jump: neighbours in the two bends lie close together, and the way never kinks by more than a step of the arcs.
        for (var i = 2; i < line.Count - 1; i++)
        {
            var turn = Math.Abs(Polar.BearingDeg(line[i - 1], line[i]) - Polar.BearingDeg(line[i], line[i + 1]));
            if (Polar.Distance(line[i - 1], line[i]) > 1e-6 && Polar.Distance(line[i], line[i + 1]) > 1e-6) Assert.InRange(Math.Min(turn, 360 - turn), 0, 7);
        }
    }

    [Fact]
    public void Each_side_is_seen_with_its_own_right_hand()
    {
        Assert.Equal((2.0, -1.0), PlanSide.Seen("right", 1, 2));
        Assert.Equal((-1.0, -2.0), PlanSide.Seen("upper", 1, 2));
        Assert.Equal((-2.0, 1.0), PlanSide.Seen("left", 1, 2));
    }

    [Fact]
    public void A_moved_waypoint_moves_the_sketch_and_no_sight_line()
    {
        var plan = Demo.Plan("alder-lane");
        var moved = plan with { Routing = plan.Routing with { Points = [.. plan.Routing.Points.Select(p => p.Name == "gable-side" ? p with { UpM = p.UpM - 1 } : p)] } };
        string Svg(Plan of, string figure) => SvgPainter.PaintFile(Demo.Figures(of)[figure]);
        Assert.NotEqual(Svg(plan, "route-sketch"), Svg(moved, "route-sketch"));
        Assert.NotEqual(Svg(plan, "route-elevations"), Svg(moved, "route-elevations"));
        Assert.All(["horizon-strip", "chain-diagram", "level-ladder", "entry-ground-block"], f => Assert.Equal(Svg(plan, f), Svg(moved, f)));
    }

    [Fact]
    public void An_entry_through_the_roof_has_no_section()
    {
        var plan = Demo.Plan("alder-lane");
        Assert.Empty(EntryDetailSheet.DrawAll(Demo.On(plan with { Routing = plan.Routing with { Entries = [.. plan.Routing.Entries.Select(e => e with { Through = EntrySurface.Roof, Figure = "" })] } }), Demo.Measure));
    }
}
