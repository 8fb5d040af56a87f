using System.Globalization;
using InstallPacket.Calc.Mounting;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Mounting;

/// <summary>Wind by the European standard, and the simple rule for antenna masts.</summary>
public static class EurocodeSets
{
    private const string Half = "half a unit of the last printed digit";
    private const string Check = "mounting/eurocode_check.csv";

    private static readonly string[] Round = ["eurocode-reynolds", "eurocode-round-bare", "eurocode-end-effect", "eurocode-round-force"];

    public static IReadOnlyList<ReferenceSet> All { get; } =
    [
        new()
        {
            Name = "Wind on two cylinders, from published calculation reports", File = Check, Source = "en-1991-1-4", Worth = Worth.Published,
            Tolerance = Half, Formulas = ["eurocode-mean-velocity", "eurocode-turbulence", "eurocode-peak-pressure", .. Round],
            Rows = 21, Comparisons = 4, RowsLeftOut = 19, LeftOutBecause = "computed rows have a set of their own",
            Check = r => r.Text("provenance") == "read" ? Cylinder(r) : [],
        },
        new()
        {
            Name = "European wind, worked", File = Check, Source = "en-1991-1-4", Worth = Worth.Derived, Tolerance = Half,
            Formulas = ["eurocode-basic-velocity", "eurocode-basic-pressure", "eurocode-mean-velocity", "eurocode-turbulence", "eurocode-peak-pressure", "eurocode-exposure", .. Round],
            Rows = 21, Comparisons = 16 * 2 + 8 + 8 + 7, RowsLeftOut = 2, LeftOutBecause = "published rows have a set of their own",
            Check = r => r.Text("provenance") == "read" ? [] : r.Text("id").StartsWith("ce-", StringComparison.Ordinal) ? Exposure(r) : Cylinder(r),
        },
        new()
        {
            Name = "Terrain categories", File = "mounting/eurocode_terrain.csv", Source = "en-1991-1-4", Worth = Worth.Published,
            Tolerance = "exact; the terrain factor, which is computed, to half a unit of its last digit", Formulas = ["eurocode-mean-velocity"], Rows = 5, Comparisons = 15,
            Check = r =>
            [
                r.Within("z0_m", Terrain(r.Text("category")).RoughnessM, 1e-9, "m"), r.Within("zmin_m", Terrain(r.Text("category")).LeastHeightM, 1e-9, "m"),
                r.Printed("kr", WindEurocode.TerrainFactor(Terrain(r.Text("category"))), ""),
            ],
        },
        new()
        {
            Name = "Simple European rule for masts", File = "mounting/mast_rules_europe.csv", Source = "en-60728-11", Worth = Worth.Published,
            Tolerance = "exact", Formulas = ["mast-rule-pressure", "mast-rule-tube-force", "mast-rule-held-length"], Rows = 12, Comparisons = 12, Check = Rule,
        },
        new()
        {
            Name = "Simple European rule, published case", File = "mounting/wind_check.csv", Source = "en-60728-11", Worth = Worth.Published,
            Tolerance = Half, Formulas = ["mast-rule-tube-force", "mast-rule-antenna-force"], Rows = 32, Comparisons = 3, RowsLeftOut = 29,
            LeftOutBecause = "the other rows belong to the American standard or to forces", Check = SimpleCase,
        },
        new()
        {
            Name = "Held sixth of the mast", File = "mounting/mast_check.csv", Source = "en-60728-11", Worth = Worth.Derived,
            Tolerance = Half, Formulas = ["mast-rule-held-length"], Rows = 57, Comparisons = 1, RowsLeftOut = 56,
            LeftOutBecause = "the other rows belong to bending, frequency and guys",
            Check = r => r.Text("id") == "M-10" ? [r.Printed("value", EuropeanMastRule.HeldLengthM(3), "m")] : [],
        },
    ];

    private static TerrainCategory Terrain(string category) => TerrainCategory.Find(category) ?? throw new FormatException(category);

    private static Comparison[] Exposure(ReferenceRow r)
    {
        var parts = r.Text("id").Split('-');
        var basic = WindEurocode.BasicVelocityMS(25);
        var peak = WindEurocode.PeakPressurePa(Terrain(parts[1]), double.Parse(parts[2], CultureInfo.InvariantCulture), basic);
        return [Named(r, "ce", WindEurocode.Exposure(peak, WindEurocode.BasicPressurePa(basic)), ""), Named(r, "qp", peak, "Pa")];
    }

