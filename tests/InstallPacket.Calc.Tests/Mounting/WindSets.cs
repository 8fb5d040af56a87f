using InstallPacket.Calc.Mounting;
using InstallPacket.Calc.Sources;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Mounting;

/// <summary>Wind pressure by the American standard.</summary>
public static class WindSets
{
    private const double MphMS = 0.44704;

    private const string Gust = "mounting/wind_directionality_gust.csv";

    public static IReadOnlyList<ReferenceSet> All { get; } =
    [
        new()
        {
            Name = "Exposure factor against the table of 7-22", File = "mounting/wind_kz_table.csv", Source = "asce-7-22", Worth = Worth.Published,
            Tolerance = "0.015: the printed cells leave the printed equation by up to 0.0135", Formulas = ["wind-kz"],
            Rows = 39, Comparisons = 30, RowsLeftOut = 9, LeftOutBecause = "the other edition has a set of its own", Check = r => Table(r, "ASCE 7-22"),
        },
        new()
        {
            Name = "Exposure factor against the table of 7-10", File = "mounting/wind_kz_table.csv", Source = "asce-7-10", Worth = Worth.Published,
            Tolerance = "0.015: the printed cells leave the printed equation by up to 0.0135", Formulas = ["wind-kz"],
            Rows = 39, Comparisons = 9, RowsLeftOut = 30, LeftOutBecause = "the other edition has a set of its own", Check = r => Table(r, "ASCE 7-10"),
        },
        new()
        {
            Name = "Exposure factor from the equation", File = "mounting/wind_kz_table.csv", Source = "asce-7-16", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit", Formulas = ["wind-kz"], Rows = 39, Comparisons = 39,
            Check = r => [r.Printed("Kz_from_equation", Kz(r), "")],
        },
        new()
        {
            Name = "Constants of the wind profile", File = "mounting/wind_exposure_constants.csv", Source = "asce-7-16", Worth = Worth.Published,
            Tolerance = "exact", Formulas = ["wind-kz"], Rows = 6, Comparisons = 24, Check = Profile,
        },
        new()
        {
            Name = "Constants of hills", File = "mounting/wind_topographic.csv", Source = "asce-7-22", Worth = Worth.Published,
            Tolerance = "exact", Formulas = ["wind-kzt-parts"], Rows = 3, Comparisons = 18, Check = Topography,
        },
        new()
        {
            Name = "Directionality and gust effect, as read", File = Gust, Source = "asce-7-10", Worth = Worth.Published,
            Tolerance = "exact", Formulas = ["wind-gust-effect", "wind-ke", "wind-pressure-asce"], Rows = 12, Comparisons = 5, RowsLeftOut = 7,
            LeftOutBecause = "own choices and recalled values have a set of their own; square chimneys and two constants in US units are not used", Check = GustRead,
        },
        new()
        {
            Name = "Gust effect, recalled and chosen", File = Gust, Source = "tia-222", Worth = Worth.Recalled,
            Tolerance = "exact", Formulas = ["wind-gust-effect", "wind-asd-load"], Rows = 12, Comparisons = 4, RowsLeftOut = 8,
            LeftOutBecause = "rows that were read have a set of their own; the factor of poles that stand alone is not used", Check = GustRecalled,
        },
    ];

    internal static AsceEdition Edition(ReferenceRow r) => r.Text("edition") == "ASCE 7-22" ? AsceEdition.Asce722 : AsceEdition.Asce716;

    private static double Kz(ReferenceRow r) => WindAsce.Kz(Edition(r), Enum.Parse<WindExposure>(r.Text("exposure")), r.Value("z_ft") * 0.3048, floorB: false);

    private static Comparison[] Table(ReferenceRow r, string edition) =>
        r.Text("edition") == edition ? [r.Within("Kz_tabulated", Kz(r), 0.015, "")] : [];

    private static Comparison[] Profile(ReferenceRow r)
    {
        var profile = WindProfile.Of(Edition(r), Enum.Parse<WindExposure>(r.Text("exposure")));
        return
        [
            r.Within("coefficient", profile.Coefficient, 1e-9, ""), r.Within("alpha", profile.Alpha, 1e-9, ""), r.Within("zg_m", profile.GradientM, 1e-9, "m"),
            r.Within("z_floor_ft", WindAsce.LowestHeightM / 0.3048, 1e-9, "ft"),
        ];
    }

    private static Comparison[] Topography(ReferenceRow r)
    {
        var row = WindTopography.Constants(r.Text("feature") switch
        {
            "2D ridge" => HillShape.Ridge,
            "2D escarpment" => HillShape.Escarpment,
            "3D axisymmetric hill" => HillShape.Hill,
            var other => throw new FormatException(other),
        });
        return
        [
            r.Within("K1_over_H_Lh_B", row.K(WindExposure.B), 1e-9, ""), r.Within("K1_over_H_Lh_C", row.K(WindExposure.C), 1e-9, ""),
            r.Within("K1_over_H_Lh_D", row.K(WindExposure.D), 1e-9, ""), r.Within("gamma", row.Gamma, 1e-9, ""),
            r.Within("mu_upwind", row.MuUpwind, 1e-9, ""), r.Within("mu_downwind", row.MuDownwind, 1e-9, ""),
        ];
    }

    private static Comparison[] GustRead(ReferenceRow r) => r.Text("item") switch
    {
        "Kd lattice framework or open sign" => [r.Within("value", WindAsce.LatticeKd, 1e-9, "")],
        "Kd round chimney/tank type" => [r.Within("value", WindAsce.DirectionalityKd, 1e-9, "")],
        "G rigid structure (first natural frequency >= 1 Hz)" => [r.Within("value", WindAsce.GustEffect(1, averageOverSize: true), 1e-9, "")],
        "Pa constant" => [r.Within("value", WindAsce.VelocityPressurePa(1, 1, 1), 1e-9, "")],
        "Ke per metre of ground elevation" => [r.Expect("exponent at 1000 m", -0.119, Math.Log(WindAsce.Ke(1000)), 1e-9, "")],
        _ => [],
    };

    private static Comparison[] GustRecalled(ReferenceRow r) => r.Text("item") switch
    {
        "Kd default recommended here for mast plus antenna" => [r.Within("value", WindAsce.DirectionalityKd, 1e-9, "")],
        "G recommended default here for a small object" => [r.Within("value", WindAsce.GustEffect(1), 1e-9, "")],
        "Gh TIA-222-G tubular structure supported on another structure" => [r.Within("value", WindAsce.GustEffect(0.99), 1e-9, "")],
        "ASD load factor on wind from 7-10 and later speeds" => [r.Within("value", AllowableStress.WindLoad(1), 1e-9, "")],
        _ => [],
    };

    /// <summary>The design pressure of the pack's example [Pa]: 115 mph, exposure C, 30 ft.</summary>
    internal static double ExamplePa => WindAsce.VelocityPressurePa(115 * MphMS, WindAsce.Kz(AsceEdition.Asce716, WindExposure.C, 9.144), WindAsce.DirectionalityKd);
}
