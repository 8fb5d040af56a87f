using System.Globalization;
using System.Xml;

namespace InstallPacket.Terrain.GeoTiff;

/// <summary>The two tags of GDAL that change what a sample means: the value that stands for no height, and scale, offset and unit of the
/// heights.</summary>
internal static class GdalTags
{
    private const int MostNoData = 64;
    private const int MostMetadata = 1024 * 1024;

    /// <summary>The sample that stands for no height, NaN among them; null when none is stated.</summary>
    /// <exception cref="UnfitTileException">The text is no number.</exception>
    public static float? NoData(TiffDirectory tags)
    {
        if (!tags.Has(TiffTag.GdalNoData)) return null;
        var text = tags.Text(TiffTag.GdalNoData, MostNoData).Trim();
        if (text.TrimStart('+', '-').Equals("nan", StringComparison.OrdinalIgnoreCase)) return float.NaN;
        return double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value)
            ? (float)value
            : throw new UnfitTileException($"has the no-data value '{Printable(text)}'", "a number is read");
    }

    /// <summary>Checks that heights are metres as they are stored.</summary>
    /// <exception cref="UnfitTileException">A factor, an offset or another unit.</exception>
    public static void CheckMetadata(TiffDirectory tags)
    {
        if (!tags.Has(TiffTag.GdalMetadata)) return;
        try
        {
            using var xml = XmlReader.Create(new StringReader(tags.Text(TiffTag.GdalMetadata, MostMetadata)),
                new() { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null });
            var read = xml.Read();
            while (read)
            {
                var role = xml is { NodeType: XmlNodeType.Element, LocalName: "Item" } ? xml.GetAttribute("role") : null;
                // Reading the content moves on to the next node by itself.
                if (role is "scale" or "offset" or "unittype") CheckItem(role, xml.ReadElementContentAsString().Trim());
                else read = xml.Read();
                if (xml.EOF) read = false;
            }
        }
        catch (XmlException)
        {
            throw new UnfitTileException($"has an unsound {TiffDirectory.Name(TiffTag.GdalMetadata)}", "XML is read");
        }
    }

    private static void CheckItem(string role, string text)
    {
        var asStored = role switch
        {
            "scale" => Is(text, 1),
            "offset" => Is(text, 0),
            _ => text.ToLowerInvariant() is "" or "m" or "metre" or "metres" or "meter" or "meters",
        };
        if (asStored) return;
        throw role == "unittype" ? new UnfitTileException($"has heights in '{Printable(text)}'", "metres are read")
            : new UnfitTileException($"has scaled heights ({role} {Printable(text)})", "heights in metres as they are stored are read");
    }

    private static bool Is(string text, double value) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var stated) && stated == value;

    // The text of a stranger goes into a message: short, and plain signs only.
    private static string Printable(string text) =>
        string.Concat(text.Take(24).Select(c => char.IsAsciiLetterOrDigit(c) || c is '.' or '-' or '+' or ' ' ? c : '?'));
}
