using InstallPacket.Calc.Mounting;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Mounting;

/// <summary>Tubes, their strength, and masts at two brackets.</summary>
public static class MastSets
{
    private const double FootM = 0.3048;
    private const double PoundN = 4.4482216;
    private const string Half = "half a unit of the last printed digit";
    private const string Materials = "mounting/tube_materials.csv";

    private static readonly string[] Strength = ["mast-allowable-plastic", "mast-stress", "mast-utilisation"];

    public static IReadOnlyList<ReferenceSet> All { get; } =
    [
        new()
        {
            Name = "Pipe sections", File = "mounting/tube_check.csv", Source = "pipe-properties", Worth = Worth.Published,
            Tolerance = "a unit of the last printed digit: two cells leave the arithmetic by that much", Formulas = ["tube-area", "tube-inertia", "tube-section-modulus"], Rows = 3, Comparisons = 9, Check = Pipe,
        },
        new()
        {
            Name = "Tube sections", File = "mounting/tube_sections.csv", Source = "project-notes", Worth = Worth.Derived, Tolerance = Half,
            Formulas = ["tube-area", "tube-inertia", "tube-section-modulus", "tube-plastic-modulus"], Rows = 49, Comparisons = 49 * 6, Check = Tube,
        },
        new()
        {
            Name = "Strength of steel", File = Materials, Source = "steel-properties", Worth = Worth.Published, Tolerance = "exact",
            Formulas = ["mast-allowable-plastic"], Rows = 12, Comparisons = 12, RowsLeftOut = 8, LeftOutBecause = "other origins have sets of their own",
            Check = r => r.Text("source") == "S11" ? Material(r) : [],
        },
        new()
        {
            Name = "Strength of aluminium", File = Materials, Source = "aluminium-extrusions", Worth = Worth.Published, Tolerance = "exact",
            Formulas = ["mast-allowable-aluminium"], Rows = 12, Comparisons = 3, RowsLeftOut = 9, LeftOutBecause = "other origins have sets of their own",
            Check = r => r.Text("source") == "M01" ? Material(r)[..1] : [],
        },
        new()
        {
            Name = "Materials that were recalled or chosen", File = Materials, Source = "project-notes", Worth = Worth.Recalled, Tolerance = "exact",
            Formulas = ["mast-allowable-plastic", "mast-allowable-aluminium"], Rows = 12, Comparisons = 5 * 3 + 3 * 2, RowsLeftOut = 4, LeftOutBecause = "steels that were read have a set of their own",
            Check = r => r.Text("source") switch { "S11" => [], "M01" => Material(r)[1..], _ => Material(r) },
        },
        new()
        {
            Name = "Masts at two brackets", File = "mounting/mast_check.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = Half + "; row e of M-4 sets an aluminium tube by the steel rule, which the program does not do",
            Formulas = ["mast-moment", "mast-lower-reaction", "mast-upper-reaction", "mast-deflection", "mast-slope", "mast-frequency", .. Strength],
            Rows = 57, Comparisons = 44, RowsLeftOut = 13, LeftOutBecause = "guys and the held sixth have sets of their own", Check = Mast,
        },
        new()
        {
            Name = "Masts, further worked cases", File = "mounting/mast_worked.csv", Source = "project-notes", Worth = Worth.Derived, Tolerance = Half,
            Formulas = ["mast-allowable-aluminium", "mast-allowable-elastic", "wind-scaled-force", "mast-moment", "mast-lower-reaction", "mast-upper-reaction", "mast-deflection", "mast-slope", "guy-compression-worst", "mast-allowable-compression", "guy-breaking-strength", "guy-tension-worst"],
            Rows = 15, Comparisons = 15, Check = Worked,
        },
    ];

    internal static MastMaterial Of(string word) => MastTubes.Material(word) ?? throw new FormatException(word);

    private static Comparison[] Pipe(ReferenceRow r)
    {
        var section = new MastSection(r.Value("OD_in") * 0.0254, r.Value("wall_in") * 0.0254);
        Comparison Unit(string column, double computed, string unit) => r.Within(column, computed, 2 * ReferenceRow.HalfUnit(r.Text(column)), unit);
        return
        [
            Unit("A_published_in2", section.AreaM2 / Math.Pow(0.0254, 2), "in2"), Unit("I_published_in4", section.InertiaM4 / Math.Pow(0.0254, 4), "in4"),
            Unit("S_published_in3", section.SectionModulusM3 / Math.Pow(0.0254, 3), "in3"),
        ];
    }

    private static Comparison[] Tube(ReferenceRow r)
    {
        var section = (MastTubes.Find(r.Text("tube")) ?? throw new FormatException(r.Text("tube"))).Section;
        return
        [
            r.Printed("A_mm2", section.AreaM2 * 1e6, "mm2"), r.Printed("I_mm4", section.InertiaM4 * 1e12, "mm4"), r.Printed("S_mm3", section.SectionModulusM3 * 1e9, "mm3"),
            r.Printed("Z_plastic_mm3", section.PlasticModulusM3 * 1e9, "mm3"), r.Printed("steel_kg_per_m", section.MassKgM(7850), "kg/m"), r.Printed("D_over_t", section.Slenderness, ""),
        ];
    }

