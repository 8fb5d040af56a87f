namespace InstallPacket.Plans.Mounting;

/// <summary>What can hurt somebody at this house, from what the survey and the plan say; the words stand in the theme.</summary>
internal sealed class HazardPlanner(Job job, FindingList findings)
{
    private const double LongMastM = 3;
    private const double HeavyKg = 5;
    private readonly MountingSection _mounting = job.Mounting;
    private readonly List<HazardPlan> _hazards = [];

    public IReadOnlyList<HazardPlan> Plan(IReadOnlyList<PowerLinePlan> lines)
    {
        Add("overhead-wires", job.Siting.PowerLines is null ? "unknown" : lines.Count == 0 ? "none" : lines.All(l => l.Clear) ? "clear"
            : "near", lines.Any(l => !l.Clear));
        if (_mounting.Access != Access.Inside) Add("height", Word.Of(_mounting.Access));
        Roof();
        if (_mounting.Kind == MountKind.ChimneyLashing) Chimney(_mounting.Chimney?.State.Value ?? ChimneyState.Unknown);
        if (_mounting.Survey?.OldMast == true || _mounting.Existing) Add("old-mast", "yes");
        Materials();
        Services();
        if (_mounting.Kind != MountKind.Attic) Add("weather", Word.Of(_mounting.Kind));
        Lifting();
        if (_mounting.Access != Access.Inside) Add("falling-objects", "yes");
        if (_mounting.Guys is not null) Add("guys", "yes");
        if (_mounting.Kind == MountKind.Ballast) Add("ballast", _mounting.Ballast?.RoofBearsPa is null ? "unknown" : "known");
        if (_mounting.Kind == MountKind.Attic || _mounting.Access == Access.Inside
            || job.Routing.Runs.Any(r => r.Way == CableWay.Attic)) Add("attic", "yes");
        Electricity();
        return _hazards;
    }

    private void Add(string id, string state, bool stop = false) => _hazards.Add(new(id, state, stop));

    private void Chimney(ChimneyState state) => Add("chimney", Word.Of(state), state != ChimneyState.Sound);

    private void Roof()
    {
        if (_mounting.Access != Access.LadderAndRoof) return;
        var state = _mounting.Survey?.Roof ?? SurfaceState.Unknown;
        Add("roof", Word.Of(state), state == SurfaceState.Fragile);
        if (state == SurfaceState.Fragile)
            findings.Add(Severity.Stop, "roof-fragile", _mounting.Survey!.At);
        if (_mounting.FallProtection?.Value == FallProtection.Harness) Add("rescue", "yes");
    }

    private void Materials()
    {
        var drills = FixingChecker.Holding(job).Any(f => !f.Existing) || job.Routing.Runs.Any(r => r is { Way: CableWay.Wall, Existing: false });
        if (!drills) return;
        Add("drilling", Word.Of(_mounting.Survey?.Behind ?? BehindState.Unknown));
        var old = _mounting.Survey?.Asbestos ?? AsbestosState.Unknown;
        if (old == AsbestosState.None) return;
        Add("asbestos", Word.Of(old), old == AsbestosState.Suspected);
        if (old == AsbestosState.Suspected)
            findings.Add(Severity.Stop, "asbestos-suspected", _mounting.Survey!.At);
    }

    private void Services()
    {
        var digs = (!_mounting.Existing && (_mounting.Kind == MountKind.GroundMast || _mounting.Guys is not null)) || job.Bonding.Rod is { Existing: false }
            || job.Routing.Points.Values.Any(p => p.HeightM < 0);
        if (!digs) return;
        var state = _mounting.Survey?.Buried ?? BuriedState.Unknown;
        if (state == BuriedState.None) return;
        Add("buried", Word.Of(state), state == BuriedState.Unmarked);
        if (state == BuriedState.Unmarked)
            findings.Add(Severity.Stop, "buried-unmarked", _mounting.Survey!.At);
    }

    private void Lifting()
    {
        var heavy = job.Cabling.Antennas.Any(a => a.MassKg > HeavyKg);
        if ((!_mounting.Existing && _mounting.MastLength.Metres > LongMastM) || heavy) Add("lifting", "yes");
    }

    private void Electricity()
    {
        if (job.Internet == InternetKind.Coax) Add("live-internet", "yes");
        if (job.Internet == InternetKind.Coax || job.Routing.Runs.Any(r => r.Existing)) Add("stray-voltage", "yes");
        if (job.Cabling.Chain.Any(e => e.Part is PowerInserterPart or AmplifierPart)) Add("mains", "yes");
    }
}
