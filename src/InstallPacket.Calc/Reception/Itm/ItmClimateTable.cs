using System.Globalization;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception.Itm;

/// <summary>One curve of variability against distance; lengths in metres.</summary>
internal sealed record ItmCurve(double C1, double C2, double X1, double X2, double X3)
{
    public double At(double distanceM)
    {
        double u = distanceM / X1, v = (distanceM - X2) / X3;
        return (C1 + C2 / (1 + v * v)) * (u * u) / (1 + u * u);
    }
}

/// <summary>One curve of variability against frequency.</summary>
internal sealed record ItmFrequencyFactor(double F1, double F2, double F3)
{
    /// <summary>The factor, from ln(0.133 k).</summary>
    public double At(double logWave) => F1 + F2 / (F3 * logWave * (F3 * logWave) + 1);
}

/// <summary>Coefficients of one climate.</summary>
internal sealed record ItmClimateRow(
    ItmCurve Median, ItmCurve Below, ItmCurve Above, ItmFrequencyFactor FactorBelow, ItmFrequencyFactor FactorAbove)
{
    /// <summary>C_D.</summary>
    public required double DuctFactor { get; init; }

    /// <summary>z_D.</summary>
    public required double DuctDeviate { get; init; }
}

/// <summary>The published table of climates.</summary>
internal static class ItmClimateTable
{
    private static readonly ItmClimateRow[] Climates = Load();

    public static ItmClimateRow Of(ItmClimate climate) => Climates[(int)climate - 1];

    private static ItmClimateRow[] Load()
    {
        var cells = EmbeddedTable.Rows("Reception/Itm/itm-climates.csv").ToDictionary(r => (r["row"], r["coefficient"]));
        return [.. Enum.GetValues<ItmClimate>().Select(Row)];

        ItmClimateRow Row(ItmClimate climate)
        {
            double Cell(string row, string coefficient) =>
                CsvNumber.Of(cells[(row, coefficient)][((int)climate).ToString(CultureInfo.InvariantCulture)]);
            ItmCurve Curve(string row) =>
                new(Cell(row, "c1"), Cell(row, "c2"), 1000 * Cell(row, "x1"), 1000 * Cell(row, "x2"), 1000 * Cell(row, "x3"));
            ItmFrequencyFactor Factor(string row) => new(Cell(row, "f1"), Cell(row, "f2"), Cell(row, "f3"));
            return new ItmClimateRow(Curve("V"), Curve("S-"), Curve("S+"), Factor("G-"), Factor("G+"))
            {
                DuctFactor = Cell("S+", "C_D"),
                DuctDeviate = Cell("S+", "z_D"),
            };
        }
    }
}