    private static Comparison[] Material(ReferenceRow r)
    {
        var own = MastTubes.Materials.Single(m => m.Name == r.Text("material"));
        return
        [
            r.Within("Fy_MPa", own.YieldPa / 1e6, 1e-6, "MPa"), r.Within("E_GPa", own.ModulusPa / 1e9, 1e-6, "GPa"), r.Within("density_kg_m3", own.DensityKgM3, 1e-6, "kg/m3"),
        ];
    }

    private static Comparison[] Mast(ReferenceRow r)
    {
        var id = r.Text("id");
        if (id is "M-10" || id.StartsWith('G')) return [];
        var tube = new MastSection(0.038, 0.002);
        return id switch
        {
            "M-6" => [r.Printed("value", MastBending.MomentNm(new([new(50.98 * PoundN, 5.906 * FootM)], 2.837 * PoundN / FootM, 6.562 * FootM, 0)) / PoundN / FootM, "lbf ft")],
            "M-7" => [r.Printed("value", MastSway.FirstFrequencyHz(tube, MastTubes.UnknownSteel, 2, 2), "Hz")],
            "M-8" => [r.Printed("value", MastSway.FirstFrequencyHz(tube, MastTubes.UnknownSteel, 3, 2), "Hz")],
            "M-9" => [r.Printed("value", MastSway.FreeLengthM(tube, MastTubes.UnknownSteel, 1, 2), "m")],
            _ => [Bracketed(r, id)],
        };
    }

    private static Comparison Bracketed(ReferenceRow r, string id)
    {
        var (line, free, spacing, outer, material) = id[..3] switch
        {
            "M-1" => (41.4, 2.0, 0.6, 0.038, "unknown-steel"),
            "M-2" => (41.4, 2.0, 1.0, 0.038, "unknown-steel"),
            "M-3" => (54.4, 2.0, 0.6, 0.050, "unknown-steel"),
            "M-4" => (41.4, 2.0, 0.6, 0.038, "aluminium-6063-t5"),
            "M-5" => (41.4, 3.0, 0.6, 0.038, "unknown-steel"),
            var other => throw new FormatException(other),
        };
        var mast = new MastCase([new(227, free - 0.2)], line, free, spacing);
        var section = new MastSection(outer, 0.002);
        var made = Of(material);
        var moment = MastBending.MomentNm(mast);
        // Row e of the aluminium mast was computed by the steel rule; the rule itself is compared, not the choice of rule.
        var allowable = made.IsAluminium ? MastStrength.PlasticNm(section, made.YieldPa) : MastStrength.AllowableNm(section, made);
        var computed = id[^1] switch
        {
            'a' => moment,
            'b' => MastBending.LowerReactionN(mast),
            'c' => MastBending.UpperReactionN(mast),
            'd' => MastStrength.StressPa(moment, section) / 1e6,
            'e' => allowable,
            'f' => MastStrength.Utilisation(moment, allowable),
            'g' => MastBending.TipDeflectionM(mast, section, made.ModulusPa) * 1000,
            'h' => MastBending.TipSlopeRad(mast, section, made.ModulusPa) * 180 / Math.PI,
            _ => throw new FormatException(id),
        };
        return r.Printed("value", computed, r.Text("unit"));
    }

    private static Comparison[] Worked(ReferenceRow r)
    {
        var aluminium = Of("aluminium-6063-t5");
        var mast = new MastCase([new(200, 2.0), new(100, 1.2)], 40, 2.5, 0.8);
        var section = new MastSection(0.050, 0.002);
        var computed = r.Text("id") switch
        {
            "MW-1" => MastStrength.AllowableNm(new(0.038, 0.002), aluminium),
            "MW-2" => MastStrength.AllowableNm(new(0.038, 0.002), aluminium, welded: true),
            "MW-3" => MastStrength.AllowableNm(new(0.050, 0.001), Of("steel-50ksi")),
            "MW-4" => WindForce.ScaledForceN(100, 30, 45),
            "MW-5" => MastBending.MomentNm(mast),
            "MW-6" => MastBending.LowerReactionN(mast, 40),
            "MW-7" => MastBending.UpperReactionN(mast, 40),
            "MW-8" => MastBending.TipDeflectionM(mast, section, 200e9) * 1000,
            "MW-9" => MastBending.TipSlopeRad(mast, section, 200e9) * 180 / Math.PI,
            "MW-10" => Guys.WorstCompressionN(300, 45, 3),
            "MW-11" => Guys.WorstCompressionN(300, 45, 4),
            "MW-12" => Guys.AllowableCompressionN(Guys.EulerN(new(0.038, 0.002), 200e9, 3)),
            "MW-14" => Guys.WorstTensionN(300, 45, 3),
            "MW-15" => Guys.WorstTensionN(300, 45, 4),
            "MW-13" => Guys.BreakingN(424.3),
            var other => throw new FormatException(other),
        };
        return [r.Printed("value", computed, r.Text("unit"))];
    }
}
