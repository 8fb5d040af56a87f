using PdfSharp.UniversalAccessibility;

namespace InstallPacket.Packets.Pdf;

/// <summary>Collects the boxes of a document from top to bottom, with the structure elements and frames around them.</summary>
/// <param name="left">Left edge of the text in points.</param>
/// <param name="width">Width of the text in points.</param>
internal sealed class Flow(double left, double width)
{
    private readonly List<FlowBox> _boxes = [];
    private readonly List<(Action<PageCanvas, double> Begin, bool IsElement)> _pending = [];
    private readonly List<FlowFrame> _frames = [];
    private double _space;

    public IReadOnlyList<FlowBox> Boxes => _boxes;

    public double Left { get; private set; } = left;

    public double Width { get; private set; } = width;

    public FlowBox Last => _boxes[^1];

    public void Add(FlowBox box)
    {
        box.SpaceBefore = _boxes.Count == 0 ? 0 : _space;
        box.Frames = _frames.Count == 0 ? [] : [.. _frames];
        box.Begins = _pending.Count == 0 ? [] : [.. _pending.Select(p => p.Begin)];
        _pending.Clear();
        _space = 0;
        _boxes.Add(box);
    }

    /// <summary>Asks for space before the next box; the largest wish counts.</summary>
    public void Space(double points) => _space = Math.Max(_space, points);

    /// <summary>Drops wishes for space: the next box joins the last.</summary>
    public void NoSpace() => _space = 0;

    /// <summary>Begins a structure element with the next box.</summary>
    public void Begin(Action<StructureBuilder> begin) => _pending.Add(((canvas, _) => begin(canvas.Structure), true));

    /// <summary>Draws something before the next box, level with it; it ends what it begins.</summary>
    public void Mark(Action<PageCanvas, double> draw) => _pending.Add((draw, false));

    /// <summary>Ends a structure element with the last box; one that got no box is forgotten.</summary>
    public void End()
    {
        var open = _pending.FindLastIndex(p => p.IsElement);
        if (open >= 0) _pending.RemoveAt(open);
        else Last.Ends++;
    }

    /// <summary>Runs a part with its text set in.</summary>
    public void Indented(double leftBy, double rightBy, Action part)
    {
        Left += leftBy;
        Width -= leftBy + rightBy;
        part();
        Left -= leftBy;
        Width += leftBy + rightBy;
    }

    /// <summary>Runs a part inside a frame.</summary>
    public void Framed(string kind, Action part)
    {
        _frames.Add(new FlowFrame(Left, Width, kind));
        part();
        _frames.RemoveAt(_frames.Count - 1);
    }
}
