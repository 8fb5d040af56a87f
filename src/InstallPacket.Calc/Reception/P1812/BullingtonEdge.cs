using InstallPacket.Calc.Siting;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception.P1812;

/// <summary>The single edge that stands for all obstacles of a profile. Its place does not depend on the frequency, so it is found once
/// per path.</summary>
/// <param name="NuRootM">Diffraction parameter for a wave of one metre; that of another is this over the root of its length
/// [m^0.5].</param>
/// <param name="LengthKm">Length of the path [km].</param>
public readonly record struct BullingtonEdge(double NuRootM, double LengthKm)
{
    /// <summary>The loss over the equivalent edge.</summary>
    public static readonly Formula LossFormula = new(
        "p1812-bullington",
        "Loss over the edge that stands for all obstacles",
        "Lbull = J(nu) + (1 - exp(-J(nu)/6)) (10 + 0.02 D); nu at the point nearest to the ray in sight, else where the rays that graze the obstacles from both ends meet",
        new("Lbull", "dB", "diffraction loss"),
        [new("nu", "", "diffraction parameter of the edge"), new("D", "km", "length of the path")],
        "itu-p1812", "Bullington part of the diffraction model");

    /// <summary>Finds the edge.</summary>
    /// <param name="distancesKm">Distances from the transmitter [km].</param>
    /// <param name="topsM">Obstacles at these distances [m], over the same level as the antennas.</param>
    /// <param name="txM">Transmitting antenna [m].</param>
    /// <param name="rxM">Receiving antenna [m].</param>
    /// <param name="radiusKm">Effective radius of the earth [km].</param>
    /// <returns>The edge.</returns>
    public static BullingtonEdge Find(ReadOnlySpan<double> distancesKm, ReadOnlySpan<double> topsM, double txM, double rxM, double radiusKm)
    {
        var length = distancesKm[^1];
        double steepestT = double.NegativeInfinity, steepestR = double.NegativeInfinity;
        for (var i = 1; i < distancesKm.Length - 1; i++)
        {
            double d = distancesKm[i], rest = length - d, top = topsM[i] + 500 * d * rest / radiusKm;
            steepestT = Math.Max(steepestT, (top - txM) / d);
            steepestR = Math.Max(steepestR, (top - rxM) / rest);
        }
        // Equality counts as obstructed.
        if (steepestT < (rxM - txM) / length) return new(NearestToRay(distancesKm, topsM, txM, rxM, radiusKm), length);
        // An edge that just touches the ray meets it everywhere, which the next line could not place.
        if (steepestT + steepestR <= 0) return new(0, length);
        var meet = (rxM - txM + steepestR * length) / (steepestT + steepestR);
        var above = txM + steepestT * meet - (txM * (length - meet) + rxM * meet) / length;
        return new(above * Root(length, meet * (length - meet)), length);
    }

    /// <summary>The diffraction parameter for a wavelength.</summary>
    /// <param name="wavelengthM">Wavelength [m].</param>
    /// <returns>Parameter nu.</returns>
    public double Nu(double wavelengthM) => NuRootM / Math.Sqrt(wavelengthM);

    /// <summary>The loss for a wavelength.</summary>
    /// <param name="wavelengthM">Wavelength [m].</param>
    /// <returns>Loss [dB].</returns>
    public double LossDb(double wavelengthM)
    {
        var edge = KnifeEdge.LossDb(Nu(wavelengthM));
        return edge + (1 - Math.Exp(-edge / 6)) * (10 + 0.02 * LengthKm);
    }

    private static double NearestToRay(ReadOnlySpan<double> distancesKm, ReadOnlySpan<double> topsM, double txM, double rxM,
        double radiusKm)
    {
        double length = distancesKm[^1], best = double.NegativeInfinity;
        for (var i = 1; i < distancesKm.Length - 1; i++)
        {
            double d = distancesKm[i], rest = length - d;
            var above = topsM[i] + 500 * d * rest / radiusKm - (txM * rest + rxM * d) / length;
            best = Math.Max(best, above * Root(length, d * rest));
        }
        return best;
    }

    internal static double Root(double lengthKm, double productKm2) => Math.Sqrt(0.002 * lengthKm / productKm2);
}
