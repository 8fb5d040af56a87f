using System.Globalization;
using System.Text.RegularExpressions;
using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Siting;
using InstallPacket.Calc.Sources;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Reception;

/// <summary>Trees, roofs, walls and the ground in front of the receiver.</summary>
public static partial class ObstacleSets
{
    private const string OtherCases = "need the tables of the recommendation, which are not carried, or belong to another formula";

    // Case 37: the path at 600 MHz with nothing special about it.
    private const double PlainFieldDbuVm = 54.8695;

    public static IReadOnlyList<ReferenceSet> All { get; } =
    [
        new()
        {
            Name = "Constants of woodland", File = "reception/vegetation_p833_reference.csv", Source = "itu-p833", Worth = Worth.Published,
            Tolerance = "1e-9 at the five measured frequencies", Formulas = ["vegetation-woodland-constants"], Rows = 5, Comparisons = 10,
            Check = r =>
            [
                r.Within("gamma_db_per_m", WoodlandLoss.Constants(r.Value("freq_mhz")).GammaDbPerM, 1e-9, "dB/m"),
                r.Within("Am_db", WoodlandLoss.Constants(r.Value("freq_mhz")).MostDb, 1e-9, "dB"),
            ],
        },
        new()
        {
            Name = "Loss through trees", File = "reception/vegetation_check.csv", Source = "weissberger-1982", Worth = Worth.Derived,
            Tolerance = "half a unit of the last digit (0.01 dB, 0.0001 dB/m); below 230 MHz the form for trees in leaf is refused",
            Formulas = ["vegetation-weissberger", "vegetation-woodland", "vegetation-woodland-constants", "vegetation-early-itu"],
            Rows = 30, Comparisons = 150, Check = Trees,
        },
        new()
        {
            Name = "Bare trees and trees in leaf", File = "reception/vegetation_season.csv", Source = "project-notes", Worth = Worth.Recalled,
            Tolerance = "1e-9 dB", Formulas = ["vegetation-in-leaf"], Rows = 4, Comparisons = 8,
            Check = r =>
            [
                r.Within("low_db", Vegetation.InLeaf(r.Value("bare_db"), r.Value("freq_mhz")).LowDb, 1e-9, "dB"),
                r.Within("high_db", Vegetation.InLeaf(r.Value("bare_db"), r.Value("freq_mhz")).HighDb, 1e-9, "dB"),
            ],
        },
        new()
        {
            Name = "Trees as a screen", File = "reception/vegetation_screen.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "1e-9 dB", Formulas = ["vegetation-screen-cap"], Rows = 3, Comparisons = 3,
            Check = r => [r.Within("loss_db", Vegetation.ScreenCapDb(r.Value("through_db"), r.Value("edge_db")), 1e-9, "dB")],
        },
        new()
        {
            Name = "Loss into buildings", File = "reception/building_entry_p2109_check.csv", Source = "itu-p2109", Worth = Worth.Derived,
            Tolerance = "half a unit of the last digit, 0.001 dB", Formulas = ["building-entry-median", "building-entry-loss", "normal-quantile"],
            Rows = 30, Comparisons = 60, Check = Walls,
        },
        new()
        {
            Name = "Table of roofs and rooms", File = "reception/building_loss.csv", Source = "building-loss-table", Worth = Worth.Recalled,
            Tolerance = "exact; the building rows were read, the roofs are recalled (that foil and metal block was read, the figure was not)", Formulas = ["attic-loss", "indoor-loss"], Rows = 9, Comparisons = 9 * 3, Check = RoofsAndRooms,
        },
        new()
        {
            Name = "Ground in front of the receiver", File = "reception/p1546_check.csv", Source = "itu-p1546-6", Worth = Worth.Independent,
            Tolerance = "0.0001 dB, a unit of the last printed digit, on the difference of two cases; at 60 and 200 MHz the case without an angle was worked from the recommendation's tables",
            Formulas = ["terrain-clearance", "knife-edge-loss"],
            Rows = 64, Comparisons = 8, RowsLeftOut = 56, LeftOutBecause = OtherCases, Check = Clearance,
        },
        new()
        {
            Name = "Clearance angle over a profile", File = "reception/terrain_clearance_angle.csv", Source = "itu-p1546-6", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit", Formulas = ["terrain-clearance-angle"], Rows = 5, Comparisons = 5,
            Check = r => [r.Printed("angle_deg", TerrainClearance.Angle(Profile(r), r.Value("antenna_m")).AngleDeg, "deg")],
        },
        new()
        {
            Name = "Gain with receiving height against another program", File = "reception/p1546_check.csv", Source = "itu-p1546-6", Worth = Worth.Independent,
            Tolerance = "0.0001 dB, a unit of the last printed digit, on the difference of two cases", Formulas = ["receiving-height-gain"],
            Rows = 64, Comparisons = 6, RowsLeftOut = 58, LeftOutBecause = OtherCases,
            Check = r => r.Value("case") is >= 34 and <= 39
                ? [r.Within("E_dbuvm_1kW", PlainFieldDbuVm + ReceivingHeight.GainDb(r.Value("freq_mhz"), r.Value("rx_height_m"), 10), 0.0001, "dB")] : [],
        },
        new()
        {
            Name = "Spread between places against another program", File = "reception/p1546_check.csv", Source = "itu-p1546-6", Worth = Worth.Independent,
            Tolerance = "0.0001 dB, a unit of the last printed digit, on the difference of two cases", Formulas = ["location-sigma", "p1812-share-quantile"],
            Rows = 64, Comparisons = 4, RowsLeftOut = 60, LeftOutBecause = OtherCases,
            Check = r => r.Value("location_pct") == 50 ? []
                : [r.Within("E_dbuvm_1kW", PlainFieldDbuVm + ShareQuantile.Inverse(r.Value("location_pct") / 100) * LocationVariation.SmallSquareSigmaDb(r.Value("freq_mhz"), 500), 0.0001, "dB")],
        },
    ];

