namespace InstallPacket.Terrain.GeoTiff;

/// <summary>How the samples of a tile are stored. Only what is listed here reaches a decoder; all else is refused by name.</summary>
/// <param name="Rows">Rows of the image.</param>
/// <param name="Columns">Columns of the image.</param>
/// <param name="IsFloat">32-bit float samples; otherwise 16-bit signed.</param>
/// <param name="BigEndian">Most significant byte first.</param>
/// <param name="Compression">1 none, 5 LZW, 8 or 32946 deflate.</param>
/// <param name="Predictor">1 none, 2 differences of whole numbers, 3 of floats.</param>
/// <param name="Tiled">Tiles; otherwise strips.</param>
/// <param name="BlockRows">Rows of a tile or strip.</param>
/// <param name="BlockColumns">Columns of a tile or strip.</param>
internal sealed record TiffLayout(int Rows, int Columns, bool IsFloat, bool BigEndian, int Compression, int Predictor, bool Tiled,
    int BlockRows, int BlockColumns)
{
    /// <summary>Largest tile, or packed strip, that is unpacked [samples].</summary>
    public const int MostBlockSamples = 1024 * 1024;

    private const int MostSide = 50_000;

    public int SampleBytes => IsFloat ? 4 : 2;

    public bool Plain => Compression == 1;

    public int Across => (Columns + BlockColumns - 1) / BlockColumns;

    public int Down => (Rows + BlockRows - 1) / BlockRows;

    /// <summary>The word for a block in messages.</summary>
    public string Block => Tiled ? "tile" : "strip";

    /// <summary>Checks every tag that has a say in the decoding.</summary>
    /// <exception cref="UnfitTileException">Something else than what is read.</exception>
    public static TiffLayout Of(TiffDirectory tags)
    {
        var (rows, columns) = (Side(tags, TiffTag.ImageLength), Side(tags, TiffTag.ImageWidth));
        Only(tags.Whole(TiffTag.NewSubfileType, 0) & 5, 0, "a first image that is an overview or a mask",
            "the first image holds the heights");
        if (tags.Whole(TiffTag.SamplesPerPixel, 1) is not 1 and var bands) throw new UnfitTileException($"has {bands} bands",
            "one is read");
        var isFloat = IsFloatSample(tags.Whole(TiffTag.BitsPerSample, 1), tags.Whole(TiffTag.SampleFormat, 1));
        var compression = tags.Whole(TiffTag.Compression, 1);
        if (compression is not (1 or 5 or 8 or 32946)) throw new UnfitTileException($"has compression {compression} (not read)",
            "none (1), LZW (5) and deflate (8, 32946) are read");
        var predictor = ReadPredictor(tags.Whole(TiffTag.Predictor, 1), compression == 1, isFloat, tags.Bytes.BigEndian);
        Only(tags.Whole(TiffTag.PhotometricInterpretation, 1), 1, "photometric interpretation", "1 is read");
        Only(tags.Whole(TiffTag.FillOrder, 1), 1, "fill order", "1 is read");
        Only(tags.Whole(TiffTag.Orientation, 1), 1, "orientation", "1 is read: first row in the north, first column in the west");
        if (tags.Whole(TiffTag.PlanarConfiguration,
            1) is not (1 or 2) and var planes) throw new UnfitTileException($"has planar configuration {planes}", "1 and 2 are read");
        var layout = new TiffLayout(rows, columns, isFloat, tags.Bytes.BigEndian, (int)compression, predictor, HasTiles(tags), 0, 0);
        return layout.Tiled ? layout.WithTiles(tags) : layout.WithStrips(tags);
    }

    private static int Side(TiffDirectory tags, TiffTag tag)
    {
        var side = tags.Whole(tag);
        return side is >= 2 and <= MostSide ? (int)side
            : throw new UnfitTileException($"has {TiffDirectory.Name(tag)} = {side}", $"2 to {MostSide} are read");
    }

    private static bool IsFloatSample(ulong bits, ulong format) => (bits, format) switch
    {
        (16, 2) => false,
        (32, 3) => true,
        _ => throw new UnfitTileException($"has {bits}-bit {Kind(format)} samples", "16-bit signed and 32-bit float samples are read"),
    };

    private static string Kind(ulong format) =>
        format switch { 1 => "unsigned", 2 => "signed", 3 => "float", 5 or 6 => "complex", _ => $"undefined (format {format})" };

    private static int ReadPredictor(ulong predictor, bool plain, bool isFloat, bool bigEndian)
    {
        const string read = "predictor 2 with 16-bit signed samples and predictor 3 with float samples are read";
        if (predictor is not (1 or 2 or 3)) throw new UnfitTileException($"has predictor {predictor} (not read)", read);
        if (predictor != 1 && plain) throw new UnfitTileException($"has predictor {predictor} without compression",
            "writers differ in what they mean by it");
        if (predictor == 3 && !isFloat) throw new UnfitTileException("has int16 with predictor 3", read);
        if (predictor == 3 && bigEndian) throw new UnfitTileException("has float32 with predictor 3 in big-endian order",
            "predictor 3 is read in little-endian order");
        if (predictor == 2 && isFloat) throw new UnfitTileException("has float32 with predictor 2", read);
        return (int)predictor;
    }

    private static void Only(ulong value, ulong read, string what, string limit)
    {
        if (value != read) throw new UnfitTileException($"has {what} ({value})", limit);
    }

    private static bool HasTiles(TiffDirectory tags)
    {
        var tiles = tags.Has(TiffTag.TileWidth) || tags.Has(TiffTag.TileOffsets);
        if (tiles && tags.Has(TiffTag.StripOffsets)) throw new UnfitTileException("has tiles and strips at once", "one of them is read");
        return tiles;
    }

    private TiffLayout WithTiles(TiffDirectory tags)
    {
        var (width, length) = (tags.Whole(TiffTag.TileWidth), tags.Whole(TiffTag.TileLength));
        if (width == 0 || length == 0 || width % 16 != 0 || length % 16 != 0)
            throw new UnfitTileException($"has tiles of {width} x {length} samples", "multiples of 16 are read");
        if (width > MostBlockSamples || length > MostBlockSamples / width)
            throw new UnfitTileException($"has tiles of {width} x {length} samples",
                $"at most {MostBlockSamples} samples are unpacked at once");
        return this with { BlockRows = (int)length, BlockColumns = (int)width };
    }

    private TiffLayout WithStrips(TiffDirectory tags)
    {
        var rows = tags.Whole(TiffTag.RowsPerStrip, (ulong)Rows);
        if (rows == 0) throw new UnfitTileException("has strips of 0 rows", "1 row or more is read");
        var strip = this with { BlockRows = (int)Math.Min(rows, (ulong)Rows), BlockColumns = Columns };
        if (!Plain && (long)strip.BlockRows * Columns > MostBlockSamples)
            throw new UnfitTileException($"has packed strips of {strip.BlockRows} x {Columns} samples",
                $"at most {MostBlockSamples} samples are unpacked at once");
        return strip;
    }
}
