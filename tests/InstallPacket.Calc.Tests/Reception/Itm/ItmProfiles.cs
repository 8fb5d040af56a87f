using System.Globalization;
using InstallPacket.Calc.Siting;
using InstallPacket.Calc.Sources;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Reception;

/// <summary>The terrain of the reference rows.</summary>
public static class ItmProfiles
{
    /// <summary>Files that hold terrain and no values to be met.</summary>
    public static IReadOnlyList<string> Files { get; } =
        ["itm/profiles.csv", "itm/official_profiles.csv", "itm/official_driver_profile.csv", .. GeneratedNames().Select(GeneratedFile)];

    private static readonly Lazy<Dictionary<string, TerrainProfile>> Synthetic = new(() => Read("itm/profiles.csv", "profile"));
    private static readonly Lazy<Dictionary<string, TerrainProfile>> Official = new(() => Read("itm/official_profiles.csv", "case"));
    private static readonly Lazy<TerrainProfile> Driver = new(() => Read("itm/official_driver_profile.csv", "intervals").Values.Single());
    private static readonly Lazy<Dictionary<string, TerrainProfile>> Generated = new(ReadGenerated);

    public static IEnumerable<string> Names => Synthetic.Value.Keys;

    public static TerrainProfile OfDriver => Driver.Value;

    public static TerrainProfile Of(string name) => Synthetic.Value[name];

    public static TerrainProfile OfficialCase(string name) => Official.Value[name];

    public static TerrainProfile GeneratedOf(string name) => Generated.Value[name];

    private static string GeneratedFile(string name) => $"itm/profiles/{name}.csv";

    private static IEnumerable<string> GeneratedNames() => CsvText.Rows(ReferenceFile.Text("itm/generated.csv")).Select(r => r["profile"]).Distinct();

    private static Dictionary<string, TerrainProfile> Read(string file, string key) => CsvText.Rows(ReferenceFile.Text(file)).ToDictionary(
        r => r[key], r => Checked([.. r["elevations_m"].Split(' ').Select(Number)], r), StringComparer.Ordinal);

    private static Dictionary<string, TerrainProfile> ReadGenerated() => CsvText.Rows(ReferenceFile.Text("itm/generated.csv"))
        .DistinctBy(r => r["profile"])
        .ToDictionary(r => r["profile"], r => Checked([.. CsvText.Rows(ReferenceFile.Text(GeneratedFile(r["profile"]))).Select(p => Number(p["elevation_m"]))], r));

    private static TerrainProfile Checked(double[] elevationsM, IReadOnlyDictionary<string, string> row)
    {
        var profile = new TerrainProfile(elevationsM, Number(row["step_m"]));
        return profile.Intervals == (int)Number(row["intervals"]) ? profile : throw new FormatException("A profile is cut short.");
    }

    private static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);
}
