using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Siting;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans.Reception;

/// <summary>Calculates the field of one station at the antenna, and the noise that it competes with.</summary>
internal sealed class ArrivalPlanner(Job job, CodeFamily code, SitingPlan siting, GroundView ground, AntennaSet antennas, Workings work,
    FindingList findings)
{
    private static readonly Constant ReferenceK = new("reference-temperature", ThermalNoise.ReferenceK, "ised-bpr-10", Provenance.Read);

    private readonly Term _served = job.ServedTime(code);

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
        Term Point(double number) => Term.Station(s.Id, "pattern", number);
        var back = work.Apply(ReceptionFormulas.BearingBack, s.Id, s.Latitude(), s.Longitude(), job.Latitude(), job.Longitude());
        var gain = work.Apply(TransmitterPattern.GainFormula, s.Id, back, Point(span.Before.BearingDeg), Point(span.Before.GainDb),
            Point(span.After.BearingDeg), Point(span.After.GainDb));
        return a with { PatternDb = gain, ErpKw = work.Apply(TransmitterPattern.PowerFormula, s.Id, a.ErpKw, gain) };
    }

    private string WhyNot(Arrival a)
    {
        var antenna = antennas.For(a.Channel.CentreMHz);
        if (!antenna.Complete) return "antenna-incomplete";
        if (a.DistanceKm < 0.1) return Report(a, "transmitter-on-top");
        if (!antenna.Covers(a.Channel.CentreMHz))
            return Report(a, "antenna-outside-band", ("channel_mhz", a.Channel.CentreMHz), ("from_mhz", antenna.Part.FromMHz),
                ("to_mhz", antenna.Part.ToMHz));
        return "";
    }

    private string Report(Arrival a, string id, params ReadOnlySpan<(string Name, object? Value)> more)
    {
        var want = job.Reception.Want.FirstOrDefault(w => w.Value == a.Station.Id);
        if (a.Wanted) findings.Add(Severity.Stop, id, want.At, [("station", a.Station.Id), .. more]);
        return id;
    }

    private Arrival Field(Arrival a)
    {
        var (s, id) = (a.Station, a.Station.Id);
        var free = work.Apply(FreeSpaceField.FieldFormula, id, a.ErpKw, a.Distance);
        var curves = new CurveModel(job, siting, work, findings).Of(a, ground.Toward(s));
        FieldEstimate[] estimates = [curves,
            .. new TerrainModels(job, ground, work, findings).Of(a, curves.MedianDbuvM - curves.ServiceDbuvM)];
        var planned = Planned(estimates);
        var (loss, name) = new ObstructionPlanner(siting, ground, work).Loss(a);
        var roof = new RoofPlanner(job, work, findings).Plan(a);
        Term Of(string key, double db) => Term.Plan($"reception.stations[{id}].budget.{key}", db);
        Term Estimate(string key, double dbuv) => Of($"estimates[{planned.Model}].{key}", dbuv);
        var (obstruction, above) = (Of("obstruction_loss_db", loss), Of("roof_loss_db", roof.LossDb));
        var most = work.Apply(ReceptionFormulas.FieldAtAntenna, id, Estimate("service_dbuv_m", planned.ServiceDbuvM), free, obstruction,
            above);
        var median = work.Apply(ReceptionFormulas.MedianAtAntenna, most, id, Estimate("median_dbuv_m", planned.MedianDbuvM), free,
            obstruction, above);
        var tenth = work.Apply(ReceptionFormulas.TenthAtAntenna, median, id, Estimate("tenth_dbuv_m", planned.TenthDbuvM), free,
            obstruction, above);
        var fade = work.Apply(ReceptionFormulas.Fade, id, median, most);
        return a with
        {
            FreeSpaceDbuvM = free, Estimates = estimates, PlannedBy = planned.Model, ObstructionLossDb = loss, Obstruction = name,
                FieldDbuvM = work.Apply(TimeShare.ServedFormula, id, median, most, _served), MedianDbuvM = median,
            StrongDbuvM = work.Apply(TimeShare.StrongFormula, id, median, tenth, _served),
            Ground = planned.Model == "curves" && planned.Ground == "path" ? "skyline" : planned.Ground,
            RoofLossDb = roof.LossDb, Spread = new SpreadPlanner(job, work).Plan(a, estimates, planned, fade, roof.SigmaDb),
        };
    }

    // The family names the model that its regulator plans with; where it gives no estimate, or itself calls the path dubious, the other
    // terrain model is taken, and last the curves.
    private FieldEstimate Planned(FieldEstimate[] estimates) =>
        estimates.FirstOrDefault(v => v.Model == code.PlanningModel && !v.Dubious)
            ?? estimates.FirstOrDefault(v => v.Model != "curves" && !v.Dubious)
            ?? estimates.FirstOrDefault(v => v.Model != "curves") ?? estimates[0];

    private Arrival Noise(Arrival a)
    {
        var (s, f, id) = (a.Station, a.Channel.CentreMHz, a.Station.Id);
        var bandwidth = Bandwidth.NoiseMHz(s.System, a.Channel.WidthMHz) ?? a.Channel.WidthMHz;
        var thermal = work.Apply(ThermalNoise.PowerFormula, id, Term.Table(NumberTables.NoiseBandwidth, s.System, bandwidth), ReferenceK);
        var environment = Environment(job.Siting.Surroundings);
        var external = work.Apply(ReceptionFormulas.ExternalNoise, environment, id, s.Centre());
        var threshold = StationRules.Threshold(s.System, s.Mode)!;
        var required = work.Apply(ReceptionFormulas.RequiredCn, id,
            Term.Table(NumberTables.CnThresholds, $"{s.System}.{s.Mode}", threshold.RequiredDb),
                Term.Key("reception.multipath", job.Reception.Multipath.Db));
        return a with
        {
            ThermalNoiseDbm = thermal, ExternalNoiseDb = external,
                AntennaNoiseK = work.Apply(ReceptionFormulas.AntennaNoise, id, external), RequiredCnDb = required,
                RequiredCnProvenance = ProvenanceWord.Of(threshold.Provenance),
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
