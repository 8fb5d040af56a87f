using System.Globalization;
using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Siting;

namespace InstallPacket.Jobs.Stations;

/// <summary>Which rows of a station list are asked for.</summary>
public sealed record StationFilter
{
    /// <summary>The word of the regulator's list for a station with a licence.</summary>
    public const string Licensed = "LIC";

    /// <summary>Leaves nothing out.</summary>
    public static readonly StationFilter None = new();

    /// <summary>Statuses of the regulator's list that are kept.</summary>
    public IReadOnlyList<string> Statuses { get; init; } = [Licensed];

    /// <summary>RF channels that are kept, both ends included; null for all.</summary>
    public (int Low, int High)? Channels { get; init; }

    /// <summary>The place from which distance counts [deg], WGS84; null when none is given.</summary>
    public (double LatitudeDeg, double LongitudeDeg)? From { get; init; }

    /// <summary>Greatest distance from there [m]; null for any.</summary>
    public double? WithinM { get; init; }

    /// <summary>A place such as <c>43.62 N, 99.14 W</c>; null when the text is none.</summary>
    public static (double LatitudeDeg, double LongitudeDeg)? ReadPlace(string text) =>
        text.Split(',') is [var north, var east] && Direction.Coordinate(north, true) is double latitude
            && Direction.Coordinate(east, false) is double longitude
            ? (latitude, longitude) : null;

    /// <summary>A distance such as <c>150 km</c> [m]; null when the text is none above 0.</summary>
    public static double? ReadDistanceM(string text) =>
        UnitText.Read(text, Dimension.Length) is { Problem: UnitProblem.None, Value: > 0 } reading ? reading.Value : null;

    /// <summary>Channels such as <c>2-36</c> or <c>21</c>; null when the text is none.</summary>
    public static (int Low, int High)? ReadChannels(string text)
    {
        var ends = text.Split('-');
        if (ends.Length > 2 || !Channel(ends[0], out var low) || !Channel(ends[^1], out var high) || low > high) return null;
        return (low, high);
    }

    /// <summary>Statuses, several in one text with commas between; upper case.</summary>
    public static IReadOnlyList<string> ReadStatuses(IEnumerable<string> texts) =>
        [.. texts.SelectMany(t => t.Split(',')).Select(t => t.Trim().ToUpperInvariant()).Where(t =>
            t.Length > 0).Distinct(StringComparer.Ordinal)];

    /// <summary>Why a status is not asked for; null when it is.</summary>
    internal string? WhyNot(string status) =>
        Statuses.Contains(status) ? null : status.Length is > 0 and <= 10 && status.All(c => char.IsAsciiLetterOrDigit(c) || c == ' ')
            ? "status " + status : "another status";

    /// <summary>Why a channel at a place is not asked for; null when it is, or when what is asked about is not known.</summary>
    internal string? WhyNot(int? channel, (double LatitudeDeg, double LongitudeDeg)? place)
    {
        if (Channels is { } wanted && channel is { } c
            && (c < wanted.Low || c > wanted.High)) return $"channel outside {wanted.Low}-{wanted.High}";
        if (From is not { } from || WithinM is not { } most || place is not { } p) return null;
        return Geodesic.Inverse(from.LatitudeDeg, from.LongitudeDeg, p.LatitudeDeg, p.LongitudeDeg).DistanceM > most
            ? string.Create(CultureInfo.InvariantCulture, $"farther than {most / 1000:0.###} km") : null;
    }

    private static bool Channel(string text, out int channel) =>
        int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out channel);
}
