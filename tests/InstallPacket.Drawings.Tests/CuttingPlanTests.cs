using InstallPacket.Plans;

namespace InstallPacket.Drawings.Tests;

public class CuttingPlanTests
{
    [Fact]
    public void Pieces_are_drawn_to_scale()
    {
        var plan = Demo.Plan("alder-lane");
        var strip = plan.Materials.Cutting!.Cables[0].Strips[0];
        var canvas = new SheetCanvas(Demo.Measure);
        new StripPainter(canvas, Demo.On(plan), 2).Draw(strip, new(2, 2), 168);
        var widths = canvas.Shapes.OfType<Polyline>().Where(l => l.Closed && l.Pen.WeightMm == 0.35).Select(l => l.Points.Max(p => p.X) - l.Points.Min(p => p.X)).ToArray();
        Assert.Equal(strip.Pieces.Count, widths.Length);
        for (var i = 0; i < widths.Length; i++) Assert.Equal(2 * strip.Pieces[i].LengthM, widths[i], 9);
    }

    [Theory]
    [InlineData(24, 24)]
    [InlineData(110, 20)]
    public void Labels_of_very_short_pieces_keep_apart(int count, int shown)
    {
        var plan = Demo.Plan("alder-lane");
        var cable = plan.Materials.Cutting!.Cables[0];
        StripPiecePlan[] pieces = [.. Enumerable.Range(100, count).Select(n => new StripPiecePlan(n, $"R{n}", 0.3))];
        var strips = new[] { cable.Strips[0] with { LengthM = 300, Pieces = pieces, LeftM = 300 - 0.3 * count, Keep = true } };
        var drawing = CuttingPlanSheet.DrawAll(Demo.On(plan with { Materials = plan.Materials with { Cutting = plan.Materials.Cutting with { Cables = [cable with { Strips = strips }] } } }), Demo.Measure).First()!;
        Assert.Equal("", drawing.Faults());
        // Where not all numbers have room, the words below still name each piece.
        Assert.True(pieces.Count(p => drawing.Captions().Any(c => c.Text == $"{p.Number}")) >= shown);
        Assert.All(pieces, p => Assert.Contains(drawing.Captions(), c => c.Text.Contains($"{p.Number}:", StringComparison.Ordinal)));
    }

    [Fact]
    public void Every_piece_of_the_plan_is_on_a_strip_and_on_two_labels()
    {
        var plan = Demo.Plan("alder-lane");
        var figures = Demo.Figures(plan);
        var labels = figures.Where(f => f.Key.StartsWith("cable-labels", StringComparison.Ordinal)).SelectMany(f => f.Value.Captions()).ToArray();
        foreach (var piece in plan.Materials.Pieces)
        {
            Assert.Contains(figures["cutting-plan"].Captions(), c => c.Text == $"{piece.Number}");
            Assert.Equal(2, labels.Count(c => c.Text == $"{piece.Number}"));
        }
        Assert.Contains(labels, c => c.Text == "this end: A1 (mast-head)");
        Assert.Contains(labels, c => c.Text == "this end: P1 (mast-foot)");
    }

    [Fact]
    public void Leftovers_that_are_kept_look_other_than_scrap()
    {
        int Lines(bool keep)
        {
            var canvas = new SheetCanvas(Demo.Measure);
            StripPainter.Left(canvas, new(0, 0, 40, 8), keep);
            return canvas.Shapes.Count;
        }
        Assert.True(Lines(keep: false) > 2 * Lines(keep: true));
    }
}
