using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Bonding;

/// <summary>How often lightning is to be expected at a house, by the ground that it gathers flashes from.</summary>
public static class StrikeExposure
{
    /// <summary>What stands around, and the factor that goes with it.</summary>
    public static readonly IReadOnlyDictionary<string, double> Places = new Dictionary<string, double>(StringComparer.Ordinal)
    {
        ["higher-objects"] = 0.25, ["similar"] = 0.5, ["isolated"] = 1, ["hilltop"] = 2,
    };

    /// <summary>The house.</summary>
    public static readonly Formula HouseFormula = new(
        "strike-area-house",
        "Ground from which a block-shaped house gathers flashes",
        "A = L W + 6 H (L + W) + 9 pi H^2",
        new("A", "m2", "collection area"), [new("L", "m", "length"), new("W", "m", "width"), new("H", "m", "height")],
        "nfpa-780", "annex L; the same by a slope of 1 : 3 in IEC 62305")
    {
        Method = v => HouseM2(v[0], v[1], v[2]),
    };

    /// <summary>The tip of a mast.</summary>
    public static readonly Formula PointFormula = new(
        "strike-area-point",
        "Ground from which the tip of a mast gathers flashes",
        "A = pi (3 H)^2",
        new("A", "m2", "collection area"), [new("H", "m", "height of the tip above the ground")],
        "nfpa-780", "the same slope of 1 : 3, recalled for a point", Provenance.Memory)
    {
        Method = v => PointM2(v[0]),
    };

    /// <summary>The flashes.</summary>
    public static readonly Formula StrikesFormula = new(
        "strikes-per-year",
        "Flashes to be expected at the house in a year",
        "N = Ng A C 1e-6",
        new("N", "1/year", "flashes in a year"),
            [new("Ng", "1/(km2 year)", "flash density"), new("A", "m2", "the larger collection area"), new("C", "", "factor of the place")],
        "nfpa-780", "annex L")
    {
        Method = v => PerYear(v[0], v[1], v[2]),
    };

    /// <summary>The density.</summary>
    public static readonly Formula DensityFormula = new(
        "flash-density-thunder-days",
        "Flash density from the days with thunder",
        "Ng = 0.1 Td",
        new("Ng", "1/(km2 year)", "flash density"), [new("Td", "1/year", "days with thunder in a year")],
        "flash-density-2008", "rule of thumb")
    {
        Method = v => DensityPerKm2(v[0]),
    };

    /// <summary>The collection area of a house.</summary>
    /// <param name="lengthM">Length [m], not negative; outside throws.</param>
    /// <param name="widthM">Width [m], not negative; outside throws.</param>
    /// <param name="heightM">Height [m], not negative; outside throws.</param>
    /// <returns>Area [m2].</returns>
    public static double HouseM2(double lengthM, double widthM, double heightM)
    {
        Limit.AtLeast(lengthM, 0, "length in m");
        Limit.AtLeast(widthM, 0, "width in m");
        Limit.AtLeast(heightM, 0, "height in m");
        return lengthM * widthM + 6 * heightM * (lengthM + widthM) + 9 * Math.PI * heightM * heightM;
    }

    /// <summary>The collection area of a tip.</summary>
    /// <param name="heightM">Height above the ground [m], not negative; outside throws.</param>
    /// <returns>Area [m2].</returns>
    public static double PointM2(double heightM) => 9 * Math.PI * Limit.AtLeast(heightM, 0, "height in m") * heightM;

    /// <summary>The flashes in a year.</summary>
    /// <param name="densityPerKm2">Flash density [1/(km2 year)], 0 to 200; outside throws.</param>
    /// <param name="areaM2">Collection area [m2], not negative; outside throws.</param>
    /// <param name="place">Factor of the place, 0.25 to 2; outside throws.</param>
    /// <returns>Flashes a year.</returns>
    public static double PerYear(double densityPerKm2, double areaM2, double place) =>
        Limit.Within(densityPerKm2, 0, 200, "flash density in 1/(km2 year)") * Limit.AtLeast(areaM2, 0,
            "collection area in m2") * Limit.Within(place, 0.25, 2, "factor of the place") * 1e-6;

    /// <summary>The flash density from days with thunder.</summary>
    /// <param name="days">Days in a year, 0 to 366; outside throws.</param>
    /// <returns>Density [1/(km2 year)].</returns>
    public static double DensityPerKm2(double days) => 0.1 * Limit.Within(days, 0, 366, "days with thunder");
}
