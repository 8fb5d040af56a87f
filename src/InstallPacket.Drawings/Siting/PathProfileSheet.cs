using InstallPacket.Plans;

namespace InstallPacket.Drawings.Siting;

/// <summary>The ground toward a transmitter site on the curved earth, the ray over it and the zone around the ray that should be
/// free.</summary>
public static class PathProfileSheet
{
    private const double WidthMm = 170;
    private const double HeadingMm = 13.5;

    /// <summary>Draws one sheet for each site toward which the ground is known.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="measure">Widths of words.</param>
    public static IEnumerable<Drawing> DrawAll(SheetPlan plan, ITextMeasure measure) =>
        plan.Siting.Paths.Select(p => Draw(plan, p, measure));

    private static Drawing Draw(SheetPlan plan, PathPlan path, ITextMeasure measure)
    {
        var canvas = new SheetCanvas(measure);
        var words = new ProfileWords(plan, path);
        // The height of the labels depends only on where their points lie from left to right.
        var trial = ProfileScale.Of(path, WidthMm, 0);
        var flags = FlagTiers.Of(new ProfileFlags(plan, path, trial).Flags(), 2, WidthMm - 2, measure);
        var scale = ProfileScale.Of(path, WidthMm, HeadingMm + flags.HeightMm);
        Heading(canvas, words, scale);
        new ProfileAxis(canvas, plan, path, scale).Draw();
        new ProfilePainter(canvas, path, scale).Draw();
        var labels = new ProfileFlags(plan, path, scale);
        labels.Marks(canvas);
        FlagTiers.Of(labels.Flags(), 2, WidthMm - 2, measure).Draw(canvas, scale.Field.Top);
        var legend = FlowLegend.Draw(canvas, new ProfileLegend(canvas, plan, path, words, labels.Nameless).Entries(),
            new(2, scale.Field.Bottom + ProfileAxis.BelowMm + 4), WidthMm - 2);
        return new Drawing(Id(path), words.Title, words.Description(scale), WidthMm, legend + 1, canvas.Shapes);
    }

    private static string Id(PathPlan path) => "path-profile-" + Calc.Quantities.UnitText.Number(path.Number, 0);

    // A long name gives way: the verdict must stand.
    private static void Heading(SheetCanvas canvas, ProfileWords words, ProfileScale scale)
    {
        var times = words.Times(scale);
        var room = WidthMm - 8 - canvas.Measure.WidthMm(times, 3.2) - canvas.Measure.WidthMm(words.Verdict, 3.8, strong: true);
        var name = TextWrap.Lines(words.Site, 3.8, true, room, 1, canvas.Measure)[0];
        canvas.Text(new(new(2, 6), name + words.Verdict, 3.8, Strong: true));
        canvas.Text(new(new(WidthMm - 2, 6), times, 3.2, Anchor: Anchor.End));
        canvas.Text(new(new(2, 11), words.Facts, 3.2));
    }
}
