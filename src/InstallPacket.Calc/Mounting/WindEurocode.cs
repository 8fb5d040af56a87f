using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting;

/// <summary>
/// Wind pressure by the European wind standard with its recommended values; national annexes change them. The speed is the 10-minute mean
/// at
/// 10 m over category II from the national map; it has no default.
/// </summary>
public static class WindEurocode
{
    /// <summary>Density of air [kg/m3].</summary>
    public const double AirDensityKgM3 = 1.25;

    /// <summary>The profile holds up to this height [m].</summary>
    public const double GreatestHeightM = 200;

    /// <summary>Partial factor on wind for checks of strength; recalled, and not to be mixed with allowable stresses.</summary>
    public const double PartialFactor = 1.5;

    private const string Recalled = "; recalled, and two published calculation reports are met by it";

    /// <summary>The basic velocity.</summary>
    public static readonly Formula BasicVelocityFormula = new(
        "eurocode-basic-velocity",
        "Basic wind velocity",
        "vb = cdir cseason vb0",
        new("vb", "m/s", "basic velocity"),
            [new("vb0", "m/s", "fundamental value of the map"), new("cdir", "", "direction"), new("cseason", "", "season")],
        "en-1991-1-4", "4.2" + Recalled, Provenance.Memory);

    /// <summary>The basic pressure.</summary>
    public static readonly Formula BasicPressureFormula = new(
        "eurocode-basic-pressure",
        "Basic velocity pressure",
        "qb = rho vb^2 / 2",
        new("qb", "Pa", "basic pressure"), [new("vb", "m/s", "basic velocity"), new("rho", "kg/m3", "density of air")],
        "en-1991-1-4", "4.5" + Recalled, Provenance.Memory);

    /// <summary>The mean velocity.</summary>
    public static readonly Formula<TerrainCategory> MeanVelocityFormula = new Formula(
        "eurocode-mean-velocity",
        "Mean wind velocity at a height",
        "vm = cr co vb, cr = kr ln(max(z, zmin) / z0), kr = 0.19 (z0 / 0.05)^0.07",
        new("vm", "m/s", "mean velocity"),
        [new("vb", "m/s", "basic velocity"), new("z", "m", "height above ground"), new("z0", "m", "roughness length"),
            new("zmin", "m", "least height"), new("co", "", "hills")],
        "en-1991-1-4", "4.3" + Recalled, Provenance.Memory)
        .By<TerrainCategory>((terrain, v) => MeanVelocityMS(terrain, v[1], v[0]));

    /// <summary>The turbulence.</summary>
    public static readonly Formula<TerrainCategory> TurbulenceFormula = new Formula(
        "eurocode-turbulence",
        "Turbulence intensity",
        "Iv = kI / (co ln(max(z, zmin) / z0))",
        new("Iv", "", "turbulence intensity"),
        [new("z", "m", "height above ground"), new("z0", "m", "roughness length"), new("zmin", "m", "least height"),
            new("co", "", "hills"), new("kI", "", "turbulence factor")],
        "en-1991-1-4", "4.4" + Recalled, Provenance.Memory)
        .By<TerrainCategory>((terrain, v) => Turbulence(terrain, v[0]));

    /// <summary>The peak pressure.</summary>
    public static readonly Formula PeakPressureFormula = new(
        "eurocode-peak-pressure",
        "Peak velocity pressure",
        "qp = (1 + 7 Iv) rho vm^2 / 2",
        new("qp", "Pa", "peak pressure"),
            [new("Iv", "", "turbulence intensity"), new("vm", "m/s", "mean velocity"), new("rho", "kg/m3", "density of air")],
        "en-1991-1-4", "4.5" + Recalled, Provenance.Memory)
    {
        Method = v => (1 + 7 * v[0]) * v[2] * v[1] * v[1] / 2,
    };

    /// <summary>The exposure factor.</summary>
    public static readonly Formula ExposureFormula = new(
        "eurocode-exposure",
        "Exposure factor",
        "ce = qp / qb",
        new("ce", "", "exposure factor"), [new("qp", "Pa", "peak pressure"), new("qb", "Pa", "basic pressure")],
        "en-1991-1-4", "4.5" + Recalled, Provenance.Memory);

    /// <summary>The basic velocity.</summary>
    /// <param name="fundamentalMS">Fundamental value of the map [m/s], 0 to 80; outside throws.</param>
    /// <param name="direction">Factor of the direction, 0 to 1; outside throws.</param>
    /// <param name="season">Factor of the season, 0 to 1; outside throws.</param>
    /// <returns>Velocity [m/s].</returns>
    public static double BasicVelocityMS(double fundamentalMS, double direction = 1, double season = 1) =>
        Limit.Within(fundamentalMS, 0, 80, "fundamental wind velocity in m/s")
        * Limit.Within(direction, 0, 1, "factor of the direction") * Limit.Within(season, 0, 1, "factor of the season");

