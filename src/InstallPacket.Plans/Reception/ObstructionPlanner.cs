using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Siting;

namespace InstallPacket.Plans;

/// <summary>Finds the obstruction of the survey that governs a path, as a single knife edge. A hill of the survey counts only where no terrain model sees the ground.</summary>
internal sealed class ObstructionPlanner(SitingPlan siting, GroundView ground, WorkLog log)
{
    private const double LightMMHz = 299.792458;

    /// <summary>Loss [dB] and name of the governing obstruction; 0 and empty when none stands in the direction.</summary>
    public (double LossDb, string Name) Loss(Arrival a)
    {
        var tiles = ground.Toward(a.Station) is { Whole: true };
        var worst = (LossDb: 0.0, Name: "", Nu: double.NegativeInfinity, Height: 0.0, D1: 0.0, D2: 0.0);
        foreach (var o in siting.Obstructions.Where(o => !(tiles && o.Kind == "hill") && Math.Abs(Bearing.Turn(o.BearingTrueDeg, a.BearingTrueDeg)) <= o.WidthDeg / 2 && o.DistanceM < a.DistanceKm * 1000))
        {
            var (d1, d2) = (o.DistanceM, a.DistanceKm * 1000 - o.DistanceM);
            var above = HeightAboveRay(a, o, d1);
            var nu = KnifeEdge.ParameterNu(above, LightMMHz / a.Channel.CentreMHz, d1, d2);
            if (nu > worst.Nu) worst = (KnifeEdge.LossDb(nu), o.Name, nu, above, d1, d2);
        }
        if (worst.Name.Length == 0) return (0, "");
        var subject = $"{a.Station.Id} over {worst.Name}";
        log.Record(KnifeEdge.NuFormula, subject, worst.Nu, worst.Height, LightMMHz / a.Channel.CentreMHz, worst.D1, worst.D2);
        log.Record(KnifeEdge.LossFormula, subject, worst.LossDb, worst.Nu);
        return (worst.LossDb, worst.LossDb > 0 ? worst.Name : "");
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
