using InstallPacket.Calc.Mounting;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Mounting;

public static class WoodSets
{
    private const double Inch = 0.0254;
    private const double Pound = 4.4482216152605;

    public static IReadOnlyList<ReferenceSet> All { get; } =
    [
        new()
        {
            Name = "Withdrawal of lag screws", File = "mounting/lag_withdrawal_table_12_2A.csv", Source = "nds-lag-withdrawal", Worth = Worth.Published,
            Tolerance = "half a unit of the printed pound per inch; the equation column to half its last digit", Formulas = ["lag-withdrawal"], Rows = 242, Comparisons = 242 * 2, Check = Table122A,
        },
        new()
        {
            Name = "Lag screws through steel plates", File = "mounting/lag_lateral_table_12K.csv", Source = "nds-lag-lateral", Worth = Worth.Published,
            Tolerance = "the printed table to the 10 lbf that it is rounded to; the computed column to half its last digit", Formulas = ["lag-lateral"], Rows = 218, Comparisons = 218 * 3, Check = Table12K,
        },
        new()
        {
            Name = "Specific gravity of timber", File = "mounting/wood_specific_gravity.csv", Source = "nds-gravity", Worth = Worth.Published,
            Tolerance = "equal", Formulas = ["wood-specific-gravity"], Rows = 48, Comparisons = 47, RowsLeftOut = 1, LeftOutBecause = "European timber is calculated by its density", Check = Gravity,
        },
        new()
        {
            Name = "Dimensions of lag screws", File = "mounting/lag_dimensions.csv", Source = "nds-lag-lateral", Worth = Worth.Recalled,
            Tolerance = "half a unit of the last printed digit", Formulas = ["lag-lateral"], Rows = 5, Comparisons = 15, Check = Dimensions,
        },
        new()
        {
            Name = "Lead holes", File = "mounting/lag_lead_holes.csv", Source = "nds-lead-holes", Worth = Worth.Recalled,
            Tolerance = "half a unit of the last printed digit", Formulas = ["lead-hole"], Rows = 12, Comparisons = 24, Check = Holes,
        },
        new()
        {
            Name = "Fixings step by step", File = "mounting/fixing_check.csv", Source = "nds-chapter-12", Worth = Worth.Derived,
            Tolerance = "0.5 % as the rows say; F-3 is a published example",
            Formulas = ["lag-withdrawal", "wood-screw-withdrawal", "withdrawal-adjusted", "lag-lateral", "lateral-adjusted", "fixing-combined", "fixing-use", "ec5-withdrawal-strength", "ec5-withdrawal", "ec5-design"],
            Rows = 26, Comparisons = 29, RowsLeftOut = 2, LeftOutBecause = "a wrong form shown for contrast, and a test average", Check = Steps,
        },
    ];

    private static LagScrew Screw(double inches) => LagScrew.Find(inches * Inch) ?? throw new FormatException("no lag screw of this size");

    private static Comparison[] Table122A(ReferenceRow r)
    {
        var pounds = Withdrawal.LagNPerM(r.Value("G"), r.Value("D_in") * Inch) * Inch / Pound;
        return [r.Within("W_table_lbf_per_in", pounds, 0.51, "lbf/in"), r.Printed("W_equation_lbf_per_in", pounds, "lbf/in")];
    }

    private static Comparison[] Table12K(ReferenceRow r)
    {
        var screw = Screw(r.Value("D_in"));
        double Z(bool asTable) => YieldModes.Of(screw, r.Value("G"), r.Value("plate_in") * Inch, YieldModes.SheetSteelPa, r.Text("grain") == "parallel" ? 0 : 90, 8 * screw.DiameterM, asTable).LeastN / Pound;
        return [r.Within("Z_table_lbf", Z(true), 5.01, "lbf"), r.Printed("Z_computed_lbf", Z(false), "lbf"), r.Printed("Z_computed_Fe_rounded_to_50psi_lbf", Z(true), "lbf")];
    }

    private static Comparison[] Gravity(ReferenceRow r)
    {
        var name = r.Text("species_group");
        if (name.StartsWith("unknown European", StringComparison.Ordinal)) return [];
        var row = name.StartsWith("unknown", StringComparison.Ordinal) ? SpecificGravity.Find(SpecificGravity.Unknown) : SpecificGravity.All.Single(g => g.Name == name);
        return [r.Within("G_oven_dry", row!.Gravity, 1e-12, "")];
    }

    private static Comparison[] Dimensions(ReferenceRow r)
    {
        var screw = Screw(r.Value("D_in"));
        return [r.Printed("root_Dr_in", screw.RootM / Inch, "in"), r.Printed("tip_E_in", screw.TipM / Inch, "in"), r.Printed("Fyb_psi", screw.BendingPa / 6894.757293168, "psi")];
    }

