using System.Globalization;
using InstallPacket.Calc.Bonding;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Bonding;

/// <summary>Rods and soil, flashes to be expected, protected zones.</summary>
public static class EarthSets
{
    private const string Half = "half a unit of the last printed digit";
    private const string Rods = "bonding/ground_rod_check.csv";
    private const string Lightning = "bonding/lightning_check.csv";

    public static IReadOnlyList<ReferenceSet> All { get; } =
    [
        new()
        {
            Name = "Driven rods, published", File = Rods, Source = "rod-nomograph", Worth = Worth.Published, Tolerance = Half + "; the second reading to a tenth, for the nomograph is coarse",
            Formulas = ["rod-resistance"], Rows = 9, Comparisons = 2, RowsLeftOut = 7, LeftOutBecause = "arithmetic has a set of its own",
            Check = r => r.Text("id") switch
            {
                "R-1" => [r.Within("value", Rod("R-1"), 0.5, "ohm")],
                "R-2" => [r.Within("value", Rod("R-2"), 2, "ohm")],
                _ => [],
            },
        },
        new()
        {
            Name = "Driven rods", File = Rods, Source = "dwight-rod", Worth = Worth.Derived, Tolerance = Half, Formulas = ["rod-resistance", "rod-potential"],
            Rows = 9, Comparisons = 6, RowsLeftOut = 3, LeftOutBecause = "published readings and the recalled row of two rods have sets of their own",
            Check = r => r.Text("id") is "R-1" or "R-2" or "R-6" ? [] : [r.Printed("value", Rod(r.Text("id").TrimEnd('*')), r.Text("unit").Split(' ', ':')[0])],
        },
        new()
        {
            Name = "Two driven rods", File = Rods, Source = "dwight-rod", Worth = Worth.Recalled, Tolerance = Half, Formulas = ["rod-resistance-two"],
            Rows = 9, Comparisons = 1, RowsLeftOut = 8, LeftOutBecause = "one rod has sets of its own", Check = r => r.Text("id") == "R-6" ? [r.Printed("value", Rod("R-6"), "ohm")] : [],
        },
        new()
        {
            Name = "Soils", File = "bonding/soil_resistivity.csv", Source = "project-notes", Worth = Worth.Recalled, Tolerance = "exact; seven rows recalled, one read in a forum post",
            Formulas = ["rod-resistance"], Rows = 8, Comparisons = 16, Check = Ground,
        },
        new()
        {
            Name = "Constants of lightning protection", File = "bonding/lightning_constants.csv", Source = "iec-62305-summary", Worth = Worth.Published, Tolerance = "exact; equations word for word",
            Formulas = ["surge-steepness", "surge-heating", "rolling-sphere-radius", "strikes-per-year", "strike-area-house"], Rows = 13, Comparisons = 14, RowsLeftOut = 2,
            LeftOutBecause = "the subsequent stroke is recalled, the least intercepted peak is not used", Check = Constants,
        },
        new()
        {
            Name = "Flash density and rolling sphere, published", File = Lightning, Source = "iec-62305-3-spacing", Worth = Worth.Published, Tolerance = Half,
            Formulas = ["rolling-sphere-spacing", "flash-density-thunder-days"], Rows = 17, Comparisons = 5, RowsLeftOut = 12, LeftOutBecause = "arithmetic has a set of its own",
            Check = r => r.Text("id") == "K-8" ? [r.Printed("value", StrikeExposure.DensityPerKm2(25), "1/(km2 year)")]
                : r.Text("id").StartsWith("K-10", StringComparison.Ordinal) ? [r.Printed("value", RollingSphere.SpacingM(Input(r, "r="), Input(r, "h=")), "m")] : [],
        },
        new()
        {
            Name = "Flashes to be expected and the rolling sphere", File = Lightning, Source = "nfpa-780", Worth = Worth.Derived, Tolerance = Half,
            Formulas = ["strike-area-house", "strike-area-point", "strikes-per-year", "rolling-sphere-radius"], Rows = 17, Comparisons = 11, RowsLeftOut = 6,
            LeftOutBecause = "published rows have a set of their own; the mean of a country needs no equation of ours",
            Check = r => r.Text("id") is "K-8" or "K-9" || r.Text("id").StartsWith("K-10", StringComparison.Ordinal) ? [] : [r.Printed("value", Exposure(r.Text("id")), r.Text("unit").Split(' ')[0])],
        },
        new()
        {
            Name = "Protected zone of the wall", File = "bonding/bonding_rules_europe.csv", Source = "en-60728-11-earthing", Worth = Worth.Published, Tolerance = "exact", Formulas = ["facade-zone"],
            Rows = 14, Comparisons = 5, RowsLeftOut = 12, LeftOutBecause = "sizes and electrodes are data of the code family, compared in the tests of the planners", Check = Zone,
        },
    ];

    private static double Rod(string id)
    {
        const double inch = 0.0254, foot = 0.3048;
        return id switch
        {
            "R-1" => GroundRod.OneOhm(100, 10 * foot, 0.375 * inch),
            "R-2" => GroundRod.OneOhm(100, 20 * foot, 0.3125 * inch),
            "R-3" => GroundRod.OneOhm(100, 8 * foot, 0.3125 * inch),
            "R-4" => GroundRod.OneOhm(300, 8 * foot, 0.3125 * inch),
            "R-5" => GroundRod.OneOhm(100, 2.5, 0.010),
            "R-6" => GroundRod.TwoOhm(100, 8 * foot, 0.3125 * inch, 16 * foot),
            "R-7" => GroundRod.PotentialV(10e3, Rod("R-3")) / 1000,
            _ => throw new FormatException(id),
        };
    }

