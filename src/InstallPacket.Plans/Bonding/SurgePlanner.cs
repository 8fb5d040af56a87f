using InstallPacket.Calc.Bonding;
using InstallPacket.Calc.Quantities;

namespace InstallPacket.Plans.Bonding;

/// <summary>What a surge does along the mast's conductor, beside half and twice its length: why short and straight matters.</summary>
internal sealed class SurgePlanner(UnitPrinter print, Workings work)
{
    // Slack is coiled to about the width of a hand's span on both sides.
    private static readonly Constant CoilRadiusM = new("radius-of-coiled-slack", 0.1, "project-notes", Calc.Sources.Provenance.Derived);
    private static readonly Constant Half = new("half-the-length", 0.5, "project-notes", Calc.Sources.Provenance.Derived);
    private static readonly Constant Once = new("the-length", 1, "project-notes", Calc.Sources.Provenance.Derived);
    private static readonly Constant Twice = new("twice-the-length", 2, "project-notes", Calc.Sources.Provenance.Derived);
    private static readonly Constant InducedFrontUs = new("front-of-induced-surge", Surge.InducedFrontS * 1e6, "project-notes",
        Calc.Sources.Provenance.Memory);
    private static readonly Constant StrokeKa = new("peak-of-direct-stroke", Surge.StrokeA / 1000, "project-notes",
        Calc.Sources.Provenance.Memory);
    private static readonly Constant StrokeFrontUs = new("front-of-direct-stroke", Surge.StrokeFrontS * 1e6, "project-notes",
        Calc.Sources.Provenance.Memory);
    private static readonly Constant StrokeEnergy = new("energy-of-direct-stroke", Surge.StrokeEnergyJPerOhm, "project-notes",
        Calc.Sources.Provenance.Memory);

    /// <summary>Peak of the induced surge [kA].</summary>
    public static readonly Constant InducedKa = new("peak-of-induced-surge", Surge.InducedA / 1000, "project-notes",
        Calc.Sources.Provenance.Memory);

    private const double ShortestM = 0.2;

    public BondSurgePlan? Plan(BondingPart conductor, double lengthM, int coils)
    {
        if (lengthM < ShortestM || ConductorSize.AreaMm2(conductor, work) is not { } area) return null;
        var diameter = ConductorSize.DiameterM(conductor, area, work);
        var induced = Steepness("induced surge, 8/20", InducedKa, InducedFrontUs);
        var stroke = Steepness("direct first stroke, 10/350", StrokeKa, StrokeFrontUs);
        var lengths = new[] { Half, Once, Twice }.Select(k => Length(k, lengthM, diameter, induced, stroke)).ToArray();
        var (coil, coilKv) = Coil(coils, diameter, induced, conductor,
            Term.Plan($"bonding.surge.lengths[{lengths[1].LengthM.ToString(System.Globalization.CultureInfo.InvariantCulture)}].inductance_uh", lengths[1].InductanceUh));
        double? rise = conductor.Metal == Metal.Copper
            ? work.Apply(SurgeHeating.RiseFormula, conductor.Id, StrokeEnergy, area).Number : null;
        return new(lengths, Surge.InducedA / 1000, Surge.StrokeA / 1000, Resistive(conductor, lengthM), coil, coilKv, rise,
            rise > SurgeHeating.MeltingRiseK);
    }

    private Row Steepness(string what, Term peakKa, Term frontUs) => work.Apply(Surge.SteepnessFormula, what, peakKa, frontUs);

    private SurgeLengthPlan Length(Constant times, double plannedM, Term diameterM, Term inducedKaPerUs, Term strokeKaPerUs)
    {
        Subject what = $"{print.Length(times * plannedM).Replace('\u00A0', ' ')} of the mast's conductor";
        var length = work.Apply(BondingFormulas.ComparedLength, what, times, Term.Key("bonding.mast-length", plannedM));
        var uh = work.Apply(WireInductance.StraightFormula, what, length, diameterM);
        return new(length, times == Once, uh, Kilovolts($"{what}, induced surge", uh, inducedKaPerUs),
            Kilovolts($"{what}, direct stroke", uh, strokeKaPerUs));
    }

    private Row Kilovolts(Subject what, Term uh, Term kaPerUs) => work.Apply(Surge.VoltageFormula, what, uh, kaPerUs);

    private (double Uh, double Kv) Coil(int turns, Term diameterM, Term inducedKaPerUs, Part conductor, Term straightUh)
    {
        if (turns == 0) return (0, 0);
        Subject what = $"{UnitText.Number(turns, 0)} turns of slack";
        var loop = work.Apply(WireInductance.LoopFormula, what, CoilRadiusM, work.Apply(BondingFormulas.Radius, conductor.Id, diameterM));
        var coil = work.Apply(WireInductance.CoilFormula, what, Term.Key("bonding.mast-route.coils", turns), loop);
        work.Apply(BondingFormulas.BondCoiled, what, straightUh, coil);
        return (coil, Kilovolts(what, coil, inducedKaPerUs));
    }

    private double? Resistive(BondingPart conductor, double lengthM)
    {
        if (ConductorSize.OhmPerKm(conductor, work) is not { } ohmPerKm) return null;
        return work.Apply(Surge.ResistiveFormula, "the mast's conductor", InducedKa, ohmPerKm, Term.Key("bonding.mast-length", lengthM));
    }
}
