using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans.Cabling;

/// <summary>The sums by which the cabling planners join published equations.</summary>
public static class CablingFormulas
{
    private const string Own = "project-notes";

    /// <summary>Gain of one step of the chain.</summary>
    public static readonly Formula JointLoss = new(
        "joint-loss", "Loss of the connectors of a run", "L = 0.1 n", new("L", "dB", "loss"), [new("n", "", "connector joints")],
        Own, "trade allowance: 0.05 to 0.15 dB a joint", Provenance.Memory);

    /// <summary>Level at a receiver.</summary>
    public static readonly Formula LevelAtReceiver = new(
        "level-at-receiver", "Level at the receiver or at an amplifier", "U = P + sum of gains - sum of losses", new("U", "dBm", "level"),
        [new("P", "dBm", "power at the antenna terminals"), new("G", "dB", "sum of gains and losses of the chain")], Own, "sum", Provenance.Derived);

    /// <summary>Total power, one station after the other.</summary>
    public static readonly Formula PowerSum = new(
        "power-sum-step", "Total power at an amplifier, one station after the other", "P = 10 log10(10^(P0/10) + 10^(Pi/10))", new("P", "dBm", "total power so far"),
        [new("P0", "dBm", "total before this station"), new("Pi", "dBm", "power of this station")], Own, "sum of powers", Provenance.Derived);

    /// <summary>C/N of a chain.</summary>
    public static readonly Formula CarrierToNoise = new(
        "carrier-to-noise-of-chain", "C/N at the receiver", "C/N = P - (N0 + Fs)", new("C/N", "dB", "carrier-to-noise ratio"),
        [new("P", "dBm", "power at the antenna terminals"), new("N0", "dBm", "k T0 B"), new("Fs", "dB", "system noise figure")], Own, "difference", Provenance.Derived);

    /// <summary>Spread with cable of unknown kind.</summary>
    public static readonly Formula SpreadWithCable = new(
        "spread-with-cable", "Spread with cable of unknown kind or age", "sigma = sqrt(s^2 + c^2 / 3)", new("sigma", "dB", "standard deviation"),
        [new("s", "dB", "spread of the level at the antenna"), new("c", "dB", "half of the range of the cable's loss")], Own, "any value of the range is as likely as another", Provenance.Derived);

    /// <summary>Noise behind a step of the chain.</summary>
    public static readonly Formula NoiseBehind = new(
        "noise-behind-step", "Noise in the channel behind a step of the chain", "N = N0 + Fs + G", new("N", "dBm", "noise"),
        [new("N0", "dBm", "k T0 B"), new("Fs", "dB", "system noise figure up to there"), new("G", "dB", "gain up to there")], Own, "sum", Provenance.Derived);

    /// <summary>Products in a channel.</summary>
    public static readonly Formula CarrierToProducts = new(
        "carrier-to-products", "Channel over the intermodulation products that fall into it", "C/P = C - P", new("C/P", "dB", "ratio"),
        [new("C", "dBm", "channel at the output of the amplifier"), new("P", "dBm", "sum of its third-order products there")], Own, "difference; the products by the composite of all beats", Provenance.Derived);

    /// <summary>Margin of a channel.</summary>
    public static readonly Formula Margin = new(
        "margin", "Margin at the outlet", "M = C/N - R", new("M", "dB", "margin"), [new("C/N", "dB", "carrier-to-noise ratio"), new("R", "dB", "required C/N")],
        Own, "difference", Provenance.Derived);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Formula> All =>
        [JointLoss, LevelAtReceiver, PowerSum, CarrierToNoise, SpreadWithCable, NoiseBehind, CarrierToProducts, Margin];
}
