using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Parts;

/// <summary>A generic part of the library. A figure that the part does not state is null: unknown, never a friendly default.</summary>
public sealed record Part
{
    /// <summary>Its name in the library.</summary>
    public required string Id { get; init; }

    /// <summary>What it is: a word of <c>PartCatalogue.Kinds</c>.</summary>
    public required string Kind { get; init; }

    /// <summary>What to ask for in a shop.</summary>
    public required string Name { get; init; }

    /// <summary>Whether it is bought by length.</summary>
    public bool ByLength { get; init; }

    /// <summary>Where it is written.</summary>
    public SourceSpan At { get; init; }

    /// <summary>How each figure is known, by key.</summary>
    public required IReadOnlyDictionary<string, string> Provenance { get; init; }

    /// <summary>Antenna: gain on the axis [dBi].</summary>
    public FrequencyCurve? GainDbi { get; init; }

    /// <summary>Antenna: half-power beamwidth [deg].</summary>
    public FrequencyCurve? BeamwidthDeg { get; init; }

    /// <summary>Antenna: front-to-back ratio [dB].</summary>
    public double? FrontToBackDb { get; init; }

    /// <summary>Lowest frequency [MHz].</summary>
    public double? FromMHz { get; init; }

    /// <summary>Highest frequency [MHz].</summary>
    public double? ToMHz { get; init; }

    /// <summary>Combiner: lowest frequency of its second input [MHz].</summary>
    public double? SecondFromMHz { get; init; }

    /// <summary>Combiner: highest frequency of its second input [MHz].</summary>
    public double? SecondToMHz { get; init; }

    /// <summary>Its length [m].</summary>
    public double? LengthM { get; init; }

    /// <summary>Loss from input to each output [dB].</summary>
    public FrequencyCurve? LossDb { get; init; }

    /// <summary>Number of outputs.</summary>
    public int Outputs { get; init; } = 1;

    /// <summary>Loss to each output [dB], where the outputs differ; empty where they are alike.</summary>
    public IReadOnlyList<FrequencyCurve> PortLossesDb { get; init; } = [];

    /// <summary>Isolation between outputs [dB].</summary>
    public FrequencyCurve? IsolationDb { get; init; }

    /// <summary>Return loss [dB].</summary>
    public FrequencyCurve? ReturnLossDb { get; init; }

    /// <summary>Third-order intercept at the output.</summary>
    public Level? Intercept { get; init; }

    /// <summary>Lowest supply voltage [V].</summary>
    public double? LeastSupplyV { get; init; }

    /// <summary>Largest current of a supply [mA].</summary>
    public double? LargestCurrentMa { get; init; }

    /// <summary>Whether it is a short for direct current.</summary>
    public bool ShortsPower { get; init; }

    /// <summary>Cable: how far its loss may lie off the table [%].</summary>
    public double TolerancePct { get; init; }

    /// <summary>Cable: resistance of both conductors in series [ohm/km].</summary>
    public double? LoopOhmPerKm { get; init; }

    /// <summary>Amplifier: gain at the highest setting [dB].</summary>
    public FrequencyCurve? AmplificationDb { get; init; }

    /// <summary>Amplifier: gain at the lowest setting [dB].</summary>
    public double? LeastAmplificationDb { get; init; }

    /// <summary>Noise figure [dB].</summary>
    public FrequencyCurve? NoiseFigureDb { get; init; }

    /// <summary>Largest total output level.</summary>
    public Level? LargestOutput { get; init; }

    /// <summary>Supply voltage [V].</summary>
    public double? SupplyV { get; init; }

    /// <summary>Supply current [mA].</summary>
    public double? DrawsMa { get; init; }

    /// <summary>Which outputs let the amplifier's supply through: <c>yes</c> for all, <c>no</c>, or <c>output-1</c>.</summary>
    public string PowerPass { get; init; } = "no";

    /// <summary>Whether an output lets the amplifier's supply through.</summary>
    /// <param name="output">Output, counted from 1.</param>
    public bool PassesPower(int output) => PowerPass == "yes" || (PowerPass == "output-1" && output == 1);

