using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans.Reception;

/// <summary>The sums by which the reception planners join published equations.</summary>
public static class ReceptionFormulas
{
    private const string Own = "project-notes";

    /// <summary>Antenna gain toward a station.</summary>
    public static readonly Formula AntennaGain = new(
        "antenna-gain-toward", "Antenna gain toward the station", "G = Gi - 2.15 + g", new("G", "dBd", "gain over a dipole"),
        [new("Gi", "dBi", "gain on the axis"), new("g", "dB", "relative gain off the aim")], Own, "sum", Provenance.Derived)
    {
        Method = v => v[0] - 2.15 + v[1],
    };

    /// <summary>Field at the antenna.</summary>
    public static readonly Formula FieldAtAntenna = new(
        "field-at-antenna", "Field strength at the antenna", "E = min(Em, Ef) - J - A",
            new("E", "dBuV/m", "field strength for 90 % of the time"),
        [new("Em", "dBuV/m", "field by the planning model, 90 % of the time"), new("Ef", "dBuV/m", "free space"),
            new("J", "dB", "loss by the obstruction"), new("A", "dB", "loss of the roof above")],
        Own, "sum; never above free space", Provenance.Derived)
    {
        Method = v => Math.Min(v[0], v[1]) - v[2] - v[3],
    };

    /// <summary>The same for half of the time.</summary>
    public static readonly Formula<double> MedianAtAntenna = new Formula(
        "median-at-antenna", "Median field strength at the antenna", "E50 = max(E, min(Em, Ef) - J - A)",
            new("E50", "dBuV/m", "field strength for half of the time"),
        [new("Em", "dBuV/m", "field by the planning model, half of the time"), new("Ef", "dBuV/m", "free space"),
            new("J", "dB", "loss by the obstruction"), new("A", "dB", "loss of the roof above")],
        Own, "sum; never above free space, never below the field for 90 % of the time", Provenance.Derived)
        .By<double>((field, v) => Math.Max(field, Math.Min(v[0], v[1]) - v[2] - v[3]));

    /// <summary>The field for a tenth of the time.</summary>
    public static readonly Formula<double> TenthAtAntenna = new Formula(
        "tenth-at-antenna", "Field strength at the antenna for a tenth of the time", "E10 = max(E50, min(Em, Ef) - J - A)",
            new("E10", "dBuV/m", "field strength exceeded for 10 % of the time"),
        [new("Em", "dBuV/m", "field by the planning model, 10 % of the time"), new("Ef", "dBuV/m", "free space"),
            new("J", "dB", "loss by the obstruction"), new("A", "dB", "loss of the roof above")],
        Own, "sum; never above free space, never below the median", Provenance.Derived)
        .By<double>((median, v) => Math.Max(median, Math.Min(v[0], v[1]) - v[2] - v[3]));

    /// <summary>The curves at the height of the antenna.</summary>
    public static readonly Formula CurveAtAntenna = new(
        "curve-at-antenna", "Field of the curves at the height of the antenna", "Em = Ec + g + c",
            new("Em", "dBuV/m", "field strength for 90 % of the time"),
        [new("Ec", "dBuV/m", "curve at 9.1 m"), new("g", "dB", "receiving-height correction"),
            new("c", "dB", "correction for the skyline, 0 where it is unknown")], Own, "sum", Provenance.Derived)
    {
        Method = v => v[0] + v[1] + v[2],
    };

    /// <summary>Spread of a terrain model by the length of the path.</summary>
    public static readonly Formula PathSpread = new(
        "path-spread", "Spread of a terrain model by the length of the path", "s = 6.5 + 3.5 (d - 20) / 80, at least 6.5, at most 10",
            new("s", "dB", "standard deviation"), [new("d", "km", "distance")],
        Own, "errors of the two models against measured paths: 6 to 7 dB up to 11 km, 10 dB and more beyond 100 km; the line between is our rule",
            Provenance.Derived)
    {
        Method = v => Math.Clamp(6.5 + 3.5 * (v[0] - 20) / 80, 6.5, 10),
    };

    /// <summary>Spread of the model.</summary>
    public static readonly Formula ModelSpread = new(
        "model-spread", "Spread of the propagation model", "sigma_m = sqrt(s^2 + (D / 2)^2)", new("sigma_m", "dB", "standard deviation"),
        [new("s", "dB", "of the model by itself"), new("D", "dB", "largest difference of the estimates that saw the ground; 0 with one of them")],
        Own, "half the difference of the models added (our rule)", Provenance.Derived)
    {
        Method = v => Math.Sqrt(v[0] * v[0] + v[1] * v[1] / 4),
    };

