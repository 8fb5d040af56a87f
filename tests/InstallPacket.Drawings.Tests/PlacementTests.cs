using CsCheck;

namespace InstallPacket.Drawings.Tests;

public class PlacementTests
{
    private static readonly Gen<(double X, double Y)[]> Points = Gen.Select(Gen.Double[0, 100], Gen.Double[0, 60]).Array[1, 25];

    [Fact]
    public void Placed_labels_keep_apart_and_stay_in_the_frame() => Points.Sample(points =>
    {
        var frame = new PaperBox(0, 0, 100, 60);
        var placer = new LabelPlacer(frame);
        var boxes = points.Select(p => placer.Place(new(p.X, p.Y), 9, 3.2, 1.8)).OfType<PaperPoint>().Select(at => PaperBox.Around(at, 4.5, 1.6)).ToArray();
        Assert.NotEmpty(boxes);
        for (var i = 0; i < boxes.Length; i++)
        {
            Assert.True(frame.Holds(boxes[i]));
            for (var k = i + 1; k < boxes.Length; k++) Assert.False(boxes[i].Overlaps(boxes[k]));
        }
    }, iter: 100);

    [Fact]
    public void A_label_gives_way_to_a_line()
    {
        var placer = new LabelPlacer(new(0, 0, 100, 60));
        placer.Avoid([new(50, 30), new(100, 30)]);
        var at = placer.Place(new(50, 30), 9, 3.2, 1.8)!.Value;
        Assert.False(PaperBox.Around(at, 4.5, 1.6).CutBy(new(50, 30), new(100, 30)));
    }

    [Fact]
    public void A_label_stays_nearer_to_its_own_dot()
    {
        var placer = new LabelPlacer(new(0, 0, 100, 60));
        placer.Mark(new(50, 30));
        placer.Mark(new(54, 30));
        var at = placer.Place(new(50, 30), 9, 3.2, 1.8)!.Value;
        double Reach(double x) => Polar.Distance(new(x, 30), new(Math.Clamp(x, at.X - 4.5, at.X + 4.5), Math.Clamp(30, at.Y - 1.6, at.Y + 1.6)));
        Assert.True(Reach(50) <= Reach(54));
    }

    [Fact]
    public void A_stack_keeps_its_order_its_gaps_and_its_column() => Gen.Select(Gen.Double[-20, 120], Gen.Double[2, 6]).Array[1, 12].Sample(labels =>
    {
        var sorted = labels.OrderBy(l => l.Item1).Select(l => (l.Item1, l.Item2)).ToArray();
        var tops = ColumnStack.Tops(sorted, 1, 0, 100);
        for (var i = 0; i < tops.Length; i++)
        {
            Assert.InRange(tops[i], -1e-9, 100 - sorted[i].Item2 + 1e-9);
            if (i > 0) Assert.True(tops[i] >= tops[i - 1] + sorted[i - 1].Item2 + 1 - 1e-9);
        }
    });

    [Fact]
    public void A_lone_label_stands_where_it_asks() =>
        Assert.Equal([48], ColumnStack.Tops([(50, 4)], 1, 0, 100));

    [Fact]
    public void Wrapped_lines_fit_and_lose_nothing_but_the_end() => Gen.String[Gen.Char["abc de-fgh ij"], 1, 50].Where(s => s.Trim().Length > 0).Sample(text =>
    {
        var lines = TextWrap.Lines(text, 3.4, false, 20, 3, Demo.Measure);
        Assert.All(lines, l => Assert.True(Demo.Measure.WidthMm(l, 3.4) <= 20));
        Assert.InRange(lines.Count, 1, 3);
        static string Bare(string s) => s.Replace(" ", "", StringComparison.Ordinal);
        if (!lines.Any(l => l.EndsWith('…'))) Assert.Equal(Bare(text), Bare(string.Concat(lines)));
    });

    [Theory]
    [InlineData(0, 5, 20, 5, true)]
    [InlineData(0, 11, 20, 11, false)]
    [InlineData(0, 0, 3, 3, false)]
    [InlineData(6, 6, 7, 7, true)]
    public void A_line_cuts_a_box_only_when_it_passes_inside(double ax, double ay, double bx, double by, bool cuts) =>
        Assert.Equal(cuts, new PaperBox(5, 0, 15, 10).CutBy(new(ax, ay), new(bx, by)));

    [Fact]
    public void A_caption_covers_the_ground_it_is_turned_to()
    {
        var upright = PaperBox.Of(new(new(50, 50), "O1 outlet", 3.2), Demo.Measure);
        var turned = PaperBox.Of(new(new(50, 50), "O1 outlet", 3.2, TurnDeg: -90), Demo.Measure);
        Assert.Equal(upright.Width, turned.Height, 9);
        // Turned counter-clockwise a text climbs from its point.
        Assert.True(turned.Top < 40 && turned.Bottom <= 50.0001);
    }
}
