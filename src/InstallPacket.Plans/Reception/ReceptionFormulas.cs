using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans.Reception;

/// <summary>The sums by which the reception planners join published equations.</summary>
public static class ReceptionFormulas
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

    /// <summary>Field of a disturber.</summary>
    public static readonly Formula TenthField = new(
        "field-tenth-of-time", "Field of another station for a tenth of the time", "E10 = 2 E50 - E90", new("E10", "dBuV/m", "field strength exceeded for 10 % of the time"),
        [new("E50", "dBuV/m", "median"), new("E90", "dBuV/m", "for 90 % of the time")], Own, "mirror image of the fading, an estimate", Provenance.Derived);

    /// <summary>Ratio of two stations.</summary>
    public static readonly Formula RatioAtTerminals = new(
        "ratio-at-terminals", "Wanted over other station at the antenna terminals", "D/U = Pd - Pu", new("D/U", "dB", "ratio"),
        [new("Pd", "dBm", "wanted, 90 % of the time"), new("Pu", "dBm", "other, 10 % of the time")], Own, "difference; the chain changes both alike", Provenance.Derived);

    /// <summary>A disturber as noise.</summary>
    public static readonly Formula DisturberAsNoise = new(
        "disturber-as-noise", "Other station counted as noise", "I = Pu + r - R", new("I", "dBm", "noise that disturbs as much"),
        [new("Pu", "dBm", "other station"), new("r", "dB", "least D/U; the required C/N on the same channel"), new("R", "dB", "required C/N")], Own, "at the least ratio it disturbs as noise does at the threshold", Provenance.Derived);

    /// <summary>Noise temperature.</summary>
    public static readonly Formula AntennaNoise = new(
        "antenna-noise-temperature", "Noise temperature of the surroundings", "Ta = 290 10^(Fa/10)", new("Ta", "K", "temperature"), [new("Fa", "dB", "external noise factor")],
        Own, "definition of the noise factor", Provenance.Derived);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Formula> All =>
        [AntennaGain, FieldAtAntenna, MedianAtAntenna, CurveAtAntenna, ModelSpread, TimeSpread, TotalSpread, ExternalNoise, RequiredCn, AimExcess, TenthField, RatioAtTerminals, DisturberAsNoise, AntennaNoise];
}
