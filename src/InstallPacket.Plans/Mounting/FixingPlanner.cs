using InstallPacket.Calc.Mounting;

namespace InstallPacket.Plans.Mounting;

/// <summary>What the crew must know of a fixing: count, drill, depth, distances, torque; and whether they fit each other.</summary>
internal sealed class FixingPlanner(Job job, IScrewCode code, Workings work, FindingList findings)
{
    private const double LeastEndShare = 0.5;

    public FixingPlan Plan(Fixing f)
    {
        var plan = new FixingPlan(f.Part.Id, f.Part.Name, f.Count, f.Pilot?.Metres, f.Into, f.Part.TorqueNm, f.Part.TorqueNm is null ? ""
            : f.Part.ProvenanceOf(PartKeys.Torque))
        {
            Form = f.Part.Form, Stated = f.Stated ?? "", Existing = f.Existing,
        };
        if (f.Part is not { Form: FixingForm.LagScrew or FixingForm.WoodScrew, DiameterM: { } diameter, LengthM: { } length }) return plan;
        TimberFits(f);
        var screw = new ScrewCase(job, f, work);
        var (least, most) = code.LeadHole(screw, diameter);
        // Nobody drills the hole of a screw that is there.
        if (!f.Existing) CheckPilot(f, least, most);
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
        findings.Add(Severity.Stop, "timber-unfit", timber.At, ("timber", timber.Value), ("family", job.Code),
            ("example", code.TimberExample));
    }

    private void CheckPilot(Fixing f, double least, double most)
    {
        if (f.Pilot is not { } pilot || (pilot.Metres >= least - 1e-6 && pilot.Metres <= most + 1e-6)) return;
        findings.Add(Severity.Caution, "lead-hole-unfit", f.PilotAt, ("fixing", f.Part.Name), ("pilot_m", pilot.Metres),
            ("least_m", least), ("most_m", most),
            ("timber", code.Timber(f)), ("rule", code.LeadHoleRule), ("narrow", pilot.Metres < least));
    }

    private void CheckDepth(Fixing f, double depth, double diameter)
    {
        if (code.LeastDepth(f) is not { } least || depth >= least * diameter - 1e-9) return;
        findings.Add(Severity.Stop, "fixing-not-in-framing", f.At, ("fixing", f.Part.Name), ("depth_m", Math.Max(0, depth)),
            ("diameters", least),
            ("least_m", least * diameter), ("rule", code.Rule));
    }

    private void CheckDistances(Fixing f, double diameter)
    {
        if (f.EndM is { } end && end.Value < LeastEndShare * 7 * diameter)
            findings.Add(Severity.Stop, "fixing-too-near", "end", end.At, ("fixing", f.Part.Name), ("distance_m", end.Value),
                ("least_m", 3.5 * diameter),
                ("full_m", 7 * diameter), ("rule", code.Rule));
        // Wind along the wall pushes the screws across the grain, toward an edge.
        if (f.EdgeM is not { } edge || edge.Value >= 4 * diameter - 1e-9) return;
        var severity = edge.Value < 1.5 * diameter ? Severity.Stop : Severity.Caution;
        findings.Add(severity, "fixing-too-near", "edge", edge.At, ("fixing", f.Part.Name), ("distance_m", edge.Value),
            ("least_m", 1.5 * diameter),
            ("full_m", 4 * diameter), ("rule", code.EdgeRule));
    }
}
