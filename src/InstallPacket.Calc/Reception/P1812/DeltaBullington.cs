using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception.P1812;

/// <summary>Diffraction over the real profile, raised by what a smooth earth adds to the single edge; for one effective radius.</summary>
/// <param name="Terrain">The edge of the real profile with its clutter.</param>
/// <param name="Smooth">The edge of the smooth surface.</param>
/// <param name="Sphere">The path over the smooth surface.</param>
internal sealed record DeltaBullington(BullingtonEdge Terrain, BullingtonEdge Smooth, SmoothEarth Sphere)
{
    public static DeltaBullington Of(ReadOnlySpan<double> distancesKm, ReadOnlySpan<double> topsM, PathFrame frame, SmoothSurface surface,
        double radiusKm)
    {
        double tx = frame.TxAboveSeaM - surface.DiffractionTxM, rx = frame.RxAboveSeaM - surface.DiffractionRxM;
        return new(
            BullingtonEdge.Find(distancesKm, topsM, frame.TxAboveSeaM, frame.RxAboveSeaM, radiusKm),
            BullingtonEdge.Find(distancesKm, new double[distancesKm.Length], tx, rx, radiusKm),
            SmoothEarth.Of(frame.LengthKm, tx, rx, radiusKm));
    }

    public DeltaBullingtonLoss Loss(RadioWave wave, double seaFraction)
    {
        var lambda = wave.LengthM;
        double terrain = Terrain.LossDb(lambda), smooth = Smooth.LossDb(lambda), sphere = Sphere.LossDb(wave, seaFraction);
        return new(Terrain.Nu(lambda), terrain, smooth, sphere, terrain + Math.Max(sphere - smooth, 0));
    }
}

/// <summary>Diffraction loss for one effective radius, in its parts.</summary>
/// <param name="TerrainNu">Diffraction parameter of the edge of the real profile.</param>
/// <param name="TerrainDb">Loss over the edge of the real profile [dB].</param>
/// <param name="SmoothDb">Loss over the edge of the smooth surface [dB].</param>
/// <param name="SphereDb">Loss over the smooth sphere [dB].</param>
/// <param name="TotalDb">Loss of the real profile and what the sphere has over its edge [dB].</param>
public readonly record struct DeltaBullingtonLoss(double TerrainNu, double TerrainDb, double SmoothDb, double SphereDb, double TotalDb)
{
    /// <summary>The parts put together.</summary>
    public static readonly Formula TotalFormula = new(
        "p1812-delta-bullington",
        "Diffraction loss of the profile",
        "Ld = Lbulla + max(Lsph - Lbulls, 0)",
        new("Ld", "dB", "diffraction loss"),
        [new("Lbulla", "dB", "edge of the real profile"), new("Lsph", "dB", "smooth sphere"),
            new("Lbulls", "dB", "edge of the smooth surface")],
        "itu-p1812", "complete diffraction model");
}
