namespace InstallPacket.Drawings.Marks;

/// <summary>Stacks labels in a column so that none covers another and each stays near the height it asks for.</summary>
internal static class ColumnStack
{
    /// <summary>Upper edges, for labels in order from top to bottom.</summary>
    /// <param name="labels">Middle asked for and height of each.</param>
    /// <param name="gap">Least distance between neighbours.</param>
    /// <param name="top">Upper end of the column.</param>
    /// <param name="bottom">Lower end; must leave room for all, each with its gap.</param>
    /// <remarks>
    /// Labels that would touch form a block; a block stands where the wishes of its labels average out, and blocks that meet are joined.
    /// </remarks>
    public static double[] Tops(IReadOnlyList<(double Middle, double Height)> labels, double gap, double top, double bottom)
    {
        var blocks = new List<Block>();
        foreach (var (middle, height) in labels)
        {
            var block = new Block(1, middle - height / 2, height + gap);
            while (blocks.Count > 0 && blocks[^1].Top(top, bottom) + blocks[^1].Height > block.Top(top, bottom))
            {
                block = blocks[^1].Join(block);
                blocks.RemoveAt(blocks.Count - 1);
            }
            blocks.Add(block);
        }
        var edges = new List<double>();
        foreach (var block in blocks)
        {
            var at = block.Top(top, bottom);
            for (var i = 0; i < block.Count; i++)
            {
                var height = labels[edges.Count].Height;
                edges.Add(at);
                at += height + gap;
            }
        }
        return [.. edges];
    }

    private readonly record struct Block(int Count, double WishSum, double Height)
    {
        public double Top(double top, double bottom) => Math.Max(top, Math.Min(WishSum / Count, bottom - Height));

        public Block Join(Block below) => new(Count + below.Count, WishSum + below.WishSum - below.Count * Height, Height + below.Height);
    }
}