    /// <summary>Spread over time.</summary>
    public static readonly Formula TimeSpread = new(
        "time-spread", "Spread over time", "sigma_t = (E50 - E90) / 1.2816", new("sigma_t", "dB", "standard deviation"),
        [new("E50 - E90", "dB", "median less 90 % of the time")], Own, "normal distribution over time", Provenance.Derived)
    {
        Method = v => v[0] / 1.2816,
    };

    /// <summary>All parts of the spread.</summary>
    public static readonly Formula TotalSpread = new(
        "total-spread", "Spread of the predicted level", "sigma = sqrt(sl^2 + sm^2 + si^2)",
            new("sigma", "dB", "standard deviation"),
        [new("sl", "dB", "between places"), new("sm", "dB", "of the model"),
            new("si", "dB", "of parts and work, 1.5 dB (memory), with the spread of the roof")],
        Own, "sum of variances of independent parts", Provenance.Derived)
    {
        Method = v => Calc.Reception.Probability.CombinedSigmaDb(v),
    };

    /// <summary>External noise at a place.</summary>
    public static readonly Formula<Calc.Reception.NoiseEnvironment> ExternalNoise = new Formula(
        "external-noise-at-place", "External noise factor", "Fa = max(0, sum of man-made and galactic noise); 0 dB above 250 MHz",
            new("Fa", "dB", "noise over k T0 B"),
        [new("f", "MHz", "frequency")], "itu-p372", "man-made lines and galactic line; floor of 0 dB at UHF by planning practice",
            Provenance.Read)
        .By<Calc.Reception.NoiseEnvironment>((place, v) => Calc.Reception.ExternalNoise.FigureDb(place, v[0]));

    /// <summary>Required C/N with allowance.</summary>
    public static readonly Formula RequiredCn = new(
        "required-cn", "Required C/N with the allowance for reflections", "R = T + m", new("R", "dB", "required C/N"),
        [new("T", "dB", "threshold of the system and mode"), new("m", "dB", "allowance of the job")], Own, "sum", Provenance.Derived)
    {
        Method = v => v[0] + v[1],
    };

    /// <summary>What the aim is judged by.</summary>
    public static readonly Formula AimExcess = new(
        "aim-excess", "Best aim: excess of the weakest wanted station at the antenna", "x = P - N - R",
            new("x", "dB", "largest smallest excess over all whole degrees"),
        [new("P", "dBm", "power at the terminals"), new("N", "dBm", "thermal and external noise"), new("R", "dB", "required C/N")], Own,
            "search over 0 to 359 deg true", Provenance.Derived)
    {
        Method = v => v[0] - v[1] - v[2],
    };

    /// <summary>Ratio of two stations.</summary>
    public static readonly Formula RatioAtTerminals = new(
        "ratio-at-terminals", "Wanted over other station at the antenna terminals", "D/U = Pd - Pu", new("D/U", "dB", "ratio"),
        [new("Pd", "dBm", "wanted, for the demanded share of the time"), new("Pu", "dBm", "other, for the rest of the time")], Own,
            "difference; the chain changes both alike", Provenance.Derived)
    {
        Method = v => v[0] - v[1],
    };

    /// <summary>A disturber as noise.</summary>
    public static readonly Formula DisturberAsNoise = new(
        "disturber-as-noise", "Other station counted as noise", "I = Pu + r - R", new("I", "dBm", "noise that disturbs as much"),
        [new("Pu", "dBm", "other station"), new("r", "dB", "least D/U; the required C/N on the same channel"),
            new("R", "dB", "required C/N")], Own, "at the least ratio it disturbs as noise does at the threshold", Provenance.Derived)
    {
        Method = v => v[0] + v[1] - v[2],
    };

    /// <summary>Noise temperature.</summary>
    public static readonly Formula AntennaNoise = new(
        "antenna-noise-temperature", "Noise temperature of the surroundings", "Ta = 290 10^(Fa/10)", new("Ta", "K", "temperature"),
            [new("Fa", "dB", "external noise factor")],
        Own, "definition of the noise factor", Provenance.Derived)
    {
        Method = v => 290 * Math.Pow(10, v[0] / 10),
    };

    /// <summary>Field of a station by the loss of its path.</summary>
    public static readonly Formula FieldByLoss = new(
        "field-by-loss", "Field strength by the basic transmission loss of P.1812", "E = 199.36 + 20 log10(f) - Lb + 10 log10(P)",
        new("E", "dBuV/m", "field strength"),
            [new("f", "GHz", "frequency"), new("Lb", "dB", "basic transmission loss"), new("P", "kW", "power toward the house")],
        "itu-p1812", "field strength of 1 kW, and the power in decibels", Provenance.Read)
    {
        Method = v => Calc.Reception.P1812.PathSpecificPrediction.FieldDbuVm(v[0], v[1]) + 10 * Math.Log10(v[2]),
    };

