using System.Collections.Concurrent;
using System.Globalization;
using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Reception;

/// <summary>Profiles and paths of the reference rows, each read once.</summary>
public static class P1812Inputs
{
    private static readonly ConcurrentDictionary<string, ZonedProfile> Profiles = new();

    private static readonly Lazy<IReadOnlyDictionary<string, ReferenceRow>> List = new(() =>
        CsvText.Rows(ReferenceFile.Text("p1812/profiles.csv")).Select((cells, i) => new ReferenceRow(i + 1, cells)).ToDictionary(r => r.Text("profile")));

    /// <summary>The profile files, as the list names them: a file that the list does not name is not an input.</summary>
    public static IEnumerable<string> Files => List.Value.Keys.Select(File);

    public static ZonedProfile Profile(string name) => Profiles.GetOrAdd(name, static n =>
    {
        var rows = CsvText.Rows(ReferenceFile.Text(File(n))).Select((cells, i) => new ReferenceRow(i + 1, cells)).ToArray();
        return new(
            [.. rows.Select(r => r.Value("distance_km"))], [.. rows.Select(r => r.Value("height_m"))],
            [.. rows.Select(r => r.Value("clutter_height_m"))], [.. rows.Select(r => (RadioZone)(int)r.Value("zone"))]);
    });

    /// <summary>The latitude of the path's centre, from the coordinates in the list.</summary>
    public static double CentreDeg(string name)
    {
        var r = List.Value[name];
        return PathCentre.LatitudeDeg(r.Value("tx_lat_deg"), r.Value("tx_lon_deg"), r.Value("rx_lat_deg"), r.Value("rx_lon_deg"), Profile(name).LengthKm);
    }

    /// <summary>The path of a row that prints its own climate and coasts.</summary>
    public static PreparedPath Path(ReferenceRow r) => new(
        Profile(r.Text("profile")),
        new(r.Value("h_tx_m"), r.Value("dct_km")),
        new(r.Value("h_rx_m"), r.Value("dcr_km")),
        new(CentreDeg(r.Text("profile")), r.Value("DN_N_per_km"), r.Value("N0_N")));

    /// <summary>The path of a row that leaves the climate to the list, or replaces one value of it; no coast near either end.</summary>
    public static PreparedPath ListedPath(ReferenceRow r, double? deltaN = null, double? seaLevelN0 = null)
    {
        var listed = List.Value[r.Text("profile")];
        return new(
            Profile(r.Text("profile")), new(r.Value("h_tx_m")), new(r.Value("h_rx_m")),
            new(CentreDeg(r.Text("profile")), deltaN ?? listed.Value("DN_N_per_km"), seaLevelN0 ?? listed.Value("N0_N")));
    }

    public static PredictionCase Case(ReferenceRow r) => new(
        r.Value("f_MHz"), r.Value("p_pct"), r.Text("pol") == "1" ? WavePolarisation.Horizontal : WavePolarisation.Vertical, r.Value("pL_pct"), r.Value("sigmaL_dB"));

    /// <summary>The name=value pairs of a function check.</summary>
    public static IReadOnlyDictionary<string, double> Arguments(ReferenceRow r) => r.Text("arguments").Split(';').Select(a => a.Split('='))
        .Where(a => !a[1].StartsWith("0.2998", StringComparison.Ordinal)).ToDictionary(a => a[0], a => double.Parse(a[1], CultureInfo.InvariantCulture));

    private static string File(string name) => $"p1812/profiles/{name}.csv";
}
