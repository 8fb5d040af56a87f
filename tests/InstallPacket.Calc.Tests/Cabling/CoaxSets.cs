using System.Globalization;
using InstallPacket.Calc.Cabling;
using InstallPacket.Calc.Sources;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Cabling;

public static class CoaxSets
{
    public static IReadOnlyList<ReferenceSet> All { get; } =
    [
        new()
        {
            Name = "Coax between table points", File = "cabling/coax_interpolation_checks.csv", Source = "s47-coax-design", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit", Formulas = ["coax-attenuation", "coax-loss"], Rows = 9, Comparisons = 18, Check = Interpolation,
        },
        new()
        {
            Name = "Coax table against values that were read", File = "cabling/coax_attenuation_read_points.csv", Source = "s47-coax-design", Worth = Worth.Published,
            Tolerance = "15 % of the table: typical values of other cables of the class against the recalled maximum table; a wrong column or unit would show",
            Formulas = ["coax-attenuation"], Rows = 23, Comparisons = 22, RowsLeftOut = 1, LeftOutBecause = "a miniature cable printed under a wrong name (26.6 dB per 100 ft), rejected in the reference file", Check = ReadPoint,
        },
        new()
        {
            Name = "Coax table, differences to values that were read", File = "cabling/coax_attenuation_read_points.csv", Source = "s47-coax-design", Worth = Worth.Derived,
            Tolerance = "0.08 % of the table: printed to 0.1 % from losses rounded to 0.001 dB",
            Formulas = ["coax-attenuation"], Rows = 23, Comparisons = 22, RowsLeftOut = 1, LeftOutBecause = "the same rejected row", Check = ReadDifference,
        },
        new()
        {
            Name = "Coax by temperature", File = "cabling/coax_temperature_checks.csv", Source = "s01-coax-temperature", Worth = Worth.Derived,
            Tolerance = "0.00003 on the factor, because the reference prints Celsius to 0.01; half a unit and the same on the loss", Formulas = ["coax-temperature", "coax-loss"],
            Rows = 5, Comparisons = 10, Check = Temperature,
        },
    ];

    /// <summary>The recalled maximum table of a series, in dB per 100 ft turned into 100 m (the printed dB per 100 m is rounded).</summary>
    public static IReadOnlyList<AttenuationPoint> Table(string series) =>
    [
        .. CsvText.Rows(ReferenceFile.Text("cabling/coax_attenuation_max.csv")).Where(r => r["series"] == series)
            .Select(r => new AttenuationPoint(Number(r["f_MHz"]), Number(r["dB_per_100ft"]) / 0.3048)),
    ];

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static IEnumerable<Comparison> Interpolation(ReferenceRow r)
    {
        var alpha = CoaxAttenuation.DbPer100M(Table(r.Text("series")), r.Value("f_MHz"));
        yield return r.Printed("dB_per_100m", alpha, "dB/100 m");
        yield return r.Printed("loss_dB", CoaxLoss.Db(alpha, r.Value("length_m"), 1), "dB");
    }

    private static Comparison[] ReadPoint(ReferenceRow r) =>
        Rejected(r) ? [] : [r.Expect("dB_per_100ft", 0, Percent(r), 15, "% of the table")];

    private static Comparison[] ReadDifference(ReferenceRow r) =>
        Rejected(r) ? [] : [r.Within("difference_percent", Percent(r), 0.08, "% of the table")];

    private static bool Rejected(ReferenceRow r) => r.Text("note").StartsWith("REJECT", StringComparison.Ordinal);

    private static double Percent(ReferenceRow r)
    {
        var series = r.Text("series").Split(' ')[0];
        return 100 * (r.Value("dB_per_100ft") / 0.3048 / CoaxAttenuation.DbPer100M(Table(series), r.Value("f_MHz")) - 1);
    }

    private static IEnumerable<Comparison> Temperature(ReferenceRow r)
    {
        var factor = CoaxTemperature.Factor(r.Value("temp_C"));
        yield return r.Within("factor_S01_0.0011_per_F", factor, 0.00003, "");
        yield return r.Within("loss_dB", CoaxLoss.Db(r.Value("loss_at_20C_dB"), 100, factor), 0.00038, "dB");
    }
}
