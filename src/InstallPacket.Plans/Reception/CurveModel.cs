using InstallPacket.Calc.Sources;
using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Reception;

namespace InstallPacket.Plans.Reception;

/// <summary>Asks the curves for the field of a station: distance, power and height, no ground.</summary>
internal sealed class CurveModel(Job job, SitingPlan siting, Workings work, FindingList findings)
{
    private static readonly Constant CurveHeightM = new("height-of-the-curves", 9.1, "fcc-curves", Provenance.Read);
    private static readonly Constant LeastHaatM = new("least-height-of-the-curves", FccCurves.MinHaatM, "fcc-curves", Provenance.Read);
    private static readonly Constant HighMastM = new("high-mast-of-a-station-that-may-disturb", 300, "project-notes", Provenance.Derived);
    private static readonly Constant NoCorrection = new("no-skyline-known", 0, "project-notes", Provenance.Derived);

    /// <summary>The estimate by the curves, with the skyline's correction where the skyline toward the station is known.</summary>
    public FieldEstimate Of(Arrival a, GroundPath? path)
    {
        var (s, f, id, d) = (a.Station, a.Channel.CentreMHz, a.Station.Id, a.DistanceKm);
        var haat = Haat(a);
        var half = FccCurves.FieldDbuVm(CurvePercent.F50_50, f, a.ErpKw, haat, d);
        if (half.HaatClamped && a.Wanted && path is not { Whole: true })
            findings.Add(Severity.Note, "height-outside-curves", s.At, ("station", id), ("haat_m", haat.Number),
                ("taken_m", half.EffectiveHaatM));
        var e50 = work.Apply(FccCurves.CurveFormula, CurvePercent.F50_50, $"{id}, 50 % of time", s.Centre(), a.ErpKw, haat, a.Distance);
        var e10 = work.Apply(FccCurves.CurveFormula, CurvePercent.F50_10, $"{id}, 10 % of time", s.Centre(), a.ErpKw, haat, a.Distance);
        var most = work.Apply(FccCurves.F5090Formula, id, e50, e10);
        var gain = work.Apply(ReceivingHeight.GainFormula, id, s.Centre(), job.AntennaHeight(), CurveHeightM);
        var (skyline, from, seen) = Skyline(a, path);
        var service = work.Apply(ReceptionFormulas.CurveAtAntenna, id, most, gain, skyline);
        return new("curves", e50 + gain + skyline, service, s.HaatM is null
            ? $"height above average terrain unknown, {UnitText.Write(haat, 0, "m")} taken" : from)
        {
            TenthDbuvM = e10 + gain + skyline, Ground = seen,
        };
    }

    // A wanted station is promised too little rather than too much, and one that may disturb or overload is taken as strong rather than weak.
    private Term Haat(Arrival a)
    {
        if (a.Station.HaatM is { } known) return Term.Station(a.Station.Id, "height", known);
        if (!a.Wanted) return HighMastM;
        findings.Add(Severity.Note, "haat-missing", a.Station.At, ("station", a.Station.Id), ("taken_m", FccCurves.MinHaatM));
        return LeastHaatM;
    }

    // A measured skyline goes before the one of a profile.
    private (Term Db, string From, string Seen) Skyline(Arrival a, GroundPath? path)
    {
        var whole = path is { Whole: true };
        var skyline = siting.Skyline.FirstOrDefault(p => Math.Abs(Bearing.Turn(p.BearingTrueDeg, a.BearingTrueDeg)) <= 1);
        if (skyline is { From: "measured", AngleDeg: { } angle })
            return (Correction(a, Term.Key("siting.horizon", angle)), "with the correction for the measured skyline", whole ? "path" : "skyline");
        // The tiles end on the way: what they show up to there counts.
        if (!whole && skyline is { AngleDeg: { } near, BearingTrueDeg: var bearing })
            return (Correction(a, Term.Plan($"siting.skyline[{UnitText.Number(bearing, 0)}].angle_deg", near)),
                "with the correction for the skyline as far as the tiles reach", "skyline");
        if (path is not { Whole: true }) return (NoCorrection, "", "nothing");
        var clearance = TerrainClearance.Angle(path.FromTransmitter(), job.Siting.AntennaHeight.Value.Metres);
        var toward = $"toward {a.Station.Id}";
        var steepest = work.Apply(TerrainClearance.AngleFormula, clearance, a.Station.Id,
            Term.Ground($"antenna, {toward}", clearance.AntennaM), Term.Ground(toward, clearance.GroundM),
                Term.Ground($"distance, {toward}", clearance.DistanceM));
        return (Correction(a, steepest), "with the correction for the ground in front", "path");
    }

    private Row Correction(Arrival a, Term angleDeg) =>
        work.Apply(TerrainClearance.CorrectionFormula, a.Station.Id, a.Station.Centre(), angleDeg);
}
