using InstallPacket.Calc.Bonding;
using InstallPacket.Calc.Quantities;

namespace InstallPacket.Plans.Bonding;

/// <summary>What a surge does along the mast's conductor, beside half and twice its length: why short and straight matters.</summary>
internal sealed class SurgePlanner(UnitPrinter print, WorkLog log)
{
    // Slack is coiled to about the width of a hand's span on both sides.
    private const double CoilRadiusM = 0.1;
    private const double ShortestM = 0.2;

    public BondSurgePlan? Plan(BondingPart conductor, double lengthM, int coils)
    {
        if (lengthM < ShortestM || ConductorSize.AreaM2(conductor, log) is not { } area) return null;
        var diameter = ConductorSize.DiameterM(conductor, area, log);
        var induced = Steepness("induced surge, 8/20", Surge.InducedA, Surge.InducedFrontS);
        var stroke = Steepness("direct first stroke, 10/350", Surge.StrokeA, Surge.StrokeFrontS);
        var lengths = new[] { lengthM / 2, lengthM, 2 * lengthM }.Select(l => Length(l, l.Equals(lengthM), diameter, induced, stroke)).ToArray();
        var (coil, coilKv) = Coil(coils, diameter, induced, lengths[1].InductanceUh);
        double? rise = conductor.Metal == Metal.Copper
            ? log.Record(SurgeHeating.RiseFormula, conductor.Id, SurgeHeating.RiseK(Surge.StrokeEnergyJPerOhm, area), Surge.StrokeEnergyJPerOhm, area * 1e6) : null;
        return new(lengths, Surge.InducedA / 1000, Surge.StrokeA / 1000, Resistive(conductor, area, lengthM), coil, coilKv, rise, rise > SurgeHeating.MeltingRiseK);
    }

    private double Steepness(string what, double peakA, double frontS) =>
        log.Record(Surge.SteepnessFormula, what, Surge.SteepnessAPerS(peakA, frontS) / 1e9, peakA / 1000, frontS * 1e6);

    private SurgeLengthPlan Length(double lengthM, bool planned, double diameterM, double inducedKaPerUs, double strokeKaPerUs)
    {
        var what = $"{print.Length(lengthM)} of the mast's conductor".Replace('\u00A0', ' ');
        var uh = log.Record(WireInductance.StraightFormula, what, WireInductance.StraightH(lengthM, diameterM) * 1e6, lengthM, diameterM);
        return new(lengthM, planned, uh, Kilovolts(what + ", induced surge", uh, inducedKaPerUs), Kilovolts(what + ", direct stroke", uh, strokeKaPerUs));
    }

    private double Kilovolts(string what, double uh, double kaPerUs) => log.Record(Surge.VoltageFormula, what, Surge.VoltageV(uh * 1e-6, kaPerUs * 1e9) / 1000, uh, kaPerUs);

    private (double Uh, double Kv) Coil(int turns, double diameterM, double inducedKaPerUs, double straightUh)
    {
        if (turns == 0) return (0, 0);
        var what = $"{UnitText.Number(turns, 0)} turns of slack";
        var loop = log.Record(WireInductance.LoopFormula, what, WireInductance.LoopH(CoilRadiusM, diameterM / 2) * 1e6, CoilRadiusM, diameterM / 2);
        var coil = log.Record(WireInductance.CoilFormula, what, WireInductance.CoilH(turns, loop * 1e-6) * 1e6, turns, loop);
        log.Record(BondingFormulas.BondCoiled, what, straightUh + coil, straightUh, coil);
        return (coil, Kilovolts(what, coil, inducedKaPerUs));
    }

    private double? Resistive(BondingPart conductor, double areaM2, double lengthM)
    {
        if (conductor.Metal is not { } metal || WireResistance.ResistivityOhmM(Word.Of(metal)) is not { } rho) return null;
        var ohmPerKm = log.Record(WireResistance.ResistanceFormula, conductor.Id, WireResistance.OhmPerM(areaM2, rho) * 1000, areaM2 * 1e6, rho * 1e6);
        return log.Record(Surge.ResistiveFormula, "the mast's conductor", Surge.ResistiveV(Surge.InducedA, ohmPerKm / 1000, lengthM), Surge.InducedA / 1000, ohmPerKm, lengthM);
    }
}
