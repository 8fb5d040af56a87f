namespace InstallPacket.Terrain.GeoTiff;

/// <summary>What the tags say of the place and the datum of a tile; systems that lie within about a metre of WGS 84 are read.</summary>
internal static class GeoReference
{
    private const int UserDefined = 32767;
    private const int Degree = 9102, Metre = 9001, Greenwich = 8901;

    // What a system that is described instead of named may have: WGS 84 and GRS 80 differ by a tenth of a millimetre in the minor axis.
    private static readonly (int Key, string What, double Low, double High)[] Figures =
    [
        (GeoKeys.SemiMajorAxis, "semi-major axis", 6378136.5, 6378137.5),
        (GeoKeys.SemiMinorAxis, "semi-minor axis", 6356751.8, 6356752.8),
        (GeoKeys.InverseFlattening, "inverse flattening", 298.25, 298.26),
        (GeoKeys.PrimeMeridianLongitude, "prime meridian", 0, 0),
    ];

    /// <summary>Whether the file counts from the middles of cells (points) rather than from their corners (areas).</summary>
    /// <exception cref="UnfitTileException">The file does not say: half a cell would be in doubt.</exception>
    public static bool IsPoint(GeoKeys keys) => keys.Code(GeoKeys.RasterType) switch
    {
        1 => false,
        2 => true,
        var type =>
            throw new UnfitTileException(type is null ? "does not state whether its cells are areas or points" : $"has raster type {type}",
            "1 (areas) and 2 (points) are read"),
    };

    /// <summary>Checks that coordinates are degrees on a datum that counts as WGS 84.</summary>
    /// <exception cref="UnfitTileException">Another model, system, datum or unit.</exception>
    public static void CheckSystem(GeoKeys keys)
    {
        var model = keys.Code(GeoKeys.ModelType);
        if (model == 1 || keys.Code(GeoKeys.ProjectedSystem) is not null) throw new UnfitTileException("has projected coordinates",
            "geographic coordinates in degrees are read");
        if (model != 2) throw new UnfitTileException(model switch { null => "states no kind of coordinates", 3 =>
            "has geocentric coordinates", _ => $"has coordinates of kind {model}" }, "geographic coordinates in degrees are read");
        var system = keys.Code(GeoKeys.GeodeticSystem);
        if (system is null) throw new UnfitTileException("states no coordinate system",
            "EPSG 4326, EPSG 4269 or one described in degrees is read");
        if (system is not (4326 or 4269 or UserDefined)) throw new UnfitTileException($"has coordinate system EPSG {system} (not read)",
            "EPSG 4326, EPSG 4269 or one described in degrees is read");
        var unit = keys.Code(GeoKeys.AngularUnit);
        if (system == UserDefined && unit is null) throw new UnfitTileException("describes a coordinate system and not its angular unit",
            "degrees (9102) are read");
        Only(unit, "angular unit", Degree);
        Only(keys.Code(GeoKeys.GeodeticDatum), "datum", 6326, 6269, UserDefined);
        Only(keys.Code(GeoKeys.Ellipsoid), "ellipsoid", 7030, 7019, UserDefined);
        Only(keys.Code(GeoKeys.PrimeMeridian), "prime meridian", Greenwich);
        foreach (var (key, what, low, high) in Figures)
            if (keys.Figure(key) is { } figure
                && !(figure >= low && figure <= high)) throw new UnfitTileException(FormattableString.Invariant($"has {what} {figure}"),
                "that of WGS 84 is read");
    }

    /// <summary>The vertical datum in words.</summary>
    /// <exception cref="UnfitTileException">Heights in another unit than metres, or above an ellipsoid.</exception>
    public static string Datum(GeoKeys keys)
    {
        var unit = keys.Code(GeoKeys.VerticalUnit);
        if (unit is not (null or Metre)) throw new UnfitTileException($"has heights in unit {unit}", "metres (9001) are read");
        var code = keys.Code(GeoKeys.VerticalSystem);
        // The codes of GeoTIFF 1.0 for heights above an ellipsoid.
        if (code is >= 5001 and <= 5035) throw new UnfitTileException($"has heights above an ellipsoid (vertical code {code})",
            "heights above sea level are read");
        return code switch
        {
            5773 => "EGM96 (EPSG 5773)",
            3855 => "EGM2008 (EPSG 3855)",
            5703 => "NAVD88 (EPSG 5703)",
            null or 0 or UserDefined => "not stated",
            _ when unit == Metre => $"vertical code {code}",
            _ => throw new UnfitTileException($"has vertical code {code} without the unit of its heights",
                "5773, 3855 and 5703 are read without one, and any code with metres (9001)"),
        };
    }

    private static void Only(int? code, string what, params ReadOnlySpan<int> read)
    {
        if (code is { } stated && !read.Contains(stated)) throw new UnfitTileException($"has {what} {stated} (not read)",
            $"read is {string.Join(", ", read.ToArray())}");
    }
}
