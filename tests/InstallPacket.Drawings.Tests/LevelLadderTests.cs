using InstallPacket.Plans;

namespace InstallPacket.Drawings.Tests;

public class LevelLadderTests
{
    [Fact]
    public void Without_a_ladder_there_is_no_sheet()
    {
        var plan = Demo.Plan("alder-lane");
        Assert.Null(LevelLadderSheet.Draw(Demo.On(plan with { Cabling = plan.Cabling with { Ladder = null } }), Demo.Measure));
    }

    [Fact]
    public void Each_step_stands_at_its_level()
    {
        var plan = Demo.Plan("alder-lane");
        var ladder = plan.Cabling.Ladder!;
        var sheet = LevelLadderSheet.Draw(Demo.On(plan), Demo.Measure)!;
        // Two lines of the grid, found by their labels, give the scale, independently of the code that drew the steps.
        var (zero, twenty) = (GridAt(sheet, "0"), GridAt(sheet, "20"));
        var weakest = sheet.Lines(Ink.Accent, 1.1).Single(l => l.Points.Count == 2 * ladder.Lines[1].Steps.Count);
        for (var i = 0; i < ladder.Lines[1].Steps.Count; i++)
        {
            var level = UnitPrinter.Of(plan.Job).LevelIn(ladder.Lines[1].Steps[i].LevelDbm);
            Assert.Equal(level, (weakest.Points[2 * i].Y - zero) / (twenty - zero) * 20, 6);
        }
    }

    [Theory]
    [InlineData("alder-lane", true)]
    [InlineData("far-meadow", false)]
    public void The_needed_level_lies_below_the_weakest_channel_when_there_is_margin(string job, bool below)
    {
        var sheet = LevelLadderSheet.Draw(Demo.On(Demo.Plan(job)), Demo.Measure)!;
        var needed = sheet.Shapes.OfType<Polyline>().Single(l => l.Pen.Dash == Dash.Dotted && l.Pen.Ink == Ink.Warning).Points[0].Y;
        var weakest = sheet.Lines(Ink.Accent, 1.1).MaxBy(l => l.Points.Count)!.Points[^1].Y;
        Assert.Equal(below, needed > weakest);
    }

    [Fact]
    public void Equal_gains_are_written_once_and_different_ones_twice()
    {
        var words = LevelLadderSheet.Draw(Demo.On(Demo.Plan("alder-lane")), Demo.Measure)!.Captions().Select(c => c.Text).ToArray();
        Assert.Single(words, w => w == "+16.0");
        Assert.Contains("\u22127.4", words);
        Assert.Contains("\u22127.8", words);
    }

