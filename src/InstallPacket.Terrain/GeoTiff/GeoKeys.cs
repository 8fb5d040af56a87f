namespace InstallPacket.Terrain.GeoTiff;

/// <summary>The geographic keys of a GeoTIFF (OGC 19-008r4): whole numbers, and floats where a check needs them.</summary>
internal sealed class GeoKeys
{
    public const int ModelType = 1024, RasterType = 1025, GeodeticSystem = 2048, GeodeticDatum = 2050, PrimeMeridian = 2051,
        AngularUnit = 2054, Ellipsoid = 2056,
        SemiMajorAxis = 2057, SemiMinorAxis = 2058, InverseFlattening = 2059, PrimeMeridianLongitude = 2061, ProjectedSystem = 3072,
            VerticalSystem = 4096, VerticalUnit = 4099;

    private const int MostKeys = 256;
    private const int MostDoubles = 1024;

    private readonly Dictionary<int, int> _codes = [];
    private readonly Dictionary<int, double> _figures = [];

    /// <summary>Reads the directory of keys.</summary>
    /// <exception cref="UnfitTileException">There is none, or it is unsound.</exception>
    public static GeoKeys Read(TiffDirectory tags)
    {
        if (!tags.Has(TiffTag.GeoKeyDirectory)) throw new UnfitTileException("states no coordinate system",
            "a GeoTIFF tile does, in its geographic keys");
        var table = tags.Shorts(TiffTag.GeoKeyDirectory, 4 * (MostKeys + 1));
        if (table.Length < 4 || table[0] != 1 || table.Length < 4
            + 4 * table[3]) throw new UnfitTileException("has an unsound directory of geographic keys", "version 1 is read");
        var doubles = tags.Has(TiffTag.GeoDoubleParams) ? tags.Doubles(TiffTag.GeoDoubleParams, MostDoubles) : [];
        var keys = new GeoKeys();
        for (var i = 1; i <= table[3]; i++) keys.Add(table.AsSpan(4 * i, 4), doubles);
        return keys;
    }

    /// <summary>The code of a key, or null.</summary>
    public int? Code(int key) => _codes.TryGetValue(key, out var code) ? code : null;

    /// <summary>The float of a key, or null.</summary>
    public double? Figure(int key) => _figures.TryGetValue(key, out var figure) ? figure : null;

    private void Add(ReadOnlySpan<ushort> row, double[] doubles)
    {
        var (key, place, count, value) = (row[0], row[1], row[2], row[3]);
        var added = place switch
        {
            0 => _codes.TryAdd(key, value),
            (int)TiffTag.GeoDoubleParams => count == 1 && value < doubles.Length && _figures.TryAdd(key, doubles[value]),
            _ => true, // texts: no check needs them
        };
        if (!added) throw new UnfitTileException($"has an unsound geographic key {key}", "each key is stated once, with a value");
    }
}
