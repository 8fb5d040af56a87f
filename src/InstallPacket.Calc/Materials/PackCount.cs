using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Materials;

/// <summary>What to bring: spares added, then whole packs.</summary>
public static class PackCount
{
    /// <summary>Count with spares.</summary>
    public static readonly Formula SpareFormula = new(
        "count-with-spares", "Count with spares", "m = ceiling(n (1 + s / 100))", new("m", "", "pieces or metres"),
        [new("n", "", "wanted by the plan"), new("s", "%", "spare share of the part")], "project-notes",
            "trade habit of spares, rounded up", Provenance.CommonPractice)
    {
        Method = v => WithSpares((int)v[0], v[1]),
    };

    /// <summary>Whole packs.</summary>
    public static readonly Formula PacksFormula = new(
        "whole-packs", "Packs to bring", "p = ceiling(m / k)", new("p", "", "packs"),
        [new("m", "", "wanted with spares"), new("k", "", "in a pack")], "project-notes", "rounding up", Provenance.Derived)
    {
        Method = v => Packs((int)v[0], (int)v[1]),
    };

    /// <summary>Count with spares, rounded up.</summary>
    /// <param name="wanted">Wanted by the plan, not negative; outside throws.</param>
    /// <param name="sparePct">Spare share [%], not negative; outside throws.</param>
    public static int WithSpares(int wanted, double sparePct)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(wanted);
        ArgumentOutOfRangeException.ThrowIfNegative(sparePct);
        // 20 pieces with 10 % are 22, whatever the last bit of the product says.
        return (int)Math.Ceiling(wanted * (1 + sparePct / 100) - 1e-9);
    }

    /// <summary>Packs that hold a count.</summary>
    /// <param name="count">Pieces, not negative; outside throws.</param>
    /// <param name="inPack">Pieces in a pack, above 0; outside throws.</param>
    public static int Packs(int count, int inPack)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(count);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(inPack);
        return (count + inPack - 1) / inPack;
    }
}
