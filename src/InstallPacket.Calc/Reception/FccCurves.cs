using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>
/// Field strength at 9.1 m above ground from the regulator's measured curves, without terrain. Straight interpolation in log d and log h:
/// exact at the table's nodes, elsewhere up to 1.2 dB (rms 0.1 to 0.3 dB) from the regulator's own smooth surface.
/// </summary>
public static class FccCurves
{
    /// <summary>Greatest distance for which the curves answer [km].</summary>
    public const double MaxDistanceKm = 300;

    /// <summary>Least antenna height above average terrain that the curves know [m].</summary>
    public const double MinHaatM = 30;

    // Below this distance free space applies; below the second, a tenth of the time is no better than half of it.
    private const double FreeSpaceKm = 1.5;
    private const double SameCurveKm = 15;
    private const double MaxHaatM = 1600;

    /// <summary>The field from the curves.</summary>
    public static readonly Formula<CurvePercent> CurveFormula = new Formula(
        "fcc-curve-field",
        "Field strength from the regulator's curves",
        "E = F(d, h) + 10 log10(P), F by straight lines in log d and log h between table nodes, never above free space",
        new("E", "dB(uV/m)", "field strength at 9.1 m, half of the places"),
        [new("f", "MHz", "frequency, chooses the sheet"), new("P", "kW", "effective radiated power on a dipole"),
            new("h", "m", "antenna height above average terrain, 30 to 1600"), new("d", "km", "distance")],
        "fcc-curves", "F(50,50) and F(50,10) tables")
        .By<CurvePercent>((percent, v) => FieldDbuVm(percent, v[0], v[1], v[2], v[3]).DbuVm);

    /// <summary>The field for nine tenths of the time.</summary>
    public static readonly Formula F5090Formula = new(
        "fcc-f5090",
        "Field strength for 90 % of the time",
        "F(50,90) = 2 F(50,50) - F(50,10)",
        new("F(50,90)", "dB(uV/m)", "field exceeded at half of the places for 90 % of the time"),
        [new("F(50,50)", "dB(uV/m)", "for 50 % of the time"), new("F(50,10)", "dB(uV/m)", "for 10 % of the time")],
        "fcc-curves", "contour rule for digital television")
    {
        Method = v => F5090(v[0], v[1]),
    };

    /// <summary>The distance to a contour.</summary>
    public static readonly Formula ContourFormula = CurveFormula with
    {
        Id = "fcc-contour",
        Title = "Distance to a field strength contour",
        Equation = "greatest d with E(d) >= Ec, E from the curves",
        Result = new("d", "km", "distance"),
        Inputs = [new("f", "MHz", "frequency"), new("P", "kW", "effective radiated power"),
            new("h", "m", "antenna height above average terrain"), new("Ec", "dB(uV/m)", "field at the contour")],
    };

