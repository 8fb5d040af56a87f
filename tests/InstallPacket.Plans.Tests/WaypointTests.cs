using System.Text.Json.Nodes;
using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

public class WaypointTests
{
    private const string Job = "alder-lane/job.yaml";
    private const string Was = "gable-side: [40 ft, 8 ft, 20 ft]";

    [Fact]
    public void One_moved_waypoint_changes_what_hangs_on_it_together_and_nothing_else()
    {
        var (before, after) = (DemoPlans.Of("alder-lane"), DemoPlans.Of("alder-lane", DemoJobs.Load().With(Job, Was, "gable-side: [40 ft, 1 ft, 22 ft]")));
        var (was, now) = (Run(before), Run(after));
        Assert.True(now.StraightM > was.StraightM + 0.5);
        Assert.True(now.LengthM > was.LengthM);
        Assert.True(now.Clips > was.Clips);
        Assert.Equal(now.LengthM, after.Materials.Pieces.Single(p => p.Run == "R2").LengthM);
        Assert.True(after.Materials.Items.Single(i => i.Part == "cable-clip").Count > before.Materials.Items.Single(i => i.Part == "cable-clip").Count);
        Assert.True(after.At("O1", "kes-21").LevelDbm < before.At("O1", "kes-21").LevelDbm);

        var differs = Differences(PlanJson.Tree(before), PlanJson.Tree(after), "").ToArray();
        string[] mayDiffer = ["routing.points[gable-side].", "routing.runs[R2].", "cabling.", "materials.", "reception.", "handover.scan[", "findings[", "workings["];
        // Of the steps only what is to be measured; their words take the length from the run.
        bool Measured(string path) => path.StartsWith("handover.steps[", StringComparison.Ordinal) && path.Contains("].expect", StringComparison.Ordinal);
        Assert.All(differs.Where(d => !Measured(d)), path => Assert.Contains(mayDiffer, m => path.StartsWith(m, StringComparison.Ordinal)));
        Assert.Contains(differs, Measured);
        Assert.All(new[] { "straight_m", "routed_m", "length_m", "clips" }, k => Assert.Contains("routing.runs[R2]." + k, differs));
        Assert.All(differs.Where(d => d.StartsWith("materials.pieces", StringComparison.Ordinal)), d => Assert.StartsWith("materials.pieces[R2]", d, StringComparison.Ordinal));
        // The chain itself, the wanted stations and the aim stay.
        Assert.DoesNotContain(differs, d => d.StartsWith("cabling.elements", StringComparison.Ordinal) || d.StartsWith("reception.aim.true_deg", StringComparison.Ordinal));
    }

    [Fact]
    public void A_waypoint_that_stays_changes_nothing() =>
        Assert.Empty(Differences(PlanJson.Tree(DemoPlans.Of("alder-lane")), PlanJson.Tree(DemoPlans.Of("alder-lane", DemoJobs.Load().With(Job, Was, "gable-side: [480 in, 96 in, 240 in]"))), ""));

    private static RunPlan Run(Plan plan) => plan.Routing.Runs.Single(r => r.Id == "R2");

    private static IEnumerable<string> Differences(JsonNode? a, JsonNode? b, string path)
    {
        if (a is JsonObject x && b is JsonObject y)
            return x.Select(p => p.Key).Union(y.Select(p => p.Key)).SelectMany(k => Differences(x[k], y[k], path.Length == 0 ? k : path + "." + k));
        if (a is JsonArray c && b is JsonArray d)
            return Enumerable.Range(0, Math.Max(c.Count, d.Count)).SelectMany(i => i < c.Count && i < d.Count ? Differences(c[i], d[i], $"{path}[{Name(c[i], i)}]") : [$"{path}[{i}]"]);
        return JsonNode.DeepEquals(a, b) ? [] : [path];
    }

    private static string Name(JsonNode? node, int index)
    {
        foreach (var key in new[] { "run", "name", "id" })
            if (node is JsonObject o && o[key]?.GetValueKind() == System.Text.Json.JsonValueKind.String) return o[key]!.GetValue<string>();
        return index.ToString(System.Globalization.CultureInfo.InvariantCulture);
    }
}
