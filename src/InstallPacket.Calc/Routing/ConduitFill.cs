using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Routing;

/// <summary>How much of a conduit its cables take.</summary>
public static class ConduitFill
{
    /// <summary>The share of the conduit's inside.</summary>
    public static readonly Formula<IReadOnlyList<double>> ShareFormula = new Formula(
        "conduit-fill",
        "Share of a conduit that its cables fill",
        "p = 100 sum(d^2) / D^2",
        new("p", "%", "share of the inside"),
            [new("n", "", "cables"), new("sum(d^2)", "m2", "sum of the squares of the outside diameters"),
            new("D", "m", "inside diameter")],
        "project-notes", "areas of circles", Provenance.Derived)
        .By<IReadOnlyList<double>>((cables, v) => SharePct(v[2], cables));

    /// <summary>The share of the conduit's inside that cables fill.</summary>
    /// <param name="insideM">Inside diameter [m], above 0; outside throws.</param>
    /// <param name="cableM">Outside diameters of the cables [m], none negative; outside throws.</param>
    /// <returns>Share [%]; above 100 when they cannot fit.</returns>
    public static double SharePct(double insideM, IReadOnlyList<double> cableM)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(insideM);
        double sum = 0;
        foreach (var d in cableM)
        {
            ArgumentOutOfRangeException.ThrowIfNegative(d);
            sum += d * d;
        }
        return 100 * sum / (insideM * insideM);
    }
}