    /// <summary>The field from the curves.</summary>
    /// <param name="curve">Share of time.</param>
    /// <param name="frequencyMHz">Frequency [MHz], 40 to 900; outside throws.</param>
    /// <param name="erpKw">Effective radiated power on a dipole [kW], above 0; outside throws.</param>
    /// <param name="haatM">Antenna height above average terrain [m]; below 30 and above 1600 clamped and flagged.</param>
    /// <param name="distanceKm">Distance [km], above 0 to <see cref="MaxDistanceKm"/>; outside throws.</param>
    /// <returns>The field, the height and the sheet used.</returns>
    public static CurveField FieldDbuVm(CurvePercent curve, double frequencyMHz, double erpKw, double haatM, double distanceKm)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(erpKw);
        if (!(distanceKm is > 0 and <= MaxDistanceKm))
            throw new ArgumentOutOfRangeException(nameof(distanceKm), distanceKm, "The curves hold above 0 and up to 300 km.");
        if (!double.IsFinite(haatM)) throw new ArgumentOutOfRangeException(nameof(haatM), haatM, "The antenna height must be a number.");
        var band = BandOf(frequencyMHz);
        var haat = Math.Clamp(haatM, MinHaatM, MaxHaatM);
        var oneKw = curve switch
        {
            CurvePercent.F50_50 => HalfOfTime(band, haat, distanceKm),
            CurvePercent.F50_10 => TenthOfTime(band, haat, distanceKm),
            _ => F5090(HalfOfTime(band, haat, distanceKm), TenthOfTime(band, haat, distanceKm)),
        };
        return new CurveField(oneKw + 10 * Math.Log10(erpKw), haat != haatM, haat, band);
    }

    /// <summary>The field for nine tenths of the time, mirrored from the tenth about the half.</summary>
    /// <param name="f5050DbuVm">Field for 50 % of the time [dB(uV/m)].</param>
    /// <param name="f5010DbuVm">Field for 10 % of the time [dB(uV/m)].</param>
    /// <returns>Field for 90 % of the time [dB(uV/m)].</returns>
    public static double F5090(double f5050DbuVm, double f5010DbuVm) => 2 * f5050DbuVm - f5010DbuVm;

    /// <summary>The greatest distance at which a field is still reached.</summary>
    /// <param name="curve">Share of time.</param>
    /// <param name="frequencyMHz">Frequency [MHz], 40 to 900; outside throws.</param>
    /// <param name="erpKw">Effective radiated power on a dipole [kW], above 0; outside throws.</param>
    /// <param name="haatM">Antenna height above average terrain [m]; clamped to 30 to 1600.</param>
    /// <param name="fieldDbuVm">Field at the contour [dB(uV/m)].</param>
    /// <returns>Distance [km], or null when the contour lies beyond <see cref="MaxDistanceKm"/>.</returns>
    public static double? ContourKm(CurvePercent curve, double frequencyMHz, double erpKw, double haatM, double fieldDbuVm)
    {
        double Excess(double km) => FieldDbuVm(curve, frequencyMHz, erpKw, haatM, km).DbuVm - fieldDbuVm;
        if (Excess(MaxDistanceKm) >= 0) return null;
        // Walk inward first: a mirrored curve need not fall everywhere, and the outermost crossing is the contour.
        var outer = MaxDistanceKm;
        var inner = outer / 1.02;
        while (Excess(inner) < 0) (outer, inner) = (inner, inner / 1.02);
        for (var i = 0; i < 60; i++)
        {
            var middle = (inner + outer) / 2;
            if (Excess(middle) >= 0) inner = middle;
            else outer = middle;
        }
        return inner;
    }

    private static CurveBand BandOf(double frequencyMHz) => frequencyMHz switch
    {
        >= 40 and < 108 => CurveBand.LowVhf,
        >= 108 and < 300 => CurveBand.HighVhf,
        >= 300 and <= 900 => CurveBand.Uhf,
        _ => throw new ArgumentOutOfRangeException(nameof(frequencyMHz), frequencyMHz, "The curves hold from 40 to 900 MHz."),
    };

    private static double HalfOfTime(CurveBand band, double haatM, double km)
    {
        var sheet = FccCurveTable.Of(band, tenthOfTime: false);
        var free = FreeSpaceField.DbuVm(1, km);
        return km < FreeSpaceKm ? free : Math.Min(free, sheet.At(Math.Max(km, sheet.FirstKm), haatM));
    }

    private static double TenthOfTime(CurveBand band, double haatM, double km)
    {
        var half = HalfOfTime(band, haatM, km);
        if (km < SameCurveKm) return half;
        // At two nodes (UHF, 10 miles, 533.4 and 914.4 m) the published sheet lies 0.1 dB below the one for half of the time,
        // which cannot be; the half then stands for both.
        return Math.Min(FreeSpaceField.DbuVm(1, km), Math.Max(half, Tenth(band, haatM, km)));
    }

    private static double Tenth(CurveBand band, double haatM, double km)
    {
        var sheet = FccCurveTable.Of(band, tenthOfTime: true);
        if (km >= sheet.FirstKm) return sheet.At(km, haatM);
        // The sheet starts a little beyond the 15 km of the rule; a straight line in log d closes the gap without a step.
        var start = HalfOfTime(band, haatM, SameCurveKm);
        var share = Math.Log(km / SameCurveKm) / Math.Log(sheet.FirstKm / SameCurveKm);
        return start + share * (sheet.At(sheet.FirstKm, haatM) - start);
    }
}
