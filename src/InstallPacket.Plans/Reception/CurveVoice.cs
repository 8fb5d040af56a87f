using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Reception;

namespace InstallPacket.Plans.Reception;

/// <summary>Asks the curves for the field of a station: distance, power and height, no ground.</summary>
internal sealed class CurveVoice(Job job, SitingPlan siting, WorkLog log, FindingList findings)
{
    private const double CurveHeightM = 9.1;

    /// <summary>The voice of the curves, with the skyline's correction where the skyline toward the station is known.</summary>
    public FieldVoice Of(Arrival a, GroundPath? path)
    {
        var (s, f, id, d) = (a.Station, a.Channel.CentreMHz, a.Station.Id, a.DistanceKm);
        var haat = Haat(a);
        var half = FccCurves.FieldDbuVm(CurvePercent.F50_50, f, a.ErpKw, haat, d);
        var tenth = FccCurves.FieldDbuVm(CurvePercent.F50_10, f, a.ErpKw, haat, d);
        if (half.HaatClamped && a.Wanted && path is not { Whole: true })
            findings.Add(Severity.Note, "height-outside-curves", s.At, $"`{id}` has a height above average terrain of {UnitText.Write(haat, 0, "m")}",
                $"the FCC curves hold from 30 to 1600 m; {UnitText.Write(half.EffectiveHaatM, 0, "m")} is reckoned with", "take the prediction with more care");
        log.Record(FccCurves.CurveFormula, id + ", 50 % of time", half.DbuVm, f, a.ErpKw, haat, d);
        log.Record(FccCurves.CurveFormula, id + ", 10 % of time", tenth.DbuVm, f, a.ErpKw, haat, d);
        var most = log.Record(FccCurves.F5090Formula, id, FccCurves.F5090(half.DbuVm, tenth.DbuVm), half.DbuVm, tenth.DbuVm);
        var height = job.Siting.AntennaHeight.Value.Metres;
        var gain = log.Record(ReceivingHeight.GainFormula, id, ReceivingHeight.GainDb(f, height, CurveHeightM), f, height, CurveHeightM);
        var (skyline, from) = Skyline(a, path);
        var service = log.Record(ReceptionFormulas.CurveAtAntenna, id, most + gain + skyline, most, gain, skyline);
        return new("curves", half.DbuVm + gain + skyline, service, s.HaatM is null ? $"height above average terrain unknown, {UnitText.Write(haat, 0, "m")} taken" : from);
    }

    // The least height of the curves: a wanted station is promised too little rather than too much.
    private double Haat(Arrival a)
    {
        if (a.Station.HaatM is { } known) return known;
        if (a.Wanted)
            findings.Add(Severity.Note, "haat-missing", a.Station.At, $"the height of `{a.Station.Id}` above average terrain is not given",
                $"the FCC curves need it; {UnitText.Write(FccCurves.MinHaatM, 0, "m")}, the least that they know, is reckoned with", "fill in `haat_m` (`height` in a job), or name terrain tiles");
        return FccCurves.MinHaatM;
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
