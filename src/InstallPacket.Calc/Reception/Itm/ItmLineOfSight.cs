using System.Numerics;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception.Itm;

/// <summary>Which way the fit of the line-of-sight loss went.</summary>
internal enum ItmSightFit
{
    /// <summary>Slope and logarithm.</summary>
    SlopeAndLog,

    /// <summary>The slope came out negative and was set to 0.</summary>
    LogOnly,

    /// <summary>A straight line.</summary>
    Straight,

    /// <summary>A straight line with the slope of diffraction.</summary>
    StraightAsDiffraction,
}

/// <summary>Loss within the smooth-earth line-of-sight distance: a curve laid through two-ray losses and the diffraction line.</summary>
internal readonly record struct ItmLineOfSight
{
    /// <summary>The curve.</summary>
    public static readonly Formula LossFormula = new(
        "itm-line-of-sight",
        "Reference attenuation within sight",
        "Aref = max(0, Ao + k1 d + k2 ln d)",
        new("Aref", "dB", "loss over free space"),
        [new("Ao", "dB", "constant"), new("k1", "dB/m", "slope"), new("k2", "dB", "logarithmic slope"), new("d", "m", "distance")],
        "ntia-itm", "line-of-sight range (cited there: ERL 79-ITS 67, 3.19)");

    /// <summary>The two rays.</summary>
    public static readonly Formula TwoRayFormula = new(
        "itm-two-ray",
        "Two-ray loss over rough ground",
        "A = -10 log10 |exp(-i phi) + R|^2, R = (sin psi - Zg) / (sin psi + Zg) exp(-min(10, k sigma sin psi))",
        new("A", "dB", "loss over free space"),
        [new("phi", "rad", "phase of the reflected ray"), new("psi", "rad", "grazing angle"), new("Zg", "", "impedance of the ground"),
            new("k", "1/m", "wave number"), new("sigma", "m", "spread of the ground")],
        "ntia-itm", "line-of-sight loss (cited there: The Algorithm, 4.46 to 4.50)");

    private readonly ItmWave _wave;
    private readonly ItmTerrain _terrain;
    private readonly ItmDiffractionLine _line;
    private readonly double _smoothM;

    public ItmLineOfSight(in ItmPath path, in ItmWave wave, in ItmDiffractionLine line)
    {
        (_wave, _terrain, _line, _smoothM) = (wave, path.Terrain, line, path.Terrain.SmoothHorizonsM);
        EdgeDb = line.At(_smoothM);
        NearM = 0.04 * wave.FrequencyMHz * _terrain.Tx.EffectiveHeightM * _terrain.Rx.EffectiveHeightM;
        if (line.StartDb >= 0)
        {
            NearM = Math.Min(NearM, _terrain.HorizonsM / 2);
            FarM = NearM + (_terrain.HorizonsM - NearM) / 4;
        }
        else
        {
            FarM = Math.Max(-line.StartDb / line.SlopeDbPerM, _terrain.HorizonsM / 4);
        }
        FarDb = MixedDb(FarM);
        NearDb = NearM < FarM ? MixedDb(NearM) : double.NaN;
        if (!(NearM < FarM && TryCurve(out var slope, out var log, out var fit))) (slope, log, fit) = Straight();
        (SlopeDbPerM, LogDb, Fit) = (slope, log, fit);
        ConstantDb = EdgeDb - SlopeDbPerM * _smoothM - LogDb * Math.Log(_smoothM);
    }

    /// <summary>d0 [m].</summary>
    public double NearM { get; }

    /// <summary>d1 [m].</summary>
    public double FarM { get; }

    /// <summary>A0 [dB], NaN when it is not used.</summary>
    public double NearDb { get; }

    /// <summary>A1 [dB].</summary>
    public double FarDb { get; }

    /// <summary>Diffraction line at the smooth-earth distance [dB].</summary>
    public double EdgeDb { get; }

    /// <summary>k1 [dB/m].</summary>
    public double SlopeDbPerM { get; }

    /// <summary>k2 [dB].</summary>
    public double LogDb { get; }

    /// <summary>Ao [dB].</summary>
    public double ConstantDb { get; }

    public ItmSightFit Fit { get; }

    /// <summary>The reference attenuation [dB].</summary>
    public double At(double distanceM) => Math.Max(0, ConstantDb + SlopeDbPerM * distanceM + LogDb * Math.Log(distanceM));

    // Cited in the source as ERL 79-ITS 67, 3.20 and 3.21.
    private bool TryCurve(out double slope, out double log, out ItmSightFit fit)
    {
        double span = _smoothM - NearM, part = FarM - NearM, ratio = Math.Log(_smoothM / NearM);
        (slope, fit) = (0, ItmSightFit.SlopeAndLog);
        log = Math.Max(0, (span * (FarDb - NearDb) - part * (EdgeDb - NearDb)) / (span * Math.Log(FarM / NearM) - part * ratio));
        if (double.IsNaN(log))
        {
            // Let it reach the result, which is then refused; the branches below could lose it.
            slope = log;
            return true;
        }
        if (!(_line.StartDb > 0 || log > 0)) return false;
        slope = (EdgeDb - NearDb - log * ratio) / span;
        if (slope >= 0) return true;
        // A loss that falls with distance is not believed: keep the logarithm alone.
        (slope, fit) = (0, ItmSightFit.LogOnly);
        log = Math.Max(EdgeDb - NearDb, 0) / ratio;
        if (log == 0) slope = _line.SlopeDbPerM;
        return true;
    }

    private (double Slope, double Log, ItmSightFit Fit) Straight()
    {
        var slope = Math.Max(EdgeDb - FarDb, 0) / (_smoothM - FarM);
        return slope == 0 ? (_line.SlopeDbPerM, 0, ItmSightFit.StraightAsDiffraction) : (slope, 0, ItmSightFit.Straight);
    }

    private double MixedDb(double distanceM)
    {
        var weight = 1 / (1 + _wave.FrequencyMHz * _terrain.DeltaHM / Math.Max(10000, _smoothM));
        return weight * TwoRayDb(distanceM) + (1 - weight) * _line.At(distanceM);
    }

    private double TwoRayDb(double distanceM)
    {
        double he1 = _terrain.Tx.EffectiveHeightM, he2 = _terrain.Rx.EffectiveHeightM, k = _wave.NumberPerM;
        var sine = (he1 + he2) / Math.Sqrt(distanceM * distanceM + (he1 + he2) * (he1 + he2));
        var spread = ItmRoughness.SpreadM(ItmRoughness.At(_terrain.DeltaHM, distanceM));
        var reflection = (sine - _wave.Impedance) / (sine + _wave.Impedance) * Math.Exp(-Math.Min(10, k * spread * sine));
        var power = reflection.Real * reflection.Real + reflection.Imaginary * reflection.Imaginary;
        if (power < 0.25 || power < sine) reflection *= Math.Sqrt(sine / power);
        var phase = 2 * k * he1 * he2 / distanceM;
        // Beyond a quarter turn the phase is drawn toward half a turn: the model averages over the lobes of interference.
        if (phase > Math.PI / 2) phase = Math.PI - Math.PI / 2 * (Math.PI / 2) / phase;
        var (sin, cos) = Math.SinCos(phase);
        double real = cos + reflection.Real, imaginary = reflection.Imaginary - sin;
        return -10 * Math.Log10(real * real + imaginary * imaginary);
    }
}
