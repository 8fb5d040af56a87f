using InstallPacket.Calc.Bonding;
using InstallPacket.Calc.Quantities;

namespace InstallPacket.Plans.Bonding;

/// <summary>Size and metal of a bonding conductor, as its part states them.</summary>
internal static class ConductorSize
{
    /// <summary>Cross-section [m2], or null when the part does not state it.</summary>
    public static double? AreaM2(BondingPart part, Workings work) => AreaMm2(part, work) is { } mm2 ? mm2 * 1e-6 : null;

    /// <summary>Cross-section [mm2], or null when the part does not state it.</summary>
    public static Term? AreaMm2(BondingPart part, Workings work)
    {
        if (part.CrossSectionMm2 is { } mm2) return part.Figure(BondingPartKeys.CrossSection, mm2);
        if (part.Gauge is not { } gauge) return null;
        return work.Apply(WireGauge.AreaFormula, part.Id, work.Apply(WireGauge.DiameterFormula, part.Id, part.Figure(BondingPartKeys.Gauge, gauge)));
    }

    /// <summary>Diameter of the round wire [m] of a cross-section [mm2].</summary>
    public static Term DiameterM(Part part, Term areaMm2, Workings work) => work.Apply(WireGauge.EquivalentFormula, part.Id, areaMm2).In(0.001);

    /// <summary>The size in words: <c>10 AWG copper</c>; what is unknown is said to be.</summary>
    public static string Words(BondingPart part)
    {
        var size = part.Gauge is { } gauge ? $"{UnitText.Number(gauge, 0)} AWG" : part.CrossSectionMm2 is { } mm2 ? UnitText.Write(mm2, mm2 % 1 == 0 ? 0 : 1, "mm²") : "size unknown";
        return $"{size} {(part.Metal is { } metal ? Words(metal) : "of unknown metal")}";
    }

    /// <summary>A metal in words.</summary>
    public static string Words(Metal metal) => Word.Of(metal).Replace('-', ' ');
}
