using InstallPacket.Calc.Quantities;
using InstallPacket.Plans;

namespace InstallPacket.Drawings.Siting;

/// <summary>
/// All that stands around the antenna, unrolled: the skyline, what the survey saw nearer by, and each transmitter site where it
/// appears. The aim is in the middle, so that what matters is not cut.
/// </summary>
public static class HorizonStripSheet
{
    private const double WidthMm = 170;
    private const double HeadingMm = 9;

    /// <summary>Draws it; null when neither skyline nor obstructions are known.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="measure">Widths of words.</param>
    public static Drawing? Draw(SheetPlan plan, ITextMeasure measure)
    {
        if (plan.Siting.Skyline.Count == 0 && plan.Siting.Obstructions.Count == 0) return null;
        var canvas = new SheetCanvas(measure);
        // The height of the labels depends only on where their points lie from left to right.
        var trial = StripScale.Of(plan, WidthMm, 0);
        var (flags, left) = StripFlags.Of(plan, trial);
        var top = HeadingMm + FlagTiers.Of(flags, 2, WidthMm - 2, measure).HeightMm;
        var scale = StripScale.Of(plan, WidthMm, top);
        Heading(canvas, plan, scale);
        new StripAxis(canvas, plan, scale).Levels();
        new SkylinePainter(canvas, plan, scale).Draw();
        new StripAxis(canvas, plan, scale).Level();
        new StandingPainter(canvas, plan, scale).Draw();
        FlagTiers.Of(StripFlags.Of(plan, scale).Flags, 2, WidthMm - 2, measure).Draw(canvas, scale.Field.Top);
        new StripAxis(canvas, plan, scale).Bearings();
        var bottom = scale.Field.Bottom + StripAxis.HeightMm + 4;
        if (left > 0)
        {
            canvas.Text(new(new(2, bottom), plan.Say("nameless", ("count", left)), 3.2));
            bottom += 6;
        }
        var legend = FlowLegend.Draw(canvas, new StripLegend(canvas, plan, scale).Entries(), new(2, bottom), WidthMm - 2);
        return new Drawing("horizon-strip", plan.Say("horizon.title"), StripWords.Of(plan, scale), WidthMm, legend + 1, canvas.Shapes);
    }

    private static void Heading(SheetCanvas canvas, SheetPlan plan, StripScale scale)
    {
        var room = WidthMm - 8 - canvas.Measure.WidthMm(StripWords.Times(plan, scale), 3.2);
        canvas.Text(new(new(2, 6), TextWrap.Lines(StripWords.Heading(plan), 3.8, true, room, 1, canvas.Measure)[0], 3.8, Strong: true));
        canvas.Text(new(new(WidthMm - 2, 6), StripWords.Times(plan, scale), 3.2, Anchor: Anchor.End));
    }
}
