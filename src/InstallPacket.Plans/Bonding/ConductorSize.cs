using InstallPacket.Calc.Bonding;
using InstallPacket.Calc.Quantities;

namespace InstallPacket.Plans.Bonding;

/// <summary>Size and metal of a bonding conductor, as its part states them.</summary>
internal static class ConductorSize
{
    /// <summary>Cross-section [m2], or null when the part does not state it.</summary>
    public static double? AreaM2(BondingPart part, WorkLog log)
    {
        if (part.CrossSectionMm2 is { } mm2) return mm2 * 1e-6;
        if (part.Gauge is not { } gauge) return null;
        var diameter = WireGauge.DiameterM(gauge);
        log.Record(WireGauge.DiameterFormula, part.Id, diameter * 1000, gauge);
        var area = WireGauge.AreaM2(diameter);
        log.Record(WireGauge.AreaFormula, part.Id, area * 1e6, diameter * 1000);
        return area;
    }

    /// <summary>Diameter of the round wire [m] of a cross-section.</summary>
    public static double DiameterM(Part part, double areaM2, WorkLog log)
    {
        var diameter = WireGauge.EquivalentDiameterM(areaM2);
        log.Record(WireGauge.EquivalentFormula, part.Id, diameter * 1000, areaM2 * 1e6);
        return diameter;
    }

    /// <summary>The size in words: <c>10 AWG copper</c>; what is unknown is said to be.</summary>
    public static string Words(BondingPart part)
    {
        var size = part.Gauge is { } gauge ? $"{UnitText.Number(gauge, 0)} AWG" : part.CrossSectionMm2 is { } mm2 ? UnitText.Write(mm2, mm2 % 1 == 0 ? 0 : 1, "mm²") : "size unknown";
        return $"{size} {(part.Metal is { } metal ? Words(metal) : "of unknown metal")}";
    }

    /// <summary>A metal in words.</summary>
    public static string Words(Metal metal) => Word.Of(metal).Replace('-', ' ');
}
