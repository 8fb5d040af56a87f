using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Parts;

/// <summary>A part that a signal passes, from the antenna to the outlets: it can be an element of the chain.</summary>
public abstract record ChainPart : Part
{
    private protected ChainPart(Entry<CheckedGroup> entry) : base(entry)
    {
        var g = entry.Value;
        FromMHz = g.Maybe(ChainKeys.From)?.Value;
        ToMHz = g.Maybe(ChainKeys.To)?.Value;
        ReturnLossDb = g.Maybe(ChainKeys.ReturnLoss)?.Value;
        PowerPass = g.Get(ChainKeys.PassesPower);
        SaysNoPower = g.Wrote(ChainKeys.PassesPower) && PowerPass == PowerPass.No;
        ShortsPower = g.Get(ChainKeys.ShortsPower);
        FixesWith = g.Maybe(ChainKeys.FixesWith) is { } fixing ? new DeviceFixing(fixing.Value) : null;
    }

    /// <summary>Lowest frequency [MHz].</summary>
    public double? FromMHz { get; init; }

    /// <summary>Highest frequency [MHz].</summary>
    public double? ToMHz { get; init; }

    /// <summary>Return loss [dB].</summary>
    public FrequencyCurve? ReturnLossDb { get; init; }

    /// <summary>Which outputs let the amplifier's supply through.</summary>
    public PowerPass PowerPass { get; init; }

    /// <summary>Whether its sheet says that it blocks the supply; silence is no promise.</summary>
    public bool SaysNoPower { get; init; }

    /// <summary>Whether the supply goes through a diode on its way to the antenna, and out of no other port.</summary>
    public bool SteersPower => PowerPass == PowerPass.Steered;

    /// <summary>Whether it is a short for direct current.</summary>
    public bool ShortsPower { get; init; }

    /// <summary>What it is fixed with; null when not stated.</summary>
    public DeviceFixing? FixesWith { get; init; }

    /// <summary>Number of outputs.</summary>
    public virtual int Outputs => 1;

    /// <summary>Supply voltage [V] that it needs or gives; null when it has none.</summary>
    public virtual double? SupplyV => null;

    /// <summary>Whether an output lets the amplifier's supply through.</summary>
    /// <param name="output">Output, counted from 1.</param>
    /// <param name="input">Input toward which it goes, counted from 1.</param>
    public bool PassesPower(int output, int input = 1) => PowerPass switch
    {
        PowerPass.Yes or PowerPass.Steered => true,
        PowerPass.No => false,
        PowerPass.Output1 => output == 1,
        PowerPass.Input1 => input == 1,
        PowerPass.Input2 => input == 2,
    };

    /// <summary>The loss to an output [dB]; null when the part does not state it.</summary>
    /// <param name="output">Output, counted from 1.</param>
    /// <param name="frequencyMHz">Frequency [MHz].</param>
    public virtual double? LossTo(int output, double frequencyMHz) => null;
}

/// <summary>A part that only loses signal.</summary>
public abstract record PassivePart : ChainPart
{
    private protected PassivePart(Entry<CheckedGroup> entry) : base(entry) => LossDb = entry.Value.Maybe(PassiveKeys.Loss)?.Value;

    /// <summary>Loss from input to each output [dB].</summary>
    public FrequencyCurve? LossDb { get; init; }

    /// <inheritdoc/>
    public override double? LossTo(int output, double frequencyMHz) => LossDb?.At(frequencyMHz);
}

/// <summary>A part with several outputs.</summary>
public abstract record DividerPart : PassivePart
{
    private protected DividerPart(Entry<CheckedGroup> entry) : base(entry)
    {
        PortLossesDb = [.. entry.Value.Items(DividerKeys.PortLosses).Select(c => c.Value)];
        IsolationDb = entry.Value.Maybe(DividerKeys.Isolation)?.Value;
    }

    /// <summary>Loss to each output [dB], where the outputs differ; empty where they are alike.</summary>
    public IReadOnlyList<FrequencyCurve> PortLossesDb { get; init; }

