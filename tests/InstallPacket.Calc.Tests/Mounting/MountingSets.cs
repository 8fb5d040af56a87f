using System.Globalization;
using InstallPacket.Calc.Mounting;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Mounting;

public static class MountingSets
{
    private const double FootM = 0.3048;

    public static IReadOnlyList<ReferenceSet> All { get; } =
    [
        new()
        {
            Name = "Ladders", File = "mounting/ladder_check.csv", Source = "osha-1926-1053", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit; the angle against the published 75.5 deg to 0.05", Formulas = ["ladder-working-length", "ladder-foot-distance", "ladder-rail-length", "ladder-extension-size"],
            Rows = 15, Comparisons = 1 + 6 * 3 + 7 * 4, RowsLeftOut = 1, LeftOutBecause = "angle of a quarter of the height, a rule that is not used", Check = Ladder,
        },
        new()
        {
            Name = "Distance to power lines", File = "mounting/power_line_check.csv", Source = "cpsc-antenna-sheet", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit; 10 ft is 3.048 m here and 3.05 m there", Formulas = ["power-line-distance", "power-line-twice-length", "power-line-beyond-fall"],
            Rows = 6, Comparisons = 4, RowsLeftOut = 2, LeftOutBecause = "1.5 times the height and height plus 8 ft: milder rules that are not used", Check = PowerLine,
        },
    ];

    private static List<Comparison> Ladder(ReferenceRow r)
    {
        var id = r.Text("id");
        if (id == "L-2") return [];
        if (id == "L-1") return [r.Within("value", LadderSet.AngleDeg, 0.005, "deg")];
        var metric = r.Text("unit") == "m";
        var unitM = metric ? 1 : FootM;
        var height = double.Parse(id[2..].TrimEnd('m', 'f', 't'), CultureInfo.InvariantCulture) * unitM;
        var printed = r.Text("value").Split(" / ");
        var working = LadderSet.WorkingLengthM(height);
        var rails = LadderSet.RailLengthM(height);
        Comparison Part(int i, double computed) => r.Expect(
            $"part {i + 1}", double.Parse(printed[i], CultureInfo.InvariantCulture), computed, ReferenceRow.HalfUnit(printed[i]), r.Text("unit"));
        List<Comparison> parts = [Part(0, working / unitM), Part(1, LadderSet.FootDistanceM(working) / unitM), Part(2, rails / unitM)];
        if (!metric) parts.Add(Part(3, LadderSet.ExtensionSizeFt(rails / FootM) ?? double.NaN));
        return parts;
    }

    // The worked case: antenna 1.5 m, mast 3.0 m, fall radius 3.8 m.
    private static Comparison[] PowerLine(ReferenceRow r) => r.Text("id") switch
    {
        "P-1" => [r.Printed("value", PowerLineDistance.TwiceLengthM(1.5, 3.0), "m")],
        "P-3" => [r.Printed("value", PowerLineDistance.BeyondFallM(3.8), "m")],
        "P-5" => [r.Printed("value", PowerLineDistance.RequiredM(1.5, 3.0, 3.8), "m")],
        "P-6" => [r.Expect("line 7 m away must stop", 1, 7 < PowerLineDistance.RequiredM(1.5, 3.0, 3.8) ? 1 : 0, 1e-12, "")],
        "P-2" or "P-4" => [],
        var other => throw new FormatException(other),
    };
}
