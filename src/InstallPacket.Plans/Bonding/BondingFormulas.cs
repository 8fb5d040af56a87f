using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans.Bonding;

/// <summary>The sums by which the bonding planners join published equations.</summary>
public static class BondingFormulas
{
    private const string Own = "project-notes";

    /// <summary>How much of a conductor the rule asks for.</summary>
    public static readonly Formula BondSize = new(
        "bond-size-share", "Cross-section asked for over cross-section planned", "u = Amin / A", new("u", "", "share; above 1 is a stop"),
        [new("Amin", "mm2", "least cross-section of the code family"), new("A", "mm2", "cross-section of the part")], Own, "quotient", Provenance.Derived);

    /// <summary>The same for lengths.</summary>
    public static readonly Formula BondLength = new(
        "bond-length-share", "Length asked for over length planned", "u = lmin / l", new("u", "", "share; above 1 is a stop"),
        [new("lmin", "m", "least length of the code family"), new("l", "m", "planned")], Own, "quotient", Provenance.Derived);

    /// <summary>A conductor with coiled slack.</summary>
    public static readonly Formula BondCoiled = new(
        "bond-with-coil", "Inductance of a conductor with coiled slack", "L = Ls + Lc", new("L", "uH", "inductance"),
        [new("Ls", "uH", "straight"), new("Lc", "uH", "coil, upper estimate")], Own, "sum", Provenance.Derived);

    /// <summary>Years between flashes.</summary>
    public static readonly Formula StrikeInterval = new(
        "strike-interval", "Years between flashes to be expected", "T = 1 / N", new("T", "year", "mean interval"), [new("N", "1/year", "flashes in a year")],
        Own, "reciprocal; a mean, not a promise", Provenance.Derived);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Formula> All => [BondSize, BondLength, BondCoiled, StrikeInterval];
}
