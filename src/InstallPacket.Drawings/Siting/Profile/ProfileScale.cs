using InstallPacket.Plans;

namespace InstallPacket.Drawings.Siting.Profile;

/// <summary>Where a point of the path stands on the sheet.</summary>
/// <param name="Field">Ground of the picture, from the antenna to the transmitter.</param>
/// <param name="MmPerKm">Scale along the path.</param>
/// <param name="MmPerM">Scale of heights.</param>
/// <param name="LowM">Height of the chord at the lower edge of the field.</param>
/// <param name="HighM">Height at the upper edge of the field.</param>
/// <param name="Times">How many times larger heights are drawn than distances.</param>
internal sealed record ProfileScale(PaperBox Field, double MmPerKm, double MmPerM, double LowM, double HighM, int Times)
{
    /// <summary>Room for the house left of the antenna.</summary>
    public const double HouseMm = 8;

    private const double LeftMm = 13;
    private const double RightMm = 6;
    private const double HeightMm = 48;
    private const int MostTimes = 100;

    // A short steep path keeps its shape and becomes narrower.
    private const double TallestMm = 80;

    public static ProfileScale Of(PathPlan path, double width, double top)
    {
        var low = path.Points.Min(p => p.GroundM);
        var high = new[] { path.AntennaM, path.TransmitterM, path.Points.Max(p => p.CurvedM),
            path.Points.Max(p => p.RayM + p.FresnelM) }.Max();
        var range = Math.Max(1, high - low);
        var mmPerKm = Math.Min((width - LeftMm - HouseMm - RightMm) / path.DistanceKm, TallestMm / range * 1000);
        var times = RoundNumbers.TimesAtMost(HeightMm / range * 1000 / mmPerKm, MostTimes);
        var mmPerM = times * mmPerKm / 1000;
        // A little ground is shown below the lowest point, so that a valley does not touch the chord.
        low -= 2 / mmPerM;
        high += 2 / mmPerM;
        var left = LeftMm + HouseMm;
        return new(new(left, top, left + path.DistanceKm * mmPerKm, top + (high - low) * mmPerM), mmPerKm, mmPerM, low, high, times);
    }

    public double X(double distanceKm) => Field.Left + distanceKm * MmPerKm;

    /// <summary>A height over the chord: ground with the bulge of the earth, or a point of the ray.</summary>
    public double Y(double heightM) => Field.Bottom - (heightM - LowM) * MmPerM;

    public PaperPoint At(double distanceKm, double heightM) => new(X(distanceKm), Y(heightM));
}
