using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Siting;
using InstallPacket.Jobs;

namespace InstallPacket.Plans;

/// <summary>Where the antenna points: as the job says, or where the weakest wanted station fares best.</summary>
internal sealed class AimPlanner(Job job, SitingPlan siting, AntennaView antenna, WorkLog log)
{
    public AimPlan Plan(Arrival[] arrivals)
    {
        var wanted = arrivals.Where(a => a.Wanted && a.WhyNot.Length == 0).ToArray();
        var given = job.Reception.Aim is { } aim ? TrueBearing.Of(aim.Value, siting.Compass) : (double?)null;
        var deg = given ?? Best(wanted);
        double? magnetic = siting.Compass is { Usable: true, DeclinationDeg: { } d }
            ? log.Record(CompassBearing.MagneticFormula, "aim", CompassBearing.MagneticFromTrue(deg, d), deg, d) : null;
        return new AimPlan(deg, magnetic, CompassBearing.SixteenPoint(deg), given is null ? "program" : "job",
            siting.Landmark is { } l ? Bearing.Turn(l.BearingTrueDeg, deg) : null,
            antenna.BeamwidthDeg(wanted.Length == 0 ? 600 : wanted.Max(a => a.Channel.CentreMHz)));
    }

    // Whole degrees are finer than anybody can aim; among equals the first one clockwise from north wins, so that the choice repeats.
    private double Best(Arrival[] wanted)
    {
        if (wanted.Length == 0) return 0;
        var best = (Deg: 0, Worst: double.NegativeInfinity);
        for (var deg = 0; deg < 360; deg++)
        {
            var worst = wanted.Min(a => Excess(a, deg));
            if (worst > best.Worst + 1e-9) best = (deg, worst);
        }
        var weakest = wanted.MinBy(a => Excess(a, best.Deg))!;
        log.Record(PlanFormulas.AimExcess, $"aim {best.Deg} deg, weakest wanted: {weakest.Station.Id}", best.Worst, Signal(weakest, best.Deg), Noise(weakest), weakest.RequiredCnDb);
        return best.Deg;
    }

    private double Excess(Arrival a, double deg) => Signal(a, deg) - Noise(a) - a.RequiredCnDb;

    private double Signal(Arrival a, double deg) =>
        FieldToPower.Dbm(a.FieldDbuvM, antenna.GainDbd(a.Channel.CentreMHz, Bearing.Turn(deg, a.BearingTrueDeg)), a.Channel.CentreMHz);

    private static double Noise(Arrival a) => a.ThermalNoiseDbm + a.ExternalNoiseDb;
}
