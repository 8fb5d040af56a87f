using InstallPacket.Calc.Quantities;
using InstallPacket.Plans;

namespace InstallPacket.Drawings.Siting.Profile;

/// <summary>What the lines of a profile mean; only those in use.</summary>
internal sealed class ProfileLegend(SheetCanvas canvas, PathPlan path, ProfileWords words, int nameless)
{
    public IEnumerable<LegendEntry> Entries()
    {
        yield return new("straight ray", at => Sample(ProfilePainter.Ray, at));
        yield return new("first Fresnel zone: its lower half should be free", Zone);
        if (!path.InSight) yield return new("ground in the ray", at => Sample(ProfilePainter.InTheRay, at));
        if (path.Obstructions.Count > 0) yield return new(Near, at => canvas.Box(PaperBox.Around(new(at.X + FlowLegend.SampleMm / 2, at.Y), 0.9, 0.9), new(Ink.Warning, 0.3), Fill.Solid));
        yield return new("level ground bends over the straight chord: " + words.Bulge, Bulge);
    }

    private string Near => "seen by the survey, near the house" + (nameless > 0 ? $"; {UnitText.Number(nameless, 0)} more drawn without their names" : "");

    private void Sample(Pen pen, PaperPoint at) => canvas.Line(pen, at, new(at.X + FlowLegend.SampleMm, at.Y));

    private void Zone(PaperPoint at)
    {
        Sample(ProfilePainter.UpperHalf, at with { Y = at.Y - 1.4 });
        Sample(ProfilePainter.LowerHalf, at with { Y = at.Y + 1.4 });
    }

    private void Bulge(PaperPoint at)
    {
        Sample(ProfilePainter.Chord, at with { Y = at.Y + 1.2 });
        canvas.Line(new(Ink.Faint, 0.3), [.. Enumerable.Range(0, 11).Select(i => new PaperPoint(at.X + i * FlowLegend.SampleMm / 10, at.Y + 1.2 - 2.6 * i * (10 - i) / 25))]);
    }
}
