namespace InstallPacket.Plans.Mounting;

/// <summary>The mount: wind, what holds it, access, overhead wires, hazards.</summary>
internal sealed class MountingPlanner(Job job, CodeFamily code)
{
    private readonly Workings _work = new();
    private readonly FindingList _findings = new();
    private readonly MountingSection _mounting = job.Mounting;

    public Planned<MountingPlan> Plan() => new(Mount(), _work, _findings);

    private MountingPlan Mount()
    {
        CheckLengths();
        CheckOnePlate();
        var access = new AccessPlanner(job, code, _work, _findings);
        var lines = new PowerLinePlanner(job, _work, _findings);
        var (required, ladder) = (lines.RequiredM(), access.Ladder());
        access.CheckFall();
        var wires = lines.Lines(ladder);
        var fixings = new FixingPlanner(job, code.Screws, _work, _findings);
        var wind = new WindPlanner(job, code, _work, _findings).Plan();
        return new MountingPlan(
            _mounting.Kind, _mounting.Mount.Name, _mounting.Mast.Name, _mounting.MastLength.Metres, _mounting.FreeLength.Metres,
                _mounting.On,
            [.. _mounting.Fixings.Select(fixings.Plan)], _mounting.RoofPitchDeg, _mounting.WorkHeight.Metres, _mounting.Access, ladder,
                job.Siting.PowerLines is not null,
            required, wires, [.. code.RulesOf("mounting"), .. code.RulesOf("height")])
        {
            Existing = _mounting.Existing, Plate = PlateShape.Of(_mounting), Wind = wind, LoadPath = new LoadPathPlanner(job, code, _work, _findings).Plan(wind),
                Hazards = new HazardPlanner(job, _findings).Plan(wires),
            LongestAntennaM = job.Cabling.Antennas.Max(a => a.LengthM ?? 0),
            FallProtection = _mounting.FallProtection?.Value, FallFromM = code.LimitOf("fall-protection")?.Value,
        };
    }

    private void CheckOnePlate()
    {
        if (!_mounting.OnePlate) return;
        if (_mounting.Spacing is { } spacing)
            _findings.Add(Severity.Stop, "one-plate-unfit", "spacing", _mounting.SpacingAt, ("mount", _mounting.Mount.Name),
                ("spacing_m", spacing.Metres));
        if (_mounting.Guys is { } guys)
            _findings.Add(Severity.Stop, "one-plate-unfit", "guys", guys.At, ("mount", _mounting.Mount.Name));
    }

    private void CheckLengths()
    {
        var held = (_mounting.MastLength - _mounting.FreeLength).Metres;
        if (_mounting.OwnMast) return;
        if (held < 0)
            _findings.Add(Severity.Stop, "mast-too-short", _mounting.FreeLengthAt, ("free_m", _mounting.FreeLength.Metres),
                ("mast_m", _mounting.MastLength.Metres));
        else if (held < _mounting.MastLength.Metres / 6 && _mounting.Kind != MountKind.Tripod && _mounting.Kind != MountKind.Ballast)
            _findings.Add(Severity.Caution, "mast-held-short", _mounting.FreeLengthAt, ("held_m", held),
                ("mast_m", _mounting.MastLength.Metres),
                ("least_m", _mounting.MastLength.Metres / 6));
    }
}
