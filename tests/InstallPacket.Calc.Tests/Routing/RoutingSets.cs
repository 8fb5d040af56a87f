using InstallPacket.Calc.Routing;
using InstallPacket.Calc.Sources;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Routing;

public static class RoutingSets
{
    public static IReadOnlyList<ReferenceSet> All { get; } =
    [
        new()
        {
            Name = "Drip loops, sags, coils, holes and corners", File = "routing/drip_loop_checks.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit (micrometres); the fall of a hole to 0.005 mm", Formulas = ["drip-loop", "sag-length", "cable-coil", "wall-hole-length", "wall-hole-fall", "bend-corner"],
            Rows = 19, Comparisons = 22, Check = Shape,
        },
        new()
        {
            Name = "Length to cut", File = "routing/piece_length.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "1e-9 m", Formulas = ["piece-length"], Rows = 4, Comparisons = 4,
            Check = r => [r.Within("cut_m", PieceLength.RoundUpM(r.Value("length_m"), r.Value("step_m")), 1e-9, "m")],
        },
        new()
        {
            Name = "Fill of a conduit", File = "routing/conduit_fill.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit", Formulas = ["conduit-fill"], Rows = 5, Comparisons = 5,
            Check = r => [r.Printed("share_pct", ConduitFill.SharePct(Metres(r, "inside_mm"), [.. r.Text("cables_mm").Split(' ').Select(c => CsvNumber.Of(c) / 1000)]), "%")],
        },
        new()
        {
            Name = "Room of a bend", File = "routing/bend_tangent.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit", Formulas = ["bend-tangent"], Rows = 4, Comparisons = 4,
            Check = r => [r.Printed("tangent_mm", 1000 * BendTangent.LengthM(Metres(r, "radius_mm"), r.Value("turn_deg")), "mm")],
        },
    ];

    private static Comparison[] Shape(ReferenceRow r) => r.Text("shape") switch
    {
        "U loop" => [r.Printed("result_mm", 1000 * DripLoop.ExtraLengthM(Metres(r, "h_mm"), Metres(r, "R_mm_or_deg")), "mm")],
        "parabolic sag" => [r.Printed("result_mm", 1000 * (Sag.LengthM(Metres(r, "w_mm_or_turns"), Metres(r, "h_mm")) - Metres(r, "w_mm_or_turns")), "mm")],
        "coiled service loop" => [r.Printed("result_mm", 1000 * CableCoil.LengthM(Metres(r, "h_mm"), r.Value("w_mm_or_turns")), "mm")],
        "90 degree corner" => [r.Printed("result_mm", -1000 * BendCorner.SavingM(Metres(r, "R_mm_or_deg")), "mm")],
        "wall hole" => Hole(r),
        var other => throw new FormatException(other),
    };

    private static Comparison[] Hole(ReferenceRow r)
    {
        double thickness = Metres(r, "h_mm"), slope = r.Value("R_mm_or_deg");
        // The fall stands in the note: "fall 8.75 mm".
        var fall = r.Text("note").Split("fall ")[1].Split(' ')[0];
        return
        [
            r.Printed("result_mm", 1000 * WallHole.LengthM(thickness, slope), "mm"),
            r.Expect("fall", double.Parse(fall, System.Globalization.CultureInfo.InvariantCulture), 1000 * WallHole.FallM(thickness, slope), 0.005, "mm"),
        ];
    }

    private static double Metres(ReferenceRow r, string column) => r.Value(column) / 1000;
}
