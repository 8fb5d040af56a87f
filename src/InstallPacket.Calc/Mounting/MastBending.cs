using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting;

/// <summary>A force on the mast, across it.</summary>
/// <param name="ForceN">Force [N], not negative.</param>
/// <param name="HeightM">Height above the upper bracket [m], 0 to the free length.</param>
public readonly record struct MastLoad(double ForceN, double HeightM);

/// <summary>
/// A mast held at two brackets, the wind from one side: forces of antennas and a line load on the free length above the upper bracket.
/// </summary>
/// <param name="Loads">Forces of the antennas.</param>
/// <param name="LineLoadNPerM">Wind on the free length [N/m], not negative.</param>
/// <param name="FreeM">Free length above the upper bracket [m], above 0 to 100.</param>
/// <param name="SpacingM">Between the brackets [m], 0 to 100; 0 is a mast clamped at its foot, which has no reactions of a pair.</param>
public sealed record MastCase(IReadOnlyList<MastLoad> Loads, double LineLoadNPerM, double FreeM, double SpacingM);

/// <summary>A loaded mast and its tube.</summary>
/// <param name="Mast">The mast.</param>
/// <param name="Tube">Its tube.</param>
/// <param name="ModulusPa">Modulus of elasticity [Pa].</param>
public sealed record BentMast(MastCase Mast, MastSection Tube, double ModulusPa);

/// <summary>Moment, reactions, deflection of a mast at two brackets.</summary>
public static class MastBending
{
    private const string Mechanics = "mechanics of beams, both brackets as pins";

    /// <summary>The moment.</summary>
    public static readonly Formula<MastCase> MomentFormula = new Formula(
        "mast-moment",
        "Moment of the mast at the upper bracket",
        "M = sum(F h) + w a^2 / 2",
        new("M", "N m", "moment"),
            [new("F", "N", "force of an antenna"), new("h", "m", "its height above the bracket"), new("w", "N/m", "line load"),
            new("a", "m", "free length")],
        "project-notes", Mechanics, Provenance.Derived)
        .By<MastCase>((mast, _) => MomentNm(mast));

    /// <summary>The lower reaction.</summary>
    public static readonly Formula<MastCase> LowerReactionFormula = new Formula(
        "mast-lower-reaction",
        "Force at the lower bracket",
        "Rb = M / b + wb b / 2",
        new("Rb", "N", "force, opposite to the upper one"),
            [new("M", "N m", "moment"), new("b", "m", "between the brackets"), new("wb", "N/m", "wind between the brackets")],
        "project-notes", Mechanics + "; wind between the brackets would relieve this one and is added on the safe side", Provenance.Derived)
        .By<MastCase>((mast, _) => LowerReactionN(mast));

    /// <summary>The upper reaction.</summary>
    public static readonly Formula<MastCase> UpperReactionFormula = new Formula(
        "mast-upper-reaction",
        "Force at the upper bracket",
        "Rt = sum(F) + w a + M / b + wb b / 2",
        new("Rt", "N", "force"),
        [new("F", "N", "forces of the antennas"), new("w", "N/m", "line load"), new("a", "m", "free length"), new("M", "N m", "moment"),
            new("b", "m", "between the brackets"), new("wb", "N/m", "wind between the brackets")],
        "project-notes", Mechanics, Provenance.Derived)
        .By<MastCase>((mast, _) => UpperReactionN(mast));

    /// <summary>The deflection.</summary>
    public static readonly Formula<BentMast> DeflectionFormula = new Formula(
        "mast-deflection",
        "Deflection of the mast's top",
        "delta = sum(F h^2 (h + b) / (3 E I) + F h (2 b + 3 h) (a - h) / (6 E I)) + w a^3 (4 b + 3 a) / (24 E I)",
        new("delta", "mm", "deflection"),
        [new("F", "N", "force"), new("h", "m", "its height"), new("w", "N/m", "line load"), new("a", "m", "free length"),
            new("b", "m", "between the brackets"), new("E I", "N m2", "stiffness")],
        "project-notes", Mechanics, Provenance.Derived)
        .By<BentMast>((bent, _) => 1000 * TipDeflectionM(bent.Mast, bent.Tube, bent.ModulusPa));

    /// <summary>The slope.</summary>
    public static readonly Formula<BentMast> SlopeFormula = new Formula(
        "mast-slope",
        "Tilt of the mast's top",
        "theta = sum(F h (2 b + 3 h) / (6 E I)) + w a^2 (a + b) / (6 E I)",
        new("theta", "deg", "tilt"),
        [new("F", "N", "force"), new("h", "m", "its height"), new("w", "N/m", "line load"), new("a", "m", "free length"),
            new("b", "m", "between the brackets"), new("E I", "N m2", "stiffness")],
        "project-notes", Mechanics, Provenance.Derived)
        .By<BentMast>((bent, _) => TipSlopeRad(bent.Mast, bent.Tube, bent.ModulusPa) * 180 / Math.PI);

