namespace InstallPacket.Jobs.Siting;

/// <summary>Turns the checked group <c>siting</c> into its record.</summary>
internal static class SitingBinder
{
    public static SitingSection Section(CheckedGroup g, Sourced<string>? terrain) => new(
        g.Placed(SitingKeys.Latitude), g.Placed(SitingKeys.Longitude), g.MaybeMetres(SitingKeys.Ground) ?? new(default, g.At),
            g.PlacedMetres(SitingKeys.AntennaHeight),
        g.Get(SitingKeys.Surroundings), g.Maybe(SitingKeys.Landmark) is { } l ? Landmark(l.Value) : null,
        [.. g.Entries(SitingKeys.Obstructions).Select(Obstruction)],
        g.Has(SitingKeys.PowerLines) ? [.. g.Entries(SitingKeys.PowerLines).Select(PowerLine)] : null, g.At)
    {
        Terrain = terrain,
        GroundKnown = g.Has(SitingKeys.Ground),
        UnderRoof = g.Maybe(SitingKeys.UnderRoof),
        UtcOffset = g.Maybe(SitingKeys.UtcOffset) is { } hours ? TimeSpan.FromMinutes(Math.Round(hours.Value * 60)) : null,
        Profiles = [.. g.Items(SitingKeys.Profiles).Select(p => Profile(p.Value))],
        Horizon = [.. g.Items(SitingKeys.Horizon).Select(h => Arc(h.Value, h.At))],
    };

    private static Landmark Landmark(CheckedGroup g) => new(g.Get(LandmarkKeys.What), g.Get(LandmarkKeys.Bearing));

    private static HorizonArc Arc(CheckedGroup g, SourceSpan at) =>
        new(g.Get(HorizonArcKeys.Bearing), g.Get(HorizonArcKeys.Width), g.Get(HorizonArcKeys.Angle), at);

    private static MeasuredProfile Profile(CheckedGroup g) => new(
        g.Get(ProfileKeys.Station),
        [.. g.Items(ProfileKeys.Points).Select(p => (p.Value.Get(ProfilePointKeys.Distance), p.Value.Get(ProfilePointKeys.Ground)))], g.At);

    private static Obstruction Obstruction(Entry<CheckedGroup> e) => new(
        e.Name, e.Value.Get(ObstructionKeys.Kind), e.Value.Get(ObstructionKeys.Bearing), e.Value.Get(ObstructionKeys.Width),
        e.Value.Metres(ObstructionKeys.Distance), e.Value.Metres(ObstructionKeys.Height), e.At)
    {
        Depth = e.Value.MaybeMetres(ObstructionKeys.Depth)?.Value,
        InLeaf = e.Value.Get(ObstructionKeys.Leaf) == Leaf.InLeaf,
    };

    private static PowerLine PowerLine(Entry<CheckedGroup> e) =>
        new(e.Name, e.Value.Get(PowerLineKeys.What), e.Value.Metres(PowerLineKeys.Distance), e.Value.Metres(PowerLineKeys.Height), e.At)
        {
            VoltageKv = e.Value.Maybe(PowerLineKeys.Voltage)?.Value / 1000,
        };
}
