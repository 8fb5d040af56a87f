using InstallPacket.Plans;

namespace InstallPacket.Drawings.Tests;

public class BondingSketchTests
{
    private static Drawing Draw(Plan plan) => BondingSketchSheet.Draw(Demo.On(plan), Demo.Measure);

    private static string All(Drawing d) => string.Join(" ", d.Captions().Select(c => c.Text)).Replace('\u00A0', ' ');

    [Theory]
    [InlineData("alder-lane", "10 AWG copper", "34 ft", "7 ft")]
    [InlineData("brook-terrace", "16 mm² copper", "11.00 m", "9.00 m")]
    [InlineData("far-meadow", "10 AWG copper", "12 ft", "16 ft")]
    public void Sizes_and_lengths_stand_beside_the_conductors(string job, string size, string mast, string shield)
    {
        var captions = Draw(Demo.Plan(job)).Captions().Select(c => c.Text.Replace('\u00A0', ' ')).ToArray();
        Assert.All((string[])[size, mast, shield, "licensed work only", "not to scale"], text => Assert.Contains(text, captions));
    }

    [Fact]
    public void A_rod_and_its_jumper_are_drawn_below_the_ground()
    {
        var sketch = Draw(Demo.Plan("far-meadow"));
        Assert.Contains("6 AWG copper, 68 ft", All(sketch), StringComparison.Ordinal);
        var ground = sketch.Lines(Ink.Line, 0.7).First(l => l.Points.Count == 2).Points[0].Y;
        Assert.All(Assert.Single(sketch.Shapes.OfType<Polyline>(), l => l.Pen is { Ink: Ink.Accent, Dash: Dash.Dashed }).Points, p => Assert.True(p.Y > ground));
        Assert.True(Assert.Single(sketch.Lines(Ink.Line, 1.8)).Points.Max(p => p.Y) > ground + 10);
        Assert.DoesNotContain(Draw(Demo.Plan("alder-lane")).Shapes.OfType<Polyline>(), l => l.Pen is { Ink: Ink.Accent, Dash: Dash.Dashed });
    }

    [Fact]
    public void Words_stay_apart_in_every_variant()
    {
        var plan = Demo.Plan("far-meadow");
        var (b, m) = (plan.Bonding, plan.Mounting);
        var longSize = new BondSize(17, "AWG", "copper-clad-steel");
        Plan[] variants =
        [
            plan with { Bonding = b with { MastSize = longSize, ShieldSize = longSize } },
            plan with { Bonding = b with { Rod = b.Rod! with { Count = 2, Jumper = "", JumperSize = null } } },
            plan with { Bonding = b with { Rod = b.Rod! with { JumperSize = longSize, LengthM = null } } },
            plan with { Bonding = b with { Rod = null, BlockElement = "" }, Mounting = m with { Kind = MountKind.Attic } },
            plan with { Bonding = b with { Rod = null, MastSize = new(null, "", "") }, Mounting = m with { Kind = MountKind.Attic } },
            plan with { Bonding = b with { MastLengthM = 0, Rod = null, Zone = new(2.5, 0.5, 2, 1.5, false, true) }, Mounting = m with { Kind = MountKind.WallBracket } },
            plan with { Bonding = b with { Connection = string.Join(" ", Enumerable.Repeat("connection", 14)), By = string.Join(" ", Enumerable.Repeat("somebody", 13)) } },
        ];
        Assert.All(variants, v => Assert.Equal("", Draw(v).Faults()));
    }

    [Fact]
    public void An_exempt_mast_has_no_conductor_and_says_why()
    {
        var plan = Demo.Plan("brook-terrace");
        var exempt = Draw(plan with { Bonding = plan.Bonding with { MastLengthM = 0, Zone = new(2.5, 0.5, 2, 1.5, false, true) } });
        Assert.Contains("protected zone", All(exempt), StringComparison.Ordinal);
        Assert.Equal(Draw(plan).Lines(Ink.Accent, 1.1).Count() - 1, exempt.Lines(Ink.Accent, 1.1).Count());
    }

    [Fact]
    public void The_description_tells_what_the_numbers_mean()
    {
        var sketch = Draw(Demo.Plan("far-meadow"));
        Assert.Contains("not to scale", sketch.Description, StringComparison.Ordinal);
        Assert.All(Enumerable.Range(1, 6), n => Assert.Contains($"{n}: ", sketch.Description, StringComparison.Ordinal));
    }
}
