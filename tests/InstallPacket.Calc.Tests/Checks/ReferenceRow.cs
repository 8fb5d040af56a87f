using System.Globalization;

namespace InstallPacket.Calc.Tests.Checks;

/// <summary>One line of a reference file.</summary>
public sealed class ReferenceRow(int number, IReadOnlyDictionary<string, string> cells)
{
    /// <summary>Count of the row in its file, from 1.</summary>
    public int Number { get; } = number;

    public string Text(string column) => cells[column];

    public double Value(string column) => double.Parse(cells[column], NumberStyles.Float, CultureInfo.InvariantCulture);

    /// <summary>Compares with a printed number; the tolerance is half a unit of its last printed digit.</summary>
    public Comparison Printed(string column, double computed, string unit) =>
        new(Label(column), Value(column), computed, HalfUnit(cells[column]), unit);

    /// <summary>Compares with a number under a tolerance of its own, which the set explains.</summary>
    public Comparison Within(string column, double computed, double tolerance, string unit) =>
        new(Label(column), Value(column), computed, tolerance, unit);

    /// <summary>Compares with a value that stands in no column.</summary>
    public Comparison Expect(string what, double expected, double computed, double tolerance, string unit) =>
        new(Label(what), expected, computed, tolerance, unit);

    // The sliver above one half lets a tie of decimal rounding pass whichever way the source broke it.
    internal static double HalfUnit(string text)
    {
        var mantissa = text.Split('e', 'E')[0];
        var exponent = text.Length > mantissa.Length ? int.Parse(text[(mantissa.Length + 1)..], CultureInfo.InvariantCulture) : 0;
        var point = mantissa.IndexOf('.', StringComparison.Ordinal);
        var decimals = point < 0 ? 0 : mantissa.Length - point - 1;
        return 0.5000001 * Math.Pow(10, exponent - decimals);
    }

    private string Label(string what) => $"row {Number}, {what}";
}

/// <summary>A computed value beside the value it must meet.</summary>
public sealed record Comparison(string Label, double Expected, double Computed, double Tolerance, string Unit)
{
    public double Deviation => Expected.Equals(Computed) ? 0 : Math.Abs(Computed - Expected);

    /// <summary>False for a NaN as well.</summary>
    public bool Holds => Deviation <= Tolerance;

    public double Share => Deviation / Tolerance;
}