    private static Comparison[] Holes(ReferenceRow r)
    {
        var gravity = r.Text("density_class") switch { "G<=0.5" => 0.5, "0.5<G<=0.6" => 0.6, "G>0.6" => 0.61, var other => throw new FormatException(other) };
        var (least, most) = LeadHole.RangeM(r.Value("D_in") * Inch, gravity);
        return [r.Printed("min_in", least / Inch, "in"), r.Printed("max_in", most / Inch, "in")];
    }

    // The worked case: a lag screw of 3/8 x 3 in through a plate of 0.134 in into spruce-pine-fir, wind, wet.
    private static Comparison[] Steps(ReferenceRow r)
    {
        var (lag, plate, length) = (Screw(0.375), 0.134 * Inch, 3 * Inch);
        var perMetre = Withdrawal.LagNPerM(0.42, lag.DiameterM);
        var pull = Withdrawal.AdjustedN(perMetre, lag.ThreadInTimberM(length, plate), 1.6, 0.7);
        double Lateral(double theta) => YieldModes.Of(lag, 0.42, plate, YieldModes.SheetSteelPa, theta, 8 * lag.DiameterM).LeastN;
        var shear = YieldModes.AdjustedN(Lateral(90), lag.PenetrationM(length, plate), lag.DiameterM, 1.6, 0.7);
        double Combined(double angle) => CombinedFixing.AllowableN(pull, shear, angle);
        var angle = CombinedFixing.AngleDeg(180, 90);
        double? value = r.Text("id") switch
        {
            "F-1" => Withdrawal.LagNPerM(0.5, lag.DiameterM) * Inch / Pound,
            "F-2" => Withdrawal.LagNPerM(0.5, 9.525e-3) / 1000,
            "F-3" or "F-3*" => Withdrawal.LagNPerM(0.55, 0.5 * Inch) * Screw(0.5).ThreadInTimberM(4 * Inch, 1.5 * Inch),
            "F-4" => Withdrawal.WoodScrewNPerM(0.42, 0.190 * Inch) * Inch / Pound,
            "F-5" => Withdrawal.WoodScrewNPerM(0.42, 0.190 * Inch) / 1000,
            "F-7" => lag.ThreadInTimberM(length, plate) / Inch,
            "F-8" => pull / Pound,
            "F-9" => lag.PenetrationM(length, plate) / Inch,
            "F-10" => Lateral(0) / Pound,
            "F-11" => Lateral(90) / Pound,
            "F-12" => lag.PenetrationM(length, plate) / (8 * lag.DiameterM),
            "F-13" => shear / Pound,
            "F-14-0" => Combined(0) / Pound,
            "F-14-30" => Combined(30) / Pound,
            "F-14-45" => Combined(45) / Pound,
            "F-14-60" => Combined(60) / Pound,
            "F-14-90" => Combined(90) / Pound,
            "F-15" => CombinedFixing.Use(180 * Pound, 90 * Pound, Combined(angle)),
            "F-19" => EuropeanScrew.StrengthPa(0.008, 0.060, 350) / 1e6,
            "F-20" => EuropeanScrew.WithdrawalN(0.008, 0.060, 350),
            "F-21" => EuropeanScrew.DesignN(EuropeanScrew.WithdrawalN(0.008, 0.060, 350), EuropeanScrew.Modification(wet: true)),
            "F-17" => YieldModes.TimberPsi(0.5, 0.375, 45, false),
            _ => null,
        };
        if (r.Text("id") == "F-18") return Modes(r, lag);
        return value is { } v ? [r.Within("value", v, 0.005 * r.Value("value"), r.Text("unit"))] : [];
    }

    private static Comparison[] Modes(ReferenceRow r, LagScrew lag)
    {
        var m = YieldModes.Of(lag, 0.5, 0.134 * Inch, YieldModes.SheetSteelPa, 0, 8 * lag.DiameterM);
        var computed = new Dictionary<string, double>(StringComparer.Ordinal) { ["Im"] = m.Im, ["Is"] = m.Is, ["II"] = m.II, ["IIIm"] = m.IIIm, ["IIIs"] = m.IIIs, ["IV"] = m.IV };
        return [.. r.Text("value").Split(';', StringSplitOptions.TrimEntries).Select(p => p.Split(' '))
            .Select(p => r.Expect(p[0], double.Parse(p[1], System.Globalization.CultureInfo.InvariantCulture), computed[p[0]] / Pound, 0.0501, "lbf"))];
    }
}
