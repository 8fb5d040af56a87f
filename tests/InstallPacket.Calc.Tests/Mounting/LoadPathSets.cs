using System.Globalization;
using InstallPacket.Calc.Mounting;
using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Sources;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Mounting;

/// <summary>Masts on several supports, screws in European timber, anchors, ladders, lines above 50 kV.</summary>
public static class LoadPathSets
{
    private const string Half = "half a unit of the last printed digit";

    public static IReadOnlyList<ReferenceSet> All { get; } =
    [
        new()
        {
            Name = "Masts on several supports", File = "mounting/continuous_mast.csv", Source = "beam-tables", Worth = Worth.Recalled, Tolerance = Half,
            Formulas = ["mast-three-moments", "mast-support-force"], Rows = 12, Comparisons = 12, Check = Mast,
        },
        new()
        {
            Name = "Screws and anchors in Europe", File = "mounting/european_screw.csv", Source = "en-1995-1-1", Worth = Worth.Recalled, Tolerance = Half,
            Formulas = ["ec5-lateral", "ec5-design", "ec5-use", "anchor-use", "timber-class-density"], Rows = 11, Comparisons = 11, Check = Screw,
        },
        new()
        {
            Name = "Duty ratings of ladders", File = "mounting/ladder_rating.csv", Source = "ladder-duty-ratings", Worth = Worth.Published, Tolerance = Half,
            Formulas = ["ladder-duty-rating"], Rows = 8, Comparisons = 14, Check = Rating,
        },
        new()
        {
            Name = "Distance to lines by voltage", File = "mounting/power_line_clearance.csv", Source = "osha-1910-269", Worth = Worth.Derived, Tolerance = Half,
            Formulas = ["power-line-keep-clear"], Rows = 18, Comparisons = 7, RowsLeftOut = 11, LeftOutBecause = "another table for cranes, and distances of the cable that the rules print in words", Check = Line,
        },
        new()
        {
            Name = "Wood screws of the United States", File = "mounting/wood_screw.csv", Source = "nds-chapter-12", Worth = Worth.Recalled, Tolerance = Half,
            Formulas = ["wood-screw-lateral", "wood-screw-lateral-adjusted", "lead-hole-wood-screw"], Rows = 23, Comparisons = 23, Check = ThinScrew,
        },
        new()
        {
            Name = "Common practice of fixing", File = "mounting/common_practice.csv", Source = "project-notes", Worth = Worth.Recalled, Tolerance = "inside the range of the rule",
            Formulas = ["lead-hole"], Rows = 4, Comparisons = 2, RowsLeftOut = 2, LeftOutBecause = "the tests of the planner and of the crew's page compare the others", Check = Practice,
        },
    ];

    private static Comparison[] ThinScrew(ReferenceRow r)
    {
        const double inch = 0.0254, pound = 4.4482216152605;
        var inputs = r.Text("inputs").Split(';', StringSplitOptions.TrimEntries);
        var screw = WoodScrew.All.Single(s => s.Name == inputs[0]);
        double Number(int i, string before) => double.Parse(inputs[i][before.Length..].Replace(" in", ""), CultureInfo.InvariantCulture);
        double Lateral() => YieldModes.Of(screw, Number(1, "G "), Number(2, "plate ") * inch, YieldModes.SheetSteelPa, 10 * screw.DiameterM).LeastN;
        var value = r.Text("quantity") switch
        {
            "diameter" => screw.DiameterM / inch,
            "root diameter" => screw.RootM / inch,
            "bending strength" => screw.BendingPa / 6894.757293168,
            "lateral value of the least mode" => Lateral() / pound,
            "in its place" => screw.AdjustedN(Lateral(), Number(3, "p ") * inch, 1.6, 0.7) / pound,
            "lead hole smallest" => LeadHole.WoodScrewRangeM(screw.RootM, Number(1, "G ")).LeastM / inch,
            "lead hole largest" => LeadHole.WoodScrewRangeM(screw.RootM, Number(1, "G ")).MostM / inch,
            var other => throw new FormatException(other),
        };
        return [r.Printed("value", value, r.Text("unit"))];
    }

