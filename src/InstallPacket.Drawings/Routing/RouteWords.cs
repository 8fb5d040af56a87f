using InstallPacket.Plans;

namespace InstallPacket.Drawings.Routing;

/// <summary>The route sketch in words.</summary>
internal static class RouteWords
{
    public static string Of(SheetPlan plan)
    {
        var print = plan.Print;
        var r = plan.Routing;
        var words = new List<string>
        {
            $"The house from above, its plan's upward axis at {UnitPrinter.Plain.Bearing(r.PlanUpDeg)} true, and below it the same seen from the side of the plan's lower edge.",
        };
        if (r.EavesM is { } eaves) words.Add($"Eaves {print.Length(eaves)} above ground{(r.RidgeM is { } ridge ? ", ridge " + print.Length(ridge) : "")}.");
        words.Add("Runs: " + string.Join("; ", r.Runs.Select(run =>
            $"{run.Id} {Ends(run)}by {string.Join(", ", run.Path)}, {string.Join(", then ", RouteLegend.Ways(run).Select(RouteWay.Words))}, {print.Cable(run.LengthM)}"
            + (run.DripLoops.Count > 0 ? $", drip loop {print.Small(run.DripDepthM)} deep before {string.Join(", ", run.DripLoops)}" : ""))) + ".");
        if (r.Entries.Count > 0) words.Add("Entries: " + string.Join("; ", r.Entries.Select(e => $"{e.Number} through the {e.Through} at {e.Point}")) + ".");
        words.Add("Parts stand at: " + string.Join("; ", r.Points.Where(p => p.Elements.Count > 0).Select(p =>
            $"{string.Join(", ", p.Elements)} at {p.Name}, {print.Length(p.HeightM)} above ground")) + ".");
        return string.Join(" ", words);
    }

    private static string Ends(RunPlan run) => run.FromElement.Length > 0 && run.ToElement.Length > 0 ? $"from {run.FromElement} to {run.ToElement} " : "";
}
