using System.Globalization;
using InstallPacket.Calc.Reception;

namespace InstallPacket.Jobs.Stations;

/// <summary>
/// The pattern of a directional transmitter as one field of a station list: <c>0:0 30:-1.5 60:-6</c>, true bearing from the transmitter in
/// degrees and gain in decibels relative to the strongest direction.
/// </summary>
internal static class PatternText
{
    public const int MostPoints = 72;
    public const double LeastDb = -60;

    /// <summary>What such a field holds, as a phrase.</summary>
    public const string Expected = "2 to 72 points `bearing:gain` with blanks between, each bearing once from 0 to below 360 deg true, gain from -60 to 0 dB, for example `0:0 90:-3 180:-10`";

    /// <summary>The pattern, or null when the text is none.</summary>
    public static TransmitterPattern? Read(string text)
    {
        var points = new List<(double BearingDeg, double GainDb)>();
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var colon = word.IndexOf(':');
            if (colon < 0 || !Direction.PlainNumber(word[..colon], out var bearing)
                || !Direction.PlainNumber(word[(colon + 1)..], out var gain)) return null;
            if (bearing is not (>= 0 and < 360) || gain is not (>= LeastDb and <= 0) || points.Count == MostPoints
                || points.Exists(p => p.BearingDeg == bearing)) return null;
            points.Add((bearing, gain));
        }
        return points.Count < TransmitterPattern.FewestPoints ? null : new TransmitterPattern(points);
    }

    /// <summary>The field.</summary>
    public static string Write(TransmitterPattern pattern) =>
        string.Join(' ',
            pattern.Points.Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.BearingDeg:0.######}:{p.GainDb:0.######}")));
}
