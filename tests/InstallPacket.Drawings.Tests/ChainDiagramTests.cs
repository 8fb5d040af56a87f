using CsCheck;
using InstallPacket.Plans;

namespace InstallPacket.Drawings.Tests;

public class ChainDiagramTests
{
    [Theory]
    [InlineData("alder-lane")]
    [InlineData("brook-terrace")]
    [InlineData("far-meadow")]
    public void Every_part_and_every_run_stands_on_it_once(string job)
    {
        var plan = Demo.Plan(job);
        var words = Draw(plan).Captions().Select(c => c.Text).ToArray();
        Assert.All(plan.Cabling.Elements, e => Assert.Single(words, w => w == e.Id));
        Assert.All(plan.Cabling.Elements.Where(e => e.Run.Length > 0), e => Assert.Single(words, w => w == e.Run));
        Assert.All(plan.Cabling.Elements.Where(e => e.Run.Length > 0), e =>
            Assert.Contains(UnitPrinter.Of(plan.Job).Cable(plan.Routing.Runs.Single(r => r.Id == e.Run).LengthM), words));
    }

    [Fact]
    public void What_is_there_already_stands_in_broken_lines_with_its_length_as_it_lies()
    {
        var plan = Demo.Plan("mill-yard");
        var run = plan.Routing.Runs.First(r => r.Existing && plan.Cabling.Elements.Any(e => e.Run == r.Id));
        var captions = Draw(plan).Captions().Select(c => c.Text).ToArray();
        Assert.Contains(captions, c => c.Contains(UnitPrinter.Of(plan.Job).Length(run.RoutedM) + ", there", StringComparison.Ordinal));
        Assert.Contains("broken line: there already", captions);
        int Broken(Plan p) => Draw(p).Shapes.OfType<Polyline>().Count(s => s.Pen.Dash == Dash.Dashed);
        var bought = plan with { Routing = plan.Routing with { Runs = [.. plan.Routing.Runs.Select(r => r with { Existing = false })] } };
        Assert.Equal(2, Broken(plan) - Broken(bought)); // the run itself and the sample of the legend
        Assert.DoesNotContain("broken line: there already", Draw(bought).Captions().Select(c => c.Text));
    }

    [Fact]
    public void A_line_leads_from_each_part_to_what_it_feeds()
    {
        var (plan, layout) = LaidOut(Demo.Plan("alder-lane"));
        foreach (var link in layout.Links)
        {
            var to = layout.Places.Single(p => ReferenceEquals(p.Node, link.To));
            var from = layout.Places.Single(p => p.Node.Id == link.To.Element!.From);
            Assert.Equal(from.Box.Right, link.Points[0].X, 9);
            Assert.InRange(link.Points[0].Y, from.Box.Top, from.Box.Bottom);
            Assert.Equal(to.Box.Left, link.Points[^1].X, 9);
            Assert.InRange(link.Points[^1].Y, to.Box.Top, to.Box.Bottom);
        }
        Assert.Equal(plan.Cabling.Elements.Count - 1, layout.Links.Count);
    }

    [Fact]
    public void The_number_of_an_output_stands_at_its_line()
    {
        var sheet = Draw(Demo.Plan("alder-lane"));
        foreach (var (port, run) in new[] { ("1", "R4"), ("2", "R5"), ("3", "R6"), ("4", "R7") })
            Assert.InRange(sheet.Captions().Single(c => c.Text == port).At.Y - sheet.Caption(run).At.Y, 1.5, 3);
    }

