using InstallPacket.Calc.Mounting;

namespace InstallPacket.Plans.Mounting;

/// <summary>What the crew must know of a fixing: count, drill, depth, distances, torque; and whether they fit each other.</summary>
internal sealed class FixingPlanner(Job job, Workings work, FindingList findings)
{
    private const double LeastEndShare = 0.5;
    private static readonly Constant AtTheEnd = new("diameters-to-the-end-europe", 7, "en-1995-1-1", Calc.Sources.Provenance.Memory);
    private static readonly Constant AtTheEdge = new("diameters-to-a-loaded-edge-europe", 4, "en-1995-1-1", Calc.Sources.Provenance.Memory);
    private readonly UnitPrinter _print = UnitPrinter.Of(job);

    public FixingPlan Plan(Fixing f)
    {
        var plan = new FixingPlan(f.Part.Id, f.Part.Name, f.Count, f.Pilot?.Metres, f.Into, f.Part.TorqueNm, f.Part.TorqueNm is null ? "" : f.Part.ProvenanceOf(PartKeys.Torque))
        {
            Form = f.Part.Form, Stated = f.Stated ?? "",
        };
        if (f.Part is not { Form: FixingForm.LagScrew or FixingForm.WoodScrew, DiameterM: { } diameter, LengthM: { } length }) return plan;
        TimberFits(f);
        var (least, most) = Drill(f, diameter);
        CheckPilot(f, least, most);
        CheckDistances(f, diameter);
        var depth = length - (job.Mounting.Mount.PlateM ?? 0) - f.GapM - ((Thin(f) is { } thin ? thin.TipM : LagScrew.Find(diameter)?.TipM) ?? 0);
        CheckDepth(f, depth, diameter);
        return plan with
        {
            DepthM = depth, LeadFromM = least, LeadToM = most, Timber = Timber(f), TimberAssumed = f.Timber is null, Wet = f.Wet,
            EndM = Distance(f, "end", 7, diameter, MountingFormulas.EndDistance), EdgeM = Distance(f, "edge", 4, diameter, MountingFormulas.EdgeDistance),
        };
    }

    private WoodScrew? Thin(Fixing f) => job.Code == "us" && f.Part is { Form: FixingForm.WoodScrew, DiameterM: { } diameter } ? WoodScrew.Find(diameter) : null;

    private double Distance(Fixing f, string side, int diameters, double diameter, Calc.Sources.Formula american) => job.Code == "us"
        ? work.Apply(american, f.Subject(job), f.Part.Figure("diameter", diameter))
        : work.Apply(MountingFormulas.EuropeanDistance, $"{f.Subject(job)}, {side}", diameters == 7 ? AtTheEnd : AtTheEdge, f.Part.Figure("diameter", diameter));

    private string Rule => job.Code == "us" ? "NDS chapter 12" : "EN 1995-1-1, recalled";

    private string Timber(Fixing f) => job.Code == "us"
        ? (SpecificGravity.Find(f.Timber?.Value ?? "") ?? SpecificGravity.Find(SpecificGravity.Unknown)!).Name
        : (TimberClass.Find(f.Timber?.Value ?? "") ?? TimberClass.All[0]).Name;

    private void TimberFits(Fixing f)
    {
        if (f.Timber is not { } timber || TimberClass.Find(timber.Value) is null == (job.Code == "us")) return;
        findings.Add(Severity.Stop, "timber-unfit", timber.At, $"`timber` is `{timber.Value}` in the code family `{job.Code}`",
            job.Code == "us" ? "a group of the table of specific gravities, such as `spruce-pine-fir`" : "a strength class, such as `c24`", "use a word of this family; leave it out when nobody knows the timber");
    }

    private (double Least, double Most) Drill(Fixing f, double diameter)
    {
        if (job.Code != "us")
        {
            var lead = work.Apply(MountingFormulas.EuropeanLeadHole, f.Subject(job), f.Part.Figure("diameter", diameter).In(1000)) / 1000;
            return (0.9 * lead, 1.1 * lead);
        }
        var gravity = (SpecificGravity.Find(f.Timber?.Value ?? "") ?? SpecificGravity.Find(SpecificGravity.Unknown)!).Gravity;
        var thin = Thin(f);
        var (least, most) = thin is null ? LeadHole.RangeM(diameter, gravity) : LeadHole.WoodScrewRangeM(thin.RootM, gravity);
        var (formula, thick) = thin is null ? (LeadHole.RangeFormula, diameter) : (LeadHole.WoodScrewFormula, thin.RootM);
        Term width = thin is null ? f.Part.Figure("diameter", thick) : Term.Table($"wood-screws.{thin.Name}.root", thick), g = ScrewData.GravityOf(f);
        work.Apply(formula, false, f.Subject(job) + ", smallest", width, g);
        work.Apply(formula, true, f.Subject(job) + ", largest", width, g);
        return (least, most);
    }

    private void CheckPilot(Fixing f, double least, double most)
    {
        if (f.Pilot is not { } pilot || (pilot.Metres >= least - 1e-6 && pilot.Metres <= most + 1e-6)) return;
        findings.Add(Severity.Caution, "lead-hole-unfit", f.PilotAt, $"the pilot hole for {f.Part.Name} is {_print.Drill(pilot.Metres)}",
            $"{_print.Drill(least)} to {_print.Drill(most)} in {Timber(f)} ({(job.Code == "us" ? "NDS lead holes, shares recalled" : "EN 1995-1-1, about 0.7 of the diameter, recalled")})",
            pilot.Metres < least ? "drill wider, or the timber splits" : "drill narrower, or the thread does not hold");
    }

    private void CheckDepth(Fixing f, double depth, double diameter)
    {
        // Europe asks for six diameters of thread and says so through the capacity, which is then nil.
        var (least, word) = Thin(f) is null ? (4, "four") : (WoodScrew.LeastDiameters, "six");
        if (job.Code != "us" || depth >= least * diameter - 1e-9) return;
        findings.Add(Severity.Stop, "fixing-not-in-framing", f.At, $"{f.Part.Name} reaches {_print.Small(Math.Max(0, depth))} into the timber, its tip not counted",
            $"{word} diameters, {_print.Small(least * diameter)}, at least (NDS chapter 12)", "take a longer screw, or cut the cladding out so that the plate lies on the timber");
    }

    private void CheckDistances(Fixing f, double diameter)
    {
        if (f.EndM is { } end && end.Value < LeastEndShare * 7 * diameter)
            findings.Add(Severity.Stop, "fixing-too-near", end.At, $"{f.Part.Name} stands {_print.Small(end.Value)} from the end of the timber",
                $"{_print.Small(3.5 * diameter)} at least, {_print.Small(7 * diameter)} for the full value ({Rule})", "move the bracket away from the end, or take thinner screws");
        // Wind along the wall pushes the screws across the grain, toward an edge.
        if (f.EdgeM is not { } edge || edge.Value >= 4 * diameter - 1e-9) return;
        var severity = edge.Value < 1.5 * diameter ? Severity.Stop : Severity.Caution;
        findings.Add(severity, "fixing-too-near", edge.At, $"{f.Part.Name} stands {_print.Small(edge.Value)} from the edge of the timber",
            $"{_print.Small(1.5 * diameter)} at least, {_print.Small(4 * diameter)} at a loaded edge ({(job.Code == "us" ? Rule + ", recalled" : Rule)})", "move the bracket to the middle of the timber, or take thinner screws");
    }
}
