using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans.Bonding;

/// <summary>The sums by which the bonding planners join published equations.</summary>
public static class BondingFormulas
{
    private const string Own = "project-notes";

    /// <summary>How much of a conductor the rule asks for.</summary>
    public static readonly Formula BondSize = new(
        "bond-size-share", "Cross-section asked for over cross-section planned", "u = Amin / A", new("u", "", "share; above 1 is a stop"),
        [new("Amin", "mm2", "least cross-section of the code family"), new("A", "mm2", "cross-section of the part")], Own, "quotient",
            Provenance.Derived)
    {
        Method = v => v[0] / v[1],
    };

    /// <summary>The same for lengths.</summary>
    public static readonly Formula BondLength = new(
        "bond-length-share", "Length asked for over length planned", "u = lmin / l", new("u", "", "share; above 1 is a stop"),
        [new("lmin", "m", "least length of the code family"), new("l", "m", "planned")], Own, "quotient", Provenance.Derived)
    {
        Method = v => v[0] / v[1],
    };

    /// <summary>A conductor with coiled slack.</summary>
    public static readonly Formula BondCoiled = new(
        "bond-with-coil", "Inductance of a conductor with coiled slack", "L = Ls + Lc", new("L", "uH", "inductance"),
        [new("Ls", "uH", "straight"), new("Lc", "uH", "coil, upper estimate")], Own, "sum", Provenance.Derived)
    {
        Method = v => v[0] + v[1],
    };

    /// <summary>Years between flashes.</summary>
    public static readonly Formula StrikeInterval = new(
        "strike-interval", "Years between flashes to be expected", "T = 1 / N", new("T", "year", "mean interval"),
            [new("N", "1/year", "flashes in a year")],
        Own, "reciprocal; a mean, not a promise", Provenance.Derived)
    {
        Method = v => 1 / v[0],
    };

    /// <summary>Radius of a round bar.</summary>
    public static readonly Formula Radius = new(
        "bar-radius", "Radius of a round bar or wire", "a = d / 2", new("a", "m", "radius"), [new("d", "m", "diameter")], Own, "half",
            Provenance.Derived) { Method = v => v[0] / 2 };

    /// <summary>Half and twice a length.</summary>
    public static readonly Formula ComparedLength = new(
        "compared-length", "Length of the conductor beside half and twice of it", "l = k l0", new("l", "m", "length"),
        [new("k", "", "half, once, twice"), new("l0", "m", "planned length")], Own, "comparison", Provenance.Derived) { Method = v =>
            v[0] * v[1] };

    /// <summary>Resistance of a conductor from end to end.</summary>
    public static readonly Formula EndToEnd = new(
        "bond-resistance", "Resistance of a bonding conductor from end to end at 20 C", "R = r l / 1000", new("R", "ohm", "resistance"),
        [new("r", "ohm/km", "resistance per length"), new("l", "m", "length")], Own, "product", Provenance.Derived) { Method = v =>
            v[0] * v[1] / 1000 };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Formula> All => [Radius, ComparedLength, BondSize, BondLength, BondCoiled, EndToEnd, StrikeInterval];
}
