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
        return work.Apply(WireGauge.AreaFormula, part.Id,
            work.Apply(WireGauge.DiameterFormula, part.Id, part.Figure(BondingPartKeys.Gauge, gauge)));
    }

    /// <summary>Resistance per length at 20 C [ohm/km], or null when size or metal is unknown.</summary>
    public static Row? OhmPerKm(BondingPart part, Workings work) =>
        part.Metal is { } metal && WireResistance.ResistivityOhmM(Word.Of(metal)) is { } rho && AreaMm2(part, work) is { } area
            ? work.Apply(WireResistance.ResistanceFormula, part.Id, area, Term.Table(NumberTables.Resistivity, Word.Of(metal), rho * 1e6)) : null;

    /// <summary>Diameter of the round wire [m] of a cross-section [mm2].</summary>
    public static Term DiameterM(Part part, Term areaMm2, Workings work) =>
        work.Apply(WireGauge.EquivalentFormula, part.Id, areaMm2).In(0.001);

    /// <summary>The size as the part states it.</summary>
    public static BondSize Of(BondingPart part)
    {
        var metal = part.Metal is { } known ? Word.Of(known) : "";
        return part.Gauge is { } gauge ? new(gauge, "AWG", metal) : part.CrossSectionMm2 is { } mm2 ? new(mm2, "mm2", metal)
            : new(null, "", metal);
    }
}
