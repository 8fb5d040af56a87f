using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting;

/// <summary>
/// Wind pressure by the American load standard. The speed is the 3-second gust at 10 m in open country from the official map for the site;
/// it has no default. From the 2010 edition on it is an ultimate speed, see <see cref="AllowableStress"/>.
/// </summary>
public static class WindAsce
{
    /// <summary>Half the density of air as the standard takes it [kg/m3].</summary>
    public const double PressureFactor = 0.613;

    /// <summary>Below this height the profile stays constant [m], 15 ft.</summary>
    public const double LowestHeightM = 15 * 0.3048;

    /// <summary>Least factor in exposure B where the floor is taken.</summary>
    public const double LeastKzB = 0.70;

    /// <summary>Directionality of the mast with its antenna, taken once for the whole; our choice, the value read for round
    /// chimneys.</summary>
    public const double DirectionalityKd = 0.95;

    /// <summary>Directionality of a lattice framework; read.</summary>
    public const double LatticeKd = 0.85;

    /// <summary>Gust effect of a rigid object that is permitted; read. It contains an averaging over size that a small object does not
    /// have.</summary>
    public const double RigidGustEffect = 0.85;

    /// <summary>Gust effect taken here for a small stiff object; our choice on the safe side.</summary>
    public const double SmallGustEffect = 1.0;

    /// <summary>Gust effect of a mast that sways below 1 Hz; recalled from a tower standard, until an engineer has looked.</summary>
    public const double FlexibleGustEffect = 1.35;

    /// <summary>Least first frequency of a rigid object [Hz].</summary>
    public const double RigidHz = 1;

    /// <summary>The exposure factor.</summary>
    public static readonly Formula<WindExposure> ExposureFormula = new Formula(
        "wind-kz",
        "Wind exposure factor at a height",
        "Kz = c (max(z, 4.572) / zg)^(2 / alpha); in exposure B not below 0.70 where the floor is taken",
        new("Kz", "", "exposure factor"),
        [new("z", "m", "height above ground"), new("c", "", "coefficient of the edition"), new("zg", "m", "gradient height"),
            new("alpha", "", "exponent")],
        "asce-7-16", "profile of the exposures; 7-22 has constants of its own")
        .By<WindExposure>((at, v) => Kz(AsceEdition.Asce716, at, v[0]));

    /// <summary>The elevation factor.</summary>
    public static readonly Formula ElevationFormula = new(
        "wind-ke",
        "Wind factor for thin air",
        "Ke = exp(-0.000119 zs)",
        new("Ke", "", "elevation factor, 1 is always allowed"), [new("zs", "m", "ground above sea level")],
        "asce-7-22", "ground elevation factor; editions before 7-16 have none");

    /// <summary>The velocity pressure.</summary>
    public static readonly Formula PressureFormula = new(
        "wind-pressure-asce",
        "Velocity pressure of the wind",
        "q = 0.613 Kz Kzt Kd Ke V^2",
        new("q", "Pa", "velocity pressure, ultimate"),
        [new("V", "m/s", "3-second gust"), new("Kz", "", "exposure"), new("Kd", "", "directionality"), new("Kzt", "", "hills"),
            new("Ke", "", "elevation")],
        "asce-7-16", "velocity pressure; 7-22 puts Kd into the force, the product is the same")
    {
        Method = v => VelocityPressurePa(v[0], v[1], v[2], v[3], v[4]),
    };

    /// <summary>The gust effect factor.</summary>
    public static readonly Formula GustEffectFormula = new(
        "wind-gust-effect",
        "Gust effect factor",
        "G = 1.35 when f1 < 1 Hz, else 1.0 (0.85 is permitted)",
        new("G", "", "gust effect factor"), [new("f1", "Hz", "first frequency of the mast")],
        "tia-222", "0.85 at 1 Hz and more was read in ASCE 7-10; 1.35 is recalled; 1.0 is our choice", Provenance.Memory);

    /// <summary>The exposure factor at the height of the item.</summary>
    /// <param name="edition">Edition of the standard.</param>
    /// <param name="exposure">Kind of ground.</param>
    /// <param name="heightM">Height of the item above ground, not above the roof [m], 0 to the gradient height; outside throws.</param>
    /// <param name="floorB">
    /// Takes 0.70 at least in exposure B: some chapters floor it below 30 ft, and it is the safe choice. False gives the bare equation.
    /// </param>
    /// <returns>Factor.</returns>
    public static double Kz(AsceEdition edition, WindExposure exposure, double heightM, bool floorB = true)
    {
        var profile = WindProfile.Of(edition, exposure);
        Limit.Within(heightM, 0, profile.GradientM, "height above ground in m");
        var kz = profile.Coefficient * Math.Pow(Math.Max(heightM, LowestHeightM) / profile.GradientM, 2 / profile.Alpha);
        // Applied at every height, not only below 30 ft: there it is reached anyway, and the factor never falls as the height grows.
        return floorB && exposure == WindExposure.B ? Math.Max(LeastKzB, kz) : kz;
    }

    /// <summary>The elevation factor.</summary>
    /// <param name="groundM">Ground above sea level [m], -500 to 9000; outside throws.</param>
    /// <returns>Factor.</returns>
    public static double Ke(double groundM) => Math.Exp(-0.000119 * Limit.Within(groundM, -500, 9000, "ground above sea level in m"));

    /// <summary>The velocity pressure, with the directionality in it: do not apply it again to the force.</summary>
    /// <param name="gustMS">3-second gust of the map [m/s], 0 to 150; outside throws.</param>
    /// <param name="kz">Exposure factor, 0 to 3; outside throws.</param>
    /// <param name="kd">Directionality factor, 0 to 1; outside throws.</param>
    /// <param name="kzt">Factor for hills, 1 to 10; outside throws.</param>
    /// <param name="ke">Elevation factor, 0 to 1.1; outside throws.</param>
    /// <returns>Pressure [Pa], of the same kind (ultimate) as the speed.</returns>
    public static double VelocityPressurePa(double gustMS, double kz, double kd, double kzt = 1, double ke = 1)
    {
        Limit.Within(gustMS, 0, 150, "gust speed in m/s");
        Limit.Within(kz, 0, 3, "exposure factor Kz");
        Limit.Within(kd, 0, 1, "directionality factor Kd");
        Limit.Within(kzt, 1, 10, "hill factor Kzt");
        Limit.Within(ke, 0, 1.1, "elevation factor Ke");
        return PressureFactor * kz * kzt * kd * ke * gustMS * gustMS;
    }

    /// <summary>The gust effect factor.</summary>
    /// <param name="firstFrequencyHz">First frequency of the mast [Hz], above 0; outside throws.</param>
    /// <param name="averageOverSize">Takes the 0.85 that is permitted for rigid objects.</param>
    /// <returns>Factor.</returns>
    public static double GustEffect(double firstFrequencyHz, bool averageOverSize = false)
    {
        Limit.Between(firstFrequencyHz, 0, double.PositiveInfinity, "first frequency in Hz");
        if (firstFrequencyHz < RigidHz) return FlexibleGustEffect;
        return averageOverSize ? RigidGustEffect : SmallGustEffect;
    }
}
