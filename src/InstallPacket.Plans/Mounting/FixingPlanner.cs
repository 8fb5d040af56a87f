using InstallPacket.Calc.Mounting;

namespace InstallPacket.Plans.Mounting;

/// <summary>What the crew must know of a fixing: count, drill, depth, distances, torque; and whether they fit each other.</summary>
internal sealed class FixingPlanner(Job job, Workings work, FindingList findings)
{
    private const double LeastEndShare = 0.5;
    private static readonly Constant AtTheEnd = new("diameters-to-the-end-europe", 7, "en-1995-1-1", Calc.Sources.Provenance.Memory);
    private static readonly Constant AtTheEdge = new("diameters-to-a-loaded-edge-europe", 4, "en-1995-1-1", Calc.Sources.Provenance.Memory);

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
        findings.Add(Severity.Stop, "timber-unfit", job.Code == "us" ? "gravity" : "class", timber.At, ("timber", timber.Value), ("family", job.Code));
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
        findings.Add(Severity.Caution, "lead-hole-unfit", f.PilotAt, ("fixing", f.Part.Name), ("pilot_m", pilot.Metres), ("least_m", least), ("most_m", most),
            ("timber", Timber(f)), ("rule", job.Code == "us" ? "NDS lead holes, shares recalled" : "EN 1995-1-1, about 0.7 of the diameter, recalled"), ("narrow", pilot.Metres < least));
    }

    private void CheckDepth(Fixing f, double depth, double diameter)
    {
        // Europe asks for six diameters of thread and says so through the capacity, which is then nil.
        var least = Thin(f) is null ? 4 : WoodScrew.LeastDiameters;
        if (job.Code != "us" || depth >= least * diameter - 1e-9) return;
        findings.Add(Severity.Stop, "fixing-not-in-framing", f.At, ("fixing", f.Part.Name), ("depth_m", Math.Max(0, depth)), ("diameters", least),
            ("least_m", least * diameter));
    }

    private void CheckDistances(Fixing f, double diameter)
    {
        if (f.EndM is { } end && end.Value < LeastEndShare * 7 * diameter)
            findings.Add(Severity.Stop, "fixing-too-near", "end", end.At, ("fixing", f.Part.Name), ("distance_m", end.Value), ("least_m", 3.5 * diameter),
                ("full_m", 7 * diameter), ("rule", Rule));
        // Wind along the wall pushes the screws across the grain, toward an edge.
        if (f.EdgeM is not { } edge || edge.Value >= 4 * diameter - 1e-9) return;
        var severity = edge.Value < 1.5 * diameter ? Severity.Stop : Severity.Caution;
        findings.Add(severity, "fixing-too-near", "edge", edge.At, ("fixing", f.Part.Name), ("distance_m", edge.Value), ("least_m", 1.5 * diameter),
            ("full_m", 4 * diameter), ("rule", job.Code == "us" ? Rule + ", recalled" : Rule));
    }
}
