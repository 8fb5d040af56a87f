using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Siting;
using InstallPacket.Jobs;
using InstallPacket.Jobs.Stations;

namespace InstallPacket.Plans;

/// <summary>Reckons the field of one station at the antenna, and the noise that it competes with.</summary>
internal sealed class ArrivalPlanner(Job job, SitingPlan siting, AntennaView antenna, WorkLog log, FindingList findings)
{
    private const double CurveHeightM = 9.1;

    public Arrival Plan(Station s)
    {
        var line = Geodesic.Inverse(siting.LatitudeDeg, siting.LongitudeDeg, s.LatitudeDeg, s.LongitudeDeg);
        var channel = ChannelRaster.Find(s.Raster, s.Channel)!;
        var arrival = new Arrival(s, channel, job.Reception.Want.Any(w => w.Value == s.Id), line.DistanceM / 1000, line.AzimuthDeg);
        var why = WhyNot(arrival);
        return why.Length > 0 ? arrival with { WhyNot = why } : Noise(Field(arrival));
    }

    private string WhyNot(Arrival a)
    {
        if (!antenna.Complete) return "the antenna's part does not state its figures";
        if (a.DistanceKm < 0.1) return Report(a, "transmitter-on-top", "stands on top of the house: less than 0.1 km away", "nearer than 0.1 km the arithmetic of the far field does not hold (our bound)", "check the coordinates of both");
        if (!antenna.Covers(a.Channel.CentreMHz))
            return Report(a, "antenna-outside-band", $"is on {UnitText.Write(a.Channel.CentreMHz, 0, "MHz")}, and the antenna is made for {UnitText.Number(antenna.Part.FromMHz!.Value, 0)} to {UnitText.Write(antenna.Part.ToMHz!.Value, 0, "MHz")}",
                "an antenna receives in its own band (`from` and `to` of the part)", "choose an antenna that covers this channel too, or do not want the station");
        return "";
    }

    private string Report(Arrival a, string id, string found, string limit, string remedy)
    {
        var want = job.Reception.Want.FirstOrDefault(w => w.Value == a.Station.Id);
        if (a.Wanted) findings.Add(Severity.Stop, id, want.At, $"the wanted station `{a.Station.Id}` {found}", limit, remedy);
        return found;
    }

    private Arrival Field(Arrival a)
    {
        var (s, f, id) = (a.Station, a.Channel.CentreMHz, a.Station.Id);
        var free = log.Record(FreeSpaceField.FieldFormula, id, FreeSpaceField.DbuVm(s.ErpKw, a.DistanceKm), s.ErpKw, a.DistanceKm);
        var curve = Curve(a);
        var height = job.Siting.AntennaHeight.Value.Metres;
        var heightGain = log.Record(ReceivingHeight.GainFormula, id, ReceivingHeight.GainDb(f, height, CurveHeightM), f, height, CurveHeightM);
        var (loss, name) = new ObstructionPlanner(siting, log).Loss(a);
        var field = log.Record(PlanFormulas.FieldAtAntenna, id, Math.Min(curve + heightGain, free) - loss, curve, heightGain, free, loss);
        return a with { FreeSpaceDbuvM = free, CurveDbuvM = curve, HeightGainDb = heightGain, ObstructionLossDb = loss, Obstruction = name, FieldDbuvM = field };
    }

    private double Curve(Arrival a)
    {
        var (s, f, id, d) = (a.Station, a.Channel.CentreMHz, a.Station.Id, a.DistanceKm);
        var half = FccCurves.FieldDbuVm(CurvePercent.F50_50, f, s.ErpKw, s.HaatM, d);
        var tenth = FccCurves.FieldDbuVm(CurvePercent.F50_10, f, s.ErpKw, s.HaatM, d);
        if (half.HaatClamped && a.Wanted)
            findings.Add(Severity.Note, "height-outside-curves", s.At, $"`{id}` has a height above average terrain of {UnitText.Write(s.HaatM, 0, "m")}",
                $"the FCC curves hold from 30 to 1600 m; {UnitText.Write(half.EffectiveHaatM, 0, "m")} is reckoned with", "take the prediction with more care");
        log.Record(FccCurves.CurveFormula, id + ", 50 % of time", half.DbuVm, f, s.ErpKw, s.HaatM, d);
        log.Record(FccCurves.CurveFormula, id + ", 10 % of time", tenth.DbuVm, f, s.ErpKw, s.HaatM, d);
        return log.Record(FccCurves.F5090Formula, id, FccCurves.F5090(half.DbuVm, tenth.DbuVm), half.DbuVm, tenth.DbuVm);
    }

    private Arrival Noise(Arrival a)
    {
        var (s, f, id) = (a.Station, a.Channel.CentreMHz, a.Station.Id);
        var bandwidth = Bandwidth.NoiseMHz(s.System, a.Channel.WidthMHz) ?? a.Channel.WidthMHz;
        var thermal = log.Record(ThermalNoise.PowerFormula, id, ThermalNoise.Dbm(bandwidth, ThermalNoise.ReferenceK), bandwidth, ThermalNoise.ReferenceK);
        var environment = Environment(job.Siting.Surroundings);
        var external = log.Record(PlanFormulas.ExternalNoise, id, ExternalNoise.FigureDb(environment, f), f);
        var threshold = StationRules.Threshold(s.System, s.Mode)!;
        var required = log.Record(PlanFormulas.RequiredCn, id, threshold.RequiredDb + job.Reception.Multipath.Db, threshold.RequiredDb, job.Reception.Multipath.Db);
        return a with
        {
            ThermalNoiseDbm = thermal, ExternalNoiseDb = external, RequiredCnDb = required, RequiredCnProvenance = ProvenanceWord.Of(threshold.Provenance),
        };
    }

    private static NoiseEnvironment Environment(string surroundings) => surroundings switch
    {
        "city" => NoiseEnvironment.City,
        "residential" => NoiseEnvironment.Residential,
        "rural" => NoiseEnvironment.Rural,
        _ => NoiseEnvironment.QuietRural,
    };
}
