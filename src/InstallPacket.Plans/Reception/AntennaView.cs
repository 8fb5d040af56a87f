using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Sources;
using InstallPacket.Calc.Reception;
using InstallPacket.Jobs;
using InstallPacket.Jobs.Parts;

namespace InstallPacket.Plans.Reception;

/// <summary>The antenna of the job as the arithmetic sees it: gain, beamwidth and front-to-back ratio at a frequency.</summary>
internal sealed class AntennaView
{
    private static readonly Constant UnknownFrontToBackDb = new("front-to-back-not-known", 10, "project-notes", Provenance.Memory);
    private readonly Element _element;

    public AntennaView(Element element, Sourced<Bearing>? aim, FindingList findings)
    {
        (_element, Aim) = (element, aim);
        foreach (var (value, key) in new (object?, string)[] { (Part.GainDbi, "gain"), (Part.BeamwidthDeg, "beamwidth"), (Part.FromMHz, "from"), (Part.ToMHz, "to") })
            if (value is null)
                findings.Add(Severity.Stop, "part-figure-missing", Part.At, $"the antenna `{Part.Id}` does not state `{key}`", "without it nothing can be reckoned",
                    $"add `{key}` to the part from the maker's sheet");
        if (Part.FrontToBackDb is null)
            findings.Add(Severity.Note, "front-to-back-unknown", Part.At, $"the antenna `{Part.Id}` does not state `front-to-back`",
                "10 dB is reckoned with (memory: planning value for low VHF)", "add it from the maker's sheet");
    }

    /// <summary>Where the job points it, or null.</summary>
    public Sourced<Bearing>? Aim { get; }

    public Part Part => _element.Part;

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
        var relative = work.Apply(AntennaPattern.RelativeGainFormula, a.Station.Id, away, Term.Part(Part.Id, "beamwidth", width),
            Part.FrontToBackDb is null ? UnknownFrontToBackDb : Term.Part(Part.Id, "front-to-back", back));
        return work.Apply(ReceptionFormulas.AntennaGain, a.Station.Id, Term.Part(Part.Id, "gain", Part.GainDbi!.At(f)), relative);
    }
}
