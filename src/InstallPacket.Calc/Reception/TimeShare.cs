using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>
/// The field for a promised share of the time, and for the rest of it. The promise is kept where the weaker one suffices; what disturbs or
/// overloads is taken at the stronger one, as time with too much level is time without service.
/// </summary>
public static class TimeShare
{
    private static readonly double NineTenths = Probability.Quantile(0.9);

    /// <summary>The field that is there for the promised share.</summary>
    public static readonly Formula ServedFormula = new(
        "field-served", "Field strength for the demanded share of the time", "ET = E50 - z(T) / z(90 %) (E50 - E90)",
        new("ET", "dBuV/m", "field strength for the share T of the time"),
        [new("E50", "dBuV/m", "median"), new("E90", "dBuV/m", "for 90 % of the time"), new("T", "%", "share of the time")],
        "project-notes", "normal distribution over time", Provenance.Derived)
    {
        Method = v => ServedDbuVm(v[0], v[1], v[2]),
    };

    /// <summary>The field that is exceeded for the rest of the time.</summary>
    public static readonly Formula StrongFormula = new(
        "field-strong", "Field strength exceeded for the rest of the time", "EH = E50 + z(T) / z(90 %) (E10 - E50)",
        new("EH", "dBuV/m", "field strength exceeded for the share 1 - T of the time"),
        [new("E50", "dBuV/m", "median"), new("E10", "dBuV/m", "for 10 % of the time"), new("T", "%", "share of the time")],
        "project-notes", "normal distribution over time; what disturbs or overloads is taken at it", Provenance.Derived)
    {
        Method = v => StrongDbuVm(v[0], v[1], v[2]),
    };

    /// <summary>The field for the promised share [dB(uV/m)].</summary>
    /// <param name="medianDbuVm">Field for half of the time [dB(uV/m)].</param>
    /// <param name="most90DbuVm">Field for 90 % of the time [dB(uV/m)].</param>
    /// <param name="sharePct">Promised share of the time [%], 50 to 99.9; outside throws.</param>
    public static double ServedDbuVm(double medianDbuVm, double most90DbuVm, double sharePct) =>
        medianDbuVm - Deviates(sharePct) * (medianDbuVm - most90DbuVm);

    /// <summary>The field exceeded for the rest of the time [dB(uV/m)].</summary>
    /// <param name="medianDbuVm">Field for half of the time [dB(uV/m)].</param>
    /// <param name="tenthDbuVm">Field for 10 % of the time [dB(uV/m)].</param>
    /// <param name="sharePct">Promised share of the time [%], 50 to 99.9; outside throws.</param>
    public static double StrongDbuVm(double medianDbuVm, double tenthDbuVm, double sharePct) =>
        medianDbuVm + Deviates(sharePct) * (tenthDbuVm - medianDbuVm);

    private static double Deviates(double sharePct) =>
        Probability.Quantile(Limit.Within(sharePct, 50, 99.9, "share of the time in %") / 100) / NineTenths;
}
