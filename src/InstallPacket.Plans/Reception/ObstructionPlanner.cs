using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Siting;

namespace InstallPacket.Plans.Reception;

/// <summary>Finds the obstruction of the survey that costs a path most: as a single knife edge, or through trees where that is less. A
/// hill of the survey counts only where neither a profile nor a measured skyline shows it.</summary>
internal sealed class ObstructionPlanner(SitingPlan siting, GroundView ground, Workings work)
{
    private const double LightMMHz = 299.792458;

    /// <summary>Loss [dB] and name of the governing obstruction; 0 and empty when none stands in the direction.</summary>
    public (double LossDb, string Name) Loss(Arrival a)
    {
        var seen = ground.Toward(a.Station) is { Whole: true }
            || siting.Skyline.Any(p => p.From == "measured" && Math.Abs(Bearing.Turn(p.BearingTrueDeg, a.BearingTrueDeg)) <= 1);
        var worst = (LossDb: 0.0, Name: "");
        foreach (var o in siting.Obstructions.Where(o => !(seen && o.Kind == ObstructionKind.Hill)
            && Math.Abs(Bearing.Turn(o.BearingTrueDeg, a.BearingTrueDeg)) <= o.WidthDeg / 2 && o.DistanceM < a.DistanceKm * 1000))
        {
            var (d1, d2) = (o.DistanceM, a.DistanceKm * 1000 - o.DistanceM);
            var above = HeightAboveRay(a, o, d1);
            var nu = KnifeEdge.ParameterNu(above, LightMMHz / a.Channel.CentreMHz, d1, d2);
            var loss = Math.Min(KnifeEdge.LossDb(nu), ThroughDb(a, o) ?? double.PositiveInfinity);
            if (loss > worst.LossDb || worst.Name.Length == 0) worst = (loss, o.Name);
        }
        if (worst.Name.Length == 0) return (0, "");
        Record(a, siting.Obstructions.First(x => x.Name == worst.Name));
        return (worst.LossDb, worst.LossDb > 0 ? worst.Name : "");
    }

    private void Record(Arrival a, ObstructionPlan o)
    {
        Subject subject = $"{a.Station.Id} over {o.Name}";
        Term d1 = Term.Key($"siting.obstructions.{o.Name}.distance", o.DistanceM);
        var d2 = work.Apply(SitingFormulas.Rest, subject, a.Distance, d1.In(0.001));
        var wave = work.Apply(Wavelength.MetresFormula, a.Station.Id, a.Station.Centre());
        var height = AboveRay(a, o, d1);
        var parameter = work.Apply(KnifeEdge.NuFormula, subject, height, wave, d1, d2.In(1000));
        var over = work.Apply(KnifeEdge.LossFormula, subject, parameter);
        if (o.DepthM is not null && Through(a, o) is { } through) work.Apply(Vegetation.ScreenCapFormula, subject, through, over);
    }

    // The pessimistic end of the range, because trees grow; bare trees by the least factor that the trade gives for leaves.
    private Row? Through(Arrival a, ObstructionPlan o)
    {
        if (ThroughDb(a, o) is null) return null;
        var f = a.Channel.CentreMHz;
        Subject subject = $"{a.Station.Id} through {o.Name}";
        Term centre = a.Station.Centre(), depth = Term.Key($"siting.obstructions.{o.Name}.depth", o.DepthM!.Value);
        var one = f >= Vegetation.InLeafLowestMHz
            ? work.Apply(Vegetation.WeissbergerFormula, subject, centre.In(0.001), depth)
                : work.Apply(Vegetation.EarlyFormula, subject, centre, depth);
        var (gamma, most) = WoodlandLoss.Constants(f);
        var other = work.Apply(ReceptionFormulas.Woodland, subject, depth, Term.Table(NumberTables.Woodland, "gamma", gamma),
            Term.Table(NumberTables.Woodland, "most", most));
        var inLeaf = work.Apply(ReceptionFormulas.InLeaf, subject, one, other);
        return o.InLeaf ? inLeaf
            : work.Apply(ReceptionFormulas.BareTrees, subject, inLeaf,
            Term.Table(NumberTables.Vegetation, "in-leaf-factor", Vegetation.InLeafFactors(f).Low));
    }

    private static double? ThroughDb(Arrival a, ObstructionPlan o)
    {
        if (o.Kind != ObstructionKind.Trees || o.DepthM is not { } depth) return null;
        var f = a.Channel.CentreMHz;
        return Vegetation.Through(f, depth).HighDb / (o.InLeaf ? 1 : Vegetation.InLeafFactors(f).Low);
    }

    // When the transmitter's height above sea level is unknown the ray is taken as level, which overstates a near obstruction.
    private double HeightAboveRay(Arrival a, ObstructionPlan o, double d1)
    {
        var own = siting.GroundM + siting.AntennaHeightM;
        var top = siting.GroundM + o.HeightM;
        return a.Station.AboveSeaM is { } other ? -EffectiveEarth.ClearanceM(own, other, a.DistanceKm * 1000, d1, top) : top - own;
    }

    private Term AboveRay(Arrival a, ObstructionPlan o, Term d1)
    {
        Subject subject = $"{a.Station.Id} over {o.Name}";
        Term ground = Term.Key("siting.ground", siting.GroundM), height = Term.Key("siting.antenna-height", siting.AntennaHeightM);
        var own = work.Apply(SitingFormulas.AboveSea, "antenna", ground, height);
        var top = work.Apply(SitingFormulas.AboveSea, $"top of {o.Name}", ground,
            Term.Key($"siting.obstructions.{o.Name}.height", o.HeightM));
        if (a.Station.AboveSeaM is null) return work.Apply(ReceptionFormulas.AboveLevelRay, subject, top, own);
        return work.Apply(EffectiveEarth.ClearanceFormula, subject, own, a.Station.AboveSea(), a.Distance.In(1000), d1, top).In(-1);
    }
}