    /// <summary>The moment at the upper bracket, the largest of the mast.</summary>
    /// <param name="mast">The case; outside its limits throws.</param>
    /// <returns>Moment [N m].</returns>
    public static double MomentNm(MastCase mast) => Checked(mast).Loads.Sum(l => l.ForceN * l.HeightM)
        + mast.LineLoadNPerM * mast.FreeM * mast.FreeM / 2;

    /// <summary>The force at the lower bracket; it pushes against the wind's direction at the upper one.</summary>
    /// <param name="mast">The case, with a spacing above 0; outside its limits throws.</param>
    /// <param name="heldLineLoadNPerM">Wind on the mast between the brackets [N/m], not negative; outside throws.</param>
    /// <returns>Force [N].</returns>
    public static double LowerReactionN(MastCase mast, double heldLineLoadNPerM = 0) => MomentNm(mast) / Spacing(mast)
        + Held(mast, heldLineLoadNPerM);

    /// <summary>The force at the upper bracket.</summary>
    /// <param name="mast">The case, with a spacing above 0; outside its limits throws.</param>
    /// <param name="heldLineLoadNPerM">Wind on the mast between the brackets [N/m], not negative; outside throws.</param>
    /// <returns>Force [N].</returns>
    public static double UpperReactionN(MastCase mast, double heldLineLoadNPerM = 0) =>
        Checked(mast).Loads.Sum(l => l.ForceN) + mast.LineLoadNPerM * mast.FreeM + MomentNm(mast) / Spacing(mast)
            + Held(mast, heldLineLoadNPerM);

    /// <summary>The deflection of the top.</summary>
    /// <param name="mast">The case; outside its limits throws.</param>
    /// <param name="section">Cross-section.</param>
    /// <param name="modulusPa">Modulus of elasticity [Pa], 1e9 to 1e12; outside throws.</param>
    /// <returns>Deflection [m].</returns>
    public static double TipDeflectionM(MastCase mast, MastSection section, double modulusPa)
    {
        var (a, b, stiffness) = (Checked(mast).FreeM, mast.SpacingM, MastSway.StiffnessNm2(section, modulusPa));
        var forces = mast.Loads.Sum(l =>
            l.ForceN * l.HeightM * l.HeightM * (l.HeightM + b) / (3 * stiffness)
                + l.ForceN * l.HeightM * (2 * b + 3 * l.HeightM) * (a - l.HeightM) / (6 * stiffness));
        return forces + mast.LineLoadNPerM * Math.Pow(a, 3) * (4 * b + 3 * a) / (24 * stiffness);
    }

    /// <summary>The tilt of the top, which turns a beam that looks along the wind up or down. Judge it at a service gust, not at the
    /// design gust.</summary>
    /// <param name="mast">The case; outside its limits throws.</param>
    /// <param name="section">Cross-section.</param>
    /// <param name="modulusPa">Modulus of elasticity [Pa], 1e9 to 1e12; outside throws.</param>
    /// <returns>Tilt [rad].</returns>
    public static double TipSlopeRad(MastCase mast, MastSection section, double modulusPa)
    {
        var (a, b, stiffness) = (Checked(mast).FreeM, mast.SpacingM, MastSway.StiffnessNm2(section, modulusPa));
        return (mast.Loads.Sum(l => l.ForceN * l.HeightM * (2 * b + 3 * l.HeightM))
            + mast.LineLoadNPerM * a * a * (a + b)) / (6 * stiffness);
    }

    private static MastCase Checked(MastCase mast)
    {
        Limit.Between(mast.FreeM, 0, 100, "free length in m");
        Limit.Within(mast.SpacingM, 0, 100, "bracket spacing in m");
        Limit.AtLeast(mast.LineLoadNPerM, 0, "line load in N/m");
        foreach (var load in mast.Loads)
        {
            Limit.AtLeast(load.ForceN, 0, "force on the mast in N");
            Limit.Within(load.HeightM, 0, mast.FreeM, "height of the force in m");
        }
        return mast;
    }

    private static double Spacing(MastCase mast) => Limit.Between(mast.SpacingM, 0, 100, "bracket spacing in m");

    private static double Held(MastCase mast, double heldLineLoadNPerM) =>
        Limit.AtLeast(heldLineLoadNPerM, 0, "line load in N/m") * mast.SpacingM / 2;
}
