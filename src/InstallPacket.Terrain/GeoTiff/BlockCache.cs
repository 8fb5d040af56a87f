namespace InstallPacket.Terrain.GeoTiff;

/// <summary>The blocks of heights that were asked for last, of all tiles of a folder together. The one unused longest goes first.</summary>
/// <param name="mostBytes">How much is held [bytes]; a single block may be larger.</param>
internal sealed class BlockCache(long mostBytes = BlockCache.Room)
{
    // Four of the largest blocks: a place touches no more of one tile.
    private const long Room = 4L * sizeof(float) * TiffLayout.MostBlockSamples;

    private readonly Dictionary<(object Owner, int Index), LinkedListNode<Block>> _blocks = [];
    private readonly LinkedList<Block> _latest = new();

    /// <summary>What is held [bytes].</summary>
    public long Bytes { get; private set; }

    /// <summary>A block, read when it is not held.</summary>
    public float[] Get(object owner, int index, Func<int, float[]> read)
    {
        if (_blocks.TryGetValue((owner, index), out var node))
        {
            if (node.Previous is null) return node.Value.Heights;
            _latest.Remove(node);
            _latest.AddFirst(node);
            return node.Value.Heights;
        }
        var heights = read(index);
        _blocks[(owner, index)] = _latest.AddFirst(new Block(owner, index, heights));
        Bytes += 4L * heights.Length;
        while (Bytes > mostBytes && _latest.Count > 1) Drop(_latest.Last!);
        return heights;
    }

    private void Drop(LinkedListNode<Block> node)
    {
        _latest.Remove(node);
        _blocks.Remove((node.Value.Owner, node.Value.Index));
        Bytes -= 4L * node.Value.Heights.Length;
    }

    private sealed record Block(object Owner, int Index, float[] Heights);
}
