using InstallPacket.Plans;

namespace InstallPacket.Drawings.Siting.Profile;

/// <summary>What the lines of a profile mean; only those in use.</summary>
internal sealed class ProfileLegend(SheetCanvas canvas, SheetPlan plan, PathPlan path, ProfileWords words, int nameless)
{
    public IEnumerable<LegendEntry> Entries()
    {
        yield return new(plan.Say("profile.ray"), at => Sample(ProfilePainter.Ray, at));
        yield return new(plan.Say("profile.zone"), Zone);
        if (!path.InSight) yield return new(plan.Say("profile.ground"), at => Sample(ProfilePainter.InTheRay, at));
        if (path.Obstructions.Count > 0) yield return new(Near, at =>
            canvas.Box(PaperBox.Around(new(at.X + FlowLegend.SampleMm / 2, at.Y), 0.9, 0.9), new(Ink.Warning, 0.3), Fill.Solid));
        yield return new(plan.Say("profile.chord", ("bulge", words.Bulge)), Bulge);
    }

    private string Near => plan.Say("profile.seen", ("nameless", nameless));

    private void Sample(Pen pen, PaperPoint at) => canvas.Line(pen, at, new(at.X + FlowLegend.SampleMm, at.Y));

    private void Zone(PaperPoint at)
    {
        Sample(ProfilePainter.UpperHalf, at with { Y = at.Y - 1.4 });
        Sample(ProfilePainter.LowerHalf, at with { Y = at.Y + 1.4 });
    }

    private void Bulge(PaperPoint at)
    {
        Sample(ProfilePainter.Chord, at with { Y = at.Y + 1.2 });
        canvas.Line(new(Ink.Faint, 0.3),
            [.. Enumerable.Range(0, 11).Select(i =>
            new PaperPoint(at.X + i * FlowLegend.SampleMm / 10, at.Y + 1.2 - 2.6 * i * (10 - i) / 25))]);
    }
}
