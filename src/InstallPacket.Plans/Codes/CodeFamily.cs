using InstallPacket.Calc.Cabling;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans.Codes;

/// <summary>
/// All that depends on where the house stands: a folder of tables (<c>rules</c>, <c>limits</c>, <c>outlets</c>, <c>bonding</c>,
/// <c>ladders</c>) and one class that
/// names the standards of wind, mast and screws. Numbers of rules stand in the tables, once.
/// </summary>
public abstract class CodeFamily
{
    private readonly Lazy<IReadOnlyList<CodeRule>> _rules;
    private readonly Lazy<IReadOnlyList<OutletWindow>> _outlets;
    private readonly Lazy<IReadOnlyList<BondingLimit>> _bonding;
    private readonly Lazy<IReadOnlyDictionary<string, CodeLimit>> _limits;
    private readonly Lazy<IReadOnlyList<LadderDuty>> _ladders;

    /// <summary>Names the folder of the family's tables.</summary>
    /// <param name="folder">Folder of the resources in the assembly of the class.</param>
    protected CodeFamily(string folder)
    {
        var tables = new CodeTables(GetType().Assembly, folder);
        (_rules, _outlets, _bonding) = (new(tables.Rules), new(tables.Outlets), new(tables.Bonding));
        (_limits, _ladders) = (new(tables.Limits), new(tables.Ladders));
    }

    /// <summary>What a job takes where it says nothing itself.</summary>
    public abstract CodeDefaults Defaults { get; }

    /// <summary>The word in the job file.</summary>
    public string Id => Defaults.Id;

    /// <summary>What the packet calls it; null where the theme says it (<c>code-families.ID</c>).</summary>
    public virtual string? Name => null;

    /// <summary>The propagation model that the family plans with where the ground is known: <c>itm</c> or <c>p1812</c>.</summary>
    public abstract string PlanningModel { get; }

    /// <summary>Pressure of the wind and the load of a strength check.</summary>
    internal abstract IWindCode Wind { get; }

    /// <summary>How the mast is held and what its tube can take.</summary>
    internal abstract IMastCode Mast { get; }

    /// <summary>Screws in timber.</summary>
    internal abstract IScrewCode Screws { get; }

    /// <summary>Whether weight stands against the wind as it is given (<c>true</c>) or against that of the strength check.</summary>
    internal abstract bool WeightAgainstGust { get; }

    /// <summary>Whether ladders are sold by the nominal size of an extension ladder.</summary>
    internal virtual bool ExtensionLadders => false;

    /// <summary>Whether antennas low on the wall need no bonding conductor.</summary>
    internal virtual bool ExemptsWallZone => false;

    /// <summary>All rules of the family in the order of its table.</summary>
    public IReadOnlyList<CodeRule> Rules => _rules.Value;

    /// <summary>Duty ratings of ladders, the weakest first.</summary>
    public IReadOnlyList<LadderDuty> Ladders => _ladders.Value;

    /// <summary>All numbers that the family asks of bonding.</summary>
    public IReadOnlyList<BondingLimit> Bonding => _bonding.Value;

    /// <summary>The rules of one topic.</summary>
    public IReadOnlyList<CodeRule> RulesOf(string topic) => [.. Rules.Where(r => r.Topic == topic)];

    /// <summary>A number of the family; null where it names none.</summary>
    /// <param name="id">Its identifier in <c>limits.csv</c>.</param>
    public CodeLimit? LimitOf(string id) => _limits.Value.GetValueOrDefault(id);

    /// <summary>A number that every family must name.</summary>
    /// <param name="id">Its identifier in <c>limits.csv</c>.</param>
    /// <exception cref="InvalidOperationException">The table lacks it.</exception>
    public CodeLimit Limit(string id) => LimitOf(id)
        ?? throw new InvalidOperationException($"The code family '{Id}' has no limit '{id}' in its table.");

    /// <summary>The distance that cable keeps from power wiring; null where the family's table has none, as in a raceway.</summary>
    /// <param name="way">How the cable is laid.</param>
    public CodeLimit? FromPower(CableWay way) => LimitOf("from-power-" + Word.Of(way));

    /// <summary>Largest share of a conduit that cables may fill [%].</summary>
    /// <param name="cables">How many cables share it.</param>
    public CodeLimit ConduitFill(int cables) => LimitOf(FormattableString.Invariant($"conduit-fill-{cables}"))
        ?? Limit("conduit-fill-more");

    /// <summary>The level that an outlet should have for a mode. For a mode without a row that of the most demanding row of its system, moved
    /// by the C/N that the mode needs more or less; that row as it is where either C/N is not known. Null when the family asks for
    /// nothing.</summary>
    /// <param name="system">Transmission system.</param>
    /// <param name="mode">Modulation and code rate.</param>
    public OutletWindow? Outlet(string system, string mode)
    {
        var rows = _outlets.Value.Where(o => o.System == system).ToArray();
        if (rows.FirstOrDefault(o => o.Mode == mode || o.Mode.Length == 0) is { } own) return own;
        if (rows.MaxBy(o => o.LeastDbuv) is not { } row || OutletMinimum.Ratios(system, mode, row.Mode) is not { } ratios)
            return rows.MaxBy(o => o.LeastDbuv);
        return row with
        {
            Mode = mode, MovedFrom = row.Mode, LeastDbuv = OutletMinimum.DbuV(row.LeastDbuv, ratios.RequiredDb, ratios.ListedDb),
        };
    }

    /// <summary>A number of bonding; null where the family asks for nothing.</summary>
    /// <param name="use">Which conductor or quantity.</param>
    /// <param name="metal">Of which metal; empty where it does not matter.</param>
    public BondingLimit? BondingOf(string use, string metal = "") => Bonding.FirstOrDefault(b => b.Use == use && b.Metal == metal);
}
