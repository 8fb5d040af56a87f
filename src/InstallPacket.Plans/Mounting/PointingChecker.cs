using InstallPacket.Calc.Mounting;
using InstallPacket.Calc.Quantities;

namespace InstallPacket.Plans.Mounting;

/// <summary>Whether the mast sways or the antenna loses its aim in ordinary gusts.</summary>
internal sealed class PointingChecker(Job job, Workings work, FindingList findings)
{
    private const double SlowestHz = 1;
    private const double BeamShare = 0.25;
    private readonly MountingSection _mounting = job.Mounting;

    /// <summary>Tilt of the top in a gust of 50 mph [deg].</summary>
    public double Tilt(MastCase mast, MastSection tube, MastMaterial material, double service)
    {
        var light = mast with { Loads = [.. mast.Loads.Select(l => l with { ForceN = l.ForceN * service })],
            LineLoadNPerM = mast.LineLoadNPerM * service };
        var free = MountTerms.Wind("free_m", light.FreeM);
        var tilt = work.Apply(MastBending.SlopeFormula, new BentMast(light, tube, material.ModulusPa), "top of the mast, gust of 50 mph",
            MountTerms.Wind("service_force_n", light.Loads[0].ForceN), free, MountTerms.Wind("service_line_n_per_m", light.LineLoadNPerM),
                free,
            MountTerms.Wind("spacing_m", light.SpacingM), MountTerms.Stiffness(tube, material.ModulusPa));
        if (Beam() is { } beam && tilt > BeamShare * beam)
            findings.Add(Severity.Caution, "aim-sways", _mounting.FreeLengthAt, ("gust_ms", 50 * 0.44704), ("tilt_deg", tilt.Number),
                ("beam_deg", beam));
        return tilt;
    }

    /// <summary>Mass of the antennas; null when one is unknown.</summary>
    public double? TopKg { get; private set; }

    /// <summary>First frequency of the free mast [Hz]; null when the mass of an antenna is unknown.</summary>
    public double? Frequency(MastFrame frame, MastSection tube, MastMaterial material)
    {
        var antennas = job.Cabling.Antennas.Select(a => a.MassKg).ToArray();
        if (antennas.Any(m => m is null)) return null;
        var top = antennas.Sum(m => m!.Value);
        TopKg = top;
        var frequency = work.Apply(MastSway.FrequencyFormula, new SwayingMast(tube, material), "mast",
            MountTerms.Stiffness(tube, material.ModulusPa),
            MountTerms.Wind("free_m", frame.FreeM), MountTerms.Wind("top_kg", top),
                MountTerms.Wind("mast_kg_per_m", tube.MassKgM(material.DensityKgM3)));
        if (frequency < SlowestHz)
            findings.Add(Severity.Caution, "mast-flexible", _mounting.FreeLengthAt, ("frequency_hz", frequency.Number));
        return frequency;
    }

    private double? Beam() => job.Cabling.Antennas
        .Select(a => a.ToMHz is { } to ? a.BeamwidthDeg?.At(to) : null).Min();
}
