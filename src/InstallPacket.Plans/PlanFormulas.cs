using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans;

/// <summary>The sums by which planners join published equations. They are plain arithmetic and claim no source beyond that.</summary>
public static partial class PlanFormulas
{
    private const string Own = "project-notes";

    /// <summary>Antenna gain toward a station.</summary>
    public static readonly Formula AntennaGain = new(
        "antenna-gain-toward", "Antenna gain toward the station", "G = Gi - 2.15 + g", new("G", "dBd", "gain over a dipole"),
        [new("Gi", "dBi", "gain on the axis"), new("g", "dB", "relative gain off the aim")], Own, "sum", Provenance.Derived);

    /// <summary>Field at the antenna.</summary>
    public static readonly Formula FieldAtAntenna = new(
        "field-at-antenna", "Field strength at the antenna", "E = min(Em, Ef) - J - A", new("E", "dBuV/m", "field strength for 90 % of the time"),
        [new("Em", "dBuV/m", "field by the planning model, 90 % of the time"), new("Ef", "dBuV/m", "free space"), new("J", "dB", "loss by the obstruction"), new("A", "dB", "loss of the roof above")],
        Own, "sum; never above free space", Provenance.Derived);

    /// <summary>The same for half of the time.</summary>
    public static readonly Formula MedianAtAntenna = new(
        "median-at-antenna", "Median field strength at the antenna", "E50 = max(E, min(Em, Ef) - J - A)", new("E50", "dBuV/m", "field strength for half of the time"),
        [new("Em", "dBuV/m", "field by the planning model, half of the time"), new("Ef", "dBuV/m", "free space"), new("J", "dB", "loss by the obstruction"), new("A", "dB", "loss of the roof above")],
        Own, "sum; never above free space, never below the field for 90 % of the time", Provenance.Derived);

    /// <summary>The curves at the height of the antenna.</summary>
    public static readonly Formula CurveAtAntenna = new(
        "curve-at-antenna", "Field of the curves at the height of the antenna", "Em = Ec + g + c", new("Em", "dBuV/m", "field strength for 90 % of the time"),
        [new("Ec", "dBuV/m", "curve at 9.1 m"), new("g", "dB", "receiving-height correction"), new("c", "dB", "correction for the skyline, 0 where it is unknown")], Own, "sum", Provenance.Derived);

    /// <summary>Spread of the model.</summary>
    public static readonly Formula ModelSpread = new(
        "model-spread", "Spread of the propagation model", "sigma_m = sqrt(s^2 + (D / 2)^2)", new("sigma_m", "dB", "standard deviation"),
        [new("s", "dB", "8 dB for curves without ground, 6 dB for a terrain model"), new("D", "dB", "difference of the two terrain models; 0 with one voice")],
        Own, "planning values of the trade, with half the difference of the models added (our rule)", Provenance.Memory);

    /// <summary>Spread over time.</summary>
    public static readonly Formula TimeSpread = new(
        "time-spread", "Spread over time", "sigma_t = (E50 - E90) / 1.2816", new("sigma_t", "dB", "standard deviation"),
        [new("E50 - E90", "dB", "median less 90 % of the time")], Own, "normal distribution over time", Provenance.Derived);

    /// <summary>All parts of the spread.</summary>
    public static readonly Formula TotalSpread = new(
        "total-spread", "Spread of the predicted level", "sigma = sqrt(sl^2 + st^2 + sm^2 + si^2)", new("sigma", "dB", "standard deviation"),
        [new("sl", "dB", "between places, 5.5 dB for digital television"), new("st", "dB", "over time"), new("sm", "dB", "of the model"), new("si", "dB", "of parts and work, 1.5 dB (memory), with the spread of the roof")],
        Own, "sum of variances of independent parts", Provenance.Derived);

    /// <summary>External noise at a place.</summary>
    public static readonly Formula ExternalNoise = new(
        "external-noise-at-place", "External noise factor", "Fa = max(0, sum of man-made and galactic noise); 0 dB above 250 MHz", new("Fa", "dB", "noise over k T0 B"),
        [new("f", "MHz", "frequency")], "itu-p372", "man-made lines and galactic line; floor of 0 dB at UHF by planning practice", Provenance.Read);

