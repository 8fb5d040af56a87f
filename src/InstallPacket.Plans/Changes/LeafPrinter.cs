using InstallPacket.Calc.Quantities;

namespace InstallPacket.Plans.Changes;

/// <summary>Prints a difference of two leaves: the subject by its path, numbers with the unit that their name carries.</summary>
internal static class LeafPrinter
{
    private const string None = "absent";
    private const int MostDecimals = 9;

    // Ending of a name, unit as printed, decimals that a person uses.
    private static readonly (string Ending, string Unit, int Decimals)[] Units =
    [
        ("_deg_per_year", "deg/year", 2), ("_deg", "deg", 1), ("_n_per_m", "N/m", 1), ("_kg_per_m", "kg/m", 2), ("_dbuv_m", "dBµV/m", 1),
            ("_dbm", "dBm", 1), ("_dbd", "dBd", 1),
        ("_db", "dB", 1), ("_mhz", "MHz", 3), ("_km", "km", 2), ("_mm3", "mm³", 0), ("_mm2", "mm²", 2), ("_m2", "m²", 2),
            ("_nm2", "N m²", 0), ("_nm", "N m", 0), ("_m", "m", 2),
        ("_pct", "%", 0), ("_arc_s", "arc-seconds", 1), ("_kv", "kV", 1), ("_v", "V", 1), ("_ma", "mA", 0), ("_ka", "kA", 1),
            ("_uh", "µH", 2), ("_ohm", "ohm", 1), ("_kw", "kW", 3),
        ("_pa", "Pa", 0), ("_kg_m3", "kg/m³", 0), ("_kg", "kg", 1), ("_hz", "Hz", 2), ("_ms", "m/s", 1), ("_nt", "nT", 0), ("_c", "°C", 0),
            ("_k", "K", 0), ("_h", "h", 1), ("_n", "N", 0),
        ("_ft", "ft", 0), ("_amount", "", 2),
    ];

    /// <summary>The difference, or null when the leaves are alike.</summary>
    /// <param name="before">The leaf before; null when it was not there.</param>
    /// <param name="after">The leaf now; null when it is gone.</param>
    public static PlanDifference? Difference(PlanLeaf? before, PlanLeaf? after)
    {
        var leaf = (after ?? before)!;
        var (name, unit, decimals) = Leaf(leaf.Key);
        var quantity = $"{(leaf.Subject.Length == 0 ? "plan" : leaf.Subject.Replace('_', ' '))}: {name}";
        if (before is { Number: { } x } && after is { Number: { } y })
        {
            if (x.Equals(y)) return null;
            // As many decimals as it takes to see it.
            while (decimals < MostDecimals && UnitText.Number(x, decimals) == UnitText.Number(y, decimals)) decimals++;
            return new(quantity, UnitText.Write(x, decimals, unit), UnitText.Write(y, decimals, unit), Signed(y - x, decimals, unit));
        }
        var (b, a) = (Print(before, unit, decimals), Print(after, unit, decimals));
        return b == a ? null : new(quantity, b, a, "");
    }

    private static string Print(PlanLeaf? leaf, string unit, int decimals) =>
        leaf is null || (leaf.Number is null && leaf.Text.Length == 0) ? None : leaf.Number is { } n ? UnitText.Write(n, decimals, unit)
            : leaf.Text;

    private static (string Name, string Unit, int Decimals) Leaf(string key)
    {
        foreach (var (ending, unit, decimals) in Units)
            if (key.EndsWith(ending, StringComparison.Ordinal)) return (key[..^ending.Length].Replace('_', ' '), unit, decimals);
        return (key.Replace('_', ' '), "", 3);
    }

    private static string Signed(double difference, int decimals, string unit)
    {
        var text = UnitText.Write(difference, decimals, unit);
        return text[0] == '\u2212' ? text : "+" + text;
    }
}
