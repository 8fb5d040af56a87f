using System.Globalization;
using System.Text.RegularExpressions;

namespace InstallPacket.Terrain;

/// <summary>Names of one-degree tiles: the south-west corner, <c>N43W100</c>.</summary>
internal static partial class TileName
{
    /// <summary>The corner that a file name tells, or null.</summary>
    public static (int LatitudeDeg, int LongitudeDeg)? Corner(string fileName)
    {
        var match = Form().Match(fileName);
        if (!match.Success) return null;
        var latitude = int.Parse(match.Groups["lat"].Value, CultureInfo.InvariantCulture);
        var longitude = int.Parse(match.Groups["lon"].Value, CultureInfo.InvariantCulture);
        if (match.Groups["ns"].Value is "S" or "s") latitude = -latitude;
        if (match.Groups["ew"].Value is "W" or "w") longitude = -longitude;
        // The square north and east of the corner lies on the globe.
        return latitude is >= -90 and <= 89 && longitude is >= -180 and <= 179 ? (latitude, longitude) : null;
    }

    /// <summary>The name of the tile with a corner.</summary>
    public static string Of(int latitudeDeg, int longitudeDeg) => string.Create(CultureInfo.InvariantCulture,
        $"{(latitudeDeg < 0 ? 'S' : 'N')}{Math.Abs(latitudeDeg):00}{(longitudeDeg < 0 ? 'W' : 'E')}{Math.Abs(longitudeDeg):000}");

    // At the start, as in N38W105.hgt or N38W105.SRTMGL1.hgt.zip, or at the end of the first word, as in NASADEM_HGT_n38w105.hgt.
    [GeneratedRegex(@"^(?:[A-Za-z_]+_)?(?<ns>[NSns])(?<lat>\d{2})(?<ew>[EWew])(?<lon>\d{3})(?=\.|$)", RegexOptions.ExplicitCapture)]
    private static partial Regex Form();
}
