using InstallPacket.Calc.Mounting;

namespace InstallPacket.Plans.Mounting;

/// <summary>What the crew must know of a fixing: count, drill, depth, distances, torque; and whether they fit each other.</summary>
internal sealed class FixingPlanner(Job job, IScrewCode code, Workings work, FindingList findings)
{
    private const double LeastEndShare = 0.5;
    private readonly UnitPrinter _print = UnitPrinter.Of(job);

    public FixingPlan Plan(Fixing f)
    {
        var plan = new FixingPlan(f.Part.Id, f.Part.Name, f.Count, f.Pilot?.Metres, f.Into, f.Part.TorqueNm, f.Part.TorqueNm is null ? "" : f.Part.ProvenanceOf(PartKeys.Torque))
        {
            Form = f.Part.Form, Stated = f.Stated ?? "",
        };
        if (f.Part is not { Form: FixingForm.LagScrew or FixingForm.WoodScrew, DiameterM: { } diameter, LengthM: { } length }) return plan;
        TimberFits(f);
        var screw = new ScrewCase(job, f, work);
        var (least, most) = code.LeadHole(screw, diameter);
        CheckPilot(f, least, most);
        CheckDistances(f, diameter);
        var depth = length - (job.Mounting.Mount.PlateM ?? 0) - f.GapM - code.TipM(f);
        CheckDepth(f, depth, diameter);
        return plan with
        {
            DepthM = depth, LeadFromM = least, LeadToM = most, Timber = code.Timber(f), TimberAssumed = f.Timber is null, Wet = f.Wet,
            EndM = code.EndM(screw, diameter), EdgeM = code.EdgeM(screw, diameter),
        };
    }

    private void TimberFits(Fixing f)
    {
        if (f.Timber is not { } timber || code.Knows(timber.Value)) return;
        findings.Add(Severity.Stop, "timber-unfit", timber.At, $"`timber` is `{timber.Value}` in the code family `{job.Code}`",
            code.TimberExample, "use a word of this family; leave it out when nobody knows the timber");
    }

    private void CheckPilot(Fixing f, double least, double most)
    {
        if (f.Pilot is not { } pilot || (pilot.Metres >= least - 1e-6 && pilot.Metres <= most + 1e-6)) return;
        findings.Add(Severity.Caution, "lead-hole-unfit", f.PilotAt, $"the pilot hole for {f.Part.Name} is {_print.Drill(pilot.Metres)}",
            $"{_print.Drill(least)} to {_print.Drill(most)} in {code.Timber(f)} ({code.LeadHoleDocument})",
            pilot.Metres < least ? "drill wider, or the timber splits" : "drill narrower, or the thread does not hold");
    }

    private void CheckDepth(Fixing f, double depth, double diameter)
    {
        if (code.LeastDepth(f) is not { } least || depth >= least * diameter - 1e-9) return;
        findings.Add(Severity.Stop, "fixing-not-in-framing", f.At, $"{f.Part.Name} reaches {_print.Small(Math.Max(0, depth))} into the timber, its tip not counted",
            $"{least} diameters, {_print.Small(least * diameter)}, at least ({code.Document})", "take a longer screw, or cut the cladding out so that the plate lies on the timber");
    }

    private void CheckDistances(Fixing f, double diameter)
    {
        if (f.EndM is { } end && end.Value < LeastEndShare * 7 * diameter)
            findings.Add(Severity.Stop, "fixing-too-near", end.At, $"{f.Part.Name} stands {_print.Small(end.Value)} from the end of the timber",
                $"{_print.Small(3.5 * diameter)} at least, {_print.Small(7 * diameter)} for the full value ({code.Document})", "move the bracket away from the end, or take thinner screws");
        // Wind along the wall pushes the screws across the grain, toward an edge.
        if (f.EdgeM is not { } edge || edge.Value >= 4 * diameter - 1e-9) return;
        var severity = edge.Value < 1.5 * diameter ? Severity.Stop : Severity.Caution;
        findings.Add(severity, "fixing-too-near", edge.At, $"{f.Part.Name} stands {_print.Small(edge.Value)} from the edge of the timber",
            $"{_print.Small(1.5 * diameter)} at least, {_print.Small(4 * diameter)} at a loaded edge ({code.EdgeDocument})", "move the bracket to the middle of the timber, or take thinner screws");
    }
}
