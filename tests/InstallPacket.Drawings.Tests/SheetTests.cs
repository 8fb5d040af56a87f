namespace InstallPacket.Drawings.Tests;

public class SheetTests
{
    public static TheoryData<string, string> Figures => new(
        from job in Demo.Ids from figure in Demo.Figures(Demo.Plan(job)).Keys select (job, figure));

    [Fact]
    public void Every_demo_job_has_the_figures_that_its_plan_gives_ground_for()
    {
        string[] always = ["access-sketch", "aim-card", "bonding-sketch", "mount-sketch", "horizon-strip", "route-sketch", "chain-diagram", "level-ladder", "cable-labels"];
        foreach (var (job, profiles, ladders, more) in new[] { ("alder-lane", new[] { 1, 2 }, new[] { "o2" }, new[] { "cable-labels-2", "cutting-plan", "route-elevations", "entry-ground-block" }), ("brook-terrace", [1, 2], ["o2"], ["cable-labels-2", "route-elevations", "entry-earth-block"]), ("far-meadow", [3], [], ["cable-labels-2", "route-elevations", "entry-entry"]) })
            Assert.Equal(always.Concat(more).Concat(profiles.Select(n => $"path-profile-{n}")).Concat(ladders.Select(o => $"level-ladder-{o}")).Order(), Demo.Figures(Demo.Plan(job)).Keys.Order());
    }

    [Theory]
    [MemberData(nameof(Figures))]
    public void Words_stay_on_the_sheet_and_apart(string job, string figure) =>
        Assert.Equal("", Demo.Figures(Demo.Plan(job))[figure].Faults());

    [Fact]
    public void Words_stay_on_the_sheet_and_apart_with_two_antennas() =>
        Assert.All(Demo.Figures(Demo.TwoAntennas).Values, sheet => Assert.Equal("", sheet.Faults()));

    [Theory]
    [MemberData(nameof(Figures))]
    public void Words_are_large_enough_for_the_roof(string job, string figure) =>
        Assert.All(Demo.Figures(Demo.Plan(job))[figure].Captions(), c => Assert.InRange(c.SizeMm, 2.8, 6));

    [Theory]
    [MemberData(nameof(Figures))]
    public void Every_sign_has_a_glyph(string job, string figure) => Demo.Fonts.Require(Demo.Figures(Demo.Plan(job))[figure]);

    public static TheoryData<string> Jobs => [.. Demo.Ids];

    [Theory]
    [MemberData(nameof(Jobs))]
    public void Same_plan_gives_the_same_marks(string job)
    {
        var (once, again) = (Demo.Figures(Demo.Plan(job)), Demo.Redrawn(Demo.Plan(job)));
        Assert.Equal(once.Keys, again.Keys);
        Assert.All(once.Keys, figure => Assert.Equal(SvgPainter.PaintFile(once[figure]), SvgPainter.PaintFile(again[figure])));
    }
}
