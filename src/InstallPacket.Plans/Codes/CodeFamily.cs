using System.Reflection;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans.Codes;

/// <summary>
/// The rules that a packet quotes: one class and one table a family. A third family is three tables (<c>Codes/rules-NAME.csv</c>, <c>outlets-NAME.csv</c>, <c>bonding-NAME.csv</c>), a class and a
/// word in the key catalogue.
/// </summary>
public abstract class CodeFamily
{
    private readonly Lazy<IReadOnlyList<CodeRule>> _rules;
    private readonly Lazy<IReadOnlyList<OutletWindow>> _outlets;
    private readonly Lazy<IReadOnlyList<BondingLimit>> _bonding;

    /// <summary>Loads the tables of the family.</summary>
    protected CodeFamily()
    {
        _rules = new(() => [.. Rows("rules").Select(r => new CodeRule(r["id"], r["topic"], r["text"], r["document"], r["edition"], r["provenance"]))]);
        _outlets = new(() => [.. Rows("outlets").Select(r => new OutletWindow(r["system"], r["mode"], CsvNumber.Of(r["least_dbuv"]), CsvNumber.Of(r["largest_dbuv"]), r["document"], r["edition"], r["provenance"]))]);
        _bonding = new(() => [.. Rows("bonding").Select(r => new BondingLimit(r["use"], r["metal"], CsvNumber.Of(r["value"]), r["unit"], r["document"], r["edition"], r["provenance"]))]);
    }

    /// <summary>The word in the job file.</summary>
    public abstract string Id { get; }

    /// <summary>What the packet calls it.</summary>
    public abstract string Name { get; }

    /// <summary>The language of its packets unless the job names another.</summary>
    public abstract string Language { get; }

    /// <summary>Largest distance between cable clips [m].</summary>
    public abstract double ClipSpacingM { get; }

    /// <summary>Height above which an unprotected edge needs protection [m]; null where the law names none.</summary>
    public abstract double? FallProtectionM { get; }

    /// <summary>The same on an upright cable [m].</summary>
    public abstract double UprightClipSpacingM { get; }

    /// <summary>The distance that cable keeps from power wiring, with its rule; null where the family's table has none.</summary>
    /// <param name="way">How the cable is laid.</param>
    public abstract RuleLimit? FromPower(CableWay way);

    /// <summary>Largest share of a conduit that cables may fill [%], with its rule.</summary>
    /// <param name="cables">How many cables share it.</param>
    public abstract RuleLimit ConduitFill(int cables);

    /// <summary>A limit with the rule of the table that states it.</summary>
    protected RuleLimit Limit(double value, string rule) => new(value, Rules.First(r => r.Id == rule));

    /// <summary>The propagation model that the family plans with where the ground is known: <c>itm</c> or <c>p1812</c>.</summary>
    public abstract string PlanningModel { get; }

    /// <summary>All rules of the family in the order of its table.</summary>
    public IReadOnlyList<CodeRule> Rules => _rules.Value;

    /// <summary>The rules of one topic.</summary>
    public IReadOnlyList<CodeRule> RulesOf(string topic) => [.. Rules.Where(r => r.Topic == topic)];

    /// <summary>The family with this word.</summary>
    public static CodeFamily Of(string id) => id switch
    {
        "us" => UsCodeFamily.Instance,
        "eu" => EuCodeFamily.Instance,
        _ => throw new ArgumentOutOfRangeException(nameof(id), id, "No such code family."),
    };

    /// <summary>The level that an outlet should have for a mode; for a mode without a row, the most demanding row of its system. Null when the family asks for nothing.</summary>
    /// <param name="system">Transmission system.</param>
    /// <param name="mode">Modulation and code rate.</param>
    public OutletWindow? Outlet(string system, string mode)
    {
        var rows = _outlets.Value.Where(o => o.System == system).ToArray();
        return rows.FirstOrDefault(o => o.Mode == mode || o.Mode.Length == 0) ?? rows.MaxBy(o => o.LeastDbuv);
    }

    /// <summary>All numbers that the family asks of bonding.</summary>
    public IReadOnlyList<BondingLimit> Bonding => _bonding.Value;

    /// <summary>One of them; null where the family asks for nothing.</summary>
    /// <param name="use">Which conductor or quantity.</param>
    /// <param name="metal">Of which metal; empty where it does not matter.</param>
    public BondingLimit? BondingOf(string use, string metal = "") => Bonding.FirstOrDefault(b => b.Use == use && b.Metal == metal);

    private IEnumerable<IReadOnlyDictionary<string, string>> Rows(string table)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream($"Codes/{table}-{Id}.csv")!;
        using var reader = new StreamReader(stream);
        return CsvText.Rows(reader.ReadToEnd());
    }
}
