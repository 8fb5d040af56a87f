using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Siting;
using InstallPacket.Jobs;
using InstallPacket.Jobs.Stations;

namespace InstallPacket.Plans;

/// <summary>Reckons what arrives at the antenna from every station within reach, and where the antenna must point.</summary>
internal sealed class ReceptionPlanner(Job job, CodeFamily code, SitingPlan siting, GroundView ground, ChainNoise chain, WorkLog log, FindingList findings)
{
    private readonly AntennaView _antenna = new(job.Cabling.Chain.First(e => e.Part.Kind == "antenna"), findings);

    public ReceptionPlan Plan()
    {
        var arrivals = Stations().Select(s => new ArrivalPlanner(job, code, siting, ground, _antenna, log, findings).Plan(s)).ToArray();
        CheckPolarisation(arrivals);
        var headings = new HeadingView(_antenna, chain);
        var aim = new AimPlanner(job, siting, _antenna, headings, log).Plan(arrivals);
        new AimRules(job, headings, findings).Check(aim, arrivals);
        var stations = arrivals.Select(a => Finish(a, aim)).OrderByDescending(s => s.Wanted).ThenBy(s => s.RfChannel).ThenBy(s => s.Id, StringComparer.Ordinal).ToArray();
        return new ReceptionPlan(
            aim, _antenna.Part.Id, _antenna.Part.Name, _antenna.ElementId, job.Reception.Reserve.Db, job.Reception.Multipath.Db, Polarisation(arrivals), stations)
        {
            DemandedPct = job.Reception.ChancePct,
            PlanningModel = code.PlanningModel,
            Models = [.. stations.Where(s => s.Reckoned).Select(s => s.Budget!.PlannedBy).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)],
            AnyPattern = stations.Any(s => s.Budget?.PatternDb is not null),
            Sun = new SunPlanner(job, log).Plan(aim.TrueDeg),
        };
    }

    private IEnumerable<Station> Stations()
    {
        var near = siting.Sites.SelectMany(s => s.Stations).ToHashSet(StringComparer.Ordinal);
        return job.Reception.Stations.Where(s => near.Contains(s.Id));
    }

    private StationPlan Finish(Arrival a, AimPlan aim)
    {
        var turn = Bearing.Turn(aim.TrueDeg, a.BearingTrueDeg);
        if (a.WhyNot.Length > 0) return a.ToPlan(turn, null);
        var gainDbd = _antenna.GainDbd(a, turn, log);
        var level = Calc.Reception.FieldToPower.Dbm(a.FieldDbuvM, gainDbd, a.Channel.CentreMHz);
        log.Record(Calc.Reception.FieldToPower.PowerFormula, a.Station.Id, level, a.FieldDbuvM, gainDbd, a.Channel.CentreMHz);
        return a.ToPlan(turn, a.Budget(gainDbd, level));
    }

    private static string Polarisation(Arrival[] arrivals) =>
        arrivals.Where(a => a.Wanted && a.Station.Polarisation != "both").GroupBy(a => a.Station.Polarisation, StringComparer.Ordinal)
            .OrderByDescending(g => g.Count()).ThenBy(g => g.Key, StringComparer.Ordinal).FirstOrDefault()?.Key ?? "horizontal";

    private void CheckPolarisation(Arrival[] arrivals)
    {
        var kinds = arrivals.Where(a => a.Wanted && a.Station.Polarisation != "both").Select(a => a.Station.Polarisation).Distinct(StringComparer.Ordinal).ToArray();
        if (kinds.Length > 1)
            findings.Add(Severity.Caution, "polarisation-mixed", job.Reception.WantAt, "some wanted stations are horizontally polarised, others vertically",
                "one antenna serves one polarisation; the other arrives 16 to 20 dB weaker (memory: cross-polar ratio of common antennas)",
                "use a second antenna, or do not want both; the margins here do not hold for the other polarisation");
    }
}
