using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Siting;

namespace InstallPacket.Plans.Reception;

/// <summary>Finds the obstruction of the survey that costs a path most: as a single knife edge, or through trees where that is less. A hill of the survey counts only where neither a profile nor a measured skyline shows it.</summary>
internal sealed class ObstructionPlanner(SitingPlan siting, GroundView ground, WorkLog log)
{
    private const double LightMMHz = 299.792458;

    /// <summary>Loss [dB] and name of the governing obstruction; 0 and empty when none stands in the direction.</summary>
    public (double LossDb, string Name) Loss(Arrival a)
    {
        var seen = ground.Toward(a.Station) is { Whole: true } || siting.Skyline.Any(p => p.From == "measured" && Math.Abs(Bearing.Turn(p.BearingTrueDeg, a.BearingTrueDeg)) <= 1);
        var worst = (LossDb: 0.0, Name: "", Nu: double.NegativeInfinity, Height: 0.0, D1: 0.0, D2: 0.0);
        foreach (var o in siting.Obstructions.Where(o => !(seen && o.Kind == ObstructionKind.Hill) && Math.Abs(Bearing.Turn(o.BearingTrueDeg, a.BearingTrueDeg)) <= o.WidthDeg / 2 && o.DistanceM < a.DistanceKm * 1000))
        {
            var (d1, d2) = (o.DistanceM, a.DistanceKm * 1000 - o.DistanceM);
            var above = HeightAboveRay(a, o, d1);
            var nu = KnifeEdge.ParameterNu(above, LightMMHz / a.Channel.CentreMHz, d1, d2);
            var through = Through(a, o);
            var loss = Math.Min(KnifeEdge.LossDb(nu), through ?? double.PositiveInfinity);
            if (loss > worst.LossDb || worst.Name.Length == 0) worst = (loss, o.Name, nu, above, d1, d2);
        }
        if (worst.Name.Length == 0) return (0, "");
        Record(a, worst.Name, worst.Nu, (worst.Height, worst.D1, worst.D2));
        return (worst.LossDb, worst.LossDb > 0 ? worst.Name : "");
    }

    private void Record(Arrival a, string name, double nu, (double Height, double D1, double D2) edge)
    {
        var subject = $"{a.Station.Id} over {name}";
        log.Record(KnifeEdge.NuFormula, subject, nu, edge.Height, LightMMHz / a.Channel.CentreMHz, edge.D1, edge.D2);
        var over = log.Record(KnifeEdge.LossFormula, subject, KnifeEdge.LossDb(nu), nu);
        if (siting.Obstructions.First(o => o.Name == name) is { DepthM: not null } trees && Through(a, trees) is { } through)
            log.Record(Vegetation.ScreenCapFormula, subject, Vegetation.ScreenCapDb(through, over), through, over);
    }

    // The pessimistic end of the range, because trees grow; bare trees are reckoned by the least factor that the trade gives for leaves.
    private double? Through(Arrival a, ObstructionPlan o)
    {
        if (o.Kind != ObstructionKind.Trees || o.DepthM is not { } depth) return null;
        var f = a.Channel.CentreMHz;
        var inLeaf = Vegetation.Through(f, depth).HighDb;
        var subject = $"{a.Station.Id} through {o.Name}";
        if (f >= Vegetation.InLeafLowestMHz) log.Record(Vegetation.WeissbergerFormula, subject, Vegetation.WeissbergerDb(f, depth), f / 1000, depth);
        else log.Record(Vegetation.EarlyFormula, subject, Vegetation.EarlyDb(f, depth), f, depth);
        if (o.InLeaf) return inLeaf;
        var factor = Vegetation.InLeafFactors(f).Low;
        log.Record(Vegetation.InLeafFormula, subject, inLeaf, inLeaf / factor, factor);
        return inLeaf / factor;
    }

    // When the transmitter's height above sea level is unknown the ray is taken as level, which overstates a near obstruction.
    private double HeightAboveRay(Arrival a, ObstructionPlan o, double d1)
    {
        var own = siting.GroundM + siting.AntennaHeightM;
        var top = siting.GroundM + o.HeightM;
        if (a.Station.AboveSeaM is not { } other) return top - own;
        return -log.Record(EffectiveEarth.ClearanceFormula, $"{a.Station.Id} over {o.Name}",
            EffectiveEarth.ClearanceM(own, other, a.DistanceKm * 1000, d1, top), own, other, a.DistanceKm * 1000, d1, top);
    }
}
