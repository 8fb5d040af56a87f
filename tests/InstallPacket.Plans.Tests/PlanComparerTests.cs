using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

public class PlanComparerTests
{
    [Fact]
    public void Same_job_has_no_change() => Assert.True(PlanComparer.Compare(DemoPlans.Of("alder-lane"), DemoPlans.Made("alder-lane", DemoJobs.Load())).Same);

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
        var run = changes.Differences.Single(d => d.Quantity == "routing, runs R7: length");
        Assert.StartsWith("+", run.Difference, StringComparison.Ordinal);
        Assert.EndsWith("m", run.Difference, StringComparison.Ordinal);
        Assert.Contains(changes.Differences, d => d.Quantity.StartsWith("cabling, outlets O4, channels ", StringComparison.Ordinal));
        Assert.DoesNotContain(changes.Differences, d => d.Quantity.StartsWith("siting", StringComparison.Ordinal) || d.Quantity.StartsWith("mounting", StringComparison.Ordinal));
    }

    [Fact]
    public void New_piece_and_new_finding_are_named()
    {
        var jobs = DemoJobs.Load().With("brook-terrace/job.yaml", "    O3: {", "    O4: { part: outlet-tv-iec, at: study, from: O3, run: R6 }\n    O3: {")
            .With("brook-terrace/job.yaml", "    R5: {", "    R6: { cable: coax-7mm-class-a, path: [study, attic-rear, study], way: wall }\n    R5: {");
        var changes = PlanComparer.Compare(DemoPlans.Of("brook-terrace"), DemoPlans.Of("brook-terrace", jobs));
        Assert.Contains(changes.Differences, d => d.Quantity == "cabling, elements O4: part" && d.Before == "absent");
        Assert.Contains(changes.Differences, d => d.Quantity == "routing, runs R6: length" && d.Before == "absent");
    }

    // Each leaf of each demo plan is changed by itself: none is left out but what the comparer names.
    [Fact]
    public void Every_leaf_is_compared_or_left_out_by_name()
    {
        foreach (var id in new[] { "alder-lane", "far-meadow", "quay-loft" })
        {
            var tree = PlanJson.Tree(DemoPlans.Of(id));
            var leaves = PlanLeaves.Of(tree);
            Assert.Equal(Count(tree) - PlanComparer.Apart.Keys.Sum(k => Count(tree[k])), leaves.Sum(l => l.Weight));
            Assert.Equal(leaves.Count, leaves.Select(l => l.Path).Distinct().Count());
            Assert.All(leaves, l => Assert.NotNull(LeafPrinter.Difference(l, l.Number is { } n ? l with { Number = n + 1e-9 * Math.Max(1, Math.Abs(n)) } : l with { Text = l.Text + "x" })));
            Assert.All(leaves.Where(l => l.Number is not null || l.Text.Length > 0), l => Assert.NotNull(LeafPrinter.Difference(l, null)));
        }
    }

    [Theory]
    [InlineData("pilot: 3/16 in", "pilot: 7/32 in")]
    [InlineData("timber: spruce-pine-fir", "timber: douglas-fir-larch")]
    [InlineData("by: the crew up to the termination;", "by: an electrician up to the termination;")]
    [InlineData("what: the water tower", "what: the church tower")]
    [InlineData("address: 14 Alder Lane", "address: 16 Alder Lane")]
    [InlineData("    wall: 7 in", "    wall: 8 in")]
    [InlineData("lag-screw-5-16: 0.90", "lag-screw-5-16: 0.95")]
    [InlineData("length: 212 ft", "length: 211 ft")]
    [InlineData("  crew: 2", "  crew: 3")]
    public void An_edit_that_the_crew_sees_is_reported(string old, string now) =>
        Assert.False(PlanComparer.Compare(DemoPlans.Of("alder-lane"), DemoPlans.Of("alder-lane", DemoJobs.Load().With("alder-lane/job.yaml", old, now))).Same);

    [Fact]
    public void An_edit_of_a_shared_part_is_reported()
    {
        var jobs = DemoJobs.Load().With("_shared/parts/hardware.yaml", HardwareBefore, HardwareBefore.Replace("30 lbf in", "31 lbf in", StringComparison.Ordinal));
        Assert.False(PlanComparer.Compare(DemoPlans.Of("alder-lane"), DemoPlans.Of("alder-lane", jobs)).Same);
    }

    // The connector of the job's cable, from its name to its torque.
    private static string HardwareBefore
    {
        get
        {
            var text = File.ReadAllText(Path.Combine(DemoJobs.Checkout, "jobs", "_shared", "parts", "hardware.yaml"));
            var at = text.IndexOf("  connector-f-6:", StringComparison.Ordinal);
            return text[at..(text.IndexOf("30 lbf in", at, StringComparison.Ordinal) + "30 lbf in".Length)];
        }
    }

    private static int Count(System.Text.Json.Nodes.JsonNode? node) => node switch
    {
        System.Text.Json.Nodes.JsonObject o => o.Sum(p => Count(p.Value)),
        System.Text.Json.Nodes.JsonArray a => a.Any(e => e is System.Text.Json.Nodes.JsonObject) ? a.Sum(Count) : Math.Max(1, a.Count),
        _ => 1,
    };
}
