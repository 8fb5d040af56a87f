using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting;

/// <summary>A row of the table of force coefficients.</summary>
/// <param name="Shape">Word of the shape, one of <see cref="ForceCoefficient.Shapes"/>.</param>
/// <param name="Surface"><c>smooth</c>, <c>rough</c> or <c>very-rough</c> for round parts in fast wind, else empty.</param>
/// <param name="SolidityTo">Lattices: upper end of the share of solid area.</param>
/// <param name="Aspect">Height to diameter, or long to short side; null where it does not matter.</param>
/// <param name="Cf">Force coefficient.</param>
/// <param name="Origin">Document, empty when recalled.</param>
/// <param name="Provenance">How it is known.</param>
public sealed record ForceCoefficientRow(
    string Shape, string Surface, double? SolidityTo, double? Aspect, double Cf, string Origin, Provenance Provenance);

/// <summary>How strongly the wind pushes a shape. A maker's wind area or force governs where there is one.</summary>
public static class ForceCoefficient
{
    /// <summary>Up to this product of diameter [m] and root of pressure [Pa] the wind flows slowly around a round part; every domestic
    /// mast and element.</summary>
    public const double SlowLimit = 5.3;

    /// <summary>The coefficient of a table row.</summary>
    public static readonly Formula TableFormula = new(
        "wind-force-coefficient",
        "Force coefficient of a shape",
        "Cf = value of the table, linear between its aspects",
        new("Cf", "", "force coefficient"), [new("h/D", "", "height to diameter, or long to short side")],
        "asce-7-10", "force coefficients of chimneys, tanks, open signs and lattices");

    /// <summary>How the wind flows around a round part.</summary>
    public static readonly Formula RegimeFormula = new(
        "wind-round-regime",
        "Flow around a round part",
        "s = D sqrt(q), slow up to 5.3",
        new("s", "m sqrt(Pa)", "measure of the flow"), [new("D", "m", "diameter"), new("q", "Pa", "velocity pressure")],
        "asce-7-10", "limit between the two groups of round shapes");

    private static readonly Lazy<IReadOnlyList<ForceCoefficientRow>> Loaded = new(Load);

    /// <summary>All rows of the table.</summary>
    public static IReadOnlyList<ForceCoefficientRow> All => Loaded.Value;

    /// <summary>All words for shapes.</summary>
    public static IReadOnlyList<string> Shapes => [.. All.Select(r => r.Shape).Distinct()];

    /// <summary>The coefficient of a shape that depends on its aspect.</summary>
    /// <param name="shape"><c>round</c>, <c>round-fast</c>, <c>square-face</c>, <c>square-diagonal</c>, <c>flat</c>, <c>round-attached</c>
    /// or <c>dish</c>; else throws.</param>
    /// <param name="aspect">Height to diameter, or long to short side, above 0; outside throws. Beyond the table its ends hold.</param>
    /// <param name="surface"><c>smooth</c>, <c>rough</c> or <c>very-rough</c> with <c>round-fast</c>, else empty.</param>
    /// <returns>Coefficient.</returns>
    public static double OfShape(string shape, double aspect, string surface = "")
    {
        Limit.Between(aspect, 0, double.PositiveInfinity, "aspect (height to diameter)");
        var rows = All.Where(r => r.Shape == shape && r.Surface == surface && r.SolidityTo is null).OrderBy(r => r.Aspect).ToArray();
        if (rows.Length == 0) throw new ArgumentOutOfRangeException(nameof(shape), $"{shape} {surface}".Trim(),
            "The table of force coefficients has no such shape.");
        var above = Array.FindIndex(rows, r => r.Aspect >= aspect);
        if (above <= 0) return rows[above == 0 || rows.Length == 1 ? 0 : ^1].Cf;
        var (low, high) = (rows[above - 1], rows[above]);
        return low.Cf + (high.Cf - low.Cf) * (aspect - low.Aspect!.Value) / (high.Aspect!.Value - low.Aspect.Value);
    }

    /// <summary>The coefficient of a lattice or screen; the area is that of its solid parts only.</summary>
    /// <param name="shape"><c>lattice-flat</c>, <c>lattice-round</c> or <c>lattice-round-fast</c>; else throws.</param>
    /// <param name="solidity">Share of solid area, 0 to 0.7; outside throws.</param>
    /// <returns>Coefficient.</returns>
    public static double OfLattice(string shape, double solidity)
    {
        var rows = All.Where(r => r.Shape == shape && r.SolidityTo is not null).OrderBy(r => r.SolidityTo).ToArray();
        if (rows.Length == 0) throw new ArgumentOutOfRangeException(nameof(shape), shape,
            "The table of force coefficients has no such lattice.");
        Limit.Within(solidity, 0, rows[^1].SolidityTo!.Value, "solidity");
        return (rows.FirstOrDefault(r => solidity < r.SolidityTo) ?? rows[^1]).Cf;
    }

    /// <summary>The coefficient of a tube or rod by its length and the wind.</summary>
    /// <param name="diameterM">Diameter [m], above 0 to 10; outside throws.</param>
    /// <param name="lengthM">Length [m], above 0; outside throws.</param>
    /// <param name="pressurePa">Velocity pressure [Pa], not negative; outside throws.</param>
    /// <returns>Coefficient; in fast wind that of a very rough surface, which is the largest.</returns>
    public static double OfTube(double diameterM, double lengthM, double pressurePa)
    {
        var aspect = Limit.Between(lengthM, 0, 1000, "length in m") / Limit.Between(diameterM, 0, 10, "diameter in m");
        return Regime(diameterM, pressurePa) <= SlowLimit ? OfShape("round", aspect) : OfShape("round-fast", aspect, "very-rough");
    }

    /// <summary>The measure of the flow around a round part.</summary>
    /// <param name="diameterM">Diameter [m], above 0 to 10; outside throws.</param>
    /// <param name="pressurePa">Velocity pressure [Pa], not negative; outside throws.</param>
    /// <returns>Diameter times root of pressure [m sqrt(Pa)].</returns>
    public static double Regime(double diameterM, double pressurePa) =>
        Limit.Between(diameterM, 0, 10, "diameter in m") * Math.Sqrt(Limit.AtLeast(pressurePa, 0, "velocity pressure in Pa"));

    private static ForceCoefficientRow[] Load() =>
    [
        .. EmbeddedTable.Rows("Mounting/wind-force-coefficients.csv").Select(r => new ForceCoefficientRow(
            r["shape"], r["surface"], Maybe(r["solidity_to"]), Maybe(r["aspect"]), CsvNumber.Of(r["cf"]), r["origin"],
                CsvProvenance.Of(r["provenance"]))),
    ];

    private static double? Maybe(string cell) => cell.Length == 0 ? null : CsvNumber.Of(cell);
}
