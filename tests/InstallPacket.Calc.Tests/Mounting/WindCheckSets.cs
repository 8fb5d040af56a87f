using InstallPacket.Calc.Mounting;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Mounting;

/// <summary>Worked wind cases: pressures, hills, loads.</summary>
public static class WindCheckSets
{
    private const double MphMS = 0.44704;
    private const double PsfPa = 47.88026;
    private const string File = "mounting/wind_check.csv";
    private const string Half = "half a unit of the last printed digit; 0.5 % where the US constant 0.00256 stands behind the value";

    public static IReadOnlyList<ReferenceSet> All { get; } =
    [
        new()
        {
            Name = "Wind pressure with directionality and the bound of hills", File = File, Source = "asce-7-22", Worth = Worth.Published, Tolerance = Half,
            Formulas = ["wind-pressure-asce", "wind-kzt"], Rows = 32, Comparisons = 2, RowsLeftOut = 30, LeftOutBecause = "worked rows have sets of their own",
            Check = r => r.Text("id") switch
            {
                "W-4" => [HalfPercent(r, WindAsce.VelocityPressurePa(100 * MphMS, 1, 0.85) / PsfPa, "psf")],
                "W-9b" => [r.Printed("value", WindTopography.Factor(0.72, 1, 1), "")],
                _ => [],
            },
        },
        new()
        {
            Name = "Wind pressure, worked", File = File, Source = "asce-7-16", Worth = Worth.Derived, Tolerance = Half,
            Formulas = ["wind-pressure-asce", "wind-kz", "wind-ke", "wind-kzt", "wind-kzt-parts", "wind-asd-load", "wind-asd-speed"],
            Rows = 32, Comparisons = 12, RowsLeftOut = 20, LeftOutBecause = "published rows and forces have sets of their own", Check = Pressure,
        },
    ];

    private static Comparison[] Pressure(ReferenceRow r) => r.Text("id") switch
    {
        "W-1" => [HalfPercent(r, WindAsce.VelocityPressurePa(100 * MphMS, 1, 1) / PsfPa, "psf")],
        "W-2" => [HalfPercent(r, WindAsce.VelocityPressurePa(44.704, 1, 1), "Pa")],
        "W-3" => [r.Printed("value", WindAsce.VelocityPressurePa(44.704, 1, 1) / PsfPa, "psf")],
        "W-5" => [r.Printed("value", WindAsce.Kz(AsceEdition.Asce716, WindExposure.C, 30 * 0.3048), "")],
        "W-6" => [r.Printed("value", WindAsce.Kz(AsceEdition.Asce722, WindExposure.C, 30 * 0.3048), "")],
        "W-7" => [r.Printed("value", WindAsce.Kz(AsceEdition.Asce716, WindExposure.B, 20 * 0.3048, floorB: false), "")],
        "W-8" => [HalfPercent(r, WindAsce.Ke(5000 * 0.3048), "")],
        "W-9" => [r.Printed("value", WindTopography.Kzt(new(HillShape.Ridge, 30, 60, 0), WindExposure.C, 9.144), "")],
        "W-10" => [r.Printed("value", WindSets.ExamplePa, "Pa")],
        "W-10us" => [r.Printed("value", WindSets.ExamplePa / PsfPa, "psf")],
        "W-11" => [r.Printed("value", AllowableStress.WindLoad(WindSets.ExamplePa), "Pa")],
        "W-12" => [r.Printed("value", AllowableStress.SpeedMS(115 * MphMS) / MphMS, "mph")],
        _ => [],
    };

    internal static Comparison HalfPercent(ReferenceRow r, double computed, string unit) => r.Within("value", computed, 0.005 * Math.Abs(r.Value("value")), unit);
}
