using InstallPacket.Calc.Sources;
using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Reception;

namespace InstallPacket.Plans.Reception;

/// <summary>What a station would give at the noisiest outlet if the antenna pointed to some heading.</summary>
/// <param name="SignalDbm">Power at the antenna terminals for the demanded share of the time.</param>
/// <param name="NoiseDbm">Noise there, with all disturbers counted as noise.</param>
/// <param name="MarginDb">Margin for the demanded share of the time.</param>
/// <param name="Chance">Chance of reception, 0 to 1.</param>
internal readonly record struct HeadingMargin(double SignalDbm, double NoiseDbm, double MarginDb, double Chance);

/// <summary>Tries headings.</summary>
internal sealed class HeadingView(AntennaSet antennas, ChainNoise chain, Polarisation polarisation, IReadOnlyDictionary<string,
    IReadOnlyList<Disturber>> disturbers)
{
    /// <summary>How much weaker the other plane of polarisation is received [dB] (memory: cross-polar ratio of common antennas, 16 to 20
    /// dB).</summary>
    public static readonly Constant CrossPolarDb = new("cross-polar-ratio", 16, "project-notes", Provenance.Memory);

    /// <summary>Angle between the two planes [deg].</summary>
    public static readonly Constant RightAngleDeg = new("planes-at-right-angles", 90, "project-notes", Provenance.Derived);

    public HeadingMargin At(Arrival a, double headingDeg)
    {
        var alone = Alone(a, headingDeg);
        return InterferenceDbm(a, headingDeg) is { } interference
            ? Margin(a, alone.SignalDbm, DecibelSum.TotalDbm([alone.NoiseDbm, interference])) : alone;
    }

    /// <summary>The same without any disturber.</summary>
    public HeadingMargin Alone(Arrival a, double headingDeg)
    {
        var signal = Power(a, a.FieldDbuvM, headingDeg);
        var noise = a.ThermalNoiseDbm + SystemNoise.FigureDb(a.ExternalNoiseDb, chain.WorstDb(a.Channel.CentreMHz));
        return Margin(a, signal, noise);
    }

    private static HeadingMargin Margin(Arrival a, double signal, double noise)
    {
        var margin = signal - noise - a.RequiredCnDb;
        return new(signal, noise, margin, a.Chance(margin));
    }

    /// <summary>All disturbers together as noise at the antenna terminals [dBm]; null when there is none whose effect is known.</summary>
    public double? InterferenceDbm(Arrival a, double headingDeg)
    {
        double[] each = [.. disturbers[a.Station.Id].Where(d => d.AddsDb is not null).Select(d => DisturberDbm(d, headingDeg)
            + d.AddsDb!.Value)];
        return each.Length == 0 ? null : DecibelSum.TotalDbm(each);
    }

    /// <summary>The disturbers of a station.</summary>
    public IReadOnlyList<Disturber> Disturbers(Arrival a) => disturbers[a.Station.Id];

    /// <summary>Power of a disturber at the antenna terminals for the rest of the time [dBm].</summary>
    public double DisturberDbm(Disturber d, double headingDeg) => Power(d.Other, d.Other.StrongDbuvM, headingDeg);

    /// <summary>Power of a field at the antenna terminals [dBm].</summary>
    public double Power(Arrival a, double fieldDbuvM, double headingDeg) =>
        FieldToPower.Dbm(fieldDbuvM, GainDbd(a, headingDeg), a.Channel.CentreMHz);

    /// <summary>Antenna gain toward a station [dBd], its polarisation counted in.</summary>
    public double GainDbd(Arrival a, double headingDeg) =>
        antennas.For(a.Channel.CentreMHz).GainDbd(a.Channel.CentreMHz, Bearing.Turn(headingDeg, a.BearingTrueDeg)) - PolarisationLossDb(a);

    /// <summary>What the plane of polarisation costs a station [dB].</summary>
    public double PolarisationLossDb(Arrival a) =>
        a.Station.Polarisation == Polarisation.Both || a.Station.Polarisation == polarisation ? 0
            : PolarisationMismatch.LossDb(90, CrossPolarDb);
}
