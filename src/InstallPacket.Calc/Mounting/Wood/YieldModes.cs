using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting.Wood;

/// <summary>The lateral design values of the six ways in which a screw in single shear can yield [N].</summary>
/// <param name="Im">The timber crushes.</param>
/// <param name="Is">The plate crushes.</param>
/// <param name="II">Both crush as the screw turns.</param>
/// <param name="IIIm">The screw bends once, the timber crushes.</param>
/// <param name="IIIs">The screw bends once, the plate crushes.</param>
/// <param name="IV">The screw bends twice.</param>
public readonly record struct YieldModes(double Im, double Is, double II, double IIIm, double IIIs, double IV)
{
    private const double Inch = 0.0254;
    private const double Psi = 6894.757293168;
    private const double Pound = 4.4482216152605;

    /// <summary>Dowel bearing of sheet steel, A653 grade 33 [Pa]; thinner than 1/4 in.</summary>
    public const double SheetSteelPa = 61850 * Psi;

    /// <summary>Dowel bearing of plate steel, A36 [Pa]; 1/4 in and thicker.</summary>
    public const double PlateSteelPa = 87000 * Psi;

    /// <summary>The lateral design value.</summary>
    public static readonly Formula<double> LateralFormula = new Formula(
        "lag-lateral",
        "Lateral design value of a lag screw through a steel plate",
        "Z = least of the six yield modes, root diameter, reduction terms for the angle to the grain; over a gap Z = (sqrt(B^2 + 4 A C) - B) / (2 A) for the modes that turn or bend the screw",
        new("Z", "N", "design value"),
        [new("D", "m", "nominal diameter"), new("G", "", "specific gravity"), new("ts", "m", "plate"),
            new("g", "m", "gap between plate and timber"), new("theta", "deg", "angle of the load to the grain"),
            new("lm", "m", "bearing in the timber")],
        "nds-lag-lateral",
            "yield limit equations and Table 12K; with a gap from the balance of the bent screw, which gives the same equations without one")
        .By<double>((leastN, _) => leastN);

    /// <summary>The value for the place.</summary>
    public static readonly Formula AdjustedFormula = new(
        "lateral-adjusted",
        "Lateral value of one screw in its place",
        "Z' = Z min(1, p / (8 D)) CD CM Ce; none below p = 4 D",
        new("Z'", "N", "design value"),
        [new("Z", "N", "lateral value"), new("p", "m", "penetration, tip not counted"), new("D", "m", "nominal diameter"),
            new("CD", "", "load duration, 1.6 for wind"), new("CM", "", "0.7 where the timber gets wet"),
            new("Ce", "", "end distance over 7 D, 1 at most")],
        "nds-chapter-12", "adjustment factors and penetration")
    {
        Method = v => AdjustedN(v[0], v[1], v[2], v[3], v[4], v[5]),
    };

    /// <summary>The least of them [N].</summary>
    public double LeastN => Math.Min(Math.Min(Math.Min(Im, Is), Math.Min(II, IIIm)), Math.Min(IIIs, IV));

    /// <summary>The modes of a lag screw through a steel plate into timber.</summary>
    /// <param name="screw">The screw.</param>
    /// <param name="gravity">Specific gravity, 0.3 to 0.75.</param>
    /// <param name="plateM">Thickness of the plate [m], above 0; outside throws.</param>
    /// <param name="platePa">Dowel bearing of the plate [Pa].</param>
    /// <param name="thetaDeg">Angle of the load to the grain [deg], 0 to 90.</param>
    /// <param name="bearingM">Bearing length in the timber [m]; eight diameters in the table.</param>
    /// <param name="asTable">Whether the bearing of the timber is rounded to 50 psi, as the table does.</param>
    /// <param name="gapM">What lies between plate and timber and bears nothing [m], not negative; outside throws.</param>
    public static YieldModes Of(LagScrew screw, double gravity, double plateM, double platePa, double thetaDeg, double bearingM,
        bool asTable = false, double gapM = 0) =>
        Of(new Dowel(screw.RootM / Inch, screw.BendingPa / Psi, TimberPsi(gravity, screw.DiameterM / Inch, thetaDeg, asTable)), plateM,
            platePa, bearingM, 1 + 0.25 * thetaDeg / 90, gapM);

    /// <summary>The modes of a wood screw thinner than 1/4 in; the grain makes no difference.</summary>
    /// <param name="screw">The screw.</param>
    /// <param name="gravity">Specific gravity, 0.3 to 0.75.</param>
    /// <param name="plateM">Thickness of the plate [m], above 0; outside throws.</param>
    /// <param name="platePa">Dowel bearing of the plate [Pa].</param>
    /// <param name="bearingM">Bearing length in the timber [m].</param>
    /// <param name="gapM">What lies between plate and timber and bears nothing [m], not negative; outside throws.</param>
    public static YieldModes Of(WoodScrew screw, double gravity, double plateM, double platePa, double bearingM, double gapM = 0) =>
        Of(new Dowel(screw.RootM / Inch, screw.BendingPa / Psi, 16600 * Math.Pow(gravity, 1.84)), plateM, platePa, bearingM, 1, gapM);

    private static YieldModes Of(Dowel screw, double plateM, double platePa, double bearingM, double kt, double gapM)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(plateM);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(bearingM);
        ArgumentOutOfRangeException.ThrowIfNegative(gapM);
        var (dr, fem, fes) = (screw.RootIn, screw.TimberPsi, platePa / Psi);
        var (lm, ls) = (bearingM / Inch, plateM / Inch);
        // Thin roots have one reduction for all modes.
        double? kd = dr < 0.25 ? dr <= 0.17 ? 2.2 : 10 * dr + 0.5 : null;
        double Rd(double usual) => (kd ?? usual) * kt;
        var (two, m, s, four) = gapM > 0 ? OverGap(screw, fes, lm, ls, gapM / Inch) : Tight(screw, fes, lm, ls);
        return new(Pound * dr * lm * fem / Rd(4), Pound * dr * ls * fes / Rd(4), Pound * two / Rd(3.6), Pound * m / Rd(3.2),
            Pound * s / Rd(3.2), Pound * four / Rd(3.2));
    }

    // Modes II, IIIm, IIIs and IV before their reduction [lbf], the plate tight on the timber.
    private static (double, double, double, double) Tight(Dowel screw, double fes, double lm, double ls)
    {
        var (dr, fyb, fem) = screw;
        var (re, rt) = (fem / fes, lm / ls);
        var k1 = (Math.Sqrt(re + 2 * re * re * (1 + rt + rt * rt) + rt * rt * re * re * re) - re * (1 + rt)) / (1 + re);
        var k2 = -1 + Math.Sqrt(2 * (1 + re) + 2 * fyb * (1 + 2 * re) * dr * dr / (3 * fem * lm * lm));
        var k3 = -1 + Math.Sqrt(2 * (1 + re) / re + 2 * fyb * (2 + re) * dr * dr / (3 * fem * ls * ls));
        return (k1 * dr * ls * fes, k2 * dr * lm * fem / (1 + 2 * re), k3 * dr * ls * fem / (2 + re),
            dr * dr * Math.Sqrt(2 * fem * fyb / (3 * (1 + re))));
    }

    // The same over a gap: the force Z is where bearing and bending moment of the screw balance, A Z^2 + B Z = C.
    private static (double, double, double, double) OverGap(Dowel screw, double fes, double lm, double ls, double gap)
    {
        var (dr, fyb, fem) = screw;
        var (qm, qs, moment) = (fem * dr, fes * dr, fyb * dr * dr * dr / 6);
        static double Root(double a, double b, double c) => (Math.Sqrt(b * b + 4 * a * c) - b) / (2 * a);
        return (
            Root(1 / (4 * qs) + 1 / (4 * qm), ls / 2 + gap + lm / 2, qs * ls * ls / 4 + qm * lm * lm / 4),
                Root(1 / (2 * qs) + 1 / (4 * qm), gap + lm / 2, moment + qm * lm * lm / 4),
            Root(1 / (4 * qs) + 1 / (2 * qm), ls / 2 + gap, qs * ls * ls / 4 + moment), Root(1 / (2 * qs) + 1 / (2 * qm), gap, 2 * moment));
    }

    /// <summary>Dowel bearing of timber by the angle to the grain [psi], diameters from 1/4 in.</summary>
    /// <param name="gravity">Specific gravity.</param>
    /// <param name="diameterIn">Nominal diameter [in].</param>
    /// <param name="thetaDeg">Angle to the grain [deg].</param>
    /// <param name="rounded">Whether to round to 50 psi.</param>
    internal static double TimberPsi(double gravity, double diameterIn, double thetaDeg, bool rounded)
    {
        var (along, across) = (11200 * gravity, 6100 * Math.Pow(gravity, 1.45) / Math.Sqrt(diameterIn));
        if (rounded) (along, across) = (Math.Round(along / 50) * 50, Math.Round(across / 50) * 50);
        var (sin, cos) = Math.SinCos(thetaDeg * Math.PI / 180);
        return along * across / (along * sin * sin + across * cos * cos);
    }

    /// <summary>One screw in its place [N]; 0 when it does not reach four diameters deep.</summary>
    /// <param name="lateralN">Lateral value [N].</param>
    /// <param name="penetrationM">Penetration, tip not counted [m].</param>
    /// <param name="diameterM">Nominal diameter [m].</param>
    /// <param name="duration">Load duration factor.</param>
    /// <param name="wet">Wet service factor.</param>
    /// <param name="end">End distance over seven diameters, 1 at most.</param>
    public static double AdjustedN(double lateralN, double penetrationM, double diameterM, double duration, double wet, double end = 1) =>
        penetrationM < 4 * diameterM ? 0 : lateralN * Math.Min(1, penetrationM / (8 * diameterM)) * duration * wet * end;

    private readonly record struct Dowel(double RootIn, double BendingPsi, double TimberPsi);
}
