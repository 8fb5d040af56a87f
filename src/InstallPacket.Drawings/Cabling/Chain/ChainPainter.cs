using InstallPacket.Plans;

namespace InstallPacket.Drawings.Cabling.Chain;

/// <summary>Draws parts, the lines between them and what stands on both.</summary>
internal sealed class ChainPainter(SheetCanvas canvas, SheetPlan plan, ChainSetting setting)
{
    private const double SizeMm = ChainSize.SizeMm;

    // By both ends: a combiner has two lines that lead to it, and the supply may leave by one of them.
    private readonly HashSet<(string From, string To)> _supplied =
        [.. plan.Cabling.Feeds.SelectMany(f => f.Way.Zip(f.Way.Skip(1)))];

    /// <summary>A line that carries the signal alone.</summary>
    public static Pen Signal { get; } = new(Ink.Line, 0.45);

    /// <summary>A line that carries the supply of an amplifier too.</summary>
    public static Pen Supply { get; } = new(Ink.Accent, 1.3);

    /// <summary>The outline of a part that is there already.</summary>
    public static Pen There { get; } = new(Ink.Line, 0.35, Dash.Dashed);

    public void Draw(ChainLayout layout)
    {
        foreach (var link in layout.Links) Link(link);
        foreach (var place in layout.Places) Part(place);
    }

    private void Link(ChainLink link)
    {
        var pen = Supplied(link.To) ? Supply : Signal;
        canvas.Line(link.To.Run is { Existing: true } ? pen with { Dash = Dash.Dashed } : pen, [.. link.Points]);
        if (link.To.Run is not { } run) return;
        var (middle, y) = ((link.Points[^2].X + link.Points[^1].X) / 2, link.Points[^1].Y);
        if (setting == ChainSetting.Dense)
        {
            InOneLine(run, middle, y - 1.1);
            return;
        }
        canvas.Text(new(new(middle, y - 1.1), run.Id, SizeMm, Anchor: Anchor.Middle, Strong: true));
        canvas.Text(new(new(middle, y + 3.1), ChainSize.Length(run, plan), SizeMm, Anchor: Anchor.Middle));
    }

    private bool Supplied(ChainNode to) => to.Into.Length > 0
        ? _supplied.Contains((plan.Cabling.Elements.First(e => e.Id == to.Into).Second, to.Into))
        : to.Element is { } e && _supplied.Contains((e.From, e.Id));

    private void InOneLine(RunPlan run, double middle, double y)
    {
        var length = ChainSize.Length(run, plan);
        var id = canvas.Measure.WidthMm(run.Id, SizeMm, strong: true) + canvas.Measure.WidthMm(" ", SizeMm);
        var left = middle - (id + canvas.Measure.WidthMm(length, SizeMm)) / 2;
        canvas.Text(new(new(left, y), run.Id, SizeMm, Strong: true));
        canvas.Text(new(new(left + id, y), length, SizeMm));
    }

    private void Part(ChainPlace place)
    {
        var (box, node) = (place.Box, place.Node);
        canvas.Box(box, node.Element is null ? new(node.Into.Length > 0 ? Ink.Line : Ink.Faint, 0.3, Dash.Dashed)
            : node.Element.Existing ? There : new(Ink.Line, node.Fed.Count > 1 ? 0.7 : 0.45), node.Fed.Count > 1 ? Fill.Tint : Fill.Paper);
        if (node.Element is { From: "" }) AntennaMark.Draw(canvas, new((box.Left + box.Right) / 2, box.Top), 0.8);
        var x = box.Left + ChainSize.PadMm;
        var y = place.LineY - 0.6;
        if (node.Id.Length > 0) canvas.Text(new(new(x, y), node.Id, SizeMm, Strong: true));
        var first = node.Id.Length > 0 ? x + canvas.Measure.WidthMm(node.Id, SizeMm, strong: true) + canvas.Measure.WidthMm(" ", SizeMm)
            : x;
        if (place.Size.First.Length > 0) canvas.Text(new(new(first, y), place.Size.First, SizeMm));
        for (var i = 0; i < place.Size.Lines.Count; i++) canvas.Text(new(new(x, y + (i + 1) * ChainSize.LeadMm), place.Size.Lines[i],
            SizeMm));
        for (var i = 0; i < node.Fed.Count; i++)
            if (node.Fed[i].Port > 0) canvas.Text(new(new(box.Right - 0.9, place.Exits[i] + 1.05), ChainSize.Port(node.Fed[i].Port),
                SizeMm, Anchor: Anchor.End));
    }
}
