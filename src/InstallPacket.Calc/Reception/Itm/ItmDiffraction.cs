using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception.Itm;

/// <summary>Diffraction loss at one distance, with its parts.</summary>
internal readonly record struct ItmDiffractionAt(double KnifeDb, double SmoothDb, double Weight, double LossDb);

/// <summary>Diffraction beyond the horizons: knife edges and rounded earth, mixed by the roughness of the ground.</summary>
internal readonly record struct ItmDiffraction
{
    private readonly ItmWave _wave;
    private readonly ItmTerrain _terrain;
    private readonly ItmSmoothEarth _smooth;
    private readonly double _heightTerm;
    private readonly double _sightRad;
    private readonly double _horizonsM;

    /// <summary>The mix.</summary>
    public static readonly Formula LossFormula = new(
        "itm-diffraction",
        "Diffraction loss",
        "A = w Ar + (1 - w) Ak + Afo, w = 25.1 / (25.1 + sqrt(Q))",
        new("A", "dB", "loss over free space"),
        [new("Ar", "dB", "over the rounded earth"), new("Ak", "dB", "over two knife edges"), new("Afo", "dB", "clutter"),
            new("Q", "", "roughness in wavelengths, weighted by the heights")],
        "ntia-itm", "diffraction attenuation (cited there: ERL 79-ITS 67, 3.23)");

    /// <summary>The clutter.</summary>
    public static readonly Formula ClutterFormula = new(
        "itm-clutter",
        "Clutter term of diffraction",
        "Afo = min(15, 5 log10(1 + 1e-5 h1 h2 f sigma))",
        new("Afo", "dB", "loss"),
        [new("h1", "m", "transmitter above ground"), new("h2", "m", "receiver above ground"), new("f", "MHz", "frequency"),
            new("sigma", "m", "spread of the ground at the smooth-earth distance")],
        "ntia-itm", "clutter factor (cited there: ERL 79-ITS 67, 3.38c)");

    public ItmDiffraction(in ItmPath path, in ItmWave wave)
    {
        _wave = wave;
        _terrain = path.Terrain;
        ItmEnd tx = _terrain.Tx, rx = _terrain.Rx;
        _smooth = ItmSmoothEarth.Of(wave, tx, rx);
        _sightRad = _terrain.SightRad;
        _horizonsM = _terrain.HorizonsM;
        var product = tx.HeightM * rx.HeightM;
        // The 10 belongs to point-to-point paths only.
        _heightTerm = Math.Sqrt(1 + (tx.EffectiveHeightM * rx.EffectiveHeightM - product) / (product + 10));
        var spread = ItmRoughness.SpreadM(ItmRoughness.At(_terrain.DeltaHM, _terrain.SmoothHorizonsM));
        ClutterDb = Math.Min(15, 5 * Math.Log10(1 + 1e-5 * product * wave.FrequencyMHz * spread));
    }

    /// <summary>Clutter [dB]; the same at all distances.</summary>
    public double ClutterDb { get; }

    public ItmDiffractionAt At(double distanceM)
    {
        double bend = distanceM / _terrain.EarthRadiusM - _sightRad, beyond = distanceM - _horizonsM;
        var knife = ItmKnifeEdges.LossDb(_wave.NumberPerM, bend, beyond, _terrain.Tx.HorizonM, _terrain.Rx.HorizonM);
        var smooth = _smooth.LossDb(bend, beyond);
        var rough = Math.Min(ItmRoughness.At(_terrain.DeltaHM, distanceM) * _wave.NumberPerM, 6283.2);
        var q = (_heightTerm + (_horizonsM - _sightRad * _terrain.EarthRadiusM) / distanceM) * rough;
        var weight = 25.1 / (25.1 + Math.Sqrt(q));
        return new ItmDiffractionAt(knife, smooth, weight, weight * smooth + (1 - weight) * knife + ClutterDb);
    }
}

/// <summary>The straight line that stands for diffraction at all distances.</summary>
/// <param name="NearM">First distance at which it was computed [m], d3.</param>
/// <param name="FarM">Second distance [m], d4.</param>
/// <param name="SlopeDbPerM">Slope [dB/m], Md.</param>
/// <param name="StartDb">Value at distance 0 [dB], Ad0.</param>
/// <param name="ScaleM">Distance scale of the rounded earth [m], Xae.</param>
internal readonly record struct ItmDiffractionLine(double NearM, double FarM, double SlopeDbPerM, double StartDb, double ScaleM)
{
    public static ItmDiffractionLine Of(in ItmDiffraction diffraction, in ItmTerrain terrain, in ItmWave wave)
    {
        // (ae^2 / f)^(1/3) with ae in m and f in MHz, taken as metres.
        var scale = Math.Cbrt(terrain.EarthRadiusM * terrain.EarthRadiusM / wave.FrequencyMHz);
        var near = Math.Max(terrain.SmoothHorizonsM, terrain.HorizonsM + 5 * scale);
        var far = near + 10 * scale;
        double nearDb = diffraction.At(near).LossDb, farDb = diffraction.At(far).LossDb;
        var slope = (farDb - nearDb) / (far - near);
        return new ItmDiffractionLine(near, far, slope, nearDb - slope * near, scale);
    }

    public double At(double distanceM) => SlopeDbPerM * distanceM + StartDb;
}