    /// <summary>Bearing of the house from the transmitter.</summary>
    public static readonly Formula BearingBack = Calc.Siting.Geodesic.BearingFormula with
    {
        Id = "bearing-of-house", Title = "True bearing of the house from the transmitter",
        Inputs = [new("lat1", "deg", "latitude of the transmitter"), new("lon1", "deg", "longitude of the transmitter"),
            new("lat2", "deg", "latitude of the house"), new("lon2", "deg", "longitude of the house")],
        Method = v => Calc.Quantities.Bearing.Wrap(Calc.Siting.Geodesic.Inverse(v[0], v[1], v[2], v[3]).AzimuthDeg),
    };

    /// <summary>Loss through woodland.</summary>
    public static readonly Formula Woodland = Calc.Reception.WoodlandLoss.LossFormula with { Method = v =>
        v[2] * (1 - Math.Exp(-v[0] * v[1] / v[2])) };

    /// <summary>The larger of two estimates for trees.</summary>
    public static readonly Formula InLeaf = new(
        "trees-in-leaf", "Loss through trees in leaf: the larger of two estimates, because trees grow", "L = max(L1, L2)",
            new("L", "dB", "loss"),
        [new("L1", "dB", "one estimate"), new("L2", "dB", "the other")], Own, "the pessimistic end of the range",
            Provenance.Derived) { Method = v => Math.Max(v[0], v[1]) };

    /// <summary>Bare trees.</summary>
    public static readonly Formula BareTrees = new(
        "trees-bare", "Loss through bare trees", "L0 = L / k", new("L0", "dB", "loss without leaves"),
        [new("L", "dB", "loss in leaf"), new("k", "", "least factor that the trade gives for leaves")], Own, "reception, section 7",
            Provenance.Memory) { Method = v => v[0] / v[1] };

    /// <summary>Height above a level ray.</summary>
    public static readonly Formula AboveLevelRay = new(
        "above-level-ray", "Height of an obstruction above the ray, taken as level because the transmitter's height is unknown",
            "h = ho - ha", new("h", "m", "height"),
        [new("ho", "m", "top of the obstruction above the sea"), new("ha", "m", "antenna above the sea")], Own,
            "difference; it overstates a near obstruction", Provenance.Derived)
    {
        Method = v => v[0] - v[1],
    };

    /// <summary>Transmitting antenna above its ground.</summary>
    public static readonly Formula AboveGround = new(
        "transmitter-above-ground", "Transmitting antenna above the ground under it", "h = ht - g", new("h", "m", "height above ground"),
        [new("ht", "m", "antenna above the sea"), new("g", "m", "ground above the sea")], Own, "difference",
            Provenance.Derived) { Method = v => v[0] - v[1] };

    /// <summary>Power of a disturber.</summary>
    public static readonly Formula DisturberPower = Calc.Reception.FieldToPower.PowerFormula with
    {
        Id = "power-of-disturber", Title = "Power of a station at the antenna terminals, for the rest of the time",
    };

    /// <summary>Spread of the parts and the work.</summary>
    public static readonly Formula WorkSpread = new(
        "work-spread", "Spread of parts and work, with that of the roof", "si = sqrt(i^2 + r^2)", new("si", "dB", "standard deviation"),
        [new("i", "dB", "parts and work"), new("r", "dB", "loss of the roof above the antenna; 0 outdoors")], Own, "sum of variances",
            Provenance.Derived)
    {
        Method = v => Calc.Reception.Probability.CombinedSigmaDb(v),
    };

    /// <summary>Fade between half and nine tenths of the time.</summary>
    public static readonly Formula Fade = new(
        "fade", "Fade between half and 90 % of the time", "F = E50 - E90", new("F", "dB", "difference"),
        [new("E50", "dBuV/m", "median"), new("E90", "dBuV/m", "for 90 % of the time")], Own, "difference",
            Provenance.Derived) { Method = v => v[0] - v[1] };

    /// <summary>Gain toward a station, less the loss of the other plane.</summary>
    public static readonly Formula CrossedGain = new(
        "antenna-gain-crossed", "Antenna gain toward the station, less the loss by its polarisation", "Gt = G - L",
            new("Gt", "dBd", "gain over a dipole"),
        [new("G", "dBd", "gain toward the station"), new("L", "dB", "loss by the turned plane")], Own, "difference",
            Provenance.Derived) { Method = v => v[0] - v[1] };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Formula> All =>
        [DisturberPower, InLeaf, BareTrees, AboveLevelRay, AboveGround, BearingBack, FieldByLoss, WorkSpread, Fade, CrossedGain,
            AntennaGain, FieldAtAntenna, MedianAtAntenna, CurveAtAntenna, PathSpread, ModelSpread, TimeSpread, TotalSpread, ExternalNoise, RequiredCn,
            AimExcess, TenthAtAntenna, RatioAtTerminals, DisturberAsNoise, AntennaNoise];
}