    private static Comparison[] Cylinder(ReferenceRow r)
    {
        var (peak, diameter, length) = r.Text("id")[..4] switch
        {
            "EC-A" => (WindEurocode.PeakPressurePa(Terrain("II"), 22, 45), 0.7, 22.0),
            "EC-B" => (WindEurocode.PeakPressurePa(Terrain("II"), 5.5, 30.2), 1.9, 2.0),
            _ => (WindEurocode.PeakPressurePa(Terrain("III"), 10, 25), 0.048, 3.0),
        };
        var reynolds = RoundMember.Reynolds(diameter, peak);
        var slenderness = RoundMember.Slenderness(length, diameter);
        (string Name, double Value, string Unit)[] all =
        [
            ("qp", peak, "Pa"), ("v", RoundMember.PeakVelocityMS(peak), "m/s"), ("Re", reynolds, ""),
            ("cf0", RoundMember.BareCoefficient(reynolds, RoundMember.GalvanisedRoughnessM, diameter), ""), ("lambda", slenderness, ""),
            ("psi", RoundMember.EndEffect(slenderness), ""), ("w_eff", RoundMember.EffectivePressurePa(peak, diameter, length), "Pa"),
            ("Fw", RoundMember.ForceN(peak, diameter, length), "N"),
        ];
        return [.. all.Where(a => Printed(r, a.Name) is not null).Select(a => Named(r, a.Name, a.Value, a.Unit))];
    }

    // Cells of this file read "name=number name=number".
    private static string? Printed(ReferenceRow r, string name) =>
        $"{r.Text("inputs").Split(", ")[^1]} {r.Text("value")}".Split([' ', ';'], StringSplitOptions.RemoveEmptyEntries)
            .Where(p => p.StartsWith(name + "=", StringComparison.Ordinal)).Select(p => p[(name.Length + 1)..]).FirstOrDefault();

    private static Comparison Named(ReferenceRow r, string name, double computed, string unit)
    {
        var printed = Printed(r, name) ?? throw new FormatException(name);
        return r.Expect(name, double.Parse(printed, CultureInfo.InvariantCulture), computed, ReferenceRow.HalfUnit(printed), unit);
    }

    private static Comparison[] Rule(ReferenceRow r)
    {
        var own = MastRule.Europe[r.Number - 1];
        Assert.Equal((r.Text("rule"), r.Text("value"), r.Text("unit").Trim('-')), (own.Rule, own.Value, own.Unit));
        (double, double)? number = r.Text("rule") switch
        {
            "velocity pressure, mounting height up to 20 m" => (800, EuropeanMastRule.PressurePa(20)),
            "velocity pressure, above 20 m" => (1100, EuropeanMastRule.PressurePa(20.01)),
            "velocity pressure, mountain or coast" => (1250, EuropeanMastRule.PressurePa(5, exposed: true)),
            "shape factor for tubes" => (1.2, EuropeanMastRule.TubeForceN(1, 0.5, 2)),
            "held length of mast" => (1, EuropeanMastRule.HeldLengthM(6)),
            "free length above the upper clamp" => (6, EuropeanMastRule.GreatestFreeM),
            "bending moment at the upper clamp" => (1650, EuropeanMastRule.GreatestMomentNm),
            _ => null,
        };
        return [number is { } n ? r.Expect("value", n.Item1, n.Item2, 1e-9, r.Text("unit").Trim('-')) : r.Expect("words alike", 1, own.Value == r.Text("value") ? 1 : 0, 1e-9, "")];
    }

    // A published worksheet: 42 mm tube, 2 m free, antennas of 615 N at 0.7 m and 21 N at 1.4 m.
    private static Comparison[] SimpleCase(ReferenceRow r)
    {
        var pressure = EuropeanMastRule.PressurePa(10);
        var tube = EuropeanMastRule.TubeForceN(pressure, 0.042, 2);
        return r.Text("id") switch
        {
            "W-26" => [r.Printed("value", tube, "N")],
            "W-27" =>
            [
                r.Printed("value", tube * 1 + EuropeanMastRule.AntennaForceN(615, pressure) * 0.7 + EuropeanMastRule.AntennaForceN(21, pressure) * 1.4, "N m"),
            ],
            "W-28" => [r.Printed("value", EuropeanMastRule.AntennaForceN(1, EuropeanMastRule.PressurePa(25)), "")],
            _ => [],
        };
    }
}
