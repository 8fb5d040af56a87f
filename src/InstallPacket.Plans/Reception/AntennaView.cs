using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Reception;

namespace InstallPacket.Plans.Reception;

/// <summary>The antenna of the job as the arithmetic sees it: gain, beamwidth and front-to-back ratio at a frequency.</summary>
internal sealed class AntennaView
{
    private const double UnknownFrontToBackDb = 10;
    private readonly Element _element;

    public AntennaView(Element element, Sourced<Bearing>? aim, FindingList findings)
    {
        (_element, Aim) = (element, aim);
        foreach (var key in Missing())
                findings.Add(Severity.Stop, "part-figure-missing", Part.At, $"the antenna `{Part.Id}` does not state `{key.Name}`", "without it nothing can be reckoned",
                    $"add `{key.Name}` to the part from the maker's sheet");
        if (Part.FrontToBackDb is null)
            findings.Add(Severity.Note, "front-to-back-unknown", Part.At, $"the antenna `{Part.Id}` does not state `front-to-back`",
                "10 dB is reckoned with (memory: planning value for low VHF)", "add it from the maker's sheet");
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
        + AntennaPattern.RelativeGainDb(turnDeg, BeamwidthDeg(frequencyMHz), Part.FrontToBackDb ?? UnknownFrontToBackDb);

    /// <summary>The same, recorded.</summary>
    public double GainDbd(Arrival a, double turnDeg, WorkLog log)
    {
        var f = a.Channel.CentreMHz;
        var (width, back) = (BeamwidthDeg(f), Part.FrontToBackDb ?? UnknownFrontToBackDb);
        log.Record(AntennaPattern.RelativeGainFormula, a.Station.Id, AntennaPattern.RelativeGainDb(turnDeg, width, back), Math.Abs(turnDeg), width, back);
        return log.Record(ReceptionFormulas.AntennaGain, a.Station.Id, GainDbd(f, turnDeg), Part.GainDbi!.At(f), AntennaPattern.RelativeGainDb(turnDeg, width, back));
    }
}