    /// <summary>Isolation between outputs [dB].</summary>
    public FrequencyCurve? IsolationDb { get; init; }

    /// <inheritdoc/>
    public override int Outputs => Math.Max(1, PortLossesDb.Count);

    /// <inheritdoc/>
    public override double? LossTo(int output, double frequencyMHz) =>
        output >= 1 && output <= PortLossesDb.Count ? PortLossesDb[output - 1].At(frequencyMHz) : base.LossTo(output, frequencyMHz);
}

/// <summary>The keys of every part that a signal passes.</summary>
public static class ChainKeys
{
    private static readonly KeyList Keys = new(PartKeys.Common);

    /// <summary>Lowest frequency that the part is made for.</summary>
    public static readonly Key<double> From = Keys.Optional(
        "from", new QuantityKind(Dimension.Frequency, 1, 5000, "MHz"), "Lowest frequency that the part is made for.");

    /// <summary>Highest frequency that the part is made for.</summary>
    public static readonly Key<double> To = Keys.Optional(
        "to", new QuantityKind(Dimension.Frequency, 1, 5000, "MHz"), "Highest frequency that the part is made for.");

    /// <summary>How far below the signal its reflection stays.</summary>
    public static readonly Key<FrequencyCurve> ReturnLoss = Keys.Optional(
        "return-loss", new CurveKind(Dimension.Ratio, 0, 60, "dB"), "How far below the signal its reflection stays.");

    /// <summary>Which ports let the amplifier's supply through.</summary>
    public static readonly Key<PowerPass> PassesPower = Keys.Default(
        "passes-power", new WordKind<PowerPass>(),
        "Which ports let the amplifier's supply through: all, none, the first output or one input; `steered`: all, toward the antenna only, "
        + "each through a diode that takes 0.7 V.",
        "no");

    /// <summary>Whether the part is a short for direct current, as some baluns are.</summary>
    public static readonly Key<bool> ShortsPower = Keys.Default(
        "shorts-power", new YesNoKind(), "Whether the part is a short for direct current, as some baluns are.", "no");

    /// <summary>What the part is fixed to its place with.</summary>
    public static readonly Key<CheckedGroup> FixesWith = Keys.Optional(
        "fixes-with", DeviceFixingKeys.Group,
        "What the part is fixed to its place with, counted in the materials; an element of a job can say otherwise under `fixings`.");

    internal static GroupKind Group => Keys.Group;
}

/// <summary>The keys of every part that only loses signal.</summary>
public static class PassiveKeys
{
    private static readonly KeyList Keys = new(ChainKeys.Group);

    /// <summary>Loss from input to each output; for an outlet that passes on, the loss to its own socket.</summary>
    public static readonly Key<FrequencyCurve> Loss = Keys.Optional(
        "loss", new CurveKind(Dimension.Ratio, 0, 60, "dB"),
        "Loss from input to each output; for an outlet that passes on, the loss to its own socket.");

    internal static GroupKind Group => Keys.Group;
}

/// <summary>The keys of every part with several outputs.</summary>
public static class DividerKeys
{
    private static readonly KeyList Keys = new(PassiveKeys.Group);

    /// <summary>Unequal splitter, tap or looped outlet: the loss to each output, in the order of the ports. A tap's first port is the
    /// one that goes on.</summary>
    public static readonly Key<IReadOnlyList<Sourced<FrequencyCurve>>> PortLosses = Keys.Optional(
        "port-losses", new ListKind<FrequencyCurve>(new CurveKind(Dimension.Ratio, 0, 60, "dB"), 1, 16),
        "Unequal splitter, tap or looped outlet: the loss to each output, in the order of the ports. A tap's first port is the one that "
        + "goes on.");

    /// <summary>Splitter or tap: how far one output is kept from another.</summary>
    public static readonly Key<FrequencyCurve> Isolation = Keys.Optional(
        "isolation", new CurveKind(Dimension.Ratio, 0, 60, "dB"), "Splitter or tap: how far one output is kept from another.");

    internal static GroupKind Group => Keys.Group;
}
