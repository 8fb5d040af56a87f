namespace InstallPacket.Jobs.Cabling;

/// <summary>The keys of <c>internet</c>.</summary>
internal static class ServiceKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<ServiceUnit> Kind = Keys.Required(
        "kind", new WordKind<ServiceUnit>(), "The unit at which the service enters the house; `none` when somebody looked and found none.");

    public static readonly Key<string> At = Keys.Optional(
        "at", new ReferenceKind(ReferenceTarget.Point), "The point of the house where it sits, or a place in words; the crew looks for it when absent.");

    public static readonly Key<ServiceLine> Over = Keys.Default(
        "over", new WordKind<ServiceLine>(), "What it uses inside the house: its coax, or something else.", "coax");

    public static readonly Key<string> Feeds = Keys.Optional("feeds", new TextKind(120), "What stays connected to it, in words.");

    public static readonly Key<IReadOnlyList<Sourced<string>>> Connected = Keys.Optional(
        "connected", new ListKind<string>(new ReferenceKind(ReferenceTarget.Run), 0, 40),
        "Runs of the house that stay connected to it; no step touches them.");

    public static readonly Key<IReadOnlyList<Sourced<string>>> CutOff = Keys.Optional(
        "cut-off", new ListKind<string>(new ReferenceKind(ReferenceTarget.Run), 0, 40),
        "Existing runs that come off it, because the antenna takes them over; `[]` when none hangs on it, absent when nobody looked.");

    public static readonly Key<int> OpenPorts = Keys.Optional(
        "open-ports", new IntegerKind(0, 32),
        "Ports of the provider's splitter that stay open then and get a terminator; one for each run that comes off when absent.");

    public static GroupKind Group => Keys.Group;
}
