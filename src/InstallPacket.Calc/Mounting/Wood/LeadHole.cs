using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting.Wood;

/// <summary>The lead hole of a lag screw by the density of the timber.</summary>
public static class LeadHole
{
    /// <summary>The range.</summary>
    public static readonly Formula<bool> RangeFormula = new Formula(
        "lead-hole",
        "Lead hole for the thread of a lag screw",
        "40 to 70 % of D for G up to 0.5, 60 to 75 % up to 0.6, 65 to 85 % above",
        new("d", "m", "drill"), [new("D", "m", "nominal diameter"), new("G", "", "specific gravity")],
        "nds-lead-holes", "three classes of density; the shares are recalled", Provenance.Memory)
        .By<bool>((largest, v) => largest ? RangeM(v[0], v[1]).MostM : RangeM(v[0], v[1]).LeastM);

    /// <summary>The range for a wood screw.</summary>
    public static readonly Formula<bool> WoodScrewFormula = new Formula(
        "lead-hole-wood-screw",
        "Lead hole for the thread of a wood screw",
        "70 to 87.5 % of Dr for G up to 0.6, 90 to 100 % above",
        new("d", "m", "drill"), [new("Dr", "m", "root diameter"), new("G", "", "specific gravity")],
        "nds-chapter-12", "lead holes of wood screws, recalled", Provenance.Memory)
        .By<bool>((largest, v) => largest ? WoodScrewRangeM(v[0], v[1]).MostM : WoodScrewRangeM(v[0], v[1]).LeastM);

    /// <summary>Smallest and largest drill of a wood screw [m].</summary>
    /// <param name="rootM">Root diameter [m], above 0; outside throws.</param>
    /// <param name="gravity">Specific gravity.</param>
    public static (double LeastM, double MostM) WoodScrewRangeM(double rootM, double gravity)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(rootM);
        return gravity <= 0.6 ? (0.70 * rootM, 0.875 * rootM) : (0.90 * rootM, rootM);
    }

    /// <summary>Smallest and largest drill [m].</summary>
    /// <param name="diameterM">Nominal diameter [m], above 0; outside throws.</param>
    /// <param name="gravity">Specific gravity.</param>
    public static (double LeastM, double MostM) RangeM(double diameterM, double gravity)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(diameterM);
        var (least, most) = gravity switch { <= 0.5 => (0.40, 0.70), <= 0.6 => (0.60, 0.75), _ => (0.65, 0.85) };
        return (least * diameterM, most * diameterM);
    }
}
