using System.Globalization;
using InstallPacket.Calc.Bonding;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Bonding;

/// <summary>Conductors, their inductance, and what a surge does to them.</summary>
public static class WireSets
{
    private const string Half = "half a unit of the last printed digit";
    private const string Gauges = "bonding/awg_conductors.csv";
    private const string Surges = "bonding/inductance_surge_check.csv";

    private static readonly double Ten = WireGauge.DiameterM(10);
    private static readonly string[] Recalled = ["I-16", "I-19", "I-19b", "I-19c"];

    public static IReadOnlyList<ReferenceSet> All { get; } =
    [
        new()
        {
            Name = "Wire by gauge, published", File = Gauges, Source = "wire-table", Worth = Worth.Published, Tolerance = Half,
            Formulas = ["wire-gauge-diameter", "wire-resistance"], Rows = 14, Comparisons = 14, RowsLeftOut = 7, LeftOutBecause = "no published value beside them",
            Check = r => r.Text("published_d_mil").Length == 0 ? [] :
            [
                r.Printed("published_d_mil", D(r) / 25.4e-6, "mil"), r.Printed("published_ohm_per_kft", WireResistance.OhmPerM(A(r)) * 304.8, "ohm/1000 ft"),
            ],
        },
        new()
        {
            Name = "Wire by gauge", File = Gauges, Source = "wire-table", Worth = Worth.Derived, Tolerance = Half,
            Formulas = ["wire-gauge-diameter", "wire-area", "wire-resistance"], Rows = 14, Comparisons = 14 * 7,
            Check = r =>
            [
                r.Printed("d_mm", D(r) * 1000, "mm"), r.Printed("d_mil", D(r) / 25.4e-6, "mil"), r.Printed("area_mm2", A(r) * 1e6, "mm2"),
                r.Printed("Cu_ohm_per_km_20C", WireResistance.OhmPerM(A(r)) * 1000, "ohm/km"), r.Printed("Cu_ohm_per_kft_20C", WireResistance.OhmPerM(A(r)) * 304.8, "ohm/1000 ft"),
                r.Printed("Al_ohm_per_km_20C", WireResistance.OhmPerM(A(r), WireResistance.AluminiumOhmM) * 1000, "ohm/km"),
                r.Printed("CCS30_ohm_per_km_20C", WireResistance.OhmPerM(A(r), WireResistance.CopperCladSteelOhmM) * 1000, "ohm/km"),
            ],
        },
        new()
        {
            Name = "Wire by cross-section", File = "bonding/metric_conductors.csv", Source = "wire-table", Worth = Worth.Derived, Tolerance = Half,
            Formulas = ["wire-equivalent-diameter", "wire-gauge-nearest", "wire-resistance"], Rows = 7, Comparisons = 7 * 4, Check = Metric,
        },
        new()
        {
            Name = "Warm copper wire", File = "bonding/wire_warm.csv", Source = "wire-table", Worth = Worth.Derived, Tolerance = Half,
            Formulas = ["wire-resistance-warm"], Rows = 2, Comparisons = 2,
            Check = r => [r.Printed("value_ohm_per_km", WireResistance.Warm(WireResistance.OhmPerM(r.Number == 1 ? WireGauge.AreaM2(Ten) : 16e-6), r.Value("celsius")) * 1000, "ohm/km")],
        },
        new()
        {
            Name = "Inductance, surge voltage and heating", File = Surges, Source = "wire-inductance", Worth = Worth.Derived, Tolerance = Half,
            Formulas =
            [
                "wire-inductance-surge", "wire-inductance-slow", "wire-inductance-loop", "wire-inductance-coil", "surge-steepness", "surge-voltage", "surge-resistive-drop", "surge-heating",
            ],
            Rows = 28, Comparisons = 23, RowsLeftOut = 5, LeftOutBecause = "one published rise and four recalled rows have sets of their own",
            Check = r => Recalled.Contains(r.Text("id")) || r.Text("id") == "I-20" ? [] : [Surging(r)],
        },
        new()
        {
            Name = "Heating of a conductor, published", File = Surges, Source = "iec-62305-1", Worth = Worth.Published, Tolerance = Half,
            Formulas = ["surge-heating"], Rows = 28, Comparisons = 1, RowsLeftOut = 27, LeftOutBecause = "arithmetic and recalled rows have sets of their own",
            Check = r => r.Text("id") == "I-20" ? [Surging(r)] : [],
        },
        new()
        {
            Name = "Surge waves that were recalled", File = Surges, Source = "project-notes", Worth = Worth.Recalled, Tolerance = Half,
            Formulas = ["surge-steepness", "surge-action-820", "surge-steepest-820", "surge-heating"], Rows = 28, Comparisons = 4, RowsLeftOut = 24, LeftOutBecause = "the other rows have sets of their own",
            Check = r => Recalled.Contains(r.Text("id")) ? [Surging(r)] : [],
        },
    ];

