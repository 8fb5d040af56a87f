using InstallPacket.Calc.Mounting;
using InstallPacket.Calc.Quantities;

namespace InstallPacket.Plans.Mounting;

/// <summary>Whether the fixings of the mount bear their share.</summary>
internal sealed class FixingChecker(Job job, CodeFamily code, Workings work, LoadPathLedger ledger)
{
    /// <summary>Fixings that hold the mount; clamps of the antenna do not.</summary>
    public static IReadOnlyList<Fixing> Holding(Job job) => [.. job.Mounting.Fixings.Where(f => f.Part.Form != FixingForm.Clamp)];

    /// <summary>Says that too few fixings are named to calculate with.</summary>
    public static void TooFew(Job job, LoadPathLedger ledger, int places) => ledger.Unknown(
        "the fixing of the mount", "too-few", job.Mounting.Fixings[0].At, ("places", places));

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
        null => Unknown(f, "form"),
        { } => Stated(f, "no-rule"),
    };

    private IFixingResistance? Stated(Fixing f, string way = "no-capacity")
    {
        if (f is { PullN: { } pull, ShearN: { } shear }) return new StatedResistance(work, f.Key("pull", pull), f.Key("shear", shear),
            f.Stated);
        return Unknown(f, way);
    }

    private IFixingResistance? Unknown(Fixing f, string way)
    {
        ledger.Unknown("the fixing " + f.Part.Name, way, f.At, ("part", f.Part.Id), ("family", job.Code),
            ("form", f.Part.Form is { } form ? Word.Of(form) : null));
        return null;
    }

    private void Check(Fixing f, IFixingResistance resistance, FixingDemand demand)
    {
        Subject what = $"{f.Subject(job)}, {demand.Case}";
        var (use, bears) = resistance.Use(what, demand);
        ledger.Add(
            new LoadPathCheck("fixing", what.ToString(), use, resistance.Basis,
                resistance.Provenance) { DemandN = Math.Sqrt(demand.PullN * demand.PullN + demand.ShearN * demand.ShearN), BearsN = bears,
                PullN = demand.PullN, ShearN = demand.ShearN },
            f.At, ("pull_n", demand.PullN), ("shear_n", demand.ShearN), ("capacity_n", bears), ("pull_capacity_n", resistance.PullN),
                ("shear_capacity_n", resistance.ShearN));
    }
}

/// <summary>What a fixing bears.</summary>
internal interface IFixingResistance
{
    string Basis { get; }

    string Provenance { get; }

    /// <summary>Demand over capacity, and the capacity in the direction of the demand where there is one.</summary>
    (double Share, double? BearsN) Use(Subject subject, FixingDemand demand);

    double PullN { get; }

    /// <summary>Capacity for shear alone [N].</summary>
    double ShearN { get; }
}

/// <summary>An anchor or a bolt by the figures of its maker.</summary>
internal sealed class StatedResistance(Workings work, Term pullN, Term shearN, string? stated) : IFixingResistance
{
    public string Basis => stated is null ? "stated in the job: name the sheet" : "stated: " + stated;

    public string Provenance => "stated";

    public (double Share, double? BearsN) Use(Subject subject, FixingDemand d) =>
        (work.Apply(AnchorUse.UseFormula, subject, d.PullN, d.ShearN, pullN, shearN), null);

    public double PullN => pullN;

    public double ShearN => shearN;
}

/// <summary>A lag screw or a thin wood screw in timber, by allowable stress.</summary>
internal sealed class LagResistance(Workings work, Term withdrawalN, Term lateralN, string provenance = "read") : IFixingResistance
{
    public string Basis => "NDS chapter 12";

    public string Provenance => provenance;

    public (double Share, double? BearsN) Use(Subject subject, FixingDemand d)
    {
        if (withdrawalN <= 0 || lateralN <= 0) return (double.PositiveInfinity, 0);
        var angle = work.Apply(MountingFormulas.PullAngle, subject, d.PullN, d.ShearN);
        var bears = work.Apply(CombinedFixing.AllowableFormula, subject, withdrawalN, lateralN, angle);
        return (work.Apply(CombinedFixing.UseFormula, subject, d.PullN, d.ShearN, bears), bears.Number);
    }

    public double PullN => withdrawalN;

    public double ShearN => lateralN;
}

/// <summary>A wood screw in timber, after EN 1995-1-1.</summary>
internal sealed class WoodScrewResistance(Workings work, Term axialN, Term lateralN) : IFixingResistance
{
    public string Basis => "EN 1995-1-1; the approval of the screw goes before it";

    public string Provenance => "memory";

    public (double Share, double? BearsN) Use(Subject subject, FixingDemand d) => axialN <= 0 || lateralN <= 0
        ? (double.PositiveInfinity, 0)
        : (work.Apply(EuropeanScrew.UseFormula, subject, d.PullN, d.ShearN, axialN, lateralN), null);

    public double PullN => axialN;

    public double ShearN => lateralN;
}
