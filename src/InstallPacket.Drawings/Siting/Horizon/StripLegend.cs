using InstallPacket.Plans;

namespace InstallPacket.Drawings.Siting.Horizon;

/// <summary>What the marks of the strip mean; only those in use.</summary>
internal sealed class StripLegend(SheetCanvas canvas, SheetPlan plan, StripScale scale)
{
    private const double SampleMm = FlowLegend.SampleMm;

    public IEnumerable<LegendEntry> Entries()
    {
        yield return new(plan.Say("horizon.level"), at => canvas.Line(new(Ink.Line, 0.35, Dash.DashDot), at, new(at.X + SampleMm, at.Y)));
        foreach (var from in new[] { "measured", "tiles", "tiles in part" })
            if (plan.Siting.Skyline.Any(p => p.From == from)) yield return new(plan.Say("horizon.legend." + from), at => Skyline(from, at));
        if (plan.Siting.Skyline.Count == 0 || plan.Siting.Skyline.Any(p => p.AngleDeg is null))
            yield return new(plan.Say("horizon.open"), at =>
                canvas.Text(new(new(at.X + SampleMm / 2, at.Y + 1.1), "?", 3.2, Ink.Faint, Anchor.Middle)));
        foreach (var kind in Enum.GetValues<ObstructionKind>())
            if (plan.Siting.Obstructions.Any(o => o.Kind == kind))
                yield return new(plan.Say("horizon.kind." + Jobs.Text.Word.Of(kind)), at =>
                    StandingPainter.Box(canvas, kind, new(at.X + 1, at.Y - 1.8, at.X + SampleMm - 1, at.Y + 1.8), false));
        if (plan.Siting.Obstructions.Any(o => o.AngleDeg > scale.CutDeg))
            yield return new(plan.Say("horizon.above"), at =>
                StandingPainter.Box(canvas, ObstructionKind.Building, new(at.X + 1, at.Y - 1.8, at.X + SampleMm - 1, at.Y + 1.8), true));
        foreach (var (state, words) in new[] { ((bool?)true, "in-sight"), (false, "behind"),
            (null, plan.Siting.PathsLeftOut.Count > 0 ? "not-looked" : "ground-unknown") })
            if (plan.Siting.Sites.FirstOrDefault(s => StandingPainter.InSight(plan, s) == state) is { } site)
                yield return new(plan.Say("horizon." + words), at =>
                    StandingPainter.Tower(canvas, new(at.X + SampleMm / 2, at.Y - 2.3), 4.6, state, true));
        if (plan.Siting.Landmark is not null) yield return new(plan.Say("landmark"), at =>
            PinPainter.Mark(canvas, PinKind.Landmark, new(at.X + SampleMm / 2, at.Y), "", 0));
        var more = plan.Reception.MoreAntennas;
        if (more.Count > 0)
            yield return new(plan.Say("aim-of", ("antennas", plan.List(more.Select(m => m.AntennaId)))), at =>
                canvas.Line(StandingPainter.MoreAim, new(at.X + SampleMm / 2, at.Y + 2.2), new(at.X + SampleMm / 2, at.Y - 2.2)));
        yield return new(more.Count > 0 ? plan.Say("aim-of", ("antennas", plan.Reception.AntennaId)) : plan.Say("aim-alone"), at =>
            canvas.Head(new(at.X + SampleMm / 2, at.Y - 2), 0, 4, 1.9, Ink.Accent));
        if (plan.Reception.Aim.Arc is not null) yield return new(plan.Say("arc"), at =>
            canvas.Line(new(Ink.Accent, 1.6), at, new(at.X + SampleMm, at.Y)));
    }

    private void Skyline(string from, PaperPoint at)
    {
        PaperPoint[] line = [new(at.X, at.Y), new(at.X + 4, at.Y - 1.6), new(at.X + 7, at.Y - 0.4), new(at.X + SampleMm, at.Y - 1)];
        SkylinePainter.Ground(canvas, from, [new(at.X, at.Y + 2), .. line, new(at.X + SampleMm, at.Y + 2)]);
        canvas.Line(SkylinePainter.Edge(from), line);
    }
}
