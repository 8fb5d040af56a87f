namespace InstallPacket.Terrain.GeoTiff;

/// <summary>All that the tags of a tile say, after every check.</summary>
/// <param name="Layout">How the samples are stored.</param>
/// <param name="Blocks">Where they lie.</param>
/// <param name="Frame">Where the nodes lie on the globe.</param>
/// <param name="Datum">Vertical datum in words.</param>
/// <param name="NoData">The sample that stands for no height.</param>
internal sealed record GeoTiffHeader(TiffLayout Layout, BlockTable Blocks, GridFrame Frame, string Datum, float? NoData)
{
    /// <summary>Reads and checks the tags; no sample is read.</summary>
    /// <exception cref="UnfitTileException">Anything that is not read, by name.</exception>
    public static GeoTiffHeader Read(TiffDirectory tags)
    {
        var layout = TiffLayout.Of(tags);
        var keys = GeoKeys.Read(tags);
        GeoReference.CheckSystem(keys);
        var datum = GeoReference.Datum(keys);
        var frame = GridPlace.Frame(tags, layout, GeoReference.IsPoint(keys));
        GdalTags.CheckMetadata(tags);
        return new(layout, BlockTable.Of(tags, layout), frame, datum, GdalTags.NoData(tags));
    }
}
