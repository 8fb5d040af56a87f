namespace InstallPacket.Drawings.Routing;

/// <summary>How the ways of laying a cable are told apart without colour.</summary>
internal static class RouteWay
{
    /// <summary>The ways, in the order of the legend.</summary>
    public static readonly IReadOnlyList<string> All = ["outside", "span", "buried", "conduit", "attic", "wall", "crawl-space"];

    public static Pen Pen(string way) => way switch
    {
        "outside" => new(Ink.Accent, 1.1),
        "span" => new(Ink.Accent, 0.5),
        "buried" => new(Ink.Accent, 1.4, Dash.Dashed),
        "conduit" => new(Ink.Accent, 1.5),
        "attic" => new(Ink.Accent, 0.7, Dash.Dashed),
        "wall" => new(Ink.Accent, 0.8, Dash.Dotted),
        _ => new(Ink.Accent, 0.7, Dash.DashDot),
    };

    /// <summary>Draws a line of cable; conduit has an open core, so that it reads as a pipe.</summary>
    public static void Draw(SheetCanvas canvas, string way, IReadOnlyList<PaperPoint> points)
    {
        canvas.Line(Pen(way), [.. points]);
        if (way == "conduit") canvas.Line(new(Ink.Paper, 0.7), [.. points]);
    }
}
