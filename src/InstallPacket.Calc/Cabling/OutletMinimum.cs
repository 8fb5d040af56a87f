using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Cabling;

/// <summary>The least level at an outlet for a mode that a document does not list.</summary>
public static class OutletMinimum
{
    /// <summary>The level of a listed mode, moved by what the other mode needs more.</summary>
    public static readonly Formula ByModeFormula = new(
        "outlet-minimum-by-mode",
        "Least level at an outlet, from the row of another mode",
        "U = Ur + C/N - C/Nr",
        new("U", "dBuV", "least level"),
        [new("Ur", "dBuV", "least level of the listed mode"), new("C/N", "dB", "required ratio of the mode"),
            new("C/Nr", "dB", "required ratio of the listed mode")],
        "project-notes", "the noise at the outlet is the same for both", Provenance.Derived)
    {
        Method = v => DbuV(v[0], v[1], v[2]),
    };

    /// <summary>The level of a listed mode, moved by what the other mode needs more.</summary>
    /// <param name="listedDbuV">Least level of the listed mode [dBuV].</param>
    /// <param name="requiredDb">Required C/N of the mode [dB].</param>
    /// <param name="listedRequiredDb">Required C/N of the listed mode [dB].</param>
    /// <returns>Least level [dBuV].</returns>
    public static double DbuV(double listedDbuV, double requiredDb, double listedRequiredDb) => listedDbuV + requiredDb - listedRequiredDb;

    /// <summary>How much more C/N a mode needs than a listed one of the same system [dB]; null when either is not known.</summary>
    /// <param name="system">System, for example <c>DVB-T2</c>.</param>
    /// <param name="mode">The mode, for example <c>256QAM 2/3</c>.</param>
    /// <param name="listed">The listed mode.</param>
    public static (double RequiredDb, double ListedDb)? Ratios(string system, string mode, string listed) =>
        Of(system, mode) is { } required && Of(system, listed) is { } before ? (required, before) : null;

    private static double? Of(string system, string mode)
    {
        ArgumentNullException.ThrowIfNull(mode);
        return mode.Split(' ') is [var modulation, var rate, ..] ? RequiredCn.Find(system, modulation, rate)?.RequiredDb : null;
    }
}
