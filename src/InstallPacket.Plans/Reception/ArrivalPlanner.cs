using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Siting;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans.Reception;

/// <summary>Reckons the field of one station at the antenna, and the noise that it competes with.</summary>
internal sealed class ArrivalPlanner(Job job, CodeFamily code, SitingPlan siting, GroundView ground, AntennaSet antennas, WorkLog log, FindingList findings)
{
    public Arrival Plan(Station s)
    {
        var line = Geodesic.Inverse(siting.LatitudeDeg, siting.LongitudeDeg, s.LatitudeDeg, s.LongitudeDeg);
        var channel = ChannelRaster.Find(s.Raster, s.Channel)!;
        var arrival = new Arrival(s, channel, job.Reception.Want.Any(w => w.Value == s.Id), line.DistanceM / 1000, line.AzimuthDeg);
        var why = WhyNot(arrival);
        return why.Length > 0 ? arrival with { WhyNot = why } : Noise(Field(Power(arrival)));
    }

    private Arrival Power(Arrival a)
    {
        if (a.Station is not { Pattern: { } pattern } s) return a;
        var span = pattern.Toward(Geodesic.Inverse(s.LatitudeDeg, s.LongitudeDeg, siting.LatitudeDeg, siting.LongitudeDeg).AzimuthDeg);
        var gain = log.Record(TransmitterPattern.GainFormula, s.Id, span.GainDb, span.BearingDeg, span.Before.BearingDeg, span.Before.GainDb, span.After.BearingDeg, span.After.GainDb);
        return a with { PatternDb = gain, ErpKw = log.Record(TransmitterPattern.PowerFormula, s.Id, TransmitterPattern.PowerKw(s.ErpKw, gain), s.ErpKw, gain) };
    }

    private string WhyNot(Arrival a)
    {
        var antenna = antennas.For(a.Channel.CentreMHz);
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
        var (s, id) = (a.Station, a.Station.Id);
        var free = log.Record(FreeSpaceField.FieldFormula, id, FreeSpaceField.DbuVm(a.ErpKw, a.DistanceKm), a.ErpKw, a.DistanceKm);
        var curves = new CurveVoice(job, siting, log, findings).Of(a, ground.Toward(s));
        FieldVoice[] voices = [curves, .. new TerrainVoices(job, ground, log, findings).Of(a, curves.MedianDbuvM - curves.ServiceDbuvM)];
        var planned = Planned(voices);
        var (loss, name) = new ObstructionPlanner(siting, ground, log).Loss(a);
        var roof = new RoofPlanner(job, log, findings).Plan(a);
        var field = log.Record(ReceptionFormulas.FieldAtAntenna, id, Math.Min(planned.ServiceDbuvM, free) - loss - roof.LossDb, planned.ServiceDbuvM, free, loss, roof.LossDb);
        var median = log.Record(ReceptionFormulas.MedianAtAntenna, id, Math.Max(field, Math.Min(planned.MedianDbuvM, free) - loss - roof.LossDb), planned.MedianDbuvM, free, loss, roof.LossDb);
        return a with
        {
            FreeSpaceDbuvM = free, Voices = voices, PlannedBy = planned.Model, ObstructionLossDb = loss, Obstruction = name, FieldDbuvM = field, MedianDbuvM = median,
            RoofLossDb = roof.LossDb, Spread = new SpreadPlanner(log).Plan(a, voices, planned, median - field, roof.SigmaDb),
        };
    }

    // The family names the model that its regulator plans with; where it has no voice the other terrain model speaks, and last the curves.
    private FieldVoice Planned(FieldVoice[] voices) =>
        voices.FirstOrDefault(v => v.Model == code.PlanningModel) ?? voices.FirstOrDefault(v => v.Model != "curves") ?? voices[0];

    private Arrival Noise(Arrival a)
    {
        var (s, f, id) = (a.Station, a.Channel.CentreMHz, a.Station.Id);
        var bandwidth = Bandwidth.NoiseMHz(s.System, a.Channel.WidthMHz) ?? a.Channel.WidthMHz;
        var thermal = log.Record(ThermalNoise.PowerFormula, id, ThermalNoise.Dbm(bandwidth, ThermalNoise.ReferenceK), bandwidth, ThermalNoise.ReferenceK);
        var environment = Environment(job.Siting.Surroundings);
        var external = log.Record(ReceptionFormulas.ExternalNoise, id, ExternalNoise.FigureDb(environment, f), f);
        var threshold = StationRules.Threshold(s.System, s.Mode)!;
        var required = log.Record(ReceptionFormulas.RequiredCn, id, threshold.RequiredDb + job.Reception.Multipath.Db, threshold.RequiredDb, job.Reception.Multipath.Db);
        return a with
        {
            ThermalNoiseDbm = thermal, ExternalNoiseDb = external, AntennaNoiseK = log.Record(ReceptionFormulas.AntennaNoise, id, 290 * Math.Pow(10, external / 10), external), RequiredCnDb = required, RequiredCnProvenance = ProvenanceWord.Of(threshold.Provenance),
        };
    }

    private static NoiseEnvironment Environment(Surroundings surroundings) => surroundings switch
    {
        Surroundings.City => NoiseEnvironment.City,
        Surroundings.Residential => NoiseEnvironment.Residential,
        Surroundings.Rural => NoiseEnvironment.Rural,
        Surroundings.QuietRural => NoiseEnvironment.QuietRural,
    };
}
