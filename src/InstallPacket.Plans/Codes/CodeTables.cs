using System.Reflection;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans.Codes;

/// <summary>The tables of one code family, from the folder of its class in the assembly.</summary>
/// <param name="assembly">The assembly that holds them as resources.</param>
/// <param name="folder">Their folder there: <c>Codes/Us</c>.</param>
internal sealed class CodeTables(Assembly assembly, string folder)
{
    public IReadOnlyList<CodeRule> Rules() => Rows("rules", r =>
        new CodeRule(r["id"], r["topic"], r.GetValueOrDefault("text"), r["document"], r["edition"], r["provenance"]));

    public IReadOnlyList<OutletWindow> Outlets() => Rows("outlets", r => new OutletWindow(
        r["system"], r["mode"], CsvNumber.Of(r["least_dbuv"]), CsvNumber.Of(r["largest_dbuv"]), r["document"], r["edition"],
            r["provenance"]));

    public IReadOnlyList<BondingLimit> Bonding() => Rows("bonding", r =>
        new BondingLimit(r["use"], r["metal"], CsvNumber.Of(r["value"]), r["unit"], r["document"], r["edition"], r["provenance"]));

    public IReadOnlyDictionary<string, CodeLimit> Limits() => Rows("limits", r => new CodeLimit(
        r["id"], CsvNumber.Of(r["value"]), r["unit"], r["document"], r["edition"], r["provenance"], r["source"])).ToDictionary(l => l.Id,
            StringComparer.Ordinal);

    public IReadOnlyList<LadderDuty> Ladders() => Rows("ladders", r => new LadderDuty(
        r["rating"], CsvNumber.Of(r["capacity"]), r["unit"], r["document"], r["edition"], r["provenance"]));

    private IReadOnlyList<T> Rows<T>(string table, Func<IReadOnlyDictionary<string, string>, T> row)
    {
        var name = $"{folder}/{table}.csv";
        using var stream = assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"The code family has no table {name}.");
        using var reader = new StreamReader(stream);
        return [.. CsvText.Rows(reader.ReadToEnd()).Select(row)];
    }
}
