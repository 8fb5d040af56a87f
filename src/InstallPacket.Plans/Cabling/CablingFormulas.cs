using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans.Cabling;

/// <summary>The sums by which the cabling planners join published equations.</summary>
public static class CablingFormulas
{
    private const string Own = "project-notes";

    /// <summary>Gain of one step of the chain.</summary>
    public static readonly Formula JointLoss = new(
        "joint-loss", "Loss of the connectors of a run", "L = 0.1 n", new("L", "dB", "loss"), [new("n", "", "connector joints")],
        Own, "trade allowance: 0.05 to 0.15 dB a joint", Provenance.Memory)
    {
        Method = v => 0.1 * v[0],
    };

    /// <summary>Level at a receiver.</summary>
    public static readonly Formula LevelAtReceiver = new(
        "level-at-receiver", "Level at the receiver or at an amplifier", "U = P + sum of gains - sum of losses", new("U", "dBm", "level"),
        [new("P", "dBm", "power at the antenna terminals"), new("G", "dB", "sum of gains and losses of the chain")], Own, "sum",
            Provenance.Derived)
    {
        Method = v => v[0] + v[1],
    };

    /// <summary>Total power, one station after the other.</summary>
    public static readonly Formula PowerSum = new(
        "power-sum-step", "Total power at an amplifier, one station after the other", "P = 10 log10(10^(P0/10) + 10^(Pi/10))",
            new("P", "dBm", "total power so far"),
        [new("P0", "dBm", "total before this station"), new("Pi", "dBm", "power of this station")], Own, "sum of powers",
            Provenance.Derived)
    {
        Method = v => Calc.Reception.DecibelSum.TotalDbm([v[0], v[1]]),
    };

    /// <summary>C/N of a chain.</summary>
    public static readonly Formula CarrierToNoise = new(
        "carrier-to-noise-of-chain", "C/N at the receiver", "C/N = P - (N0 + Fs)", new("C/N", "dB", "carrier-to-noise ratio"),
        [new("P", "dBm", "power at the antenna terminals"), new("N0", "dBm", "k T0 B"), new("Fs", "dB", "system noise figure")], Own,
            "difference", Provenance.Derived)
    {
        Method = v => v[0] - (v[1] + v[2]),
    };

    /// <summary>Spread with cable of unknown kind.</summary>
    public static readonly Formula SpreadWithCable = new(
        "spread-with-cable", "Spread with cable of unknown kind or age", "sigma = sqrt(s^2 + c^2 / 3)",
            new("sigma", "dB", "standard deviation"),
        [new("s", "dB", "spread of the level at the antenna"), new("c", "dB", "half of the range of the cable's loss")], Own,
            "any value of the range is as likely as another", Provenance.Derived)
    {
        Method = v => Calc.Reception.Probability.CombinedSigmaDb([v[0], v[1] / Math.Sqrt(3)]),
    };

    /// <summary>Noise behind a step of the chain.</summary>
    public static readonly Formula NoiseBehind = new(
        "noise-behind-step", "Noise in the channel behind a step of the chain", "N = N0 + Fs + G", new("N", "dBm", "noise"),
        [new("N0", "dBm", "k T0 B"), new("Fs", "dB", "system noise figure up to there"), new("G", "dB", "gain up to there")], Own, "sum",
            Provenance.Derived)
    {
        Method = v => v[0] + v[1] + v[2],
    };

    /// <summary>Products in a channel.</summary>
    public static readonly Formula CarrierToProducts = new(
        "carrier-to-products", "Channel over the intermodulation products that fall into it", "C/P = C - P", new("C/P", "dB", "ratio"),
        [new("C", "dBm", "channel at the output of the amplifier"), new("P", "dBm", "sum of its third-order products there")], Own,
            "difference; the products by the composite of all beats", Provenance.Derived)
    {
        Method = v => v[0] - v[1],
    };

