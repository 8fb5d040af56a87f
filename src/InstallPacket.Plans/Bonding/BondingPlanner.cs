using InstallPacket.Calc.Quantities;

namespace InstallPacket.Plans.Bonding;

/// <summary>Sizes, routes, rod and exposure of the bonding, beside the rules of the code family.</summary>
internal sealed class BondingPlanner(Job job, CodeFamily code)
{
    private readonly Workings _work = new();
    private readonly FindingList _findings = new();
    private readonly BondingSection _bonding = job.Bonding;

    public Planned<BondingPlan> Plan() => new(Bond(), _work, _findings);

    private BondingPlan Bond()
    {
        var b = _bonding;
        var block = job.Cabling.Chain.FirstOrDefault(e => e.Part is GroundingBlockPart);
        CheckShield(block);
        var zone = new ZonePlanner(job, code, _work, _findings).Plan();
        var sizes = new BondSizes(code, _work, _findings);
        if (zone is not { Exempt: true }) sizes.Check("mast", "the conductor from the mast", b.Conductor, b.ConductorAt);
        if (block is not null) CheckShieldSize(sizes, zone);
        var rods = new RodPlanner(code, sizes, _work, _findings);
        var rod = rods.Plan(b.Rod);
        var routes = new BondRoutes(code, _findings);
        return new BondingPlan(b.Connection, b.Conductor.Name, b.Conductor.Id, b.MastLength.Metres, b.ShieldLength.Metres, b.By, b.Note
            ?? "", block?.Id ?? "", code.RulesOf("bonding"))
        {
            ShieldConductor = b.ShieldConductor.Name,
            ShieldConductorPart = b.ShieldConductor.Id,
            MastSize = ConductorSize.Of(b.Conductor),
            ShieldSize = ConductorSize.Of(b.ShieldConductor),
            Sizes = sizes.Checked,
            Lengths = rods.Lengths,
            Routes = Routes(routes, block is not null),
            Rod = rod,
            RodExisting = b.Rod is { Existing: true },
            MastExisting = b.MastExisting,
            ShieldExisting = b.ShieldExisting,
            MastOhm = b.MastExisting ? Ohm("the conductor from the mast", "bonding.mast-length", b.Conductor, b.MastLength) : null,
            ShieldOhm = b.ShieldExisting && block is not null
                ? Ohm("the conductor from the grounding block", "bonding.shield-length", b.ShieldConductor, b.ShieldLength) : null,
            Surge = new SurgePlanner(UnitPrinter.Of(job), _work).Plan(b.Conductor, b.MastLength.Metres, b.MastRoute?.Coils?.Value ?? 0),
            Strikes = new StrikePlanner(job, _work).Plan(),
            Zone = zone,
        };
    }

    private BondRoutePlan[] Routes(BondRoutes routes, bool block)
    {
        var mast = routes.Of("the conductor from the mast", _bonding.MastLength.Metres, _bonding.MastRoute);
        return block ? [mast, routes.Of("the conductor from the grounding block", _bonding.ShieldLength.Metres, _bonding.ShieldRoute)]
            : [mast];
    }

    // What the continuity test of a conductor that is there reads beyond the leads of the meter.
    private double? Ohm(string what, string key, BondingPart part, Length length) => ConductorSize.OhmPerKm(part, _work) is { } ohmPerKm
        ? _work.Apply(BondingFormulas.EndToEnd, what, ohmPerKm, Term.Key(key, length.Metres)).Number : null;

    // A part that serves both and lacks a figure is reported once.
    private void CheckShieldSize(BondSizes sizes, ZonePlan? zone)
    {
        var b = _bonding;
        var same = b.ShieldConductor.Id == b.Conductor.Id && zone is not { Exempt: true };
        if (same && (b.Conductor.Metal is null || (b.Conductor.CrossSectionMm2 is null && b.Conductor.Gauge is null))) return;
        sizes.Check("shield", "the conductor from the grounding block", b.ShieldConductor, b.ShieldConductorAt);
    }

    private void CheckShield(Element? block)
    {
        var b = _bonding;
        if (block is null && job.Mounting.Kind != MountKind.Attic)
            _findings.Add(Severity.Caution, "grounding-block-missing", job.Cabling.ChainAt);
        if (code.BondingOf("shield-length") is { } most && b.ShieldLength.Metres > most.Metres + 1e-9)
            _findings.Add(Severity.Caution, "bond-too-long", b.ShieldLengthAt, ("length_m", b.ShieldLength.Metres), ("most_m", most.Metres),
                ("rule", most.Source()));
    }
}
