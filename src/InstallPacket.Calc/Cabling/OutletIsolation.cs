using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Cabling;

/// <summary>How far one outlet is kept from another over the tree of cables.</summary>
public static class OutletIsolation
{
    /// <summary>Isolation from outlet to outlet.</summary>
    public static readonly Formula PathFormula = new(
        "outlet-isolation",
        "Isolation between two outlets",
        "I = S + A + B - R",
        new("I", "dB", "isolation"),
        [new("S", "dB", "isolation between the outputs of the part where their ways part"), new("A", "dB", "loss from there to one outlet"),
            new("B", "dB", "loss from there to the other outlet"),
            new("R", "dB", "what cable of unknown kind may lose less")],
        "project-notes", "sum along the way", Provenance.Derived)
    {
        Method = v => Db(v[0], v[1], v[2], v[3]),
    };

    /// <summary>Isolation from outlet to outlet.</summary>
    /// <param name="commonDb">Isolation between the two outputs of the part where the ways part [dB].</param>
    /// <param name="oneDb">Loss from there to one outlet [dB]; a gain is negative.</param>
    /// <param name="otherDb">Loss from there to the other outlet [dB]; a gain is negative.</param>
    /// <param name="rangeDb">What cable of unknown kind on the way may lose less [dB].</param>
    /// <returns>Isolation [dB].</returns>
    public static double Db(double commonDb, double oneDb, double otherDb, double rangeDb = 0) => commonDb + oneDb + otherDb - rangeDb;
}
