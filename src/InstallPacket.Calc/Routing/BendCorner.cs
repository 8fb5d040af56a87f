using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Routing;

/// <summary>A quarter bend instead of a square corner.</summary>
public static class BendCorner
{
    /// <summary>The saving of a bend.</summary>
    public static readonly Formula SavingFormula = new(
        "bend-corner",
        "Cable saved by a bend against a square corner",
        "s = (2 - pi / 2) R",
        new("s", "m", "saving"), [new("R", "m", "bend radius")],
        "project-notes", "two legs against a quarter circle", Provenance.Derived)
    {
        Method = v => SavingM(v[0]),
    };

    /// <summary>The cable saved by a quarter bend against a square corner.</summary>
    /// <param name="bendRadiusM">Bend radius [m], not negative; outside throws.</param>
    /// <returns>Saving [m].</returns>
    public static double SavingM(double bendRadiusM)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(bendRadiusM);
        return (2 - Math.PI / 2) * bendRadiusM;
    }
}
