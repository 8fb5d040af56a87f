using InstallPacket.Plans;

namespace InstallPacket.Drawings;

/// <summary>What the lines of the route sketch mean; only what the sketch uses.</summary>
internal sealed class RouteLegend(SheetCanvas canvas, Plan plan, double width)
{
    private const double SizeMm = 3.2;
    private const double SampleMm = 11;
    private const double RowMm = 6;

    /// <summary>Draws it and gives its lower edge.</summary>
    public double Draw(double left, double top)
    {
        var (x, y) = (left, top);
        foreach (var (words, sample) in Rows())
        {
            var needed = SampleMm + 2 + canvas.Measure.WidthMm(words, SizeMm) + 6;
            if (x + needed > width && x > left) (x, y) = (left, y + RowMm);
            sample(new(x, y));
            canvas.Text(new(new(x + SampleMm + 2, y + 1.1), words, SizeMm));
            x += needed;
        }
        return y + RowMm / 2;
    }

    private IEnumerable<(string Words, Action<PaperPoint> Sample)> Rows()
    {
        foreach (var way in RouteWay.All.Where(w => plan.Routing.Runs.Any(r => r.Way == w)))
            yield return (RouteWay.Words(way), at => RouteWay.Draw(canvas, way, [at, new(at.X + SampleMm, at.Y)]));
        if (plan.Routing.Runs.Any(r => r.DripLoops.Count > 0))
            yield return ("drip loop", at => ViewPainter.Drip(canvas, new(at.X + SampleMm / 2, at.Y - 1.6)));
        if (HousePlace.Antenna(plan) is null) yield break;
        yield return ("aim of the antenna", at => canvas.Arrow(at, new(at.X + 9, at.Y), 0.5, 2.8, Ink.Line));
        yield return ("mast", at => canvas.Box(new(at.X, at.Y - 1.3, at.X + SampleMm, at.Y + 1.3), new(Ink.Line, 0.4), Fill.Paper));
    }
}
