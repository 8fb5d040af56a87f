using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting;

/// <summary>One rule for masts, in words.</summary>
/// <param name="Rule">What it is about.</param>
/// <param name="Value">What it asks for.</param>
/// <param name="Unit">Unit of the value, empty when it is text or a pure number.</param>
/// <param name="Origin">Where exactly in the source.</param>
/// <param name="Provenance">How it is known.</param>
public sealed record MastRule(string Rule, string Value, string Unit, string Origin, Provenance Provenance)
{
    private static readonly Lazy<IReadOnlyList<MastRule>> LoadedEurope = new(() =>
    [
        .. EmbeddedTable.Rows("Mounting/mast-rules-europe.csv").Select(r => new MastRule(
            r["rule"], r["value"], r["unit"], "trade worksheets", CsvProvenance.Of(r["provenance"]))),
    ]);

    private static readonly Lazy<IReadOnlyList<MastRule>> LoadedUs = new(() =>
    [
        .. EmbeddedTable.Rows("Mounting/guy-rules-us.csv").Select(r => new MastRule(
            r["rule"], r["value"], r["unit"], r["origin"], CsvProvenance.Of(r["provenance"]))),
    ]);

    /// <summary>When a mast needs guys.</summary>
    public static readonly Formula UsGuysFormula = new(
        "us-guys-needed",
        "When a mast needs guys by US city ordinances",
        "guys = 1 when h > 3.048, else 0",
        new("guys", "", "1 when guys are asked for, else 0"), [new("h", "m", "mast above its base")],
        "us-mast-ordinances", "10 ft above the base; some cities exempt masts shown to bear 25 lb/ft2");

    /// <summary>A mast that rises more than this above its base is guyed [m], 10 ft; three US cities.</summary>
    public const double UsGuysAboveM = 10 * 0.3048;

    /// <summary>Rules of US city ordinances (source <c>us-mast-ordinances</c>).</summary>
    public static IReadOnlyList<MastRule> UsOrdinances => LoadedUs.Value;

    /// <summary>Rules of European practice after EN 60728-11 (source <c>en-60728-11</c>).</summary>
    public static IReadOnlyList<MastRule> Europe => LoadedEurope.Value;

    /// <summary>True when the ordinances ask for guys.</summary>
    /// <param name="aboveBaseM">Mast above its base [m], not negative; outside throws.</param>
    public static bool UsGuysNeeded(double aboveBaseM) => Limit.AtLeast(aboveBaseM, 0, "mast above its base in m") > UsGuysAboveM;
}
