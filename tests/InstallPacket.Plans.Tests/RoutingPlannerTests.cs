using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

public class RoutingPlannerTests
{
    [Fact]
    public void Length_to_cut_is_the_sum_of_its_parts_rounded_up()
    {
        foreach (var id in new[] { "alder-lane", "far-meadow", "brook-terrace", "mill-yard", "pine-corner", "quay-loft" })
        {
            var plan = DemoPlans.Of(id);
            var step = plan.Job.Units == UnitFamily.Metric ? 0.1 : 0.1524;
            foreach (var run in plan.Routing.Runs)
            {
                var exact = run.StraightM * run.RouteFactor + run.DripExtraM + run.SagExtraM + run.ServiceM + run.SlackM + run.TerminationM;
                Assert.InRange(run.LengthM, exact - 1e-9, exact + step);
                Assert.Equal(0, Math.IEEERemainder(run.LengthM, step), 6);
            }
        }
    }

    [Fact]
    public void Straight_legs_come_from_the_points()
    {
        var run = DemoPlans.Of("brook-terrace").Routing.Runs.Single(r => r.Id == "R1");
        Assert.Equal(2.0 + Math.Sqrt(0.3 * 0.3 + 1.0), run.StraightM, 9); // 2 m down the mast, then 0.3 m in and 1 m down
    }

    [Fact]
    public void Drip_loop_shallower_than_the_bend_radius_stops_the_job()
    {
        var plan = DemoPlans.Of("brook-terrace", DemoJobs.Load().With("brook-terrace/job.yaml", "drip-depth: 120 mm", "drip-depth: 50 mm"));
        Assert.True(plan.Stopped);
        Assert.Equal(0.05, (double)plan.Finding("drip-loop-too-tight").Values["depth_m"]!, 12);
    }

    [Fact]
    public void One_moved_point_changes_its_runs_and_nothing_else_of_the_route()
    {
        var before = DemoPlans.Of("alder-lane").Routing.Runs.ToDictionary(r => r.Id, r => r.LengthM);
        var after = DemoPlans.Of("alder-lane", DemoJobs.Load().With("alder-lane/job.yaml", "kitchen: [10 ft, 26 ft, 4 ft]", "kitchen: [10 ft, 26 ft, 1 ft]")).Routing.Runs;
        Assert.Equal(["R5"], after.Where(r => r.LengthM != before[r.Id]).Select(r => r.Id));
    }

    [Fact]
    public void Pieces_connectors_and_cable_agree_with_the_runs()
    {
        var plan = DemoPlans.Of("alder-lane");
        Assert.Equal(plan.Routing.Runs.Select(r => (r.Number, r.Id, r.LengthM)), plan.Materials.Pieces.Where(p => p.Kind == PieceKind.Run).Select(p => (p.Number, p.Run, p.LengthM)));
        var leads = 4;
        Assert.Equal(2 * (plan.Routing.Runs.Count + leads), plan.Materials.Items.Single(i => i.Part == "connector-f-6").Count);
        Assert.Equal(plan.Routing.Runs.Sum(r => r.LengthM) + leads * 2.0, plan.Materials.Items.Single(i => i.Part == "coax-6").LengthM!.Value, 9);
    }
}
