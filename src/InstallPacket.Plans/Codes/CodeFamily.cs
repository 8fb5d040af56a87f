using System.Reflection;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans;

/// <summary>
/// The rules that a packet quotes: one class and one table a family. A third family is a table <c>Codes/rules-NAME.csv</c>, a class and a
/// word in the key catalogue.
/// </summary>
public abstract class CodeFamily
{
    private readonly Lazy<IReadOnlyList<CodeRule>> _rules;

    /// <summary>Loads the table of the family.</summary>
    protected CodeFamily() => _rules = new(Load);

    /// <summary>The word in the job file.</summary>
    public abstract string Id { get; }

    /// <summary>What the packet calls it.</summary>
    public abstract string Name { get; }

    /// <summary>Largest distance between cable clips [m].</summary>
    public abstract double ClipSpacingM { get; }

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

    private CodeRule[] Load()
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream($"Codes/rules-{Id}.csv")!;
        using var reader = new StreamReader(stream);
        return [.. CsvText.Rows(reader.ReadToEnd()).Select(r => new CodeRule(r["id"], r["topic"], r["text"], r["document"], r["edition"], r["provenance"]))];
    }
}
