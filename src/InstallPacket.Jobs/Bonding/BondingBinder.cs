using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Bonding;

/// <summary>Turns the checked group <c>bonding</c> into its record.</summary>
internal sealed class BondingBinder(PartLibrary parts)
{
    public BondingSection Section(CheckedGroup g)
    {
        var shield = g.Has(BondingKeys.ShieldConductor) ? BondingKeys.ShieldConductor : BondingKeys.Conductor;
        return new(
            g.Get(BondingKeys.Connection), Conductor(g.Get(BondingKeys.Conductor)), g.Metres(BondingKeys.MastLength),
                g.Metres(BondingKeys.ShieldLength),
            g.Get(BondingKeys.By), g.Maybe(BondingKeys.Note)?.Value, g.At)
        {
            ConductorAt = g.Place(BondingKeys.Conductor),
            ShieldLengthAt = g.Place(BondingKeys.ShieldLength),
            ShieldConductor = Conductor(g.Get(shield)),
            ShieldConductorAt = g.Place(shield),
            MastRoute = g.Maybe(BondingKeys.MastRoute) is { } mast ? Route(mast.Value) : null,
            ShieldRoute = g.Maybe(BondingKeys.ShieldRoute) is { } route ? Route(route.Value) : null,
            Rod = g.Maybe(BondingKeys.Rod) is { } rod ? Rod(rod.Value, g.Get(BondingKeys.Existing)) : null,
            MastExisting = IsThere(g, BondingKeys.MastRoute),
            ShieldExisting = IsThere(g, BondingKeys.ShieldRoute),
            Zone = g.Maybe(BondingKeys.Zone) is { } zone ? Zone(zone.Value) : null,
            Lightning = g.Maybe(BondingKeys.Lightning) is { } lightning ? Lightning(lightning.Value) : null,
        };
    }

    private static bool IsThere(CheckedGroup g, Key<CheckedGroup> route) =>
        g.Maybe(route)?.Value.Maybe(RouteKeys.Existing)?.Value ?? g.Get(BondingKeys.Existing);

    private static BondRoute Route(CheckedGroup g)
    {
        var power = g.Maybe(RouteKeys.Power)?.Value;
        return new(
            g.Maybe(RouteKeys.Bends)?.Value, g.MaybeMetres(RouteKeys.BendRadius), g.Maybe(RouteKeys.Coils),
                power?.PlacedMetres(PowerKeys.Distance),
            power?.Get(PowerKeys.Circuit), g.At);
    }

    private EarthRod Rod(CheckedGroup g, bool oldBond)
    {
        var jumper = g.Maybe(RodKeys.Jumper)?.Value;
        return new(
            Conductor(g.Get(RodKeys.Part)), g.Get(RodKeys.Count), g.MaybeMetres(RodKeys.Spacing)?.Value, g.Maybe(RodKeys.Soil)?.Value,
            g.Maybe(RodKeys.Resistivity)?.Value, jumper is null ? null : Conductor(jumper.Get(JumperKeys.Part)),
            jumper?.Metres(JumperKeys.Length) ?? Length.FromMetres(0), g.Maybe(RodKeys.Clamp) is { } clamp ? parts.Find(clamp.Value)
                : null, g.At)
        {
            JumperAt = jumper?.Place(JumperKeys.Part) ?? g.At,
            Existing = g.Maybe(RodKeys.Existing)?.Value ?? oldBond,
        };
    }

    private static WallZone Zone(CheckedGroup g) => new(g.Metres(ZoneKeys.BelowEdge), g.Metres(ZoneKeys.Out), g.At);

    private static LightningSurvey Lightning(CheckedGroup g) => new(
        g.Maybe(LightningKeys.FlashDensity)?.Value, g.Maybe(LightningKeys.ThunderDays)?.Value, g.Get(LightningKeys.Place), g.At);

    private BondingPart Conductor(string name) => parts.Get<BondingPart>(name);
}
