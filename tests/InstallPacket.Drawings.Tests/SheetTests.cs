namespace InstallPacket.Drawings.Tests;

public class SheetTests
{
    public static TheoryData<string, string> Figures => new(
        from job in Demo.Ids from figure in new[] { "aim-card", "route-sketch", "level-ladder" } select (job, figure));

    [Theory]
    [MemberData(nameof(Figures))]
    public void Words_stay_on_the_sheet_and_apart(string job, string figure) =>
        Assert.Equal("", FigureSet.Of(Demo.Plan(job), Demo.Measure)[figure].Faults());

    [Theory]
    [MemberData(nameof(Figures))]
    public void Words_are_large_enough_for_the_roof(string job, string figure) =>
        Assert.All(FigureSet.Of(Demo.Plan(job), Demo.Measure)[figure].Captions(), c => Assert.InRange(c.SizeMm, 2.8, 6));

    [Theory]
    [MemberData(nameof(Figures))]
    public void Every_sign_has_a_glyph(string job, string figure) => Demo.Fonts.Require(FigureSet.Of(Demo.Plan(job), Demo.Measure)[figure]);

    [Theory]
    [MemberData(nameof(Figures))]
    public void Same_plan_gives_the_same_marks(string job, string figure) => Assert.Equal(
        SvgPainter.PaintFile(FigureSet.Of(Demo.Plan(job), Demo.Measure)[figure]), SvgPainter.PaintFile(FigureSet.Of(Demo.Plan(job), Demo.Measure)[figure]));
}