    [Fact]
    public void A_setting_and_what_an_outlet_serves_are_told()
    {
        var plan = Demo.Plan("alder-lane");
        var elements = plan.Cabling.Elements.Select(e => e.Id == "P1" ? e with { SettingDb = 12.5 } : e).ToArray();
        var sheet = Draw(plan with { Cabling = plan.Cabling with { Elements = elements } });
        Assert.Contains(sheet.Captions(), c => c.Text == "set 12.5\u00A0dB");
        Assert.Contains(sheet.Captions(), c => c.Text == "Main bedroom");
        Assert.Contains("P1 amplifier fed from A1 by R1, 9\u00A0ft\u00A06\u00A0in, set 12.5\u00A0dB.", sheet.Description, StringComparison.Ordinal);
        Assert.Contains("O3 outlet (Main bedroom) fed from S1 output 3 by R6, 48\u00A0ft.", sheet.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void Lines_that_carry_the_supply_are_heavy_and_others_are_not()
    {
        var sheet = Draw(Demo.Plan("alder-lane"));
        // From P1 by G1 to I1, and the sample of the legend.
        Assert.Equal(3, sheet.Lines(Ink.Accent, 1.3).Count());
        Assert.Contains(sheet.Captions(), c => c.Text == "carries the supply of P1 too, 12.0\u00A0V from I1");
        Assert.Empty(Draw(Demo.Plan("brook-terrace")).Lines(Ink.Accent, 1.3));
    }

    [Fact]
    public void An_open_output_gets_a_terminator()
    {
        var plan = Demo.Plan("alder-lane");
        var elements = plan.Cabling.Elements.Where(e => e.Id != "O3").Select(e => e.Id == "S1" ? e with { OpenPorts = [3] } : e).ToArray();
        var sheet = Draw(plan with { Cabling = plan.Cabling with { Elements = elements } });
        Assert.Single(sheet.Captions(), c => c.Text == "terminator");
        Assert.Single(sheet.Captions(), c => c.Text == "3");
        Assert.Contains("terminator on output 3", sheet.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void Eight_dwellings_fit_on_one_page()
    {
        var plan = Dwellings(8, 4);
        Assert.True(plan.Cabling.Elements.Count >= 40);
        var sheet = Draw(plan);
        Assert.Equal("", sheet.Faults());
        Assert.Equal(170, sheet.WidthMm);
        Assert.InRange(sheet.HeightMm, 100, 230); // what a letter page holds at full size
        Assert.All(plan.Cabling.Elements, e => Assert.Single(sheet.Captions(), c => c.Text == e.Id));
    }

    [Fact]
    public void Taps_in_a_row_turn_back_instead_of_leaving_the_sheet()
    {
        var parts = new List<(string Id, string Kind, string From, int Port)> { ("A1", "antenna", "", 0) };
        for (var i = 1; i <= 10; i++)
        {
            parts.Add(($"T{i}", "tap", i == 1 ? "A1" : $"T{i - 1}", i == 1 ? 0 : 1));
            parts.Add(($"O{i}", "outlet", $"T{i}", 2));
        }
        var sheet = Draw(With(parts));
        Assert.Equal("", sheet.Faults());
        Assert.Equal(170, sheet.WidthMm);
    }

    [Fact]
    public void Each_antenna_has_its_own_tree()
    {
        var plan = With([("A1", "antenna", "", 0), ("O1", "outlet", "A1", 0), ("A2", "antenna", "", 0), ("S2", "splitter", "A2", 0), ("O2", "outlet", "S2", 1), ("O3", "outlet", "S2", 2)]);
        var sheet = Draw(plan);
        Assert.Equal("", sheet.Faults());
        Assert.All(plan.Cabling.Elements, e => Assert.Single(sheet.Captions(), c => c.Text == e.Id));
        Assert.True(sheet.Caption("A2").At.Y > sheet.Caption("A1").At.Y + 10);
    }

    [Fact]
    public void Second_antenna_leads_into_the_second_input_of_the_combiner()
    {
        var plan = Demo.TwoAntennas;
        var sheet = Draw(plan);
        Assert.Equal("", sheet.Faults());
        Assert.All(plan.Cabling.Elements, e => Assert.Single(sheet.Captions(), c => c.Text == e.Id));
        Assert.Single(sheet.Captions(), c => c.Text == "to C1, second input");
        Assert.Single(sheet.Captions(), c => c.Text == "second input: A2");
        var (_, layout) = LaidOut(plan);
        var link = layout.Links.Single(l => l.To.Into == "C1");
        Assert.Equal("RV", link.To.Run!.Id);
        var antenna = layout.Places.Single(p => p.Node.Id == "A2");
        Assert.Equal(antenna.Box.Right, link.Points[0].X, 9);
        Assert.Single(sheet.Captions(), c => c.Text == "RV");
        var length = UnitPrinter.Of(plan.Job).Cable(plan.Routing.Runs.Single(r => r.Id == "RV").LengthM);
        Assert.Contains($"C1 combiner fed from A1, connected directly, second input from A2 by RV, {length}.", sheet.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_an_antenna_there_is_no_diagram()
    {
        var plan = Demo.Plan("alder-lane");
        Assert.Null(ChainDiagramSheet.Draw(Demo.On(plan with { Cabling = plan.Cabling with { Elements = [] } }), Demo.Measure));
    }

    [Fact]
    public void Parts_words_and_lines_keep_apart_whatever_the_tree() => Trees.Sample(plan =>
    {
        var sheet = Draw(plan);
        var faults = sheet.Faults();
        Assert.True(faults.Length == 0, faults);
        Assert.All(plan.Cabling.Elements, e => Assert.Single(sheet.Captions(), c => c.Text == e.Id));
        var (_, layout) = LaidOut(plan);
        var boxes = layout.Places.Select(p => p.Box).ToArray();
        for (var i = 0; i < boxes.Length; i++)
            for (var k = i + 1; k < boxes.Length; k++) Assert.False(boxes[i].Overlaps(boxes[k]), $"{layout.Places[i].Node.Id} covers {layout.Places[k].Node.Id}");
        foreach (var link in layout.Links)
            foreach (var (a, b) in link.Points.Zip(link.Points.Skip(1)))
                Assert.DoesNotContain(layout.Places, p => p.Box.Grow(-0.05).CutBy(a, b));
        var words = sheet.Captions().Select(c => PaperBox.Of(c, Demo.Measure)).ToArray();
        Assert.All(layout.Links.SelectMany(l => l.Points.Zip(l.Points.Skip(1))), leg => Assert.DoesNotContain(words, w => w.CutBy(leg.First, leg.Second)));
    }, iter: 300);

    // A tree by the part that each new one hangs on; some hang with a cable, some are screwed on.
    private static Gen<Plan> Trees => Gen.Select(Gen.Int[0, 1000], Gen.Int[0, 3], Gen.Bool).Array[1, 45].Select(steps =>
    {
        var parts = new List<(string Id, string Kind, string From, int Port)> { ("A1", "antenna", "", 0) };
        var fed = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < steps.Length; i++)
        {
            var (at, kind, _) = steps[i];
            var from = parts[steps.Length > 30 ? Math.Max(0, parts.Count - 1 - at % 3) : at % parts.Count].Id;
            fed[from] = fed.GetValueOrDefault(from) + 1;
            parts.Add(($"X{i + 1}", new[] { "outlet", "splitter", "grounding-block", "amplifier" }[kind], from, fed[from]));
        }
        return With(parts, i => steps[i].Item3);
    });

    private static Plan Dwellings(int dwellings, int outlets)
    {
        var parts = new List<(string Id, string Kind, string From, int Port)>
        {
            ("A1", "antenna", "", 0), ("P1", "amplifier", "A1", 0), ("G1", "grounding-block", "P1", 0), ("I1", "power-inserter", "G1", 0), ("S1", "splitter", "I1", 0),
        };
        for (var d = 1; d <= dwellings; d++)
        {
            parts.Add(($"S{d + 1}", "splitter", "S1", d));
            for (var o = 1; o <= outlets; o++) parts.Add(($"O{d}{o}", "outlet", $"S{d + 1}", o));
        }
        return With(parts);
    }

    private static Plan With(List<(string Id, string Kind, string From, int Port)> parts, Func<int, bool>? cabled = null)
    {
        var plan = Demo.Plan("alder-lane");
        var elements = parts.Select((p, i) => new ElementPlan(p.Id, p.Kind, p.Kind, Word.Read<PartKind>(p.Kind)!.Value, "somewhere", p.From, parts.Count(o => o.From == p.From) > 1 ? p.Port : 0,
            p.From.Length > 0 && (cabled is null || cabled(i - 1)) ? "R" + i : "", p.Kind == "outlet" ? "Dwelling with a view" : "", p.Kind == "amplifier" ? 14 : null)).ToArray();
        var runs = elements.Where(e => e.Run.Length > 0).Select((e, i) => plan.Routing.Runs[0] with { Id = e.Run, LengthM = 2.5 + i }).ToArray();
        return plan with { Cabling = plan.Cabling with { Elements = elements, Feeds = [] }, Routing = plan.Routing with { Runs = runs } };
    }

    private static (Plan Plan, ChainLayout Layout) LaidOut(Plan plan) => (plan, ChainDiagramSheet.Layout(Demo.On(plan), Demo.Measure)!.Value.Layout);

    private static Drawing Draw(Plan plan) => ChainDiagramSheet.Draw(Demo.On(plan), Demo.Measure)!;
}
