using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Layers;

/// <summary>What a value of a kit holds.</summary>
public enum KitValue
{
    /// <summary>Words.</summary>
    Text,

    /// <summary>Yes or no.</summary>
    YesNo,

    /// <summary>A whole number.</summary>
    Count,

    /// <summary>A length.</summary>
    Length,

    /// <summary>An angle without a north.</summary>
    Angle,

    /// <summary>A bearing with its north.</summary>
    Bearing,

    /// <summary>A ratio in decibels.</summary>
    Ratio,

    /// <summary>A speed.</summary>
    Speed,

    /// <summary>A mass.</summary>
    Mass,

    /// <summary>A force.</summary>
    Force,

    /// <summary>The name of a part.</summary>
    Part,

    /// <summary>The name of a point or place of the house.</summary>
    Point,

    /// <summary>The name of an element of the chain, with its output.</summary>
    Element,

    /// <summary>A group of keys, for example a run.</summary>
    Group,
}

/// <summary>The keys of a value that a kit takes.</summary>
internal static class KitValueKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<KitValue> Holds = Keys.Required("holds", new WordKind<KitValue>(), "What the value is.");

    public static readonly Key<string> What = Keys.Optional("what", new TextKind(200), "What it is for.");

    public static readonly Key<string> Absent = Keys.Optional("absent", new TextKind(200), "The value when the job gives none.");

    public static readonly Key<bool> Needed = Keys.Default(
        "needed", new YesNoKind(), "Whether the job must give it; otherwise every key that asks for it is left out.", "yes");

    public static GroupKind Group => Keys.Group;

    /// <summary>The kind of key by which a value is checked.</summary>
    public static KeyKind KindOf(KitValue holds) => holds switch
    {
        KitValue.Text => new TextKind(200),
        KitValue.YesNo => new YesNoKind(),
        KitValue.Count => new IntegerKind(0, 10_000),
        KitValue.Length => new QuantityKind(Dimension.Length, -500, 5000, "m"),
        KitValue.Angle => new QuantityKind(Dimension.Angle, -360, 360, "deg"),
        KitValue.Bearing => new BearingKind(),
        KitValue.Ratio => new QuantityKind(Dimension.Ratio, -100, 100, "dB"),
        KitValue.Speed => new QuantityKind(Dimension.Speed, 0, 200, "m/s"),
        KitValue.Mass => new QuantityKind(Dimension.Mass, 0, 10_000, "kg"),
        KitValue.Force => new QuantityKind(Dimension.Force, 0, 1_000_000, "N"),
        KitValue.Part => new ReferenceKind(ReferenceTarget.Part),
        KitValue.Point => new ReferenceKind(ReferenceTarget.Point),
        KitValue.Element => new ReferenceKind(ReferenceTarget.Element),
        KitValue.Group => new TreeKind(),
    };
}

/// <summary>The keys of a kit file.</summary>
internal static class KitKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<string> What = Keys.Required("what", new TextKind(200), "What the kit is, in one line.");

    public static readonly Key<IReadOnlyList<Entry<CheckedGroup>>> Takes = Keys.Optional(
        "takes", new MapKind<CheckedGroup>(KitValueKeys.Group, "value", 0, 40),
        "The values that a job gives it. In `gives` a value stands as its name between `<` and `>`.");

    public static readonly Key<string> Out = Keys.Optional(
        "out", new TextKind(40), "The element of the kit that feeds what a job connects to the kit by its name.");

    public static readonly Key<YamlMap> Gives = Keys.Required("gives", new TreeKind(), "Keys of a job, as in a job file.");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of a kit in a job.</summary>
internal static class KitUseKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<string> Kit = Keys.Required("kit", new TextKind(60), "The kit: the name of a file in `_shared/kits`.");

    public static GroupKind Group => Keys.Group;
}