    private static Comparison[] Ground(ReferenceRow r)
    {
        var own = Soil.All.Single(s => s.Name == r.Text("soil"));
        return [r.Within("low_ohm_m", own.LowOhmM, 1e-9, "ohm m"), r.Within("high_ohm_m", own.HighOhmM, 1e-9, "ohm m")];
    }

    private static Comparison[] Constants(ReferenceRow r)
    {
        Comparison Is(double own) => r.Within("value", own, 1e-9, r.Text("unit"));
        Comparison Last(double own) => r.Expect("value", double.Parse(r.Text("value").Split('/')[^1], CultureInfo.InvariantCulture), own, 1e-9, r.Text("unit"));
        Comparison First(double own) => r.Expect("front", double.Parse(r.Text("value").Split('/')[0], CultureInfo.InvariantCulture), own, 1e-9, r.Text("unit"));
        static string Bare(string text) => text.Replace(" ", "", StringComparison.Ordinal);
        Comparison Words(string equation) => r.Expect("equation", 1, Bare(equation) == Bare(r.Text("value")) ? 1 : 0, 1e-9, "");
        return (r.Text("item"), r.Text("class_or_case")) switch
        {
            ("rolling sphere radius", _) => [.. r.Text("value").Split('/').Zip(RollingSphere.RadiusM, (v, own) => r.Expect(own.Key, double.Parse(v, CultureInfo.InvariantCulture), own.Value, 1e-9, "m"))],
            ("location factor", "surrounded by higher objects") => [Is(StrikeExposure.Places["higher-objects"])],
            ("location factor", "similar or lower objects") => [Is(StrikeExposure.Places["similar"])],
            ("location factor", "isolated, nothing within 3H") => [Is(StrikeExposure.Places["isolated"])],
            ("location factor", "isolated on a hilltop") => [Is(StrikeExposure.Places["hilltop"])],
            ("first positive stroke peak", _) => [Last(Surge.StrokeA / 1000)],
            ("specific energy W/R", _) => [Last(Surge.StrokeEnergyJPerOhm / 1e6)],
            ("first stroke wave", _) => [First(Surge.StrokeFrontS * 1e6)],
            ("test wave for indirect surges", _) => [First(Surge.InducedFrontS * 1e6)],
            ("collection area", _) => [Words(StrikeExposure.HouseFormula.Equation)],
            ("strikes per year", _) => [Words(StrikeExposure.StrikesFormula.Equation)],
            ("subsequent stroke" or "minimum peak intercepted", _) => [],
            var other => throw new FormatException(other.ToString()),
        };
    }

    private static double Exposure(string id)
    {
        var house = StrikeExposure.HouseM2(15, 10, 8);
        var mast = StrikeExposure.PointM2(12);
        return id switch
        {
            "K-1" => StrikeExposure.HouseM2(30.5, 15.2, 18.3),
            "K-2" => StrikeExposure.PerYear(6, StrikeExposure.HouseM2(30.5, 15.2, 18.3), 0.5),
            "K-3" => house,
            "K-4" => 1 / StrikeExposure.PerYear(3, house, 0.5),
            "K-5" => mast,
            "K-6" => Math.Max(house, mast),
            "K-7" => (mast / house - 1) * 100,
            "K-11" => RollingSphere.ProtectedM(12, 8, RollingSphere.RadiusM["III"]),
            "K-12" => RollingSphere.ProtectedM(12, 8, RollingSphere.RadiusM["I"]),
            "K-13" => RollingSphere.ProtectedM(10, 0, 45),
            "K-14" => Math.Atan(RollingSphere.ProtectedM(10, 0, 45) / 10) * 180 / Math.PI,
            _ => throw new FormatException(id),
        };
    }

    private static double Input(ReferenceRow r, string name) =>
        double.Parse(r.Text("inputs").Split(' ').Single(p => p.StartsWith(name, StringComparison.Ordinal))[name.Length..], CultureInfo.InvariantCulture);

    private static Comparison[] Zone(ReferenceRow r)
    {
        if (r.Text("item") == "protected zone")
        {
            var printed = r.Text("value").Split('/', ' ').Where(p => double.TryParse(p, NumberStyles.Float, CultureInfo.InvariantCulture, out _)).Select(p => double.Parse(p, CultureInfo.InvariantCulture)).ToArray();
            return [r.Expect("below the edge", printed[0], FacadeZone.BelowEdgeM, 1e-9, "m"), r.Expect("out from the wall", printed[1], FacadeZone.OutM, 1e-9, "m")];
        }
        if (r.Text("item") != "protected zone check") return [];
        return
        [
            r.Expect("inside", 1, FacadeZone.IsExempt(2.01, 1.49) ? 1 : 0, 1e-9, ""), r.Expect("at the height", 0, FacadeZone.IsExempt(2, 1) ? 1 : 0, 1e-9, ""),
            r.Expect("at the distance", 0, FacadeZone.IsExempt(3, 1.5) ? 1 : 0, 1e-9, ""),
        ];
    }
}
