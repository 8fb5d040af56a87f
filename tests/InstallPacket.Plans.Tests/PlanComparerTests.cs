using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

public class PlanComparerTests
{
    [Fact]
    public void Same_job_has_no_change() => Assert.True(PlanComparer.Compare(DemoPlans.Of("alder-lane"), DemoPlans.Of("alder-lane")).Same);

    [Fact]
    public void Order_of_lines_is_no_change()
    {
        var reordered = DemoJobs.Load().With("alder-lane/job.yaml", "[kes-9, kes-21, kes-24, kes-30, blu-15, blu-33]", "[blu-33, kes-9, blu-15, kes-21, kes-30, kes-24]")
            .With("alder-lane/job.yaml", "title: Two", "# a remark\ntitle: Two");
        Assert.True(PlanComparer.Compare(DemoPlans.Of("alder-lane"), DemoPlans.Of("alder-lane", reordered)).Same);
    }

    [Fact]
    public void Moved_point_shows_in_its_run_its_outlet_and_the_materials()
    {
        var after = DemoPlans.Of("alder-lane", DemoJobs.Load().With("alder-lane/job.yaml", "den: [4 ft, 14 ft, 10 ft]", "den: [4 ft, 14 ft, 4 ft]"));
        var changes = PlanComparer.Compare(DemoPlans.Of("alder-lane"), after);
        var run = changes.Differences.Single(d => d.Quantity == "run R7: length to cut");
        Assert.StartsWith("+", run.Difference, StringComparison.Ordinal);
        Assert.EndsWith("m", run.Difference, StringComparison.Ordinal);
        Assert.All(changes.Differences, d => Assert.Matches("^(run R7|outlet O4, |material coax-6)", d.Quantity));
    }

    [Fact]
    public void New_piece_and_new_finding_are_named()
    {
        var jobs = DemoJobs.Load().With("brook-terrace/job.yaml", "    O3: {", "    O4: { part: outlet-tv-iec, at: study, from: O3, run: R6 }\n    O3: {")
            .With("brook-terrace/job.yaml", "    R5: {", "    R6: { cable: coax-7mm-class-a, path: [study, attic-rear, study], way: wall }\n    R5: {");
        var changes = PlanComparer.Compare(DemoPlans.Of("brook-terrace"), DemoPlans.Of("brook-terrace", jobs));
        Assert.Equal(["R6", "fly lead O4"], changes.PiecesAdded.Select(p => p.Run));
        Assert.Empty(changes.PiecesDropped);
        Assert.Contains(changes.Differences, d => d.Quantity == "element O4: part" && d.Before == "none");
    }
}
