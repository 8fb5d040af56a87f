using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Sources;
using InstallPacket.Calc.Reception;

namespace InstallPacket.Plans.Reception;

/// <summary>The antenna of the job as the arithmetic sees it: gain, beamwidth and front-to-back ratio at a frequency.</summary>
internal sealed class AntennaView
{
    private static readonly Constant UnknownFrontToBackDb = new("front-to-back-not-known", 10, "project-notes", Provenance.Memory);
    private readonly Element _element;

    public AntennaView(Element element, Sourced<Bearing>? aim, FindingList findings)
    {
        (_element, Aim) = (element, aim);
        foreach (var key in Missing())
                findings.Add(Severity.Stop, "part-figure-missing", "antenna", Part.At, ("part", Part.Id), ("figure", key.Name));
        if (Part.FrontToBackDb is null)
            findings.Add(Severity.Note, "front-to-back-unknown", Part.At, ("part", Part.Id), ("taken_db", UnknownFrontToBackDb.Number));
    }

    /// <summary>Where the job points it, or null.</summary>
    public Sourced<Bearing>? Aim { get; }

    public AntennaPart Part => (AntennaPart)_element.Part;

    // What the arithmetic needs and the part does not state.
    private IEnumerable<Key> Missing()
    {
        if (Part.GainDbi is null) yield return AntennaPartKeys.Gain;
        if (Part.BeamwidthDeg is null) yield return AntennaPartKeys.Beamwidth;
        if (Part.FromMHz is null) yield return ChainKeys.From;
        if (Part.ToMHz is null) yield return ChainKeys.To;
    }

    public string ElementId => _element.Id;

    public bool Complete => Part.GainDbi is not null && Part.BeamwidthDeg is not null && Part.FromMHz is not null && Part.ToMHz is not null;

    public bool Covers(double frequencyMHz) => frequencyMHz >= Part.FromMHz && frequencyMHz <= Part.ToMHz;

    public double BeamwidthDeg(double frequencyMHz) => Part.BeamwidthDeg?.At(frequencyMHz) ?? 90;

    /// <summary>Gain over a dipole toward a station that lies a turn away from the aim.</summary>
    public double GainDbd(double frequencyMHz, double turnDeg) =>
        DipoleFactor.DbdFromDbi(Part.GainDbi!.At(frequencyMHz))
        + AntennaPattern.RelativeGainDb(turnDeg, BeamwidthDeg(frequencyMHz), Part.FrontToBackDb ?? UnknownFrontToBackDb.Number);

    /// <summary>The same, recorded.</summary>
    public Row GainDbd(Arrival a, double turnDeg, Workings work)
    {
        var f = a.Channel.CentreMHz;
        var (width, back) = (BeamwidthDeg(f), Part.FrontToBackDb ?? UnknownFrontToBackDb.Number);
        Term away = Term.Plan($"reception.stations[{a.Station.Id}].off_aim_deg", turnDeg).In(turnDeg < 0 ? -1 : 1);
        var relative = work.Apply(AntennaPattern.RelativeGainFormula, a.Station.Id, away, Part.Figure(AntennaPartKeys.Beamwidth, width),
            Part.FrontToBackDb is null ? UnknownFrontToBackDb : Part.Figure(AntennaPartKeys.FrontToBack, back));
        return work.Apply(ReceptionFormulas.AntennaGain, a.Station.Id, Part.Figure(AntennaPartKeys.Gain, Part.GainDbi!.At(f)), relative);
    }
}