    [Fact]
    public void An_unknown_limit_of_the_receiver_is_not_drawn()
    {
        var plan = Demo.Plan("alder-lane");
        var sheet = LevelLadderSheet.Draw(Demo.On(plan with { Cabling = plan.Cabling with { Ladder = plan.Cabling.Ladder! with { LargestDbm = null } } }), Demo.Measure)!;
        Assert.DoesNotContain(sheet.Captions(), c => c.Text == "receiver's largest");
        Assert.Contains("largest level of the receiver is not known", sheet.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void A_single_channel_is_drawn_alone()
    {
        var plan = Demo.Plan("alder-lane");
        var ladder = plan.Cabling.Ladder!;
        var sheet = LevelLadderSheet.Draw(Demo.On(plan with { Cabling = plan.Cabling with { Ladder = ladder with { Lines = [ladder.Lines[1]] } } }), Demo.Measure)!;
        Assert.Equal("", sheet.Faults());
        Assert.DoesNotContain(sheet.Captions(), c => c.Text.StartsWith("strongest", StringComparison.Ordinal));
    }

    [Fact]
    public void Noise_of_the_weakest_channel_stands_at_its_level_behind_each_step()
    {
        var plan = Demo.Plan("alder-lane");
        var weakest = plan.Cabling.Ladder!.Weakest!;
        var sheet = LevelLadderSheet.Draw(Demo.On(Noisy(plan, -30)), Demo.Measure)!;
        var noise = Assert.Single(sheet.Shapes.OfType<Polyline>(), l => l.Pen == LadderLines.NoisePen);
        var (zero, twenty) = (GridAt(sheet, "0"), GridAt(sheet, "20"));
        for (var i = 0; i < weakest.Steps.Count; i++)
            Assert.Equal(UnitPrinter.Of(plan.Job).LevelIn(weakest.Steps[i].LevelDbm - 30), (noise.Points[2 * i].Y - zero) / (twenty - zero) * 20, 6);
        Assert.Contains(sheet.Captions(), c => c.Text == "noise");
        Assert.Contains(sheet.Captions(), c => c.Text == UnitPrinter.Of(plan.Job).Level(weakest.Steps[^1].LevelDbm - 30));
        Assert.Equal("", sheet.Faults());
    }

    [Fact]
    public void Noise_far_below_is_named_and_does_not_press_the_lines_together()
    {
        var plan = Demo.Plan("alder-lane");
        var sheet = LevelLadderSheet.Draw(Demo.On(Noisy(plan, -150)), Demo.Measure)!;
        Assert.DoesNotContain(sheet.Shapes.OfType<Polyline>(), l => l.Pen == LadderLines.NoisePen);
        Assert.Contains(sheet.Captions(), c => c.Text == "noise below");
        var lines = sheet.Lines(Ink.Accent, 1.1).Concat(sheet.Lines(Ink.Line, 0.6)).SelectMany(l => l.Points).ToArray();
        Assert.True(lines.Max(p => p.Y) - lines.Min(p => p.Y) > 0.25 * 84);
        Assert.Equal("", sheet.Faults());
    }

    [Theory]
    [InlineData(1.5, false)]
    [InlineData(9, false)]
    [InlineData(60, true)]
    public void Ceiling_behind_an_amplifier_is_a_line_near_by_and_an_arrow_far_above(double reserveDb, bool arrow)
    {
        var plan = Ceiling(Demo.Plan("alder-lane"), reserveDb);
        var strongest = plan.Cabling.Ladder!.Lines[0];
        var step = strongest.Steps.Single(s => s.CeilingDbm is not null);
        var sheet = LevelLadderSheet.Draw(Demo.On(plan), Demo.Measure)!;
        var level = UnitPrinter.Of(plan.Job).LevelIn(step.CeilingDbm!.Value);
        var (zero, twenty) = (GridAt(sheet, "0"), GridAt(sheet, "20"));
        var at = zero + level / 20 * (twenty - zero);
        Assert.Equal(!arrow, sheet.Lines(Ink.Warning, 0.8).Any(l => Math.Abs(l.Points[0].Y - at) < 1e-6));
        Assert.Single(sheet.Captions(), c => c.Text == "amplifier's largest " + UnitPrinter.Of(plan.Job).Level(step.CeilingDbm.Value));
        Assert.Contains(UnitPrinter.Of(plan.Job).Level(step.CeilingDbm.Value) + " behind " + step.Label, sheet.Description, StringComparison.Ordinal);
        Assert.Equal("", sheet.Faults());
    }

    [Fact]
    public void Each_channel_takes_the_steps_of_its_own_antenna_and_goes_level_through_those_of_the_other()
    {
        var plan = Demo.TwoAntennas;
        var ladder = plan.Cabling.Ladder!;
        Assert.NotEqual(ladder.Lines[0].Steps.Count, ladder.Lines[1].Steps.Count); // or the test shows nothing
        var sheet = LevelLadderSheet.Draw(Demo.On(plan), Demo.Measure)!;
        Assert.Equal("", sheet.Faults());
        var columns = LadderColumns.Of(ladder);
        Assert.All(ladder.Lines.SelectMany(l => l.Steps), s => Assert.Contains(s.Label, columns.Names));
        for (var line = 0; line < 2; line++)
        {
            var padded = columns.Ladder.Lines[line].Steps;
            Assert.Equal(columns.Names.Count, padded.Count);
            Assert.Equal(ladder.Lines[line].Steps, padded.Where((_, i) => columns.Passes(line, i)));
            for (var i = 1; i < padded.Count; i++)
                if (columns.Passes(line, i)) Assert.Equal(columns.Names[i], padded[i].Label);
                else Assert.Equal(padded[i - 1].LevelDbm, padded[i].LevelDbm);
        }
    }

    [Fact]
    public void Every_outlet_has_a_figure_or_shares_one_that_differs_by_half_a_decibel_at_most()
    {
        foreach (var plan in Demo.Ids.Select(Demo.Plan))
        {
            var figures = Demo.Figures(plan);
            Assert.Equal("level-ladder", plan.Cabling.Ladders[0].Figure);
            foreach (var ladder in plan.Cabling.Ladders)
            {
                Assert.Contains(ladder.SameAs.Length > 0 ? ladder.SameAs : ladder.Outlet, figures[ladder.Figure].Description, StringComparison.Ordinal);
                var shown = plan.Cabling.Ladders.First(l => l.Figure == ladder.Figure);
                foreach (var (a, b) in ladder.Lines.Zip(shown.Lines))
                    Assert.All(a.Steps.Zip(b.Steps), p => Assert.InRange(p.First.LevelDbm - p.Second.LevelDbm, -0.5, 0.5));
            }
        }
        Assert.Equal(["level-ladder", "level-ladder-o2", "level-ladder-o2", "level-ladder-o2"], Demo.Plan("alder-lane").Cabling.Ladders.Select(l => l.Figure));
    }

    [Theory]
    [InlineData(0.3)]
    [InlineData(2)]
    [InlineData(6)]
    public void Limit_of_the_receiver_stays_legible_close_above_the_strongest_channel(double reserveDb)
    {
        var plan = Demo.Plan("alder-lane");
        var ladder = plan.Cabling.Ladder!;
        var largest = ladder.Lines[0].Steps[^1].LevelDbm + reserveDb;
        var sheet = LevelLadderSheet.Draw(Demo.On(plan with { Cabling = plan.Cabling with { Ladder = ladder with { LargestDbm = largest } } }), Demo.Measure)!;
        Assert.Equal("", sheet.Faults());
        // Its level stands right below its name, and no figure hides its line.
        var (name, level) = (sheet.Caption("receiver's largest").At.Y, sheet.Caption(UnitPrinter.Of(plan.Job).Level(largest)).At.Y);
        Assert.InRange(level - name, 3, 4.5);
        var line = sheet.Lines(Ink.Warning, 0.8).MaxBy(l => l.Points[0].X)!;
        Assert.DoesNotContain(sheet.Shapes.OfType<Polyline>().Where(p => p.Fill == Fill.Paper && p.Pen.WeightMm == 0), p =>
            new PaperBox(p.Points[0].X, p.Points[0].Y, p.Points[2].X, p.Points[2].Y).CutBy(line.Points[0], line.Points[1]));
    }

    private static Plan Noisy(Plan plan, double overLevelDb) => With(plan, s => s with { NoiseDbm = s.LevelDbm + overLevelDb });

    private static Plan Ceiling(Plan plan, double reserveDb) => With(plan, s => s with { CeilingDbm = s.GainDb > 0 ? s.LevelDbm + reserveDb : null });

    private static Plan With(Plan plan, Func<LadderStep, LadderStep> change) => plan with
    {
        Cabling = plan.Cabling with { Ladder = plan.Cabling.Ladder! with { Lines = [.. plan.Cabling.Ladder.Lines.Select(l => l with { Steps = [.. l.Steps.Select(change)] })] } },
    };

    private static double GridAt(Drawing sheet, string label) => sheet.Lines(Ink.Faint, 0.15).Where(l => l.Points[0].Y == l.Points[1].Y)
        .MinBy(l => Math.Abs(l.Points[0].Y - sheet.Caption(label).Middle().Y))!.Points[0].Y;
}
