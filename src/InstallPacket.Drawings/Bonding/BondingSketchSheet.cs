using InstallPacket.Plans;

namespace InstallPacket.Drawings.Bonding;

/// <summary>The bonding from mast to earth, seen from the side: conductors with size and length, block, rod, termination, and what only
/// licensed people touch.</summary>
public static class BondingSketchSheet
{
    private const double WidthMm = 170;
    private const double TextMm = 3.2;
    private const double LeadMm = 4.2;
    private const double NumberMm = 9;

    /// <summary>Draws it.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="measure">Widths of words.</param>
    public static Drawing Draw(SheetPlan plan, ITextMeasure measure)
    {
        var canvas = new SheetCanvas(measure);
        canvas.Text(new(new(2, 6), plan.Say("bonding.heading"), 3.8, Strong: true));
        canvas.Text(new(new(WidthMm - 2, 6), plan.Say("bonding.scale"), TextMm, Anchor: Anchor.End));
        var words = new BondWords(plan);
        var scene = new BondScene(canvas, plan, words);
        scene.Draw();
        var y = scene.Bottom + 6;
        foreach (var entry in words.Entries) y = List(canvas, entry, y);
        return new Drawing("bonding-sketch", plan.Say("bonding.title"), words.Description, WidthMm, y - LeadMm + 3, canvas.Shapes);
    }

    private static double List(SheetCanvas canvas, BondEntry entry, double y)
    {
        BondScene.Badge(canvas, new(5, y - 1.1), entry.Number);
        foreach (var line in TextWrap.Lines(entry.Text, TextMm, false, WidthMm - NumberMm - 3, 4, canvas.Measure))
        {
            canvas.Text(new(new(NumberMm, y), line, TextMm));
            y += LeadMm;
        }
        return y + 1;
    }
}
