using InstallPacket.Calc.Mounting;

namespace InstallPacket.Plans.Codes.Us;

/// <summary>Lag screws and thin wood screws after the NDS.</summary>
internal sealed class NdsScrews : IScrewCode
{
    private const int LeastLagDiameters = 4;

    public string TimberExample => "spruce-pine-fir";

    public FindingValues Rule => RuleValues.Of("NDS chapter 12", "-", "read");

    public FindingValues EdgeRule => RuleValues.Of("NDS chapter 12", "-", "memory");

    public FindingValues LeadHoleRule => RuleValues.Of("NDS lead holes", "-", "memory");

    public bool Knows(string timber) => SpecificGravity.Find(timber) is not null;

    public string Timber(Fixing fixing) => Wood(fixing).Name;

    public double TipM(Fixing fixing) => (Thin(fixing) is { } thin ? thin.TipM : LagScrew.Find(fixing.Part.DiameterM!.Value)?.TipM) ?? 0;

    public int? LeastDepth(Fixing fixing) => Thin(fixing) is null ? LeastLagDiameters : WoodScrew.LeastDiameters;

    public (double Least, double Most) LeadHole(ScrewCase screw, double diameterM)
    {
        var (f, thin, gravity) = (screw.Fixing, Thin(screw.Fixing), Wood(screw.Fixing).Gravity);
        var (least, most) = thin is null ? LeadHoleOf(diameterM, gravity)
            : Calc.Mounting.Wood.LeadHole.WoodScrewRangeM(thin.RootM, gravity);
        var formula = thin is null ? Calc.Mounting.Wood.LeadHole.RangeFormula : Calc.Mounting.Wood.LeadHole.WoodScrewFormula;
        Term width = thin is null ? f.Part.Figure(PartKeys.Diameter, diameterM)
            : Term.Table(NumberTables.WoodScrews, $"{thin.Name}.root", thin.RootM);
        screw.Work.Apply(formula, false, $"{screw.Subject}, smallest", width, NdsCapacity.GravityOf(f));
        screw.Work.Apply(formula, true, $"{screw.Subject}, largest", width, NdsCapacity.GravityOf(f));
        return (least, most);
    }

    public double EndM(ScrewCase screw, double diameterM) =>
        screw.Work.Apply(MountingFormulas.EndDistance, screw.Subject, screw.Fixing.Part.Figure(PartKeys.Diameter, diameterM));

    public double EdgeM(ScrewCase screw, double diameterM) =>
        screw.Work.Apply(MountingFormulas.EdgeDistance, screw.Subject, screw.Fixing.Part.Figure(PartKeys.Diameter, diameterM));

    public bool HasRule(FixingForm form) => form is FixingForm.LagScrew or FixingForm.WoodScrew;

    public IFixingResistance? Resistance(ScrewCase screw, LoadPathLedger ledger)
    {
        var capacity = new NdsCapacity(screw, ledger);
        return screw.Fixing.Part.Form == FixingForm.LagScrew ? capacity.Lag() : capacity.ThinScrew();
    }

    private static (double Least, double Most) LeadHoleOf(double diameterM, double gravity) =>
        Calc.Mounting.Wood.LeadHole.RangeM(diameterM, gravity);

    private static WoodScrew? Thin(Fixing f) => f.Part is { Form: FixingForm.WoodScrew, DiameterM: { } diameter }
        ? WoodScrew.Find(diameter) : null;

    private static SpecificGravity Wood(Fixing f) => SpecificGravity.Find(f.Timber?.Value ?? "")
        ?? SpecificGravity.Find(SpecificGravity.Unknown)!;
}
