namespace InstallPacket.Packets.Pdf;

/// <summary>The smallest part that is never divided between pages: a line of text, a table row, a figure.</summary>
/// <param name="height">Height in points.</param>
/// <param name="draw">Draws it with its top at the given height of the page; null for an empty space.</param>
internal sealed class FlowBox(double height, Action<PageCanvas, double>? draw)
{
    public double Height { get; } = height;

    public Action<PageCanvas, double>? Draw { get; } = draw;

    /// <summary>Space above, dropped at the top of a page.</summary>
    public double SpaceBefore { get; set; }

    /// <summary>Stands on the same page as the box after it.</summary>
    public bool KeepWithNext { get; set; }

    /// <summary>What is repeated above when this box comes first on a page: the head of its table.</summary>
    public FlowBox? RepeatedHead { get; init; }

    /// <summary>The frames around it, outermost first.</summary>
    public IReadOnlyList<FlowFrame> Frames { get; set; } = [];

    /// <summary>Structure elements and list marks that begin with this box, in order.</summary>
    public IReadOnlyList<Action<PageCanvas, double>> Begins { get; set; } = [];

    /// <summary>How many structure elements end with this box.</summary>
    public int Ends { get; set; }

    /// <summary>The heading that this box shows, for bookmarks and links; null otherwise.</summary>
    public HeadingMark? Heading { get; init; }
}

/// <summary>A heading that bookmarks and links lead to.</summary>
/// <param name="Level">1 is the highest.</param>
/// <param name="Words">Its words.</param>
/// <param name="Id">Its identifier in the text.</param>
internal sealed record HeadingMark(int Level, string Words, string Id);

/// <summary>A frame drawn around neighbouring boxes, once per page that it touches.</summary>
/// <param name="Left">Left edge in points.</param>
/// <param name="Width">Width in points.</param>
/// <param name="Kind">The notice it belongs to.</param>
internal sealed record FlowFrame(double Left, double Width, string Kind);