    /// <summary>The basic pressure.</summary>
    /// <param name="basicMS">Basic velocity [m/s], 0 to 80; outside throws.</param>
    /// <param name="densityKgM3">Density of air [kg/m3], 0.5 to 1.5; outside throws.</param>
    /// <returns>Pressure [Pa].</returns>
    public static double BasicPressurePa(double basicMS, double densityKgM3 = AirDensityKgM3) =>
        0.5 * Density(densityKgM3) * Math.Pow(Limit.Within(basicMS, 0, 120, "basic wind velocity in m/s"), 2);

    /// <summary>The terrain factor kr.</summary>
    /// <param name="terrain">Terrain category.</param>
    /// <returns>Factor.</returns>
    public static double TerrainFactor(TerrainCategory terrain) => 0.19 * Math.Pow(terrain.RoughnessM / 0.05, 0.07);

    /// <summary>The roughness factor cr.</summary>
    /// <param name="terrain">Terrain category.</param>
    /// <param name="heightM">Height above ground [m], 0 to 200; outside throws.</param>
    /// <returns>Factor.</returns>
    public static double Roughness(TerrainCategory terrain, double heightM) => TerrainFactor(terrain) * LogHeight(terrain, heightM);

    /// <summary>The mean velocity.</summary>
    /// <param name="terrain">Terrain category.</param>
    /// <param name="heightM">Height above ground [m], 0 to 200; outside throws.</param>
    /// <param name="basicMS">Basic velocity [m/s], 0 to 80; outside throws.</param>
    /// <param name="hills">Factor of hills co, 1 to 2; outside throws.</param>
    /// <returns>Velocity [m/s].</returns>
    public static double MeanVelocityMS(TerrainCategory terrain, double heightM, double basicMS, double hills = 1) =>
        Roughness(terrain, heightM) * Hills(hills) * Limit.Within(basicMS, 0, 120, "basic wind velocity in m/s");

    /// <summary>The turbulence intensity.</summary>
    /// <param name="terrain">Terrain category.</param>
    /// <param name="heightM">Height above ground [m], 0 to 200; outside throws.</param>
    /// <param name="hills">Factor of hills co, 1 to 2; outside throws.</param>
    /// <param name="turbulence">Turbulence factor kI, 0.5 to 1.5; outside throws.</param>
    /// <returns>Intensity, a pure number.</returns>
    public static double Turbulence(TerrainCategory terrain, double heightM, double hills = 1, double turbulence = 1) =>
        Limit.Within(turbulence, 0.5, 1.5, "turbulence factor kI") / (Hills(hills) * LogHeight(terrain, heightM));

    /// <summary>The peak pressure.</summary>
    /// <param name="terrain">Terrain category.</param>
    /// <param name="heightM">Height above ground [m], 0 to 200; outside throws.</param>
    /// <param name="basicMS">Basic velocity [m/s], 0 to 80; outside throws.</param>
    /// <param name="hills">Factor of hills co, 1 to 2; outside throws.</param>
    /// <param name="densityKgM3">Density of air [kg/m3], 0.5 to 1.5; outside throws.</param>
    /// <returns>Pressure [Pa], characteristic value.</returns>
    public static double PeakPressurePa(TerrainCategory terrain, double heightM, double basicMS, double hills = 1,
        double densityKgM3 = AirDensityKgM3) =>
        (1 + 7 * Turbulence(terrain, heightM, hills)) * 0.5 * Density(densityKgM3) * Math.Pow(MeanVelocityMS(terrain, heightM, basicMS,
            hills), 2);

    /// <summary>The exposure factor ce.</summary>
    /// <param name="peakPa">Peak pressure [Pa], not negative; outside throws.</param>
    /// <param name="basicPa">Basic pressure [Pa], above 0; outside throws.</param>
    /// <returns>Factor.</returns>
    public static double Exposure(double peakPa, double basicPa) =>
        Limit.AtLeast(peakPa, 0, "peak pressure in Pa") / Limit.Between(basicPa, 0, 1e6, "basic pressure in Pa");

    private static double LogHeight(TerrainCategory terrain, double heightM) =>
        Math.Log(Math.Max(Limit.Within(heightM, 0, GreatestHeightM, "height above ground in m"),
            terrain.LeastHeightM) / terrain.RoughnessM);

    private static double Density(double densityKgM3) => Limit.Within(densityKgM3, 0.5, 1.5, "density of air in kg/m3");

    private static double Hills(double hills) => Limit.Within(hills, 1, 2, "factor of hills");
}
