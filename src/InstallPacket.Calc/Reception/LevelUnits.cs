using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>The units of level at 75 ohm. At 50 ohm other numbers hold: never mix.</summary>
public static class LevelUnits
{
    /// <summary>Levels in microvolts.</summary>
    public static readonly Formula DbuVFormula = new(
        "level-dbuv",
        "Level in dBuV at 75 ohm",
        "U = P + 108.75",
        new("U", "dBuV", "level at 75 ohm"), [new("P", "dBm", "power")],
        "project-notes", "10 log10(1 mW x 75 ohm / (1 uV)^2)", Provenance.Derived);

    /// <summary>dBuV at 75 ohm from dBm.</summary>
    /// <param name="dbm">Power [dBm].</param>
    /// <returns>Level [dBuV at 75 ohm].</returns>
    public static double DbuVFromDbm(double dbm) => Level.FromDbm(dbm).DbuV;

    /// <summary>dBm from dBuV at 75 ohm.</summary>
    /// <param name="dbuV">Level [dBuV at 75 ohm].</param>
    /// <returns>Power [dBm].</returns>
    public static double DbmFromDbuV(double dbuV) => Level.FromDbuV(dbuV).Dbm;

    /// <summary>dBmV at 75 ohm from dBm.</summary>
    /// <param name="dbm">Power [dBm].</param>
    /// <returns>Level [dBmV at 75 ohm].</returns>
    public static double DbmVFromDbm(double dbm) => Level.FromDbm(dbm).DbmV;

    /// <summary>dBm from dBmV at 75 ohm.</summary>
    /// <param name="dbmV">Level [dBmV at 75 ohm].</param>
    /// <returns>Power [dBm].</returns>
    public static double DbmFromDbmV(double dbmV) => Level.FromDbmV(dbmV).Dbm;

    /// <summary>Microvolts at 75 ohm from dBm.</summary>
    /// <param name="dbm">Power [dBm].</param>
    /// <returns>Effective voltage [uV].</returns>
    public static double MicrovoltsFromDbm(double dbm) => Math.Pow(10, DbuVFromDbm(dbm) / 20);
}
