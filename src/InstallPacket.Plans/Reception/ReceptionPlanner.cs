using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Siting;

namespace InstallPacket.Plans.Reception;

/// <summary>Calculates what arrives at the antenna from every station within reach, and where the antenna must point.</summary>
internal sealed class ReceptionPlanner(Job job, CodeFamily code, SitingPlan siting, GroundView ground, ChainNoise chain)
{
    private readonly Workings _work = new();
    private readonly FindingList _findings = new();
    private AntennaSet _antennas = null!;

    public Planned<ReceptionPlan> Plan() => new(Receive(), _work, _findings);

    private ReceptionPlan Receive()
    {
        _antennas = new(job, _findings);
        var arrivals = Stations().Select(s => new ArrivalPlanner(job, code, siting, ground, _antennas, _work, _findings).Plan(s)).ToArray();
        CheckPolarisation(arrivals);
        new CertaintyRules(job, _findings).Check(arrivals);
        var polarisation = Plane(arrivals);
        var headings = new HeadingView(_antennas, chain, polarisation, InterferencePlanner.Of(arrivals));
        var aims = _antennas.All.Select(a => Aim(a, headings, arrivals)).ToArray();
        AimPlan For(Arrival a) => aims[_antennas.IndexOf(a.Channel.CentreMHz)].Aim;
        new InterferenceRules(job, headings, _findings).Check(For, arrivals);
        var stations = arrivals.Select(a => Finish(a, For(a), headings)).OrderByDescending(s => s.Wanted).ThenBy(s =>
            s.RfChannel).ThenBy(s => s.Id, StringComparer.Ordinal).ToArray();
        var first = _antennas.All[0];
        return new ReceptionPlan(
            aims[0].Aim, first.Part.Id, first.Part.Name, first.ElementId, job.Reception.Reserve.Db, job.Reception.Multipath.Db,
                polarisation, stations)
        {
            ServedPct = job.ServedTime(code).Number,
            DemandedPct = job.Reception.ChancePct,
            PlanningModel = code.PlanningModel,
            Models = [.. stations.Where(s => s.Calculated).Select(s =>
                s.Budget!.PlannedBy).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)],
            Sun = new SunPlanner(job, _work).Plan(aims[0].Aim.TrueDeg),
            MoreAntennas = aims[1..],
            AnyPattern = stations.Any(s => s.Budget?.PatternDb is not null),
        };
    }

    // Each antenna is aimed for the stations that reach the outlets through it.
    private AntennaAim Aim(AntennaView antenna, HeadingView headings, Arrival[] arrivals)
    {
        var own = arrivals.Where(a => _antennas.For(a.Channel.CentreMHz) == antenna).ToArray();
        var aim = new AimPlanner(job, siting, antenna, headings, antenna == _antennas.All[0], _work).Plan(own);
        new AimRules(job, antenna, headings, _findings).Check(aim, own);
        return new(antenna.ElementId, antenna.Part.Id, antenna.Part.Name, aim, [.. own.Where(a => a.Wanted).Select(a => a.Station.Id)]);
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
        Term gainDbd = _antennas.For(a.Channel.CentreMHz).GainDbd(a, turn, _work);
        if (crossed > 0)
        {
            var loss = _work.Apply(Calc.Reception.PolarisationMismatch.LossFormula, a.Station.Id, HeadingView.RightAngleDeg,
                HeadingView.CrossPolarDb);
            gainDbd = _work.Apply(ReceptionFormulas.CrossedGain, a.Station.Id, gainDbd, loss);
        }
        var level = _work.Apply(Calc.Reception.FieldToPower.PowerFormula, a.Station.Id, a.FieldDbuvM, gainDbd, a.Station.Centre());
        var strong = _work.Apply(ReceptionFormulas.DisturberPower, a.Station.Id, a.StrongDbuvM, gainDbd, a.Station.Centre());
        return a.ToPlan(turn,
            a.Budget(gainDbd, level) with { StrongDbm = strong, PolarisationLossDb = crossed, InterferenceDbm = headings.InterferenceDbm(a, aim.TrueDeg),
            Disturbers = a.Wanted ? Disturbers(a, aim, level, headings) : [] });
    }

    private DisturberPlan[] Disturbers(Arrival a, AimPlan aim, double level, HeadingView headings) =>
        [.. headings.Disturbers(a).Select(d =>
        {
            Subject subject = $"{a.Station.Id} against {d.Other.Station.Id}";
            Term Of(string key, double db) => Term.Plan($"reception.stations[{a.Station.Id}].budget.{key}", db);
            var path = $"disturbers[{d.Other.Station.Id}]";
            var gain = Of(path + ".gain_dbd", headings.GainDbd(d.Other, aim.TrueDeg));
            var other = _work.Apply(ReceptionFormulas.DisturberPower, subject, d.Other.StrongDbuvM, gain, d.Other.Station.Centre());
            var ratio = _work.Apply(ReceptionFormulas.RatioAtTerminals, subject, Of("level_dbm", level), other);
            if (d.AddsDb is not null) _work.Apply(ReceptionFormulas.DisturberAsNoise, subject, other,
                Of(path + ".limit_db", d.LimitDb!.Value), a.RequiredCnDb);
            return new DisturberPlan(d.Other.Station.Id, d.Other.Station.Name, d.Other.Station.Channel, d.Offset, ratio, d.LimitDb,
                d.LimitSource) { GainDbd = gain };
        }).OrderBy(d => d.RatioDb - (d.LimitDb ?? 0)).ThenBy(d => d.Station, StringComparer.Ordinal)];

    private static Polarisation Plane(Arrival[] arrivals) =>
        arrivals.Where(a => a.Wanted && a.Station.Polarisation != Polarisation.Both).GroupBy(a => a.Station.Polarisation)
            .OrderByDescending(g => g.Count()).ThenBy(g => g.Key).FirstOrDefault()?.Key ?? Polarisation.Horizontal;

    private void CheckPolarisation(Arrival[] arrivals)
    {
        var kinds = arrivals.Where(a => a.Wanted && a.Station.Polarisation != Polarisation.Both).Select(a =>
            a.Station.Polarisation).Distinct().ToArray();
        if (kinds.Length > 1)
            _findings.Add(Severity.Caution, "polarisation-mixed", job.Reception.WantAt);
    }
}
