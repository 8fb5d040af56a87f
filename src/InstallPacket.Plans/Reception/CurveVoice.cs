using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Reception;
using InstallPacket.Jobs;

namespace InstallPacket.Plans;

/// <summary>Asks the curves for the field of a station: distance, power and height, no ground.</summary>
internal sealed class CurveVoice(Job job, SitingPlan siting, WorkLog log, FindingList findings)
{
    private const double CurveHeightM = 9.1;

    /// <summary>The voice of the curves, with the skyline's correction where the skyline toward the station is known.</summary>
    public FieldVoice Of(Arrival a, GroundPath? path)
    {
        var (s, f, id, d) = (a.Station, a.Channel.CentreMHz, a.Station.Id, a.DistanceKm);
        var half = FccCurves.FieldDbuVm(CurvePercent.F50_50, f, s.ErpKw, s.HaatM, d);
        var tenth = FccCurves.FieldDbuVm(CurvePercent.F50_10, f, s.ErpKw, s.HaatM, d);
        if (half.HaatClamped && a.Wanted && path is not { Whole: true })
            findings.Add(Severity.Note, "height-outside-curves", s.At, $"`{id}` has a height above average terrain of {UnitText.Write(s.HaatM, 0, "m")}",
                $"the FCC curves hold from 30 to 1600 m; {UnitText.Write(half.EffectiveHaatM, 0, "m")} is reckoned with", "take the prediction with more care");
        log.Record(FccCurves.CurveFormula, id + ", 50 % of time", half.DbuVm, f, s.ErpKw, s.HaatM, d);
        log.Record(FccCurves.CurveFormula, id + ", 10 % of time", tenth.DbuVm, f, s.ErpKw, s.HaatM, d);
        var most = log.Record(FccCurves.F5090Formula, id, FccCurves.F5090(half.DbuVm, tenth.DbuVm), half.DbuVm, tenth.DbuVm);
        var height = job.Siting.AntennaHeight.Value.Metres;
        var gain = log.Record(ReceivingHeight.GainFormula, id, ReceivingHeight.GainDb(f, height, CurveHeightM), f, height, CurveHeightM);
        var (skyline, from) = Skyline(a, path);
        var service = log.Record(PlanFormulas.CurveAtAntenna, id, most + gain + skyline, most, gain, skyline);
        return new("curves", half.DbuVm + gain + skyline, service, from);
    }

    // A measured skyline goes before the one of a profile.
    private (double Db, string From) Skyline(Arrival a, GroundPath? path)
    {
        var measured = siting.Skyline.FirstOrDefault(p => p.From == "measured" && Math.Abs(Bearing.Turn(p.BearingTrueDeg, a.BearingTrueDeg)) <= 1);
        if (measured?.AngleDeg is { } angle) return (Correction(a, angle), "with the correction for the measured skyline");
        if (path is not { Whole: true }) return (0, "");
        var clearance = TerrainClearance.Angle(path.FromTransmitter(), job.Siting.AntennaHeight.Value.Metres);
        log.Record(TerrainClearance.AngleFormula, a.Station.Id, clearance.AngleDeg, clearance.AntennaM, clearance.GroundM, clearance.DistanceM);
        return (Correction(a, clearance.AngleDeg), "with the correction for the ground in front");
    }

    private double Correction(Arrival a, double angleDeg) =>
        log.Record(TerrainClearance.CorrectionFormula, a.Station.Id, TerrainClearance.CorrectionDb(a.Channel.CentreMHz, angleDeg), a.Channel.CentreMHz, angleDeg);
}
