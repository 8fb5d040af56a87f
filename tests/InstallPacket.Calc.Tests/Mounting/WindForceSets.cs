using InstallPacket.Calc.Mounting;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Mounting;

/// <summary>Forces of wind and ice on mast and antenna.</summary>
public static class WindForceSets
{
    private const string Table = "mounting/wind_force_coefficients.csv";

    public static IReadOnlyList<ReferenceSet> All { get; } =
    [
        new()
        {
            Name = "Force coefficients, as read", File = Table, Source = "asce-7-10", Worth = Worth.Published, Tolerance = "exact, at both ends of a range of solidity",
            Formulas = ["wind-force-coefficient"], Rows = 34, Comparisons = 33, RowsLeftOut = 7, LeftOutBecause = "recalled rows have a set of their own",
            Check = r => r.Text("provenance") == "read" ? Coefficient(r) : [],
        },
        new()
        {
            Name = "Force coefficients, recalled", File = Table, Source = "tia-222", Worth = Worth.Recalled, Tolerance = "exact",
            Formulas = ["wind-force-coefficient"], Rows = 34, Comparisons = 7, RowsLeftOut = 27, LeftOutBecause = "rows that were read have a set of their own",
            Check = r => r.Text("provenance") == "memory" ? Coefficient(r) : [],
        },
        new()
        {
            Name = "Forces of wind and ice, worked", File = "mounting/wind_check.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit",
            Formulas = ["wind-round-regime", "wind-line-load", "wind-force", "wind-asd-load", "antenna-bars-area", "antenna-area-at-angle", "ice-weight", "ice-diameter"],
            Rows = 32, Comparisons = 15, RowsLeftOut = 17, LeftOutBecause = "pressures and the simple European rule have sets of their own", Check = Force,
        },
    ];

    private static Comparison[] Coefficient(ReferenceRow r)
    {
        var shape = Shape(r.Text("shape"));
        return r.Text("surface_or_solidity") switch
        {
            "solidity <0.1" => [r.Within("Cf", ForceCoefficient.OfLattice(shape, 0.099), 1e-9, "")],
            "solidity 0.1-0.29" => [r.Within("Cf", ForceCoefficient.OfLattice(shape, 0.1), 1e-9, ""), r.Within("Cf", ForceCoefficient.OfLattice(shape, 0.29), 1e-9, "")],
            "solidity 0.3-0.7" => [r.Within("Cf", ForceCoefficient.OfLattice(shape, 0.3), 1e-9, ""), r.Within("Cf", ForceCoefficient.OfLattice(shape, 0.7), 1e-9, "")],
            var surface => [r.Within("Cf", ForceCoefficient.OfShape(shape, r.Text("h_over_D") is "" ? 1 : r.Value("h_over_D"), Surface(surface)), 1e-9, "")],
        };
    }

    private static string Surface(string printed) => printed switch
    {
        "any" => "", "moderately smooth" => "smooth", "rough D'/D=0.02" => "rough", "very rough D'/D=0.08" => "very-rough", _ => throw new FormatException(printed),
    };

    private static string Shape(string printed) => printed switch
    {
        "round, D*sqrt(q)<=5.3 SI (2.5 US)" => "round",
        "round, D*sqrt(q)>5.3 SI (2.5 US)" => "round-fast",
        "square, wind on face" => "square-face",
        "square, wind on diagonal" => "square-diagonal",
        "lattice or screen, flat-sided members" => "lattice-flat",
        "lattice or screen, round members, D*sqrt(q)<=5.3 SI" => "lattice-round",
        "lattice or screen, round members, D*sqrt(q)>5.3 SI" => "lattice-round-fast",
        "flat appurtenance (TIA-222 style Ca)" => "flat",
        "round appurtenance (TIA-222 style Ca, subcritical)" => "round-attached",
        "parabolic dish, solid, concave face to wind" => "dish",
        _ => throw new FormatException(printed),
    };

    private static Comparison[] Force(ReferenceRow r)
    {
        var q = WindSets.ExamplePa;
        var force = WindForce.ForceN(q, WindAsce.SmallGustEffect, 0.25);
        var along = WindForce.BarsM2([new(20, 0.006, 0.30, WindForce.SlenderRoundCf)]);
        var across = WindForce.BarsM2([new(1, 0.025, 1.5, ForceCoefficient.OfShape("square-face", 1.5 / 0.025))]);
        return r.Text("id") switch
        {
            "W-13" => [r.Printed("value", ForceCoefficient.Regime(0.038, q), "m sqrt(Pa)")],
            "W-14" => [r.Printed("value", WindForce.LineLoadNPerM(q, 1, ForceCoefficient.OfTube(0.038, 2, q), 0.038), "N/m")],
            "W-15" => [r.Printed("value", force, "N")],
            "W-16" => [r.Printed("value", AllowableStress.WindLoad(force), "N")],
            "W-17" => [r.Printed("value", AllowableStress.WindLoad(force) / 4.448222, "lbf")],
            "W-18" => [r.Printed("value", along / 1.2, "m2")],
            "W-19" => [r.Printed("value", across / 2, "m2")],
            "W-20" => [r.Printed("value", along, "m2")],
            "W-21" => [r.Printed("value", across, "m2")],
            "W-22" => [r.Printed("value", WindForce.AtAngleM2(along, across, 45), "m2")],
            "W-23" => [r.Printed("value", IceLoad.WeightNPerM(0.038, 0.0125), "N/m")],
            "W-23us" => [r.Printed("value", IceLoad.WeightNPerM(1.5 * 0.0254, 0.5 * 0.0254, 56 * 0.45359237 / Math.Pow(0.3048, 3)) / 4.4482216 * 0.3048, "lbf/ft")],
            "W-24" => [r.Printed("value", IceLoad.DiameterM(0.038, 0.0125), "m")],
            "W-25" => [r.Printed("value", IceLoad.DiameterM(0.006, 0.0125) / 0.006, "")],
            "W-29" => [r.Printed("value", RoundMember.PeakVelocityMS(EuropeanMastRule.LowPressurePa) * 3.6, "km/h")],
            _ => [],
        };
    }
}