    // The hole of the trade lies between the smallest and the largest drill of the rule.
    private static Comparison[] Practice(ReferenceRow r)
    {
        if (r.Text("rule") != "lead-hole") return [];
        var (least, most) = LeadHole.RangeM(r.Value("diameter_in") * 0.0254, r.Value("gravity"));
        return [r.Within("value", (least + most) / 2 / 0.0254, (most - least) / 2 / 0.0254, "in")];
    }

    private static Comparison[] Mast(ReferenceRow r)
    {
        var parts = r.Text("inputs").Split(';').Select(p => p.Trim().Split(' ').Skip(1).Select(v => double.Parse(v, CultureInfo.InvariantCulture)).ToArray()).ToArray();
        var forces = ContinuousMast.Of(new(parts[0], parts[1][0], parts[2][0], parts[3][0]));
        var value = r.Text("id") switch
        {
            "C-1" or "C-4" or "C-8" => forces.MomentsNm[1],
            "C-2" or "C-5" or "C-11" => forces.ReactionsN[0],
            "C-3" or "C-6" or "C-12" => forces.ReactionsN[1],
            "C-7" => forces.SpanMomentsNm[0],
            "C-9" => forces.MomentsNm[2],
            "C-10" => forces.ReactionsN[3],
            var other => throw new FormatException(other),
        };
        return [r.Printed("value", value, r.Text("unit"))];
    }

    private static Comparison[] Screw(ReferenceRow r)
    {
        var value = r.Text("id") switch
        {
            "E-1" => EuropeanScrew.LateralN(0.008, 0.052, 350),
            "E-2" => EuropeanScrew.LateralN(0.008, 0.025, 350),
            "E-3" => EuropeanScrew.DesignN(2000, EuropeanScrew.Modification(wet: true)),
            "E-4" => EuropeanScrew.DesignN(2000, EuropeanScrew.Modification(wet: false)),
            "E-5" => EuropeanScrew.Use(1000, 600, 3422, 1200),
            "E-6" => AnchorUse.Of(1000, 600, 3000, 2000),
            var id => TimberClass.Find(id[2..].ToLowerInvariant())!.DensityKgM3,
        };
        return [r.Printed("value", value, r.Text("unit"))];
    }

    // The ratings stand in the tables of the code families.
    private static Comparison[] Rating(ReferenceRow r)
    {
        var us = r.Text("family") == "us";
        var ratings = CsvText.Rows(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Codes", us ? "Us" : "Eu", "ladders.csv")));
        double[] capacities = [.. ratings.Select(row => CsvNumber.Of(row["capacity"]) * UnitTable.Factor(row["unit"]))];
        if (r.Text("rating") == "none") return [r.Expect("rating", 1, capacities.All(c => c < r.Value("load_kg")) ? 1 : 0, 1e-9, "")];
        var row = new Workings().Apply(LadderRating.RatingFormula, capacities, "ladder", Term.Key("mounting.ladder-load", r.Value("load_kg")));
        var word = ratings.ElementAt(Array.IndexOf(capacities, row.Number))["rating"];
        return [r.Expect("rating", 1, word == r.Text("rating") ? 1 : 0, 1e-9, ""), r.Printed("capacity_kg", row.Number, "kg")];
    }

    private static Comparison[] Line(ReferenceRow r) =>
        r.Text("rule").StartsWith("10 ft + 4 in", StringComparison.Ordinal)
            ? [r.Within("distance_m", PowerLineDistance.KeepClearOf(r.Value("kV")), 0.0051, "m")]
            : r.Text("rule").StartsWith("OSHA 1926.1408", StringComparison.Ordinal) && r.Text("kV") == "up to 50"
                ? [r.Within("distance_m", PowerLineDistance.KeepClearOf(50), 0.0051, "m")] : [];
}
