using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Parts;

/// <summary>An amplifier.</summary>
public sealed record AmplifierPart : ChainPart
{
    internal AmplifierPart(Entry<CheckedGroup> entry) : base(entry)
    {
        var g = entry.Value;
        AmplificationDb = g.Maybe(AmplifierPartKeys.Amplification)?.Value;
        LeastAmplificationDb = g.Maybe(AmplifierPartKeys.LeastAmplification)?.Value;
        NoiseFigureDb = g.Maybe(PartKeys.NoiseFigure)?.Value;
        LargestOutput = Dbm(g.Maybe(AmplifierPartKeys.LargestOutput));
        Intercept = Dbm(g.Maybe(AmplifierPartKeys.Intercept));
        SupplyV = g.Maybe(PartKeys.Supply)?.Value;
        LeastSupplyV = g.Maybe(AmplifierPartKeys.LeastSupply)?.Value;
        DrawsMa = g.Maybe(AmplifierPartKeys.Draws)?.Value;
    }

    /// <inheritdoc/>
    public override PartKind Kind => PartKind.Amplifier;

    /// <summary>Gain at the highest setting [dB].</summary>
    public FrequencyCurve? AmplificationDb { get; init; }

    /// <summary>Gain at the lowest setting [dB].</summary>
    public double? LeastAmplificationDb { get; init; }

    /// <summary>Noise figure [dB].</summary>
    public FrequencyCurve? NoiseFigureDb { get; init; }

    /// <summary>Largest total output level.</summary>
    public Level? LargestOutput { get; init; }

    /// <summary>Third-order intercept at the output.</summary>
    public Level? Intercept { get; init; }

    /// <inheritdoc/>
    public override double? SupplyV { get; }

    /// <summary>Lowest supply voltage [V].</summary>
    public double? LeastSupplyV { get; init; }

    /// <summary>Supply current [mA].</summary>
    public double? DrawsMa { get; init; }
}

/// <summary>The keys of an amplifier.</summary>
public static class AmplifierPartKeys
{
    private static readonly KeyList Keys = new(ChainKeys.Group, PartKeys.NoiseFigure, PartKeys.Supply);

    /// <summary>Amplifier: gain, at the highest setting if it is variable.</summary>
    public static readonly Key<FrequencyCurve> Amplification = Keys.Optional(
        "amplification", new CurveKind(Dimension.Ratio, 0, 60, "dB"), "Amplifier: gain, at the highest setting if it is variable.");

    /// <summary>Amplifier with a gain control: the lowest setting.</summary>
    public static readonly Key<double> LeastAmplification = Keys.Optional(
        "least-amplification", new QuantityKind(Dimension.Ratio, 0, 60, "dB"), "Amplifier with a gain control: the lowest setting.");

    /// <summary>Amplifier: largest total output level.</summary>
    public static readonly Key<double> LargestOutput = Keys.Optional(
        "largest-output", new QuantityKind(Dimension.Level, -30, 30, "dBm"), "Amplifier: largest total output level.");

    /// <summary>Amplifier: third-order intercept at its output, for intermodulation.</summary>
    public static readonly Key<double> Intercept = Keys.Optional(
        "intercept", new QuantityKind(Dimension.Level, -20, 60, "dBm"),
        "Amplifier: third-order intercept at its output, for intermodulation.");

    /// <summary>Amplifier: lowest supply voltage at which it works.</summary>
    public static readonly Key<double> LeastSupply = Keys.Optional(
        "least-supply", new QuantityKind(Dimension.Voltage, 0, 48, "V"), "Amplifier: lowest supply voltage at which it works.");

    /// <summary>Amplifier: supply current.</summary>
    public static readonly Key<double> Draws = Keys.Optional(
        "draws", new QuantityKind(Dimension.Current, 0, 2000, "mA"), "Amplifier: supply current.");

    internal static GroupKind Group => Keys.Group;
}
