using InstallPacket.Plans;

namespace InstallPacket.Drawings.Reception;

/// <summary>
/// For the person on the roof: the house as it lies, true north up, the antenna in the middle of a ring of true and of compass
/// degrees, and around it what there is to see and to aim at.
/// </summary>
public static class AimCardSheet
{
    private const double WidthMm = 170;
    private const double GapMm = 3;

    // Marks on the ring are 5 mm wide.
    private const double PinMm = 5.6;

    /// <summary>Draws it.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="measure">Widths of words.</param>
    public static Drawing? Draw(SheetPlan plan, ITextMeasure measure)
    {
        var canvas = new SheetCanvas(measure);
        var pins = AimPins.Of(plan);
        var compass = plan.Siting.Compass is { Usable: true, DeclinationDeg: not null };
        // The ring's place depends on the height of the columns and these on the ring: a trial at the origin breaks the circle.
        var trial = new RingGeometry(new(WidthMm / 2, 0), compass);
        var spread = RingPin.Spread(pins, PinMm / trial.Pins * 180 / Math.PI);
        var height = Math.Max(2 * trial.Lane, RingLabels.Needed(RingLabels.Of(pins, spread, trial, measure)));
        var top = AimHeader.HeightMm(plan) + GapMm;
        var ring = trial with { Centre = new(WidthMm / 2, top + height / 2) };
        var labels = RingLabels.Of(pins, spread, ring, measure);
        var tops = RingLabels.Tops(labels, top, top + height + 2);

        AimHeader.Draw(canvas, plan, WidthMm);
        new FieldPainter(canvas, ring, plan).Draw();
        if (plan.Reception.Aim.Arc is { } arc) RingPainter.Arc(canvas, ring, arc);
        RingPainter.Draw(canvas, ring, plan.Siting.Compass.DeclinationDeg);
        new PinPainter(canvas, ring, WidthMm).Draw(pins, spread, labels, tops);
        var footer = new AimFooter(canvas, ring, plan);
        footer.Draw(top + height + GapMm);
        return new Drawing("aim-card", plan.Say("aim.title"), AimWords.Of(plan), WidthMm, top + height + GapMm + footer.HeightMm,
            canvas.Shapes);
    }
}
