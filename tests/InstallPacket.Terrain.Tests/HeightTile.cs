namespace InstallPacket.Terrain.Tests;

/// <summary>A GeoTIFF tile for tests: small, with every choice of storage.</summary>
internal sealed record HeightTile
{
    public int Rows { get; init; } = 40;

    public int Columns { get; init; } = 48;

    /// <summary>Latitude of the tie point [deg]: the north edge of areas, the first row of points.</summary>
    public double North { get; init; } = 44;

    /// <summary>Longitude of the tie point [deg].</summary>
    public double West { get; init; } = -100;

    /// <summary>Between rows and columns [deg].</summary>
    public double Step { get; init; } = 1 / 1200.0;

    public bool Point { get; init; }

    public bool IsFloat { get; init; }

    public int Compression { get; init; } = 1;

    public int Predictor { get; init; } = 1;

    public bool Tiled { get; init; }

    public bool Big { get; init; }

    public bool BigEndian { get; init; }

    public int TileSide { get; init; } = 16;

    public int RowsPerStrip { get; init; } = 7;

    /// <summary>The sample at a row and a column.</summary>
    public Func<int, int, float> Sample { get; init; } = Rugged;

    /// <summary>Steep and without pattern, so that a sample in a wrong place is noticed; an eighth of a metre survives as float only.</summary>
    public static float Rugged(int row, int column) => (row * 7919 + column * 104729) % 4001 - 400;

    /// <summary>Latitude and longitude of a node [deg].</summary>
    public (double Latitude, double Longitude) Node(int row, int column)
    {
        var half = Point ? 0 : 0.5;
        return (North - (row + half) * Step, West + (column + half) * Step);
    }

    public byte[] ToBytes() => File().ToBytes();

    /// <summary>The file, for a test that changes it.</summary>
    public TiffFile File()
    {
        var file = new TiffFile(Big, BigEndian)
            .Set(256, TiffFile.Long, Columns).Set(257, TiffFile.Short, Rows)
            .Set(258, TiffFile.Short, IsFloat ? 32 : 16).Set(259, TiffFile.Short, Compression).Set(262, TiffFile.Short, 1).Set(277, TiffFile.Short, 1).Set(339, TiffFile.Short, IsFloat ? 3 : 2)
            .Set(33550, TiffFile.Double, Step, Step, 0).Set(33922, TiffFile.Double, 0, 0, 0, West, North, 0);
        Keys(file, (1024, 2), (1025, Point ? 2 : 1), (2048, 4326));
        if (Predictor != 1) file.Set(317, TiffFile.Short, Predictor);
        if (Tiled) file.Set(322, TiffFile.Short, TileSide).Set(323, TiffFile.Short, TileSide).Table = (324, 325);
        else file.Set(278, TiffFile.Short, RowsPerStrip);
        foreach (var block in Blocks()) file.Blocks.Add(PackedBlock.Of(block, IsFloat, Compression, Predictor, BigEndian));
        return file;
    }

    /// <summary>Writes geographic keys, each with its code.</summary>
    public static TiffFile Keys(TiffFile file, params (int Key, int Code)[] keys) =>
        file.Set(34735, TiffFile.Short, [1, 1, 0, keys.Length, .. keys.SelectMany(k => new double[] { k.Key, 0, 1, k.Code })]);

    /// <summary>The samples of each block; a tile is filled up beyond the image, and a last strip is not.</summary>
    public IEnumerable<float[][]> Blocks()
    {
        var (high, wide) = Tiled ? (TileSide, TileSide) : (RowsPerStrip, Columns);
        for (var top = 0; top < Rows; top += high)
            for (var left = 0; left < Columns; left += wide)
                yield return [.. Enumerable.Range(top, Tiled ? high : Math.Min(high, Rows - top)).Select(r => Enumerable.Range(left, wide).Select(c => Sample(r, c)).ToArray())];
    }
}
