namespace InstallPacket.Terrain.GeoTiff;

/// <summary>Tags of a TIFF directory that the reader looks at (TIFF 6.0, GeoTIFF 1.1, and two that GDAL writes).</summary>
internal enum TiffTag
{
    NewSubfileType = 254,
    ImageWidth = 256,
    ImageLength = 257,
    BitsPerSample = 258,
    Compression = 259,
    PhotometricInterpretation = 262,
    FillOrder = 266,
    StripOffsets = 273,
    Orientation = 274,
    SamplesPerPixel = 277,
    RowsPerStrip = 278,
    StripByteCounts = 279,
    PlanarConfiguration = 284,
    Predictor = 317,
    TileWidth = 322,
    TileLength = 323,
    TileOffsets = 324,
    TileByteCounts = 325,
    SampleFormat = 339,
    ModelPixelScale = 33550,
    ModelTiepoint = 33922,
    ModelTransformation = 34264,
    GeoKeyDirectory = 34735,
    GeoDoubleParams = 34736,
    GdalMetadata = 42112,
    GdalNoData = 42113,
}
