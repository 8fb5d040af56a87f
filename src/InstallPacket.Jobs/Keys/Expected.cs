using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Keys;

/// <summary>What a key holds, as values of a finding: a form and what belongs to it. The words say it below <c>expected.FORM</c>.</summary>
internal static class Expected
{
    /// <summary>A list, whatever its items.</summary>
    public static readonly FindingValues List = Form("any-list");

    /// <summary>What a key of this kind holds.</summary>
    public static FindingValues Of(KeyKind kind) => kind switch
    {
        TextKind t => Form("text", ("most", t.MaxCharacters)),
        IWordKind w => Form("word", ("words", w.Words)),
        IntegerKind i => i.Min == i.Max ? Form("exactly", ("number", i.Min)) : Whole(i.Min, i.Max),
        NumberKind n => Number(n.Min, n.Max),
        QuantityKind q => Form("quantity", ("min", q.Min), ("max", q.Max), ("unit", q.RangeUnit), ("units", Units(q.Dimension))),
        CurveKind c => Form("curve", ("min", c.Min), ("max", c.Max), ("unit", c.RangeUnit), ("units", Units(c.Dimension))),
        DateKind => Form("day"),
        CoordinateKind c => Form(c.Latitude ? "latitude" : "longitude"),
        BearingKind => Form("bearing"),
        ReferenceKind r => Form("name-of-" + r.Target.ToString().ToLowerInvariant()),
        PathKind => Form("file"),
        PositionKind p => Form("position", ("axes", p.Axes)),
        IListKind l => Form("list", ("item", Of(l.Item))),
        IMapKind => Form("map"),
        GroupKind or TreeKind => Form("group"),
        IShortKind s => Of(s.Full),
        _ => throw new InvalidOperationException(kind.GetType().Name),
    };

    /// <summary>A whole number.</summary>
    public static FindingValues Whole(int min, int max) => Form("whole", ("min", min), ("max", max));

    /// <summary>A number.</summary>
    public static FindingValues Number(double min, double max) => Form("number", ("min", min), ("max", max));

    /// <summary>The names of the units of a dimension.</summary>
    public static IEnumerable<string> Units(Dimension dimension) => UnitTable.For(dimension).Select(u => u.Name);

    private static FindingValues Form(string form, params ReadOnlySpan<(string Name, object? Value)> values) =>
        new([("form", form), .. values]);
}