    private static double D(ReferenceRow r) => WireGauge.DiameterM(r.Value("awg"));

    private static double A(ReferenceRow r) => WireGauge.AreaM2(D(r));

    private static Comparison[] Metric(ReferenceRow r)
    {
        var area = r.Value("area_mm2") * 1e-6;
        var diameter = WireGauge.EquivalentDiameterM(area);
        return
        [
            r.Printed("equivalent_d_mm", diameter * 1000, "mm"), r.Printed("Cu_ohm_per_km_20C", WireResistance.OhmPerM(area) * 1000, "ohm/km"),
            r.Printed("Al_ohm_per_km_20C", WireResistance.OhmPerM(area, WireResistance.AluminiumOhmM) * 1000, "ohm/km"), r.Printed("nearest_awg", WireGauge.Nearest(diameter), ""),
        ];
    }

    // One cell has a remark behind its number.
    private static Comparison Surging(ReferenceRow r)
    {
        var printed = r.Text("value").Split(' ')[0];
        return r.Expect(r.Text("id"), double.Parse(printed, CultureInfo.InvariantCulture), Computed(r.Text("id"), r.Text("inputs")), ReferenceRow.HalfUnit(printed), r.Text("unit").Split(' ', ':')[0]);
    }

    private static double Computed(string id, string inputs)
    {
        double Straight(double length, double diameter) => WireInductance.StraightH(length, diameter) * 1e6;
        var steep = Surge.SteepnessAPerS(Surge.InducedA, Surge.InducedFrontS);
        var stroke = Surge.SteepnessAPerS(Surge.StrokeA, Surge.StrokeFrontS);
        var later = Surge.SteepnessAPerS(25e3, 0.25e-6);
        var sixteen = WireGauge.EquivalentDiameterM(16e-6);
        double Volts(double length, double steepness) => Surge.VoltageV(WireInductance.StraightH(length, Ten), steepness) / 1000;
        return id switch
        {
            "I-1" => Straight(6, Ten),
            "I-2" => WireInductance.SlowH(6, Ten) * 1e6,
            "I-3" => Straight(6, WireGauge.DiameterM(6)),
            "I-4" => (1 - Straight(6, WireGauge.DiameterM(6)) / Straight(6, Ten)) * 100,
            "I-5" => Straight(6, sixteen),
            "I-6" => Straight(12, Ten),
            "I-7" => Straight(12, Ten) / Straight(6, Ten),
            "I-8" => 2 * Straight(3, Ten),
            "I-9" => WireInductance.LoopH(0.1, Ten / 2) * 1e6,
            "I-10" => WireInductance.CoilH(5, WireInductance.LoopH(0.1, Ten / 2)) * 1e6,
            "I-11" => steep / 1e9,
            "I-12" => Volts(6, steep),
            "I-13" => Volts(1.5, steep),
            "I-14" => stroke / 1e9,
            "I-15" => Volts(6, stroke),
            "I-16" => later / 1e9,
            "I-17" => Volts(6, later),
            "I-18" => Surge.ResistiveV(10e3, WireResistance.OhmPerM(WireGauge.AreaM2(Ten)), 6),
            "I-19" => Surge.ActionJPerOhm(1e6) / 1e12 * 1e6,
            "I-19b" => Surge.SteepestAPerS(10e3) / 1e9,
            "I-19c" => SurgeHeating.RiseK(1216, 5.26e-6),
            "I-20" or "I-20*" => SurgeHeating.RiseK(10e6, 16e-6),
            // The section printed beside a gauge is rounded.
            _ when id.EndsWith("AWG", StringComparison.Ordinal) => SurgeHeating.RiseK(Surge.StrokeEnergyJPerOhm, WireGauge.AreaM2(WireGauge.DiameterM(double.Parse(id[5..^4], CultureInfo.InvariantCulture)))),
            _ when id.StartsWith("I-21 ", StringComparison.Ordinal) => SurgeHeating.RiseK(Surge.StrokeEnergyJPerOhm, double.Parse(inputs[2..^3], CultureInfo.InvariantCulture) * 1e-6),
            _ => throw new FormatException(id),
        };
    }
}
