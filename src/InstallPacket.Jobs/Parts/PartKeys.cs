using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Parts;

/// <summary>The keys that every part has, and keys that several kinds of part share.</summary>
public static class PartKeys
{
    private static readonly KeyList Keys = new();

    /// <summary>What the part is.</summary>
    public static readonly Key<PartKind> Kind = Keys.Required("kind", new WordKind<PartKind>(), "What the part is.");

    /// <summary>What to ask for in a shop: a generic description, no brand.</summary>
    public static readonly Key<string> Name = Keys.Required(
        "name", new TextKind(), "What to ask for in a shop: a generic description, no brand.");

    /// <summary>What the plan uses the part for, where it takes one by itself.</summary>
    public static readonly Key<PartRole> Role = Keys.Optional(
        "role", new WordKind<PartRole>(), "What the plan uses the part for, where it takes one by itself: its name decides nothing.");

    /// <summary>Whether it is bought by the piece or by length.</summary>
    public static readonly Key<SoldBy> Unit = Keys.Default(
        "unit", new WordKind<SoldBy>(), "Whether it is bought by the piece or by length.", "piece");

    /// <summary>For each figure of this part how it is known: <c>read</c>, <c>derived</c>, <c>common practice</c> or <c>memory</c>, then
    /// a colon and the document or a remark.</summary>
    public static readonly Key<IReadOnlyList<Entry<string>>> Provenance = Keys.Optional(
        "provenance", new MapKind<string>(new TextKind(300), "figure"),
        "For each figure of this part how it is known: `read`, `derived`, `common practice` or `memory`, then a colon and the document "
        + "or a remark.");

    /// <summary>Price of a piece, or of a metre of what is bought by length, in the currency of the firm.</summary>
    public static readonly Key<double> Price = Keys.Optional(
        "price", new NumberKind(0, 100000), "Price of a piece, or of a metre of what is bought by length, in the currency of the firm.");

    /// <summary>How many are sold together; they are bought in whole packs.</summary>
    public static readonly Key<int> Pack = Keys.Optional(
        "pack", new IntegerKind(1, 10000), "How many are sold together; they are bought in whole packs.");

    /// <summary>How many more to bring than the plan wants, rounded up.</summary>
    public static readonly Key<double> Spare = Keys.Optional(
        "spare", new QuantityKind(Dimension.Share, 0, 100, "%"), "How many more to bring than the plan wants, rounded up.");

    /// <summary>The keys of every part.</summary>
    internal static GroupKind Common => Keys.Group;

    /// <summary>Antenna, mast, rod, fly lead or screw: its length; of a screw the length under the head.</summary>
    public static readonly Key<double> Length = Key.Optional(
        "length", new QuantityKind(Dimension.Length, 0, 30, "m"),
        "Antenna, mast, rod, fly lead or screw: its length; of a screw the length under the head.");

    /// <summary>Amplifier or receiver: noise figure.</summary>
    public static readonly Key<FrequencyCurve> NoiseFigure = Key.Optional(
        "noise-figure", new CurveKind(Dimension.Ratio, 0, 30, "dB"), "Amplifier or receiver: noise figure.");

    /// <summary>Amplifier or power inserter: supply voltage.</summary>
    public static readonly Key<double> Supply = Key.Optional(
        "supply", new QuantityKind(Dimension.Voltage, 0, 48, "V"), "Amplifier or power inserter: supply voltage.");

    /// <summary>Receiver or outlet: lowest level it is made for.</summary>
    public static readonly Key<double> LeastLevel = Key.Optional(
        "least-level", new QuantityKind(Dimension.Level, -110, 0, "dBm"), "Receiver or outlet: lowest level it is made for.");

    /// <summary>Receiver or outlet: highest level it is made for.</summary>
    public static readonly Key<double> LargestLevel = Key.Optional(
        "largest-level", new QuantityKind(Dimension.Level, -60, 20, "dBm"), "Receiver or outlet: highest level it is made for.");

    /// <summary>Cable, mast, rod or screw: outside diameter.</summary>
    public static readonly Key<double> Diameter = Key.Optional(
        "diameter", new QuantityKind(Dimension.Length, 0, 0.2, "m"), "Cable, mast, rod or screw: outside diameter.");

    /// <summary>Antenna or mount: its mass.</summary>
    public static readonly Key<double> Mass = Key.Optional(
        "mass", new QuantityKind(Dimension.Mass, 0, 500, "kg"), "Antenna or mount: its mass.");

    /// <summary>Guy or strap: breaking strength.</summary>
    public static readonly Key<double> Breaking = Key.Optional(
        "breaking", new QuantityKind(Dimension.Force, 100, 200000, "N"), "Guy or strap: breaking strength.");

    /// <summary>Connector or fixing: tightening torque.</summary>
    public static readonly Key<double> Torque = Key.Optional(
        "torque", new QuantityKind(Dimension.Torque, 0, 100, "N m"), "Connector or fixing: tightening torque.");
}
