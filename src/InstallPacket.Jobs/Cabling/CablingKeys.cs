using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Cabling;

/// <summary>The keys of an element of the chain.</summary>
internal static class ElementKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<string> Part = Keys.Required("part", new ReferenceKind(ReferenceTarget.Part), "The part.");

    public static readonly Key<string> At = Keys.Required(
        "at", new ReferenceKind(ReferenceTarget.Point),
        "The point of the house where it sits. May be left out where it is screwed to what feeds it, or where its run has a length.");

    public static readonly Key<string> From = Keys.Optional(
        "from", new ReferenceKind(ReferenceTarget.Element),
        "The element that feeds it, with the output number if it has several: `S1.2`. Only the antenna has none.");

    public static readonly Key<string> Run = Keys.Optional(
        "run", new ShortKind<string>(new ReferenceKind(ReferenceTarget.Run), RunKeys.Group),
        "The cable run that brings the signal, by its name or with its keys; absent when it is screwed to the element before it.");

    public static readonly Key<string> Second = Keys.Optional(
        "second", new ReferenceKind(ReferenceTarget.Element), "Combiner: the element that feeds its second input.");

    public static readonly Key<string> SecondRun = Keys.Optional(
        "second-run", new ShortKind<string>(new ReferenceKind(ReferenceTarget.Run), RunKeys.Group),
        "Combiner: the cable run to its second input; absent when it is screwed on.");

    public static readonly Key<Bearing> Aim = Keys.Optional(
        "aim", new BearingKind(),
        "Second antenna: where it points; chosen by the program when absent. The first antenna takes `reception.aim`.");

    public static readonly Key<double> Setting = Keys.Optional(
        "setting", new QuantityKind(Dimension.Ratio, 0, 60, "dB"), "Amplifier with a gain control: the gain to set.");

    public static readonly Key<string> Serves = Keys.Optional("serves", new TextKind(60), "Outlet: the room or the set that it serves.");

    public static readonly Key<string> Dwelling = Keys.Optional(
        "dwelling", new TextKind(60),
        "Outlet: the dwelling that it belongs to. Outlets of different dwellings are kept farther apart; without it all belong to one.");

    public static readonly Key<string> Outlet = Keys.Optional(
        "outlet", new TextKind(60), "An outlet in one word: the room or the set that it serves; its part is `cabling.outlet`.");

    public static readonly Key<CheckedGroup> Fixings = Keys.Optional(
        "fixings", DeviceFixingKeys.Group,
        "What it is fixed to its place with; what its part says under `fixes-with` when absent. Not in the check of the mount.");

    public static readonly Key<bool> Existing = Keys.Default(
        "existing", new YesNoKind(), "Whether the part is in the house already; then it is not bought and not mounted, but tested.", "no");

    public static readonly Key<double> FlyLead = Keys.Default(
        "fly-lead", new QuantityKind(Dimension.Length, 0, 30, "m"), "Outlet: length of the lead to the receiver.", "2 m");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of <c>temperature</c>.</summary>
internal static class TemperatureKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<double> Cold = Keys.Default(
        "cold", new QuantityKind(Dimension.Temperature, -40, 30, "C"),
        "Coldest outdoor cable; the rule for cable loss holds from -40 C.", "-20 C");

    public static readonly Key<double> Hot = Keys.Default(
        "hot", new QuantityKind(Dimension.Temperature, 20, 70, "C"),
        "Hottest outdoor or attic cable; the rule for cable loss holds to 70 C.", "60 C");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of <c>cabling</c>.</summary>
internal static class CablingKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<string> Receiver = Keys.Required(
        "receiver", new ReferenceKind(ReferenceTarget.Part, PartKind.Receiver),
            "The receiver that the plan calculates with at each outlet.");

    public static readonly Key<string> FlyCable = Keys.Required(
        "fly-cable", new ReferenceKind(ReferenceTarget.Part, PartKind.Cable), "The cable of the leads from outlet to receiver.");

    public static readonly Key<string> Cable = Keys.Optional(
        "cable", new ReferenceKind(ReferenceTarget.Part, PartKind.Cable), "The cable of new runs that do not say theirs.");

    public static readonly Key<string> OldCable = Keys.Optional(
        "old-cable", new ReferenceKind(ReferenceTarget.Part, PartKind.Cable), "The cable of existing runs that do not say theirs.");

    public static readonly Key<string> Outlet = Keys.Optional(
        "outlet", new ReferenceKind(ReferenceTarget.Part, PartKind.Outlet), "The part of elements that say only `outlet`.");

    public static readonly Key<IReadOnlyList<Sourced<SharedService>>> AlsoCarries = Keys.Optional(
        "also-carries", new ListKind<SharedService>(new WordKind<SharedService>(), 0, 3),
        "Other services on this tree of cables: a home network over coax (MoCA), satellite, the plant of a cable operator.");

    public static readonly Key<CheckedGroup> Internet = Keys.Optional(
        "internet", ServiceKeys.Group,
        "The entry of an internet or cable service: what it is, where, what stays connected to it and what comes off. It goes before "
        + "`handover.existing-internet`.");

    public static readonly Key<CheckedGroup> Temperature = Keys.Optional(
        "temperature", TemperatureKeys.Group, "The range of cable temperature.");

    public static readonly Key<IReadOnlyList<Entry<CheckedGroup>>> Chain = Keys.Required(
        "chain", new MapKind<CheckedGroup>(ElementKeys.Group, "element", 2, 200),
        "The parts from the antenna to the outlets, each saying what feeds it.");

    public static GroupKind Group => Keys.Group;
}