    private static IEnumerable<Comparison> Trees(ReferenceRow r)
    {
        double f = r.Value("freq_mhz"), depth = r.Value("depth_m");
        var (gamma, most) = WoodlandLoss.Constants(f);
        if (r.Text("weissberger_valid") == "yes") yield return r.Within("weissberger_db", Vegetation.WeissbergerDb(f, depth), 0.0050001, "dB");
        else yield return r.Expect("refused", 1, Refuses(() => Vegetation.WeissbergerDb(f, depth)), 1e-12, "");
        yield return r.Within("p833_gamma_db_per_m", gamma, 0.000050001, "dB/m");
        yield return r.Within("p833_Am_db", most, 0.0050001, "dB");
        yield return r.Within("p833_loss_db", WoodlandLoss.Db(f, depth), 0.0050001, "dB");
        yield return r.Within("early_itu_db", Vegetation.EarlyDb(f, depth), 0.0050001, "dB");
    }

    private static double Refuses(Func<double> call)
    {
        try
        {
            call();
            return 0;
        }
        catch (ArgumentOutOfRangeException)
        {
            return 1;
        }
    }

    private static IEnumerable<Comparison> Walls(ReferenceRow r)
    {
        var kind = r.Text("building") == "traditional" ? BuildingKind.Traditional : BuildingKind.ThermallyEfficient;
        var mhz = 1000 * r.Value("freq_ghz");
        yield return r.Within("median_horizontal_db", BuildingEntry.MedianDb(kind, mhz), 0.00050001, "dB");
        yield return r.Within("loss_db", BuildingEntry.LossDb(kind, mhz, r.Value("probability_pct") / 100, r.Value("elevation_deg")), 0.00050001, "dB");
    }

    // The words that carry each line of the notes, and a frequency in each of its bands.
    private static IEnumerable<Comparison> RoofsAndRooms(ReferenceRow r)
    {
        (Func<string, double, BuildingLossRow?> find, string[] words, double[] mhz) = r.Number switch
        {
            1 => (IndoorLoss.Find, ["light-building"], [600.0]),
            2 => (IndoorLoss.Find, ["medium-building"], [600.0]),
            3 => (IndoorLoss.Find, ["heavy-building"], [600.0]),
            4 => (IndoorLoss.Find, ["any-building"], [200.0]),
            5 => (IndoorLoss.Find, ["wood-frame-house"], [1500.0]),
            6 => (AtticLoss.Find, ["asphalt-shingles", "tile"], [600.0, 100.0]),
            7 => (AtticLoss.Find, ["wet-deck", "slate", "concrete-tile"], [600.0]),
            8 => (AtticLoss.Find, ["metal-roof", "foil-insulation", "radiant-barrier", "stucco-mesh"], [60.0]),
            _ => ((Func<string, double, BuildingLossRow?>)IndoorLoss.Find, (string[])["ground-floor-room"], (double[])[600.0]),
        };
        var stated = Numbers().Matches(r.Text("loss_db")).Select(m => double.Parse(m.Value, CultureInfo.InvariantCulture)).ToArray();
        var rows = words.Select(w => mhz.Select(f => find(w, f)).ToArray()).ToArray();
        var met = rows.Count(bands => bands.SelectMany(Stated).SequenceEqual(stated));
        var sigma = r.Text("sigma_db").Length == 0 ? double.NaN : r.Value("sigma_db");
        var spreads = rows.Sum(bands => bands.Count(b => (b?.SigmaDb ?? double.NaN).Equals(sigma)));
        // That foil and metal block was read, the 20 dB beside it was not: the weaker mark is carried.
        var mark = r.Text("provenance") == "read" && r.Number != 8 ? Provenance.Read : Provenance.Memory;
        var marks = rows.Sum(bands => bands.Count(b => b?.Provenance == mark));
        yield return r.Expect("loss_db", words.Length, met, 1e-12, "rows");
        yield return r.Expect("sigma_db", words.Length * mhz.Length, spreads, 1e-12, "rows");
        yield return r.Expect("provenance", words.Length * mhz.Length, marks, 1e-12, "rows");
    }

    private static IEnumerable<double> Stated(BuildingLossRow? row) => row switch
    {
        null => [],
        { Blocks: true, LowDb: { } least, TypicalDb: null, HighDb: null } => [least],
        { LowDb: { } low, HighDb: { } high, TypicalDb: { } middle } when middle == (low + high) / 2 => [low, high],
        { LowDb: null, HighDb: null, TypicalDb: { } mean } => [mean],
        _ => [double.NaN],
    };

    private static IEnumerable<Comparison> Clearance(ReferenceRow r)
    {
        if (r.Text("tca_deg").Length == 0) return [];
        var without = CsvText.Rows(ReferenceFile.Text("reception/p1546_without_angle.csv")).Select((c, i) => new ReferenceRow(i + 1, c))
            .Single(x => x.Text("case") == r.Text("case")).Value("E_dbuvm_1kW");
        return [r.Within("E_dbuvm_1kW", without + TerrainClearance.CorrectionDb(r.Value("freq_mhz"), r.Value("tca_deg")), 0.0001, "dB")];
    }

    private static TerrainProfile Profile(ReferenceRow r) =>
        new([.. r.Text("elevations_m").Split(' ').Select(t => double.Parse(t, CultureInfo.InvariantCulture))], r.Value("step_m"));

    [GeneratedRegex(@"\d+(\.\d+)?")]
    private static partial Regex Numbers();
}