    /// <summary>Margin of a channel.</summary>
    public static readonly Formula Margin = new(
        "margin", "Margin at the outlet", "M = C/N - R", new("M", "dB", "margin"),
            [new("C/N", "dB", "carrier-to-noise ratio"), new("R", "dB", "required C/N")],
        Own, "difference", Provenance.Derived)
    {
        Method = v => v[0] - v[1],
    };

    /// <summary>Loss of a run with its connectors.</summary>
    public static readonly Formula RunLoss = new(
        "run-loss", "Loss of a run with its connectors", "L = A + J", new("L", "dB", "loss"),
            [new("A", "dB", "cable"), new("J", "dB", "connectors")],
        Own, "sum", Provenance.Derived) { Method = v => v[0] + v[1] };

    /// <summary>Gain of the chain, step by step.</summary>
    public static readonly Formula ChainGain = new(
        "chain-gain", "Gain of the chain from the antenna terminals, step by step", "G = Gb + g",
            new("G", "dB", "gain; a loss is negative"),
        [new("Gb", "dB", "gain before the step"), new("g", "dB", "gain of the step")], Own, "sum", Provenance.Derived) { Method = v => v[0]
            + v[1] };

    /// <summary>System noise behind a step.</summary>
    public static readonly Formula SystemBehind = Calc.Reception.SystemNoise.FigureFormula with
    {
        Id = "system-noise-behind-step", Title = "System noise figure with the chain up to a step",
        Method = v => Calc.Reception.SystemNoise.FigureDb(v[0], Math.Max(0, v[1])),
    };

    /// <summary>Channel over all disturbers.</summary>
    public static readonly Formula OverDisturbers = new(
        "channel-over-disturbers", "Channel over all disturbers counted as noise", "D/I = P - I", new("D/I", "dB", "ratio"),
        [new("P", "dBm", "power at the antenna terminals"), new("I", "dBm", "disturbers together")], Own,
            "difference; the chain changes both alike", Provenance.Derived)
    {
        Method = v => v[0] - v[1],
    };

    /// <summary>Products of several amplifiers.</summary>
    public static readonly Formula ProductsTogether = new(
        "products-together", "Channel over the products of two amplifiers together", "r = -10 log10(10^(-r1/10) + 10^(-r2/10))",
            new("r", "dB", "ratio"),
        [new("r1", "dB", "over those of the amplifiers before"), new("r2", "dB", "over those of this one")], Own, "sum of powers",
            Provenance.Derived)
    {
        Method = v => -Calc.Reception.DecibelSum.TotalDbm([-v[0], -v[1]]),
    };

    /// <summary>Chance that a channel is neither too weak nor too strong.</summary>
    public static readonly Formula ChanceOfWindow = new(
        "chance-of-window", "Chance that the channel comes in: neither too weak nor too strong", "P = min(Pmax, max(0, Pw + Ps - 1))",
        new("P", "", "chance, 0 to 1"),
        [new("Pw", "", "chance that the margin holds"), new("Ps", "", "chance that the level stays below the largest one; 1 where that is not known or more likely than not, as it is then set by meter"),
            new("Pmax", "", "the most that an estimate of this basis may promise")],
        Own, "one draw of the unknown decides both ends", Provenance.Derived) { Method = v => Math.Min(v[2], Math.Max(0, v[0] + v[1] - 1)) };

    /// <summary>How far a channel stays below the largest level.</summary>
    public static readonly Formula BelowLargest = new(
        "below-largest-level", "How far the channel stays below the largest level that the receiver takes", "S = Lmax - L", new("S", "dB", "reserve"),
        [new("Lmax", "dBm", "largest level of the receiver"), new("L", "dBm", "level for the rest of the time, cold cable")],
        Own, "difference", Provenance.Derived) { Method = v => v[0] - v[1] };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Formula> All =>
        [RunLoss, ChainGain, SystemBehind, OverDisturbers, ProductsTogether, ChanceOfWindow, BelowLargest, JointLoss, LevelAtReceiver, PowerSum,
            CarrierToNoise, SpreadWithCable, NoiseBehind, CarrierToProducts, Margin];
}
