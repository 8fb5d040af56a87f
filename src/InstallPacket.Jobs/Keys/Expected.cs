using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Keys;

/// <summary>What a key holds, as values of a finding: a form and what belongs to it. The words say it below <c>expected.FORM</c>.</summary>
internal static class Expected
{
    /// <summary>A list, whatever its items.</summary>
    public static readonly FindingValues List = Form("any-list");

    /// <summary>What a key of this kind holds.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="units">The units that are named; all when absent.</param>
    public static FindingValues Of(KeyKind kind, UnitChoice? units = null) => kind switch
    {
        WishKind => Form("wish"),
        TextKind t => Form("text", ("most", t.MaxCharacters)),
        IWordKind w => Form("word", ("words", w.Words)),
        IntegerKind i => i.Min == i.Max ? Form("exactly", ("number", i.Min)) : Whole(i.Min, i.Max),
        NumberKind n => Number(n.Min, n.Max),
        QuantityKind q => Quantity("quantity", q.Dimension, q.Min, q.Max, q.RangeUnit, units),
        CurveKind c => Quantity("curve", c.Dimension, c.Min, c.Max, c.RangeUnit, units),
        DateKind => Form("day"),
        CoordinateKind c => Form(c.Latitude ? "latitude" : "longitude"),
        BearingKind => Form("bearing"),
        ReferenceKind r => Form("name-of-" + r.Target.ToString().ToLowerInvariant()),
        PathKind => Form("file"),
        PositionKind p => Form("position", ("axes", p.Axes)),
        IListKind l => Form("list", ("item", Of(l.Item, units))),
        IMapKind => Form("map"),
        GroupKind or TreeKind => Form("group"),
        IShortKind s => Of(s.Full, units),
        _ => throw new InvalidOperationException(kind.GetType().Name),
    };

    /// <summary>A whole number.</summary>
    public static FindingValues Whole(int min, int max) => Form("whole", ("min", min), ("max", max));

    /// <summary>A number.</summary>
    public static FindingValues Number(double min, double max) => Form("number", ("min", min), ("max", max));

    private static FindingValues Quantity(string form, Dimension dimension, double min, double max, string rangeUnit, UnitChoice? units)
    {
        var choice = units ?? new UnitChoice(null);
        var range = choice.Range(dimension, min, max, rangeUnit);
        return Form(form, ("min", range.Min), ("max", range.Max), ("unit", range.Unit.Name), ("units", choice.Names(dimension)));
    }

    private static FindingValues Form(string form, params ReadOnlySpan<(string Name, object? Value)> values) =>
        new([("form", form), .. values]);
}
