namespace InstallPacket.Drawings.Routing;

/// <summary>How the ways of laying a cable are told apart without colour.</summary>
internal static class RouteWay
{
    /// <summary>The ways, in the order of the legend.</summary>
    public static readonly IReadOnlyList<CableWay> All = 
    [
        CableWay.Outside, CableWay.Span, CableWay.Buried, CableWay.Conduit, CableWay.Attic, CableWay.Wall, CableWay.CrawlSpace,
    ];

    public static Pen Pen(CableWay way) => way switch
    {
        CableWay.Outside => new(Ink.Accent, 1.1),
        CableWay.Span => new(Ink.Accent, 0.5),
        CableWay.Buried => new(Ink.Accent, 1.4, Dash.Dashed),
        CableWay.Conduit => new(Ink.Accent, 1.5),
        CableWay.Attic => new(Ink.Accent, 0.7, Dash.Dashed),
        CableWay.Wall => new(Ink.Accent, 0.8, Dash.Dotted),
        CableWay.CrawlSpace => new(Ink.Accent, 0.7, Dash.DashDot),
    };

    /// <summary>Draws a run that is known by its length alone.</summary>
    public static void DrawByLength(SheetCanvas canvas, IReadOnlyList<PaperPoint> points) =>
        canvas.Line(new(Ink.Faint, 0.5, Dash.DashDot), [.. points]);

    /// <summary>Draws a line of cable; conduit has an open core, so that it reads as a pipe.</summary>
    public static void Draw(SheetCanvas canvas, CableWay way, IReadOnlyList<PaperPoint> points)
    {
        canvas.Line(Pen(way), [.. points]);
        if (way == CableWay.Conduit) canvas.Line(new(Ink.Paper, 0.7), [.. points]);
    }
}
