using InstallPacket.Plans;

namespace InstallPacket.Drawings.Tests;

public class LevelLadderTests
{
    [Fact]
    public void Without_a_ladder_there_is_no_sheet()
    {
        var plan = Demo.Plan("alder-lane");
        Assert.Null(LevelLadderSheet.Draw(plan with { Cabling = plan.Cabling with { Ladder = null } }, Demo.Measure));
    }

    [Fact]
    public void Each_step_stands_at_its_level()
    {
        var plan = Demo.Plan("alder-lane");
        var ladder = plan.Cabling.Ladder!;
        var sheet = LevelLadderSheet.Draw(plan, Demo.Measure)!;
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
        var sheet = LevelLadderSheet.Draw(Demo.Plan(job), Demo.Measure)!;
        var needed = sheet.Shapes.OfType<Polyline>().Single(l => l.Pen.Dash == Dash.Dotted).Points[0].Y;
        var weakest = sheet.Lines(Ink.Accent, 1.1).MaxBy(l => l.Points.Count)!.Points[^1].Y;
        Assert.Equal(below, needed > weakest);
    }

    [Fact]
    public void Equal_gains_are_written_once_and_different_ones_twice()
    {
        var words = LevelLadderSheet.Draw(Demo.Plan("alder-lane"), Demo.Measure)!.Captions().Select(c => c.Text).ToArray();
        Assert.Single(words, w => w == "+16.0");
        Assert.Contains("\u22127.4", words);
        Assert.Contains("\u22127.8", words);
    }

    [Fact]
    public void An_unknown_limit_of_the_receiver_is_not_drawn()
    {
        var plan = Demo.Plan("alder-lane");
        var sheet = LevelLadderSheet.Draw(plan with { Cabling = plan.Cabling with { Ladder = plan.Cabling.Ladder! with { LargestDbm = null } } }, Demo.Measure)!;
        Assert.DoesNotContain(sheet.Captions(), c => c.Text == "receiver's largest");
        Assert.Contains("largest level of the receiver is unknown", sheet.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void A_single_channel_is_drawn_alone()
    {
        var plan = Demo.Plan("alder-lane");
        var ladder = plan.Cabling.Ladder!;
        var sheet = LevelLadderSheet.Draw(plan with { Cabling = plan.Cabling with { Ladder = ladder with { Lines = [ladder.Lines[1]] } } }, Demo.Measure)!;
        Assert.Equal("", sheet.Faults());
        Assert.DoesNotContain(sheet.Captions(), c => c.Text.StartsWith("strongest", StringComparison.Ordinal));
    }

    private static double GridAt(Drawing sheet, string label) => sheet.Lines(Ink.Faint, 0.15).Where(l => l.Points[0].Y == l.Points[1].Y)
        .MinBy(l => Math.Abs(l.Points[0].Y - sheet.Caption(label).Middle().Y))!.Points[0].Y;
}
