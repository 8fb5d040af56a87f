namespace InstallPacket.Packets.Pdf;

/// <summary>A box at its place on a page.</summary>
/// <param name="Box">The box.</param>
/// <param name="Top">Distance of its top from the top of the page in points.</param>
/// <param name="IsRepeat">A repeated table head, which readers of the structure must not meet twice.</param>
internal readonly record struct PlacedBox(FlowBox Box, double Top, bool IsRepeat);

/// <summary>Shares boxes out over pages: chains of boxes that belong together move together, if a page can hold them.</summary>
internal sealed class Paginator
{
    private const double Tolerance = 0.01;

    private readonly List<List<PlacedBox>> _pages = [[]];
    private readonly double _top;
    private readonly double _bottom;
    private double _at;

    /// <param name="top">Top of the text area in points.</param>
    /// <param name="bottom">Its bottom.</param>
    private Paginator(double top, double bottom) => (_top, _bottom, _at) = (top, bottom, top);

    private bool AtTop => _pages[^1].Count == 0;

    public static IReadOnlyList<IReadOnlyList<PlacedBox>> Share(IReadOnlyList<FlowBox> boxes, double top, double bottom)
    {
        var paginator = new Paginator(top, bottom);
        for (var i = 0; i < boxes.Count;)
        {
            var end = i + 1;
            while (end < boxes.Count && boxes[end - 1].KeepWithNext) end++;
            paginator.PlaceChain(boxes, i, end);
            i = end;
        }
        return paginator._pages;
    }

    private void PlaceChain(IReadOnlyList<FlowBox> boxes, int start, int end)
    {
        double chain = 0;
        for (var i = start; i < end; i++) chain += boxes[i].Height + (i == start ? 0 : boxes[i].SpaceBefore);
        var head = boxes[start].RepeatedHead?.Height ?? 0;
        var fitsFreshPage = _top + head + chain <= _bottom + Tolerance;
        if (fitsFreshPage && !AtTop && _at + boxes[start].SpaceBefore + chain > _bottom + Tolerance) TurnPage();
        for (var i = start; i < end; i++) Place(boxes[i]);
    }

    private void Place(FlowBox box)
    {
        if (!AtTop && _at + box.SpaceBefore + box.Height > _bottom + Tolerance) TurnPage();
        if (AtTop && box.RepeatedHead is { } head)
        {
            _pages[^1].Add(new PlacedBox(head, _at, true));
            _at += head.Height;
        }
        else if (!AtTop) _at += box.SpaceBefore;
        _pages[^1].Add(new PlacedBox(box, _at, false));
        _at += box.Height;
    }

    private void TurnPage()
    {
        _pages.Add([]);
        _at = _top;
    }
}