    /// <summary>Required C/N with allowance.</summary>
    public static readonly Formula RequiredCn = new(
        "required-cn", "Required C/N with the allowance for reflections", "R = T + m", new("R", "dB", "required C/N"),
        [new("T", "dB", "threshold of the system and mode"), new("m", "dB", "allowance of the job")], Own, "sum", Provenance.Derived);

    /// <summary>What the aim is judged by.</summary>
    public static readonly Formula AimExcess = new(
        "aim-excess", "Best aim: excess of the weakest wanted station at the antenna", "x = P - N - R", new("x", "dB", "largest smallest excess over all whole degrees"),
        [new("P", "dBm", "power at the terminals"), new("N", "dBm", "thermal and external noise"), new("R", "dB", "required C/N")], Own, "search over 0 to 359 deg true", Provenance.Derived);

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

    /// <summary>Field of a disturber.</summary>
    public static readonly Formula TenthField = new(
        "field-tenth-of-time", "Field of another station for a tenth of the time", "E10 = 2 E50 - E90", new("E10", "dBuV/m", "field strength exceeded for 10 % of the time"),
        [new("E50", "dBuV/m", "median"), new("E90", "dBuV/m", "for 90 % of the time")], Own, "mirror image of the fading, an estimate", Provenance.Derived);

    /// <summary>Ratio of two stations.</summary>
    public static readonly Formula RatioAtTerminals = new(
        "ratio-at-terminals", "Wanted over other station at the antenna terminals", "D/U = Pd - Pu", new("D/U", "dB", "ratio"),
        [new("Pd", "dBm", "wanted, 90 % of the time"), new("Pu", "dBm", "other, 10 % of the time")], Own, "difference; the chain changes both alike", Provenance.Derived);

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

    /// <summary>A disturber as noise.</summary>
    public static readonly Formula DisturberAsNoise = new(
        "disturber-as-noise", "Other station counted as noise", "I = Pu + r - R", new("I", "dBm", "noise that disturbs as much"),
        [new("Pu", "dBm", "other station"), new("r", "dB", "least D/U; the required C/N on the same channel"), new("R", "dB", "required C/N")], Own, "at the least ratio it disturbs as noise does at the threshold", Provenance.Derived);

    /// <summary>Noise temperature.</summary>
    public static readonly Formula AntennaNoise = new(
        "antenna-noise-temperature", "Noise temperature of the surroundings", "Ta = 290 10^(Fa/10)", new("Ta", "K", "temperature"), [new("Fa", "dB", "external noise factor")],
        Own, "definition of the noise factor", Provenance.Derived);

    /// <summary>Wind load with its partial factor.</summary>
    public static readonly Formula DesignWindLoad = new(
        "design-wind-load", "Wind load for the check of strength", "Fd = gamma F", new("Fd", "N", "design load, or N/m"), [new("F", "N", "characteristic load, or N/m"), new("gamma", "", "partial factor on wind")],
        Own, "partial factor 1.5 of the European standards, recalled", Provenance.Memory);

    /// <summary>Moment that a tube bears.</summary>
    public static readonly Formula DesignResistance = new(
        "mast-design-resistance", "Moment that the tube bears, elastic", "MRd = fy S", new("MRd", "N m", "design resistance"), [new("fy", "MPa", "yield strength"), new("S", "mm3", "section modulus")],
        Own, "elastic resistance with a factor of 1.0 on the material, recalled", Provenance.Memory);

    /// <summary>Margin of a channel.</summary>
    public static readonly Formula Margin = new(
        "margin", "Margin at the outlet", "M = C/N - R", new("M", "dB", "margin"), [new("C/N", "dB", "carrier-to-noise ratio"), new("R", "dB", "required C/N")],
        Own, "difference", Provenance.Derived);

    /// <summary>All of them, for the tests.</summary>
    public static IReadOnlyList<Formula> All =>
        [.. MountFormulas.All, BondSize, BondLength, BondCoiled, StrikeInterval, DesignWindLoad, DesignResistance, NoiseBehind, SpreadWithCable, CarrierToProducts, TenthField, RatioAtTerminals, DisturberAsNoise, AntennaNoise, AntennaGain, CurveAtAntenna, FieldAtAntenna, MedianAtAntenna, ModelSpread, TimeSpread, TotalSpread, ExternalNoise, RequiredCn, AimExcess, JointLoss, LevelAtReceiver, PowerSum, CarrierToNoise, Margin, .. OfRouting, .. OfMaterials];
}
