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

    /// <summary>Rules of European practice after EN 60728-11 (source <c>en-60728-11</c>).</summary>
    public static IReadOnlyList<MastRule> Europe => LoadedEurope.Value;
}
