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
        var polarisation = Polarisation(arrivals);
        var headings = new HeadingView(_antenna, chain, polarisation, InterferencePlanner.Of(arrivals));
        var aim = new AimPlanner(job, siting, _antenna, headings, log).Plan(arrivals);
        new AimRules(job, headings, findings).Check(aim, arrivals);
        var stations = arrivals.Select(a => Finish(a, aim, headings)).OrderByDescending(s => s.Wanted).ThenBy(s => s.RfChannel).ThenBy(s => s.Id, StringComparer.Ordinal).ToArray();
        new InterferenceRules(job, headings, findings).Check(aim, arrivals);
        return new ReceptionPlan(
            aim, _antenna.Part.Id, _antenna.Part.Name, _antenna.ElementId, job.Reception.Reserve.Db, job.Reception.Multipath.Db, polarisation, stations)
        {
            DemandedPct = job.Reception.ChancePct,
            PlanningModel = code.PlanningModel,
            Models = [.. stations.Where(s => s.Reckoned).Select(s => s.Budget!.PlannedBy).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)],
            Sun = new SunPlanner(job, log).Plan(aim.TrueDeg),
        };
    }

    private IEnumerable<Station> Stations()
    {
        var near = siting.Sites.SelectMany(s => s.Stations).ToHashSet(StringComparer.Ordinal);
        return job.Reception.Stations.Where(s => near.Contains(s.Id));
    }

    private StationPlan Finish(Arrival a, AimPlan aim, HeadingView headings)
    {
        var turn = Bearing.Turn(aim.TrueDeg, a.BearingTrueDeg);
        if (a.WhyNot.Length > 0) return a.ToPlan(turn, null);
        var crossed = headings.PolarisationLossDb(a);
        if (crossed > 0) log.Record(Calc.Reception.PolarisationMismatch.LossFormula, a.Station.Id, crossed, 90, HeadingView.CrossPolarDb);
        var gainDbd = _antenna.GainDbd(a, turn, log) - crossed;
        var level = Calc.Reception.FieldToPower.Dbm(a.FieldDbuvM, gainDbd, a.Channel.CentreMHz);
        log.Record(Calc.Reception.FieldToPower.PowerFormula, a.Station.Id, level, a.FieldDbuvM, gainDbd, a.Channel.CentreMHz);
        return a.ToPlan(turn, a.Budget(gainDbd, level) with { PolarisationLossDb = crossed, InterferenceDbm = headings.InterferenceDbm(a, aim.TrueDeg), Disturbers = a.Wanted ? Disturbers(a, aim, headings) : [] });
    }

    private DisturberPlan[] Disturbers(Arrival a, AimPlan aim, HeadingView headings) =>
        [.. headings.Disturbers(a).Select(d =>
        {
            var subject = $"{a.Station.Id} against {d.Other.Station.Id}";
            var tenth = InterferencePlanner.TenthDbuVm(d.Other);
            log.Record(PlanFormulas.TenthField, d.Other.Station.Id, tenth, d.Other.MedianDbuvM, d.Other.FieldDbuvM);
            var (wanted, other) = (headings.Power(a, a.FieldDbuvM, aim.TrueDeg), headings.DisturberDbm(d, aim.TrueDeg));
            var ratio = log.Record(PlanFormulas.RatioAtTerminals, subject, wanted - other, wanted, other);
            if (d.AddsDb is { } adds) log.Record(PlanFormulas.DisturberAsNoise, subject, other + adds, other, d.LimitDb!.Value, a.RequiredCnDb);
            return new DisturberPlan(d.Other.Station.Id, d.Other.Station.Name, d.Other.Station.Channel, d.Offset, ratio, d.LimitDb, d.LimitSource);
        }).OrderBy(d => d.RatioDb - (d.LimitDb ?? 0)).ThenBy(d => d.Station, StringComparer.Ordinal)];

    private static string Polarisation(Arrival[] arrivals) =>
        arrivals.Where(a => a.Wanted && a.Station.Polarisation != "both").GroupBy(a => a.Station.Polarisation, StringComparer.Ordinal)
            .OrderByDescending(g => g.Count()).ThenBy(g => g.Key, StringComparer.Ordinal).FirstOrDefault()?.Key ?? "horizontal";

    private void CheckPolarisation(Arrival[] arrivals)
    {
        var kinds = arrivals.Where(a => a.Wanted && a.Station.Polarisation != "both").Select(a => a.Station.Polarisation).Distinct(StringComparer.Ordinal).ToArray();
        if (kinds.Length > 1)
            findings.Add(Severity.Caution, "polarisation-mixed", job.Reception.WantAt, "some wanted stations are horizontally polarised, others vertically",
                "one antenna serves one polarisation; the other arrives 16 to 20 dB weaker (memory: cross-polar ratio of common antennas)",
                "use a second antenna, or do not want both; the margins here count the weaker plane as 16 dB weaker");
    }
}
