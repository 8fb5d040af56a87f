using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Cabling;

/// <summary>The keys of <c>cabling</c>.</summary>
internal static class CablingKeys
{
    private static readonly GroupKind Element = new(
        new("part", new ReferenceKind(ReferenceTarget.Part), "The part.", Required: true),
        new("at", new ReferenceKind(ReferenceTarget.Point), "The point of the house where it sits.", Required: true),
        new("from", new ReferenceKind(ReferenceTarget.Element), "The element that feeds it, with the output number if it has several: `S1.2`. Only the antenna has none."),
        new("run", new ReferenceKind(ReferenceTarget.Run), "The cable run that brings the signal; absent when it is screwed to the element before it."),
        new("second", new ReferenceKind(ReferenceTarget.Element), "Combiner: the element that feeds its second input."),
        new("second-run", new ReferenceKind(ReferenceTarget.Run), "Combiner: the cable run to its second input; absent when it is screwed on."),
        new("aim", new BearingKind(), "Second antenna: where it points; chosen by the program when absent. The first antenna takes `reception.aim`."),
        new("setting", new QuantityKind(Dimension.Ratio, 0, 60, "dB"), "Amplifier with a gain control: the gain to set."),
        new("serves", new TextKind(60), "Outlet: the room or the set that it serves."),
        new("fly-lead", new QuantityKind(Dimension.Length, 0, 30, "m"), "Outlet: length of the lead to the receiver.", Default: "2 m"));

    private static readonly GroupKind Temperatures = new(
        new("cold", new QuantityKind(Dimension.Temperature, -40, 30, "C"), "Coldest outdoor cable; the rule for cable loss holds from -40 C.", Default: "-20 C"),
        new("hot", new QuantityKind(Dimension.Temperature, 20, 70, "C"), "Hottest outdoor or attic cable; the rule for cable loss holds to 70 C.", Default: "60 C"));

    public static readonly GroupKind Section = new(
        new("receiver", new ReferenceKind(ReferenceTarget.Part, "receiver"), "The receiver that the plan reckons with at each outlet.", Required: true),
        new("fly-cable", new ReferenceKind(ReferenceTarget.Part, "cable"), "The cable of the leads from outlet to receiver.", Required: true),
        new("also-carries", new ListKind(new WordKind("moca", "satellite", "operator"), 0, 3), "Other services on this tree of cables: a home network over coax (MoCA), satellite, the plant of a cable operator."),
        new("temperature", Temperatures, "The range of cable temperature."),
        new("chain", new MapKind(Element, "element", 2, 200), "The parts from the antenna to the outlets, each saying what feeds it.", Required: true));
}
