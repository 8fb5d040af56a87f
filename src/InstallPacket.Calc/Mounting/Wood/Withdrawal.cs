using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting.Wood;

/// <summary>How hard a screw may be pulled out of timber, its axis across the grain. The rules are dimensional: they run in inches and
/// pounds inside.</summary>
public static class Withdrawal
{
    private const double Inch = 0.0254;
    private const double PoundPerInch = 4.4482216152605 / Inch;

    /// <summary>A lag screw.</summary>
    public static readonly Formula LagFormula = new(
        "lag-withdrawal",
        "Withdrawal of a lag screw, for each length of thread",
        "W = 1800 G^1.5 D^0.75, D in inches, W in pounds per inch; 27.861 G^1.5 D^0.75 in N/mm with D in mm",
        new("W", "N/m", "design value for each metre of thread"), [new("G", "", "specific gravity"), new("D", "m", "nominal diameter")],
        "nds-lag-withdrawal", "equation of Table 12.2A")
    {
        Method = v => LagNPerM(v[0], v[1]),
    };

    /// <summary>A wood screw.</summary>
    public static readonly Formula WoodScrewFormula = new(
        "wood-screw-withdrawal",
        "Withdrawal of a wood screw, for each length of thread",
        "W = 2850 G^2 D, D in inches, W in pounds per inch",
        new("W", "N/m", "design value for each metre of thread"), [new("G", "", "specific gravity"), new("D", "m", "diameter")],
        "nds-chapter-12", "withdrawal of wood screws", Provenance.Memory)
    {
        Method = v => WoodScrewNPerM(v[0], v[1]),
    };

    /// <summary>The value for the place.</summary>
    public static readonly Formula AdjustedFormula = new(
        "withdrawal-adjusted",
        "Withdrawal of one screw in its place",
        "W' = W pt CD CM",
        new("W'", "N", "design value"),
        [new("W", "N/m", "for each metre of thread"), new("pt", "m", "thread in the timber, tip not counted"),
            new("CD", "", "load duration, 1.6 for wind"), new("CM", "", "0.7 where the timber gets wet")],
        "nds-chapter-12", "adjustment factors")
    {
        Method = v => AdjustedN(v[0], v[1], v[2], v[3]),
    };

    /// <summary>A lag screw [N/m].</summary>
    /// <param name="gravity">Specific gravity, 0.3 to 0.75; outside throws.</param>
    /// <param name="diameterM">Nominal diameter [m], above 0; outside throws.</param>
    public static double LagNPerM(double gravity, double diameterM) =>
        1800 * Math.Pow(Checked(gravity), 1.5) * Math.Pow(Positive(diameterM) / Inch, 0.75) * PoundPerInch;

    /// <summary>A wood screw [N/m].</summary>
    /// <param name="gravity">Specific gravity, 0.3 to 0.75; outside throws.</param>
    /// <param name="diameterM">Diameter [m], above 0; outside throws.</param>
    public static double WoodScrewNPerM(double gravity, double diameterM) =>
        2850 * Checked(gravity) * gravity * (Positive(diameterM) / Inch) * PoundPerInch;

    /// <summary>One screw in its place [N].</summary>
    /// <param name="perMetre">Design value for each metre of thread [N/m].</param>
    /// <param name="threadM">Thread in the timber [m].</param>
    /// <param name="duration">Load duration factor.</param>
    /// <param name="wet">Wet service factor.</param>
    public static double AdjustedN(double perMetre, double threadM, double duration, double wet) => perMetre * threadM * duration * wet;

    private static double Checked(double gravity) =>
        gravity is >= 0.3 and <= 0.75 ? gravity
            : throw new ArgumentOutOfRangeException(nameof(gravity), gravity, "Specific gravities of the tables lie between 0.3 and 0.75.");

    private static double Positive(double diameterM) =>
        diameterM > 0 ? diameterM
            : throw new ArgumentOutOfRangeException(nameof(diameterM), diameterM, "A diameter in metres lies above 0.");
}
