using InstallPacket.Calc.Mounting;
using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Parts;

/// <summary>The keys of a parts file (<c>_shared/parts/*.yaml</c>).</summary>
public static class PartCatalogue
{
    /// <summary>The kinds of part that the program knows.</summary>
    public static readonly WordKind Kinds = new(
        "antenna", "balun", "filter", "attenuator", "amplifier", "power-inserter", "grounding-block", "surge-protector", "combiner", "splitter", "tap",
        "outlet", "receiver", "cable", "connector", "terminator", "mount", "mast", "guy", "fixing", "bonding", "sundry");

    private static readonly GroupKind Bar = new(
        new("count", new IntegerKind(1, 200), "How many alike.", Required: true),
        new("width", new QuantityKind(Dimension.Length, 0.001, 1, "m"), "What the wind sees of its thickness.", Required: true),
        new("length", new QuantityKind(Dimension.Length, 0.01, 10, "m"), "How long it is.", Required: true),
        new("form", new WordKind("round", "square"), "Its cross-section.", Default: "round"),
        new("faces", new WordKind("front", "side"), "Whether wind along the boom or across it meets it.", Required: true));

    private static readonly CurveKind LossCurve = new(Dimension.Ratio, 0, 60, "dB");

    /// <summary>The keys of one part.</summary>
    public static readonly GroupKind Part = new(
        new("kind", Kinds, "What the part is.", Required: true),
        new("name", new TextKind(), "What to ask for in a shop: a generic description, no brand.", Required: true),
        new("unit", new WordKind("piece", "length"), "Whether it is bought by the piece or by length.", Default: "piece"),
        new("provenance", new MapKind(new TextKind(300), "figure"),
            "For each figure of this part how it is known: `read`, `derived`, `common practice` or `memory`, then a colon and the document or a remark."),
        new("gain", new CurveKind(Dimension.AntennaGain, -20, 30, "dBi"), "Antenna: gain on the axis."),
        new("beamwidth", new CurveKind(Dimension.Angle, 5, 179, "deg"), "Antenna: half-power beamwidth in the horizontal plane; the pattern rule holds below 180 deg."),
        new("front-to-back", new QuantityKind(Dimension.Ratio, 0, 40, "dB"), "Antenna: how far the pattern falls behind."),
        new("from", new QuantityKind(Dimension.Frequency, 1, 5000, "MHz"), "Lowest frequency that the part is made for."),
        new("to", new QuantityKind(Dimension.Frequency, 1, 5000, "MHz"), "Highest frequency that the part is made for."),
        new("second-from", new QuantityKind(Dimension.Frequency, 1, 5000, "MHz"), "Combiner: lowest frequency of its second input; `from` and `to` are those of the first."),
        new("second-to", new QuantityKind(Dimension.Frequency, 1, 5000, "MHz"), "Combiner: highest frequency of its second input."),
        new("length", new QuantityKind(Dimension.Length, 0, 30, "m"), "Antenna, mast, rod, fly lead or screw: its length; of a screw the length under the head."),
        new("loss", LossCurve, "Loss from input to each output; for an outlet that passes on, the loss to its own socket."),
        new("outputs", new IntegerKind(1, 16), "Splitter: number of outputs."),
        new("port-losses", new ListKind(LossCurve, 1, 16), "Unequal splitter, tap or looped outlet: the loss to each output, in the order of the ports. A tap's first port is the one that goes on."),
        new("isolation", LossCurve, "Splitter or tap: how far one output is kept from another."),
        new("return-loss", LossCurve, "How far below the signal its reflection stays."),
        new("amplification", new CurveKind(Dimension.Ratio, 0, 60, "dB"), "Amplifier: gain, at the highest setting if it is variable."),
        new("least-amplification", new QuantityKind(Dimension.Ratio, 0, 60, "dB"), "Amplifier with a gain control: the lowest setting."),
        new("noise-figure", new CurveKind(Dimension.Ratio, 0, 30, "dB"), "Amplifier or receiver: noise figure."),
        new("largest-output", new QuantityKind(Dimension.Level, -30, 30, "dBm"), "Amplifier: largest total output level."),
        new("intercept", new QuantityKind(Dimension.Level, -20, 60, "dBm"), "Amplifier: third-order intercept at its output, for intermodulation."),
        new("supply", new QuantityKind(Dimension.Voltage, 0, 48, "V"), "Amplifier or power inserter: supply voltage."),
        new("least-supply", new QuantityKind(Dimension.Voltage, 0, 48, "V"), "Amplifier: lowest supply voltage at which it works."),
        new("draws", new QuantityKind(Dimension.Current, 0, 2000, "mA"), "Amplifier: supply current."),
        new("largest-current", new QuantityKind(Dimension.Current, 0, 5000, "mA"), "Power inserter: the largest current that its supply gives."),
        new("passes-power", new WordKind("yes", "no", "output-1"), "Whether the part lets the amplifier's supply through: on every output, on none, or on its first output only.", Default: "no"),
        new("shorts-power", new WordKind("yes", "no"), "Whether the part is a short for direct current, as some baluns are.", Default: "no"),
        new("least-level", new QuantityKind(Dimension.Level, -110, 0, "dBm"), "Receiver or outlet: lowest level it is made for."),
        new("largest-level", new QuantityKind(Dimension.Level, -60, 20, "dBm"), "Receiver or outlet: highest level it is made for."),
        new("attenuation", new CurveKind(Dimension.Attenuation, 0, 300, "dB/100 m"), "Cable: loss per length at 20 C."),
        new("tolerance", new QuantityKind(Dimension.Share, 0, 100, "%"), "Cable: how far its loss may lie off the table, for cable of unknown kind or age."),
        new("loop-resistance", new QuantityKind(Dimension.LoopResistance, 0, 2000, "ohm/km"), "Cable: resistance of centre conductor and shield in series, for the supply of an amplifier."),
        new("diameter", new QuantityKind(Dimension.Length, 0, 0.2, "m"), "Cable, mast, rod or screw: outside diameter."),
        new("metal", new WordKind("copper", "aluminium", "copper-clad-steel", "bronze", "steel"), "Bonding conductor or rod: what it is made of."),
        new("cross-section", new QuantityKind(Dimension.Area, 0.5, 500, "mm2"), "Bonding conductor: cross-section of its metal."),
        new("gauge", new IntegerKind(0, 24), "Bonding conductor: American wire gauge, instead of `cross-section`; 0 is 1/0."),
        new("wall", new QuantityKind(Dimension.Length, 0.0005, 0.02, "m"), "Mast: wall of the tube."),
        new("material", new WordKind([.. MastTubes.Materials.Select(m => m.Word)]), "Mast: material of the tube; steel of which nothing is known when absent."),
        new("wind-area", new QuantityKind(Dimension.WindArea, 0.001, 5, "m2"), "Antenna: effective area that the wind meets, drag included, the larger of both directions."),
        new("outline", new ListKind(Bar, 1, 40), "Antenna: its bars, from which the area is reckoned when the maker states none."),
        new("mass", new QuantityKind(Dimension.Mass, 0, 500, "kg"), "Antenna or mount: its mass."),
        new("stand-off", new QuantityKind(Dimension.Length, 0, 2, "m"), "Mount: how far it holds the mast from the wall."),
        new("plate", new QuantityKind(Dimension.Length, 0.0005, 0.03, "m"), "Mount: thickness of the plate that the fixings go through."),
        new("across", new QuantityKind(Dimension.Length, 0.01, 1, "m"), "Mount: level distance between the fixings of one bracket; absent when they stand in one upright line."),
        new("edge", new QuantityKind(Dimension.Length, 0.005, 0.5, "m"), "Mount: level distance from the fixings to the edge of the plate, when they stand in one upright line."),
        new("feet-radius", new QuantityKind(Dimension.Length, 0.1, 3, "m"), "Tripod: distance from its middle to a foot."),
        new("rated", new QuantityKind(Dimension.Force, 1, 100000, "N"), "Mount: the largest force at its upper support that its maker allows."),
        new("breaking", new QuantityKind(Dimension.Force, 100, 200000, "N"), "Guy or strap: breaking strength."),
        new("form", new WordKind("lag-screw", "wood-screw", "anchor", "bolt", "clamp"), "Fixing: what it is; a clamp holds the antenna to the mast and bears nothing else."),
        new("thread", new QuantityKind(Dimension.Length, 0.005, 0.5, "m"), "Screw: length of its thread, tip included; of a lag screw the standard length counts when absent."),
        new("bend-radius", new QuantityKind(Dimension.Length, 0.001, 1, "m"), "Cable: smallest bend radius at rest, to the axis."),
        new("connector", new ReferenceKind(ReferenceTarget.Part, "connector"), "Cable: the connector that fits it."),
        new("price", new NumberKind(0, 100000), "Price of a piece, or of a metre of what is bought by length, in the currency of the firm."),
        new("pack", new IntegerKind(1, 10000), "How many are sold together; they are bought in whole packs."),
        new("spare", new QuantityKind(Dimension.Share, 0, 100, "%"), "How many more to bring than the plan wants, rounded up."),
        new("torque", new QuantityKind(Dimension.Torque, 0, 100, "N m"), "Connector or fixing: tightening torque."));

    /// <summary>A parts file: a map from part names to parts.</summary>
    public static readonly GroupKind File = new(
        new Key("parts", new MapKind(Part, "part", 1, 2000), "The parts.", Required: true));

    /// <summary>The keys whose values are figures and so need a word on provenance.</summary>
    public static readonly IReadOnlyList<string> Figures =
        [.. Part.Keys.Where(k => k.Kind is QuantityKind or CurveKind or ListKind).Select(k => k.Name)];
}
