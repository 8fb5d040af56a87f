using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans.Routing;

/// <summary>The sums of the routing planners.</summary>
public static class RoutingFormulas
{
    private const string Own = "project-notes";

    /// <summary>Straight legs of a stretch.</summary>
    public static readonly Formula<IReadOnlyList<double>> StraightLegs = new Formula(
        "straight-legs", "Straight legs of a run", "s = sum sqrt(dx^2 + dy^2 + dz^2)", new("s", "m", "length"), [new("n", "", "legs")],
            Own, "sum", Provenance.Derived)
        .By<IReadOnlyList<double>>((legs, _) => legs.Sum());

    /// <summary>A stretch as it lies.</summary>
    public static readonly Formula RoutedLength = new(
        "routed-length", "Stretch as the cable lies, with the allowance for its way", "a = s k", new("a", "m", "length"),
        [new("s", "m", "straight legs"), new("k", "", "route factor")], Own,
            "trade allowance: 1.05 on a visible surface, in conduit and in the ground, 1.10 in attic or crawl space, 1.15 fished through walls", Provenance.Memory)
    {
        Method = v => v[0] * v[1],
    };

    /// <summary>Length to cut.</summary>
    public static readonly Formula CutLength = new(
        "cut-length", "Length to cut, before rounding up", "l = a + D + g + v + w + t", new("l", "m", "length"),
        [new("a", "m", "stretches with their allowance"), new("D", "m", "drip loops"), new("g", "m", "sag of free spans"),
            new("v", "m", "service loop"), new("w", "m", "slack of the job"), new("t", "m", "termination at both ends")],
        Own, "sum; termination 25 mm of trim and 150 mm of re-termination at each end", Provenance.Memory)
    {
        Method = v => v[0] + v[1] + v[2] + v[3] + v[4] + v[5],
    };

    /// <summary>Clips of a run.</summary>
    public static readonly Formula ClipCount = new(
        "clip-count", "Clips of a run", "n = ceiling(a / c) + ceiling(b / d) + 1", new("n", "", "clips"),
        [new("a", "m", "level and sloping cable"), new("c", "m", "largest spacing"), new("b", "m", "upright cable"),
            new("d", "m", "largest spacing, upright")], Own, "count", Provenance.Derived)
    {
        Method = v => Math.Ceiling(v[0] / v[1] - 1e-9) + Math.Ceiling(v[2] / v[3] - 1e-9)
            + 1 /* a billionth of a clip is binary rounding */,
    };

    /// <summary>Drill of an entry.</summary>
    public static readonly Formula EntryHole = new(
        "entry-hole", "Drill of an entry, where the job states none", "h = d + 3 mm", new("h", "m", "drill"),
            [new("d", "m", "outside diameter of the cable")],
        Own, "trade rule: the cable and 2 to 3 mm, through a bushing or sleeve", Provenance.Memory)
    {
        Method = v => v[0] + 0.003,
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Formula> All => [StraightLegs, RoutedLength, CutLength, ClipCount, EntryHole];
}
