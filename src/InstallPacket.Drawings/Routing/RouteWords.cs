using InstallPacket.Plans;

namespace InstallPacket.Drawings.Routing;

/// <summary>The route sketch in words.</summary>
internal static class RouteWords
{
    public static string Of(SheetPlan plan)
    {
        var (print, r) = (plan.Print, plan.Routing);
        var words = new List<string> { plan.Say("route.what", ("bearing", plan.True(r.PlanUpDeg))) };
        if (r.EavesM is { } eaves) words.Add(plan.Say("route.heights", ("eaves", print.Length(eaves)),
            ("ridge", r.RidgeM is { } ridge ? print.Length(ridge) : "")));
        words.Add(plan.Say("route.runs", ("runs", string.Join("; ", r.Runs.Select(run => Run(plan, run))))));
        if (r.Entries.Count > 0)
            words.Add(plan.Say("route.entries", ("entries", string.Join("; ", r.Entries.Select(e =>
                plan.Say("route.entry-at", ("number", e.Number), ("through", plan.Word("through", e.Through)), ("point", e.Point)))))));
        words.Add(plan.Say("route.parts", ("parts", string.Join("; ", r.Points.Where(p => p.Elements.Count > 0).Select(p =>
            plan.Say("route.part", ("parts", plan.List(p.Elements)), ("point", p.Name), ("height", print.Length(p.HeightM))))))));
        return string.Join(" ", words);
    }

    private static string Run(SheetPlan plan, RunPlan run)
    {
        var ends = run.FromElement.Length > 0 && run.ToElement.Length > 0;
        return plan.Say("route.run", ("run", run.Id), ("from", ends ? run.FromElement : ""), ("to", ends ? run.ToElement : ""),
            ("path", plan.List(run.Path)),
            ("ways", string.Join(plan.Words.Say("numbers.list-then"), RouteLegend.Ways(run).Select(w => plan.Word("way", w)))),
                ("length", plan.Print.Cable(run.LengthM)),
            ("drips", plan.List(run.DripLoops)), ("depth", plan.Print.Small(run.DripDepthM)));
    }
}
