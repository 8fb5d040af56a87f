using CsCheck;

namespace InstallPacket.Drawings.Tests;

public class FlagTiersTests
{
    [Fact]
    public void A_lone_label_stands_over_its_point()
    {
        var words = Drawn([new(new(80, 100), "hill", [])]).OfType<Caption>().Single();
        Assert.InRange(80, words.At.X, words.At.X + Demo.Measure.WidthMm("hill", words.SizeMm));
    }

    [Fact]
    public void Leaders_end_at_their_points_and_cross_neither_each_other_nor_a_label() => Flags.Sample(flags =>
    {
        var shapes = Drawn(flags);
        var leaders = shapes.OfType<Polyline>().ToArray();
        Assert.Equal(flags.Select(f => f.At).OrderBy(p => p.X).ThenBy(p => p.Y), leaders.Select(l => l.Points[0]).OrderBy(p => p.X).ThenBy(p => p.Y));
        var words = shapes.OfType<Caption>().Select(c => PaperBox.Of(c, Demo.Measure)).ToArray();
        Assert.All(leaders, l => Assert.DoesNotContain(words, w => Legs(l).Any(leg => w.CutBy(leg.A, leg.B))));
        for (var i = 0; i < leaders.Length; i++)
            for (var k = i + 1; k < leaders.Length; k++)
                Assert.False(Legs(leaders[i]).Any(a => Legs(leaders[k]).Any(b => Cross(a, b))), $"leaders {i} and {k} cross");
    }, iter: 100);

    [Fact]
    public void Labels_keep_apart_between_the_edges() => Flags.Sample(flags =>
    {
        var words = Drawn(flags).OfType<Caption>().Select(c => PaperBox.Of(c, Demo.Measure)).ToArray();
        for (var i = 0; i < words.Length; i++)
        {
            Assert.True(words[i].Left >= 2 - 1e-6 && words[i].Right <= 168 + 1e-6);
            Assert.True(words[i].Bottom <= 100);
            for (var k = i + 1; k < words.Length; k++) Assert.False(words[i].Overlaps(words[k]));
        }
    }, iter: 100);

    private static Gen<Flag[]> Flags => Gen.Select(Gen.OneOf(Gen.Double[2, 168], Gen.Double[80, 82], Gen.Double[160, 168]), Gen.Double[100, 140], Gen.Int[1, 6])
        .Select(p => new Flag(new(p.Item1, p.Item2), string.Join(' ', Enumerable.Repeat("mountain", p.Item3)), ["236° true", "0.3° up"], p.Item3 % 2 == 0)).Array[1, FlagTiers.Most];

    private static IReadOnlyList<Shape> Drawn(IReadOnlyList<Flag> flags)
    {
        var canvas = new SheetCanvas(Demo.Measure);
        FlagTiers.Of(flags, 2, 168, Demo.Measure).Draw(canvas, 100);
        return canvas.Shapes;
    }

    private static IEnumerable<(PaperPoint A, PaperPoint B)> Legs(Polyline line) => line.Points.Zip(line.Points.Skip(1));

    // Properly: each line has the ends of the other on its two sides.
    private static bool Cross((PaperPoint A, PaperPoint B) one, (PaperPoint A, PaperPoint B) two)
    {
        static double Side((PaperPoint A, PaperPoint B) l, PaperPoint p) => (l.B.X - l.A.X) * (p.Y - l.A.Y) - (l.B.Y - l.A.Y) * (p.X - l.A.X);
        const double least = 1e-6;
        return Side(one, two.A) * Side(one, two.B) < -least && Side(two, one.A) * Side(two, one.B) < -least;
    }
}
