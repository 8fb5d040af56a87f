using InstallPacket.Calc.Mounting;
using InstallPacket.Calc.Quantities;

namespace InstallPacket.Plans.Mounting;

/// <summary>Whether the fixings of the mount bear their share.</summary>
internal sealed class FixingChecker(Job job, CodeFamily code, Workings work, HoldLedger ledger)
{
    private readonly UnitPrinter _print = UnitPrinter.Of(job);

    /// <summary>Fixings that hold the mount; clamps of the antenna do not.</summary>
    public static IReadOnlyList<Fixing> Holding(Job job) => [.. job.Mounting.Fixings.Where(f => f.Part.Form != FixingForm.Clamp)];

    /// <summary>Says that too few fixings are named to reckon with.</summary>
    public static void TooFew(Job job, HoldLedger ledger, int places) => ledger.Unknown(
        "the fixing of the mount", job.Mounting.Fixings[0].At, $"the job names fewer fixings for the mount than its {places} places that are held", "name every fixing with its count; clamps of the antenna do not hold the mount");

    /// <summary>Checks every kind of fixing against each case.</summary>
    public void Check(IReadOnlyList<FixingDemand> demands)
    {
        foreach (var fixing in Holding(job))
        {
            if (Resistance(fixing) is not { } resistance) continue;
            foreach (var demand in demands) Check(fixing, resistance, demand);
        }
    }

    private IFixingResistance? Resistance(Fixing f) => f.Part.Form switch
    {
        FixingForm.Anchor or FixingForm.Bolt => Stated(f),
        { } form when code.Screws.HasRule(form) => code.Screws.Resistance(new(job, f, work), ledger),
        null => Unknown(f, $"the fixing `{f.Part.Id}` does not state `form`", "add `form` to the part: lag-screw, wood-screw, anchor, bolt or clamp"),
        { } form => Stated(f, $"for a {Word.Of(form).Replace('-', ' ')} the code family `{code.Id}` has no rule here"),
    };

    private IFixingResistance? Stated(Fixing f, string why = "no capacity of anchors is built in")
    {
        if (f is { PullN: { } pull, ShearN: { } shear }) return new StatedResistance(work, f.Key("pull", pull), f.Key("shear", shear), f.Stated);
        return Unknown(f, $"the fixing `{f.Part.Id}` states no `pull` and `shear`; {why}",
            "write what the maker's approval states for this masonry, edge distance and depth (allowable load for `us`, design resistance for `eu`), or have it tested on site");
    }

    private IFixingResistance? Unknown(Fixing f, string found, string remedy)
    {
        ledger.Unknown("the fixing " + f.Part.Name, f.At, found, remedy);
        return null;
    }

    private void Check(Fixing f, IFixingResistance resistance, FixingDemand demand)
    {
        var what = $"{f.Subject(job)}, {demand.Case}";
        var (use, bears) = resistance.Use(what, demand);
        ledger.Add(
            new HoldCheck("fixing", what, use, resistance.Basis, resistance.Provenance) { DemandN = Math.Sqrt(demand.PullN * demand.PullN + demand.ShearN * demand.ShearN), BearsN = bears, PullN = demand.PullN, ShearN = demand.ShearN },
            $"each is pulled with {_print.Force(demand.PullN)} and sheared with {_print.Force(demand.ShearN)}", bears is { } n ? _print.Force(n) + " in this direction" : resistance.Words(_print), f.At,
            "take more or thicker fixings, bolts farther apart, a shorter stand-off or a shorter mast");
    }
}

/// <summary>What a fixing bears.</summary>
internal interface IFixingResistance
{
    string Basis { get; }

    string Provenance { get; }

    /// <summary>Demand over capacity, and the capacity in the direction of the demand where there is one.</summary>
    (double Share, double? BearsN) Use(string subject, FixingDemand demand);

    string Words(UnitPrinter print);
}

/// <summary>An anchor or a bolt by the figures of its maker.</summary>
internal sealed class StatedResistance(Workings work, Term pullN, Term shearN, string? stated) : IFixingResistance
{
    public string Basis => stated is null ? "stated in the job: name the sheet" : "stated: " + stated;

    public string Provenance => "stated";

    public (double Share, double? BearsN) Use(string subject, FixingDemand d) =>
        (work.Apply(AnchorUse.UseFormula, subject, d.PullN, d.ShearN, pullN, shearN), null);

    public string Words(UnitPrinter print) => $"{print.Force(pullN)} pull and {print.Force(shearN)} shear";
}

/// <summary>A lag screw or a thin wood screw in timber, by allowable stress.</summary>
internal sealed class LagResistance(Workings work, Term withdrawalN, Term lateralN, string provenance = "read") : IFixingResistance
{
    public string Basis => "NDS chapter 12";

    public string Provenance => provenance;

    public (double Share, double? BearsN) Use(string subject, FixingDemand d)
    {
        if (withdrawalN <= 0 || lateralN <= 0) return (double.PositiveInfinity, 0);
        var angle = work.Apply(MountingFormulas.PullAngle, subject, d.PullN, d.ShearN);
        var bears = work.Apply(CombinedFixing.AllowableFormula, subject, withdrawalN, lateralN, angle);
        return (work.Apply(CombinedFixing.UseFormula, subject, d.PullN, d.ShearN, bears), bears.Number);
    }

    public string Words(UnitPrinter print) => print.Force(withdrawalN);
}

/// <summary>A wood screw in timber, after EN 1995-1-1.</summary>
internal sealed class WoodScrewResistance(Workings work, Term axialN, Term lateralN) : IFixingResistance
{
    public string Basis => "EN 1995-1-1; the approval of the screw goes before it";

    public string Provenance => "memory";

    public (double Share, double? BearsN) Use(string subject, FixingDemand d) => axialN <= 0 || lateralN <= 0
        ? (double.PositiveInfinity, 0)
        : (work.Apply(EuropeanScrew.UseFormula, subject, d.PullN, d.ShearN, axialN, lateralN), null);

    public string Words(UnitPrinter print) => $"{print.Force(axialN)} pull and {print.Force(lateralN)} shear";
}
