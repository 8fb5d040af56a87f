using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception.Itm;

/// <summary>From the loss of a path to the field at its end.</summary>
public static class FieldFromLoss
{
    /// <summary>The field.</summary>
    public static readonly Formula FieldFormula = new(
        "field-from-loss",
        "Field strength from basic transmission loss",
        "E = 106.92 + 10 log10(P) - 20 log10(d) - (Lb - Afs)",
        new("E", "dB(uV/m)", "field strength"),
        [new("P", "kW", "effective radiated power on a dipole, toward the receiver"), new("d", "km", "distance"),
            new("Lb", "dB", "basic transmission loss"), new("Afs", "dB", "free-space loss")],
        "project-notes", "free-space field less the loss over free space", Provenance.Derived)
    {
        Method = v => DbuVm(v[0], v[1], v[2], v[3]),
    };

    /// <summary>The field at the end of a path.</summary>
    /// <remarks>
    /// Only the excess over free space is taken from the loss, so that the rounding of the two free-space constants does not enter twice.
    /// </remarks>
    /// <param name="erpKw">Effective radiated power on a dipole toward the receiver [kW], above 0; outside throws.</param>
    /// <param name="distanceKm">Distance [km], above 0; outside throws.</param>
    /// <param name="basicLossDb">Basic transmission loss [dB].</param>
    /// <param name="freeSpaceLossDb">Free-space loss of the same path by the same model [dB].</param>
    /// <returns>Field strength [dB(uV/m)].</returns>
    public static double DbuVm(double erpKw, double distanceKm, double basicLossDb, double freeSpaceLossDb) =>
        FreeSpaceField.DbuVm(erpKw, distanceKm) - (basicLossDb - freeSpaceLossDb);
}
