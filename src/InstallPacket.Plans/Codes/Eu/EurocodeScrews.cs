using InstallPacket.Calc.Mounting;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans.Codes.Eu;

/// <summary>Wood screws of 6 to 12 mm after EN 1995-1-1.</summary>
internal sealed class EurocodeScrews : IScrewCode
{
    private const double ThinnestM = 0.006;
    private const double ThickestM = 0.012;

    private static readonly Constant AtTheEnd = new("diameters-to-the-end-europe", 7, "en-1995-1-1", Provenance.Memory);
    private static readonly Constant AtTheEdge = new("diameters-to-a-loaded-edge-europe", 4, "en-1995-1-1", Provenance.Memory);
    private static readonly Constant Tensile = new("tensile-strength-of-screws", EuropeanScrew.TensilePa / 1e6, "en-1995-1-1",
        Provenance.Memory);

    public string TimberExample => "c24";

    public FindingValues Rule => RuleValues.Of("EN 1995-1-1", "-", "memory");

    public FindingValues EdgeRule => Rule;

    public FindingValues LeadHoleRule => RuleValues.Of("EN 1995-1-1: 0.7 d", "-", "memory");

    public bool Knows(string timber) => TimberClass.Find(timber) is not null;

    public string Timber(Fixing fixing) => Class(fixing).Name;

    public double TipM(Fixing fixing) => LagScrew.Find(fixing.Part.DiameterM!.Value)?.TipM ?? 0;

    // Six diameters of thread are asked for through the capacity, which is then nil.
    public int? LeastDepth(Fixing fixing) => null;

    public (double Least, double Most) LeadHole(ScrewCase screw, double diameterM)
    {
        var lead = screw.Work.Apply(MountingFormulas.EuropeanLeadHole, screw.Subject,
            screw.Fixing.Part.Figure(PartKeys.Diameter, diameterM).In(1000)) / 1000;
        return (0.9 * lead, 1.1 * lead);
    }

    public double EndM(ScrewCase screw, double diameterM) => Distance(screw, "end", AtTheEnd, diameterM);

    public double EdgeM(ScrewCase screw, double diameterM) => Distance(screw, "edge", AtTheEdge, diameterM);

    public bool HasRule(FixingForm form) => form == FixingForm.WoodScrew;

    public IFixingResistance? Resistance(ScrewCase screw, LoadPathLedger ledger)
    {
        var f = screw.Fixing;
        if (ScrewShape.Of(screw, ledger) is not { } shape) return null;
        if (f.Part.ThreadM is not { } threadLength)
        {
            ScrewShape.Missing(f, ledger, "thread");
            return null;
        }
        if (shape.DiameterM is < ThinnestM or > ThickestM)
        {
            ledger.Unknown("the fixing " + f.Part.Name, "screw-size", f.Part.At, ("part", f.Part.Id), ("diameter_m", shape.DiameterM),
                ("thinnest_m", ThinnestM), ("thickest_m", ThickestM));
            return null;
        }
        if (f.GapM > 0)
            ledger.Unknown("the shear of " + f.Part.Name, "gap", f.At, ("gap_m", f.GapM));
        var depth = Math.Max(0, shape.LengthM - shape.PlateM - f.GapM);
        return Capacity(screw, ledger, shape, depth, Math.Min(threadLength, depth));
    }

    private static WoodScrewResistance Capacity(ScrewCase screw, LoadPathLedger ledger, ScrewShape shape, double depth, double thread)
    {
        var (f, work, name) = (screw.Fixing, screw.Work, screw.Subject);
        if (thread <= 0) return new WoodScrewResistance(work, MountTerms.None, MountTerms.None);
        Term d = f.Part.Figure(PartKeys.Diameter, shape.DiameterM).In(1000),
            kmod = Term.Table(NumberTables.TimberModification, f.Wet ? "wet" : "dry", EuropeanScrew.Modification(f.Wet));
        ledger.Screws.Add(new(name, thread, depth, depth, 1));
        Term length = ScrewShape.Of(name, "thread_m", thread).In(1000),
            density = Term.Table(NumberTables.TimberClasses, $"{Class(f).Name}.density", Class(f).DensityKgM3);
        var strength = work.Apply(EuropeanScrew.StrengthFormula, name, d, length, density);
        var axial = work.Apply(EuropeanScrew.WithdrawalFormula, name, strength, d, length);
        var lateral = work.Apply(EuropeanScrew.LateralFormula, name, d, ScrewShape.Of(name, "depth_m", depth).In(1000), density, Tensile);
        Row Design(Subject subject, Term characteristic) => work.Apply(EuropeanScrew.DesignFormula, subject, kmod, characteristic);
        return new WoodScrewResistance(work, Design($"{name}, pull", axial), Design($"{name}, shear", lateral));
    }

    private static Row Distance(ScrewCase screw, string side, Constant diameters, double diameterM) =>
        screw.Work.Apply(MountingFormulas.EuropeanDistance, $"{screw.Subject}, {side}", diameters,
            screw.Fixing.Part.Figure(PartKeys.Diameter, diameterM));

    private static TimberClass Class(Fixing f) => TimberClass.Find(f.Timber?.Value ?? "") ?? TimberClass.All[0];
}
