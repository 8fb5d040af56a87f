using System.Numerics;
using InstallPacket.Calc.Siting;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>Several equal antennas side by side or one above the other.</summary>
public static class Stacking
{
    /// <summary>The gain over one antenna.</summary>
    public static readonly Formula GainFormula = new(
        "stacking-gain",
        "Gain of stacked antennas over one",
        "g = 10 log10(N) - Lc log2(N)",
        new("g", "dB", "gain over one antenna"), [new("N", "", "antennas"), new("Lc", "dB", "loss of each stage of combiners")],
        "project-notes", "sum of equal voltages, pairs combined stage by stage; enough spacing provided", Provenance.Derived);

    /// <summary>The useful spacing.</summary>
    public static readonly Formula SpacingFormula = new(
        "stacking-spacing",
        "Useful spacing of stacked antennas",
        "s = lambda / (2 sin(w / 2))",
        new("s", "m", "spacing"),
            [new("lambda", "m", "wavelength"), new("w", "deg", "half-power beamwidth of one antenna in the plane of stacking")],
        "project-notes", "reception, section 10", Provenance.Memory);

    /// <summary>The direction in which two antennas hear nothing.</summary>
    public static readonly Formula NullFormula = new(
        "stacking-null",
        "First null of two antennas side by side",
        "a = asin(lambda / (2 s))",
        new("a", "deg", "angle from the axis"), [new("lambda", "m", "wavelength"), new("s", "m", "spacing")],
        "project-notes", "half a wavelength of difference in path", Provenance.Derived);

    /// <summary>The gain over one antenna.</summary>
    /// <param name="antennas">Count, a power of two; otherwise throws: pairs are combined stage by stage.</param>
    /// <param name="stageLossDb">Loss of each stage of combiners [dB], not negative; outside throws.</param>
    /// <returns>Gain [dB]; 0 for a single antenna.</returns>
    public static double GainDb(int antennas, double stageLossDb)
    {
        if (antennas < 1 || !BitOperations.IsPow2(antennas))
            throw new ArgumentOutOfRangeException(nameof(antennas), antennas, "Antennas are combined in pairs: 1, 2, 4, 8.");
        Limit.AtLeast(stageLossDb, 0, "loss of a stage in dB");
        return 10 * Math.Log10(antennas) - stageLossDb * BitOperations.Log2((uint)antennas);
    }

    /// <summary>The useful spacing; closer antennas share what they catch, wider ones hear to the sides.</summary>
    /// <param name="wavelengthM">Wavelength [m], above 0; outside throws.</param>
    /// <param name="halfPowerBeamwidthDeg">Beamwidth of one antenna in the plane of stacking [deg], above 0 and below 180; outside
    /// throws.</param>
    /// <returns>Spacing [m].</returns>
    public static double SpacingM(double wavelengthM, double halfPowerBeamwidthDeg)
    {
        Limit.Between(wavelengthM, 0, double.PositiveInfinity, "wavelength in m");
        Limit.Between(halfPowerBeamwidthDeg, 0, 180, "beamwidth in degrees");
        return wavelengthM / (2 * Math.Sin(Degrees.ToRadians(halfPowerBeamwidthDeg / 2)));
    }

    /// <summary>The first null of two antennas: a tool against one station beside the wanted one.</summary>
    /// <param name="wavelengthM">Wavelength [m], above 0; outside throws.</param>
    /// <param name="spacingM">Spacing [m], above 0; outside throws.</param>
    /// <returns>Angle from the common axis [deg], or null when the antennas stand closer than half a wavelength.</returns>
    public static double? NullDeg(double wavelengthM, double spacingM)
    {
        Limit.Between(wavelengthM, 0, double.PositiveInfinity, "wavelength in m");
        Limit.Between(spacingM, 0, double.PositiveInfinity, "spacing in m");
        var sine = wavelengthM / (2 * spacingM);
        return sine <= 1 ? Math.Asin(sine) * Degrees.PerRadian : null;
    }

    /// <summary>The spacing that puts the null into a direction.</summary>
    /// <param name="wavelengthM">Wavelength [m], above 0; outside throws.</param>
    /// <param name="angleDeg">Direction from the common axis [deg], above 0 and up to 90; outside throws.</param>
    /// <returns>Spacing [m].</returns>
    public static double SpacingForNullM(double wavelengthM, double angleDeg)
    {
        Limit.Between(wavelengthM, 0, double.PositiveInfinity, "wavelength in m");
        Limit.Within(angleDeg, double.Epsilon, 90, "angle in degrees");
        return wavelengthM / (2 * Math.Sin(Degrees.ToRadians(angleDeg)));
    }
}
