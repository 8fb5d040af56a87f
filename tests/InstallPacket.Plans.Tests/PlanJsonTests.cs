using System.Text.Json;
using System.Text.Json.Nodes;
using InstallPacket.Calc.Sources;
using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

public class PlanJsonTests
{
    private static readonly string[] Units = ["_deg", "_m", "_km", "_db", "_dbm", "_dbd", "_dbuv_m", "_mhz", "_c", "_nt", "_deg_per_year", "_nm", "_mm2", "_pct", "_arc_s", "_v", "_ma", "_ohm", "_k", "_kw", "_ms", "_pa", "_m2", "_n", "_n_per_m", "_h", "_amount", "_kg", "_kv", "_ft", "_hz", "_ka", "_uh", "_per_km2_year", "_years", "_mm3", "_nm2", "_kg_per_m", "_kg_m3", "_us", "_px"];
    private static readonly string[] Counts = ["number", "others", "piece_number", "point_number", "count", "blocks", "clips", "from_port", "rf_channel", "left_out", "route_factor", "clear_share", "use_share", "fixed", "left", "added_cost", "offset_channels", "format", "line", "column", "packs", "pack_count", "bring_count", "crew", "first", "bends", "coils", "clamps", "place_factor", "per_year", "corners", "supports", "cables", "fixings", "piece_count",
        "all_fixings", "sharing", "end_share",
        // Counts and shares that findings name.
        "holes", "stations", "outlets", "same", "turns", "channels", "unpriced", "parts", "open", "outputs", "diameters", "brackets", "usual", "places", "needed", "piece", "second", "steered_ports", "steered", "pairs",
        "value", "bending_share", "push_share"];

    [Theory]
    [InlineData("alder-lane")]
    [InlineData("far-meadow")]
    [InlineData("mill-yard")]
    [InlineData("pine-corner")]
    [InlineData("quay-loft")]
    [InlineData("brook-terrace")]
    public void Every_number_carries_its_unit_in_its_name(string id)
    {
        var tree = PlanJson.Tree(DemoPlans.Of(id));
        tree.Remove("workings"); // there each symbol has its unit beside it
        foreach (var (path, name) in Numbers(tree, ""))
            Assert.True(Counts.Contains(name) || Units.Any(u => name.EndsWith(u, StringComparison.Ordinal)), path);
    }

    [Fact]
    public void Every_working_names_formula_source_and_all_inputs()
    {
        var plan = DemoPlans.Of("alder-lane");
        Assert.NotEmpty(plan.Workings);
        foreach (var w in plan.Workings)
        {
            Assert.Equal(w.Formula.Inputs.Count, w.Inputs.Count);
            Assert.True(double.IsFinite(w.Number), $"{w.Formula.Id} of {w.Subject}");
            Assert.NotNull(SourceRegister.Get(w.Formula.Source));
        }
    }

    [Fact]
    public void Plan_formulas_have_unique_names_and_known_sources()
    {
        Assert.Equal(PlanFormulas.All.Count, PlanFormulas.All.Select(f => f.Id).Distinct().Count());
        Assert.All(PlanFormulas.All, f => Assert.NotNull(SourceRegister.Get(f.Source)));
    }

    [Fact]
    public void Same_job_gives_the_same_text()
    {
        var once = PlanJson.Text(PlanJson.Tree(DemoPlans.Of("far-meadow")));
        Assert.Equal(once, PlanJson.Text(PlanJson.Tree(DemoPlans.Made("far-meadow", DemoJobs.Load()))));
        Assert.EndsWith("}\n", once, StringComparison.Ordinal);
        Assert.DoesNotContain("\r", once, StringComparison.Ordinal);
    }

    private static IEnumerable<(string Path, string Name)> Numbers(JsonNode? node, string path)
    {
        if (node is JsonObject o) return o.SelectMany(p => p.Value?.GetValueKind() == JsonValueKind.Number ? [(path + "." + p.Key, p.Key)] : Numbers(p.Value, path + "." + p.Key));
        return node is JsonArray a ? a.SelectMany((n, i) => Numbers(n, $"{path}[{i}]")) : [];
    }
}
