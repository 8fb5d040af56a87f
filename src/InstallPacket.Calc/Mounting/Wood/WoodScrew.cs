using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting.Wood;

/// <summary>Dimensions of a wood screw of the United States that is thinner than 1/4 in; recalled.</summary>
/// <param name="Name">Gauge number, for example <c>#10</c>.</param>
/// <param name="DiameterM">Nominal diameter [m].</param>
/// <param name="RootM">Root diameter of the thread [m].</param>
/// <param name="BendingPa">Bending yield strength [Pa].</param>
public sealed record WoodScrew(string Name, double DiameterM, double RootM, double BendingPa)
{
    /// <summary>Below this many diameters in the timber a wood screw counts as nothing.</summary>
    public const int LeastDiameters = 6;

    /// <summary>From this many diameters on it counts in full.</summary>
    public const int FullDiameters = 10;

    private const double Inch = 0.0254;
    private const double Psi = 6894.757293168;

    /// <summary>The lateral value.</summary>
    public static readonly Formula<YieldModes> LateralFormula = new Formula(
        "wood-screw-lateral",
        "Lateral design value of a wood screw through a steel plate",
        "Z = least of the yield modes, Fe = 16600 G^1.84 psi at any angle to the grain, root diameter, Rd = 2.2 up to a root of 0.17 in and 10 Dr + 0.5 above",
        new("Z", "N", "design value"),
        [new("D", "m", "nominal diameter"), new("G", "", "specific gravity"), new("ts", "m", "plate"),
            new("g", "m", "gap between plate and timber"), new("lm", "m", "bearing in the timber")],
        "nds-chapter-12", "yield limit equations; root diameters and bending strengths recalled", Provenance.Memory)
        .By<YieldModes>((modes, _) => modes.LeastN);

    /// <summary>The value for the place.</summary>
    public static readonly Formula<WoodScrew> AdjustedFormula = new Formula(
        "wood-screw-lateral-adjusted",
        "Lateral value of one wood screw in its place",
        "Z' = Z min(1, p / (10 D)) CD CM; none below p = 6 D",
        new("Z'", "N", "design value"),
        [new("Z", "N", "lateral value"), new("p", "m", "penetration, tip not counted"), new("D", "m", "nominal diameter"),
            new("CD", "", "load duration, 1.6 for wind"), new("CM", "", "0.7 where the timber gets wet")],
        "nds-chapter-12", "penetration of wood screws, recalled", Provenance.Memory)
        .By<WoodScrew>((screw, v) => screw.AdjustedN(v[0], v[1], v[3], v[4]));

    private static readonly WoodScrew[] Sizes = [Of("#8", 0.164, 0.131, 90000), Of("#10", 0.190, 0.152, 80000),
        Of("#12", 0.216, 0.171, 80000), Of("#14", 0.242, 0.196, 70000)];

    /// <summary>All sizes, the thinnest first.</summary>
    public static IReadOnlyList<WoodScrew> All => Sizes;

    /// <summary>Length of the tapered tip, two diameters [m]; it is not counted.</summary>
    public double TipM => 2 * DiameterM;

    /// <summary>The size with this nominal diameter, within a twentieth of a millimetre; null when it is none of them.</summary>
    public static WoodScrew? Find(double diameterM) => Sizes.FirstOrDefault(s => Math.Abs(s.DiameterM - diameterM) < 5e-5);

    /// <summary>How deep the screw reaches into the timber, the tip not counted [m].</summary>
    /// <param name="lengthM">Length under the head [m].</param>
    /// <param name="plateM">What lies between head and timber [m].</param>
    public double PenetrationM(double lengthM, double plateM) => lengthM - plateM - TipM;

    /// <summary>How much of that is thread [m].</summary>
    /// <param name="lengthM">Length under the head [m].</param>
    /// <param name="plateM">What lies between head and timber [m].</param>
    /// <param name="threadM">Length of the thread with its tip [m].</param>
    public double ThreadInTimberM(double lengthM, double plateM, double threadM) =>
        Math.Max(0, Math.Min(threadM - TipM, PenetrationM(lengthM, plateM)));

    /// <summary>One screw in its place [N]; 0 when it does not reach six diameters deep.</summary>
    /// <param name="lateralN">Lateral value [N].</param>
    /// <param name="penetrationM">Penetration, tip not counted [m].</param>
    /// <param name="duration">Load duration factor.</param>
    /// <param name="wet">Wet service factor.</param>
    public double AdjustedN(double lateralN, double penetrationM, double duration, double wet) =>
        penetrationM < LeastDiameters * DiameterM - 1e-9 ? 0
            : lateralN * Math.Min(1, penetrationM / (FullDiameters * DiameterM)) * duration * wet;

    private static WoodScrew Of(string name, double diameterIn, double rootIn, double psi) =>
        new(name, diameterIn * Inch, rootIn * Inch, psi * Psi);
}