    /// <summary>The loss to an output [dB]; null when the part does not state it.</summary>
    /// <param name="output">Output, counted from 1.</param>
    /// <param name="frequencyMHz">Frequency [MHz].</param>
    public double? LossTo(int output, double frequencyMHz) =>
        output >= 1 && output <= PortLossesDb.Count ? PortLossesDb[output - 1].At(frequencyMHz) : LossDb?.At(frequencyMHz);

    /// <summary>Lowest level it is made for.</summary>
    public Level? LeastLevel { get; init; }

    /// <summary>Highest level it is made for.</summary>
    public Level? LargestLevel { get; init; }

    /// <summary>Cable: loss [dB/100 m] at 20 C.</summary>
    public FrequencyCurve? AttenuationDbPer100M { get; init; }

    /// <summary>Outside diameter [m].</summary>
    public double? DiameterM { get; init; }

    /// <summary>Mast: wall of the tube [m].</summary>
    public double? WallM { get; init; }

    /// <summary>Mast: material of the tube; null when unknown.</summary>
    public string? Material { get; init; }

    /// <summary>Bonding conductor or rod: its metal; null when unknown.</summary>
    public string? Metal { get; init; }

    /// <summary>Bonding conductor: cross-section [mm2], when the part states it.</summary>
    public double? CrossSectionMm2 { get; init; }

    /// <summary>Bonding conductor: American wire gauge, when the part states it.</summary>
    public int? Gauge { get; init; }

    /// <summary>Antenna: effective area that the wind meets [m2].</summary>
    public double? WindAreaM2 { get; init; }

    /// <summary>Antenna: its bars; empty when not stated.</summary>
    public IReadOnlyList<AntennaBar> Outline { get; init; } = [];

    /// <summary>Mass [kg].</summary>
    public double? MassKg { get; init; }

    /// <summary>Mount: distance of the mast from the wall [m].</summary>
    public double? StandOffM { get; init; }

    /// <summary>Mount: thickness of its plate [m].</summary>
    public double? PlateM { get; init; }

    /// <summary>Mount: level distance between the fixings of one bracket [m].</summary>
    public double? AcrossM { get; init; }

    /// <summary>Mount: level distance from the fixings to the edge of the plate [m].</summary>
    public double? EdgeM { get; init; }

    /// <summary>Tripod: radius of its feet [m].</summary>
    public double? FeetRadiusM { get; init; }

    /// <summary>Mount: largest force at its upper support by its maker [N].</summary>
    public double? RatedN { get; init; }

    /// <summary>Guy or strap: breaking strength [N].</summary>
    public double? BreakingN { get; init; }

    /// <summary>Fixing: <c>lag-screw</c>, <c>wood-screw</c>, <c>anchor</c>, <c>bolt</c> or <c>clamp</c>; null when not stated.</summary>
    public string? Form { get; init; }

    /// <summary>Screw: length of its thread [m].</summary>
    public double? ThreadM { get; init; }

    /// <summary>Cable: smallest bend radius [m].</summary>
    public double? BendRadiusM { get; init; }

    /// <summary>Cable: the connector that fits.</summary>
    public string? Connector { get; init; }

    /// <summary>Price of a piece or a metre, in the currency of the firm.</summary>
    public double? Price { get; init; }

    /// <summary>How many are sold together; null when by the piece.</summary>
    public int? Pack { get; init; }

    /// <summary>How many more to bring [%]; null when the part states none.</summary>
    public double? SparePct { get; init; }

    /// <summary>Tightening torque [N m].</summary>
    public double? TorqueNm { get; init; }

    /// <summary>Whether the part is an amplifier.</summary>
    public bool IsAmplifier => Kind == "amplifier";

    /// <summary>The mark word of a figure's provenance: the text before the first colon.</summary>
    public string ProvenanceOf(string figure) =>
        Provenance.TryGetValue(figure, out var text) ? text.Split(':', 2)[0].Trim() : "unknown";
}

/// <summary>A bar of an antenna's outline.</summary>
/// <param name="Count">How many alike.</param>
/// <param name="WidthM">What the wind sees of its thickness [m].</param>
/// <param name="LengthM">Its length [m].</param>
/// <param name="Round">Round, else square.</param>
/// <param name="Front">Whether wind along the boom meets it, else wind across the boom.</param>
public sealed record AntennaBar(int Count, double WidthM, double LengthM, bool Round, bool Front);
