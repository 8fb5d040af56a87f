using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Bonding;

/// <summary>What a surge does along a conductor. Orders of magnitude, not predictions.</summary>
public static class Surge
{
    /// <summary>Peak of the induced surge that the packet calculates with [A]: 10 kA of the 8/20 test wave.</summary>
    public const double InducedA = 10e3;

    /// <summary>Front of that wave [s].</summary>
    public const double InducedFrontS = 8e-6;

    /// <summary>Peak of a direct first stroke, class III and IV [A].</summary>
    public const double StrokeA = 100e3;

    /// <summary>Front of the first stroke [s].</summary>
    public const double StrokeFrontS = 10e-6;

    /// <summary>Specific energy of that stroke [J/ohm].</summary>
    public const double StrokeEnergyJPerOhm = 2.5e6;

    // The 8/20 wave as i / Ip = K t^3 exp(-t / tau), t in microseconds; recalled.
    private const double WaveK = 0.01243;
    private const double WaveTauUs = 3.911;

    /// <summary>The steepness.</summary>
    public static readonly Formula SteepnessFormula = new(
        "surge-steepness",
        "Mean steepness of a surge current",
        "s = 0.8 I / (0.8 T)",
        new("s", "kA/us", "mean rise from 10 to 90 %"), [new("I", "kA", "peak"), new("T", "us", "front time")],
        "project-notes", "definition of the front time", Provenance.Derived)
    {
        Method = v => SteepnessAPerS(v[0] * 1000, v[1] / 1e6) / 1e9,
    };

    /// <summary>The voltage by inductance.</summary>
    public static readonly Formula VoltageFormula = new(
        "surge-voltage",
        "Voltage along a conductor in a surge, order of magnitude",
        "U = L s",
        new("U", "kV", "voltage between its ends"), [new("L", "uH", "inductance"), new("s", "kA/us", "steepness")],
        "project-notes", "law of induction", Provenance.Derived)
    {
        Method = v => VoltageV(v[0] * 1e-6, v[1] * 1e9) / 1000,
    };

    /// <summary>The voltage by resistance.</summary>
    public static readonly Formula ResistiveFormula = new(
        "surge-resistive-drop",
        "Voltage along a conductor by its resistance",
        "U = I r l",
        new("U", "V", "voltage"), [new("I", "kA", "peak"), new("r", "ohm/km", "resistance per length"), new("l", "m", "length")],
        "project-notes", "law of resistance", Provenance.Derived)
    {
        Method = v => ResistiveV(v[0] * 1000, v[1] / 1000, v[2]),
    };

    /// <summary>The action integral of the test wave.</summary>
    public static readonly Formula ActionFormula = new(
        "surge-action-820",
        "Specific energy of the 8/20 wave",
        "W/R = I^2 K^2 720 (tau / 2)^7; K = 0.01243, tau = 3.911 us",
        new("W/R", "J/ohm", "specific energy"), [new("I", "kA", "peak")],
        "project-notes", "integral of the squared wave; the wave is recalled", Provenance.Memory);

    /// <summary>The largest steepness of the test wave.</summary>
    public static readonly Formula SteepestFormula = new(
        "surge-steepest-820",
        "Largest steepness of the 8/20 wave",
        "s = I K max(3 t^2 - t^3 / tau) exp(-t / tau), at t = (3 - sqrt(3)) tau",
        new("s", "kA/us", "largest steepness"), [new("I", "kA", "peak")],
        "project-notes", "derivative of the wave; the wave is recalled", Provenance.Memory);

    /// <summary>The mean steepness.</summary>
    /// <param name="peakA">Peak [A], not negative; outside throws.</param>
    /// <param name="frontS">Front time [s], above 0 to 1; outside throws.</param>
    /// <returns>Steepness [A/s].</returns>
    public static double SteepnessAPerS(double peakA, double frontS) =>
        0.8 * Limit.AtLeast(peakA, 0, "peak in A") / (0.8 * Limit.Between(frontS, 0, 1, "front time in s"));

    /// <summary>The voltage along an inductance.</summary>
    /// <param name="inductanceH">Inductance [H], not negative; outside throws.</param>
    /// <param name="steepnessAPerS">Steepness [A/s], not negative; outside throws.</param>
    /// <returns>Voltage [V].</returns>
    public static double VoltageV(double inductanceH, double steepnessAPerS) =>
        Limit.AtLeast(inductanceH, 0, "inductance in H") * Limit.AtLeast(steepnessAPerS, 0, "steepness in A/s");

    /// <summary>The voltage along a resistance.</summary>
    /// <param name="peakA">Peak [A], not negative; outside throws.</param>
    /// <param name="ohmPerM">Resistance [ohm/m], not negative; outside throws.</param>
    /// <param name="lengthM">Length [m], not negative; outside throws.</param>
    /// <returns>Voltage [V].</returns>
    public static double ResistiveV(double peakA, double ohmPerM, double lengthM) =>
        Limit.AtLeast(peakA, 0, "peak in A") * Limit.AtLeast(ohmPerM, 0, "resistance in ohm/m") * Limit.AtLeast(lengthM, 0, "length in m");

    /// <summary>The specific energy of the 8/20 wave.</summary>
    /// <param name="peakA">Peak [A], not negative; outside throws.</param>
    /// <returns>Specific energy [J/ohm].</returns>
    public static double ActionJPerOhm(double peakA) =>
        Limit.AtLeast(peakA, 0, "peak in A") * peakA * WaveK * WaveK * 720 * Math.Pow(WaveTauUs / 2, 7) * 1e-6;

    /// <summary>The largest steepness of the 8/20 wave.</summary>
    /// <param name="peakA">Peak [A], not negative; outside throws.</param>
    /// <returns>Steepness [A/s].</returns>
    public static double SteepestAPerS(double peakA)
    {
        var t = (3 - Math.Sqrt(3)) * WaveTauUs;
        return Limit.AtLeast(peakA, 0, "peak in A") * WaveK * (3 * t * t - t * t * t / WaveTauUs) * Math.Exp(-t / WaveTauUs) * 1e6;
    }
}
