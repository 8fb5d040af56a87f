using InstallPacket.Calc.Bonding;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans.Bonding;

/// <summary>The mast's own rod: its size, its resistance, what joins it to the building.</summary>
internal sealed class RodPlanner(CodeFamily code, BondSizes sizes, Workings work, FindingList findings)
{
    private const double Slack = 1e-9;

    /// <summary>Lengths beside the least ones.</summary>
    public List<BondLengthPlan> Lengths { get; } = [];

    public RodPlan? Plan(EarthRod? rod)
    {
        if (rod is null) return null;
        Join(rod);
        var (length, diameter) = (rod.Part.LengthM, rod.Part.DiameterM);
        if (length is null || diameter is null) sizes.Unknown(rod.Part, length is null ? "length" : "diameter", "the rod");
        if (length is { } l) CheckLengths(rod, l);
        if (diameter is { } d and > 0 and < 0.1) sizes.CheckRod(rod.Part, WireGauge.AreaM2(d), rod.At);
        var soil = rod.Soil is { } word ? Soil.Find(word) : null;
        double? low = rod.ResistivityOhmM ?? soil?.LowOhmM, high = rod.ResistivityOhmM ?? soil?.HighOhmM;
        Term? lowOhm = Resistance(rod, low, "low end of the soil");
        var limit = code.BondingOf("rod-resistance");
        return new(rod.Part.Id, rod.Part.Name, rod.Count, length, diameter, rod.Spacing?.Metres,
            rod.ResistivityOhmM is not null ? "measured" : soil?.Name ?? "", rod.ResistivityOhmM is not null ? "survey" : soil is null ? ""
                : ProvenanceWord.Of(soil.Provenance), low, high,
            lowOhm?.Number, Resistance(rod, high, "high end of the soil")?.Number, limit?.Value, limit is null ? ""
                : $"{limit.Document}, {limit.Edition}",
            lowOhm is { } ohm ? work.Apply(GroundRod.PotentialFormula, "rod of the mast", SurgePlanner.InducedKa, ohm).Number : null,
            rod.Jumper?.Name ?? "", rod.Jumper?.Id ?? "", rod.Jumper is { } jumper ? ConductorSize.Of(jumper) : null,
                rod.JumperLength.Metres,
            rod.Clamp?.Name ?? "", rod.Clamp is null ? 0 : Clamps(rod));
    }

    /// <summary>One clamp for each conductor on a rod: two on a single one; between two rods runs one more conductor, with a clamp at each
    /// end.</summary>
    public static int Clamps(EarthRod rod) => 1 + (rod.Jumper is null ? 0 : 1) + (rod.Count > 1 ? 2 : 0);

    private void Join(EarthRod rod)
    {
        if (rod.Jumper is { } jumper) sizes.Check("jumper", "the jumper from the rod to the building's electrode system", jumper,
            rod.JumperAt);
        else
            findings.Add(Severity.Stop, "rod-unjoined", rod.At, ("least", code.BondingOf("jumper", "copper")?.Size.Values()),
                ("rule", code.BondingOf("jumper", "copper")?.Source()));
    }

    private void CheckLengths(EarthRod rod, double lengthM)
    {
        if ((rod.Count > 1 ? code.BondingOf("two-rod-length") : null) is { } each) Length("length of each rod", each, lengthM, rod.At);
        else if (code.BondingOf("one-rod-length") is { } one) Length("length of the rod", one, lengthM, rod.At);
        if (rod.Count > 1 && rod.Spacing is { } apart && code.BondingOf("second-rod-spacing") is { } spacing) Length("spacing of the rods",
            spacing, apart.Metres, rod.At);
    }

    private void Length(string what, BondingLimit least, double hasM, SourceSpan at)
    {
        if (hasM <= 0) return;
        var share = work.Apply(BondingFormulas.BondLength, what, Term.Plan($"bonding.lengths[{what}].least_m", least.Metres),
            Term.Plan($"bonding.lengths[{what}].has_m", hasM));
        Lengths.Add(new(what, least.Metres, hasM, share, least.Document, least.Edition, least.Provenance));
        if (share > 1 + Slack)
            findings.Add(Severity.Stop, "rod-too-short", what.StartsWith("spacing", StringComparison.Ordinal) ? "spacing" : "", at,
                ("what", what), ("has_m", hasM),
                ("least_m", least.Metres), ("rule", least.Source()));
    }

    // Only where the formula holds; elsewhere the resistance is unknown and has to be measured.
    private Row? Resistance(EarthRod rod, double? resistivityOhmM, string end)
    {
        if (resistivityOhmM is not { } rho || rod.Part.LengthM is not { } length || rod.Part.DiameterM is not { } diameter || diameter <= 0
            || diameter / 2 >= length / 20) return null;
        var subject = rod.ResistivityOhmM is null ? $"rod of the mast, {end}" : "rod of the mast";
        Term ground = rod.ResistivityOhmM is null ? Term.Table(NumberTables.SoilResistivity, $"{rod.Soil}", rho)
            : Term.Key("bonding.rod.resistivity", rho);
        Term long1 = rod.Part.Figure(PartKeys.Length, length),
            radius = work.Apply(BondingFormulas.Radius, rod.Part.Id, rod.Part.Figure(PartKeys.Diameter, diameter));
        if (rod.Count == 1) return work.Apply(GroundRod.OneFormula, subject, ground, long1, radius);
        return rod.Spacing is { } s && s.Metres > length
            ? work.Apply(GroundRod.TwoFormula, subject, ground, long1, radius, Term.Key("bonding.rod.spacing", s.Metres)) : null;
    }
}
