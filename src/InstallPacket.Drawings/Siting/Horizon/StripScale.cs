using InstallPacket.Calc.Quantities;
using InstallPacket.Plans;

namespace InstallPacket.Drawings.Siting.Horizon;

/// <summary>Where a direction stands on the strip.</summary>
/// <param name="Field">Ground of the picture.</param>
/// <param name="AimDeg">True bearing in the middle.</param>
/// <param name="BottomDeg">Angle at the lower edge of the field.</param>
/// <param name="CutDeg">Obstructions that rise above this are cut off there.</param>
/// <param name="Times">How many times larger heights are drawn than widths.</param>
internal sealed record StripScale(PaperBox Field, double AimDeg, double BottomDeg, double CutDeg, int Times)
{
    private const double LeftMm = 13;
    private const double RightMm = 5;

    // The range of angles gets about this height; more than 50 times would make mountains of the tile's grain.
    private const double RangeMm = 30;
    private const int MostTimes = 50;
    private const double LeastRangeDeg = 0.3;
    private const double AboveMm = 3;
    private const double BelowMm = StandingPainter.TowerMm + 0.6;

    // A house in front of the antenna must not press the skyline flat: it is cut off at three times the skyline, or at this angle.
    private const double LeastCutDeg = 3;

    public double MmPerDeg => Field.Width / 360;

    public static StripScale Of(SheetPlan plan, double width, double top)
    {
        double[] far = [0, .. plan.Siting.Skyline.Select(p => p.AngleDeg).OfType<double>(),
            .. plan.Siting.Sites.Select(s => s.ElevationDeg).OfType<double>()];
        double[] near = [.. plan.Siting.Obstructions.Select(o => o.AngleDeg)];
        var cut = Math.Max(LeastCutDeg, 3 * far.Max());
        var high = Math.Max(far.Max(), near.Select(a => Math.Min(a, cut)).DefaultIfEmpty(0).Max());
        // What lies deep below the level of the antenna stands in nobody's way; its label tells the angle.
        var low = Math.Min(far.Min(), near.Select(a => Math.Max(a, -Math.Max(1, high / 4))).DefaultIfEmpty(0).Min());
        var range = Math.Max(LeastRangeDeg, high - low);
        var mmPerDeg = (width - LeftMm - RightMm) / 360;
        var times = RoundNumbers.TimesAtMost(RangeMm / (range * mmPerDeg), MostTimes);
        var scale = times * mmPerDeg;
        var field = new PaperBox(LeftMm, top, width - RightMm, top + range * scale + AboveMm + BelowMm);
        return new(field, plan.Reception.Aim.TrueDeg, low - BelowMm / scale, cut, times);
    }

    /// <summary>A true bearing.</summary>
    public double X(double bearingDeg) => XOfTurn(Bearing.Turn(AimDeg, bearingDeg));

    /// <summary>A turn from the aim, -180 to 180, clockwise positive.</summary>
    public double XOfTurn(double turnDeg) => Field.Left + (turnDeg + 180) * MmPerDeg;

    /// <summary>An angle above the horizontal.</summary>
    public double Y(double angleDeg) => Field.Bottom - (angleDeg - BottomDeg) * MmPerDeg * Times;

    /// <summary>The angle at a height on the sheet.</summary>
    public double AngleDeg(double y) => BottomDeg + (Field.Bottom - y) / (MmPerDeg * Times);

    /// <summary>The stretches of the strip that an arc covers: two when it passes the seam behind the antenna.</summary>
    public IEnumerable<(double Left, double Right)> Spans(double fromDeg, double widthDeg)
    {
        if (widthDeg >= 360) return [(Field.Left, Field.Right)];
        var left = Bearing.Turn(AimDeg, fromDeg);
        var right = left + widthDeg;
        return right <= 180 ? [(XOfTurn(left), XOfTurn(right))] : [(XOfTurn(left), Field.Right), (Field.Left, XOfTurn(right - 360))];
    }
}
