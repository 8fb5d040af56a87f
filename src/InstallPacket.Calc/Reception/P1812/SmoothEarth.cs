using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception.P1812;

/// <summary>A path over a smooth sphere: what of its diffraction does not depend on the frequency.</summary>
/// <param name="LengthKm">Length of the path [km].</param>
/// <param name="TxM">Transmitting antenna above the sphere, h1 [m].</param>
/// <param name="RxM">Receiving antenna above the sphere, h2 [m].</param>
/// <param name="RadiusKm">Effective radius [km].</param>
/// <param name="BeyondHorizon">True when the sphere hides the antennas from each other.</param>
/// <param name="NearestTxKm">Distance of the point of least clearance from the transmitter, d1 [km]; 0 beyond the horizon.</param>
/// <param name="ClearanceM">Least clearance, hse [m]; 0 beyond the horizon.</param>
public readonly record struct SmoothEarth(
    double LengthKm, double TxM, double RxM, double RadiusKm, bool BeyondHorizon, double NearestTxKm, double ClearanceM)
{
    /// <summary>The loss over a smooth sphere.</summary>
    public static readonly Formula LossFormula = new(
        "p1812-smooth-earth",
        "Diffraction loss over a smooth sphere",
        "Lsph = FT(a) beyond the horizon; in sight 0 where hse > 17.456 sqrt(d1 d2 lambda/D), else (1 - hse/hreq) max(0, FT(am)), am = 500 (D/(sqrt(h1) + sqrt(h2)))^2",
        new("Lsph", "dB", "diffraction loss"),
        [new("D", "km", "length of the path"), new("h1", "m", "transmitting antenna above the sphere"),
            new("h2", "m", "receiving antenna above the sphere"),
            new("a", "km", "effective radius"), new("lambda", "m", "wavelength"), new("omega", "", "share of sea")],
        "itu-p1812", "spherical-earth diffraction");

    /// <summary>The path over a sphere.</summary>
    /// <param name="lengthKm">Length of the path [km], above 0.</param>
    /// <param name="txM">Transmitting antenna above the sphere [m], above 0.</param>
    /// <param name="rxM">Receiving antenna above the sphere [m], above 0.</param>
    /// <param name="radiusKm">Effective radius [km], above 0.</param>
    /// <returns>Its geometry.</returns>
    public static SmoothEarth Of(double lengthKm, double txM, double rxM, double radiusKm)
    {
        var sight = Math.Sqrt(2 * radiusKm) * (Math.Sqrt(0.001 * txM) + Math.Sqrt(0.001 * rxM));
        if (lengthKm >= sight) return new(lengthKm, txM, rxM, radiusKm, true, 0, 0);
        var c = (txM - rxM) / (txM + rxM);
        var m = 250 * lengthKm * lengthKm / (radiusKm * (txM + rxM));
        var cosine = Math.Clamp(3 * c / 2 * Math.Sqrt(3 * m / ((m + 1) * (m + 1) * (m + 1))), -1, 1);
        var b = 2 * Math.Sqrt((m + 1) / (3 * m)) * Math.Cos(Math.PI / 3 + Math.Acos(cosine) / 3);
        double d1 = lengthKm * (1 + b) / 2, d2 = lengthKm - d1;
        var clearance = ((txM - 500 * d1 * d1 / radiusKm) * d2 + (rxM - 500 * d2 * d2 / radiusKm) * d1) / lengthKm;
        return new(lengthKm, txM, rxM, radiusKm, false, d1, clearance);
    }

    /// <summary>The single edge of a smooth sphere in closed form, without a profile.</summary>
    /// <remarks>Within 0.01 dB of the edge found on a fine profile and several dB off on a coarse one. A choice of its own, never a short
    /// cut: the method takes the profile's points.</remarks>
    /// <returns>The edge.</returns>
    public BullingtonEdge ClosedFormEdge()
    {
        if (!BeyondHorizon)
            return new(-ClearanceM * BullingtonEdge.Root(LengthKm, NearestTxKm * (LengthKm - NearestTxKm)), LengthKm);
        var bulge = 500 * LengthKm / RadiusKm;
        double slopeT = bulge - 2 * Math.Sqrt(500 * TxM / RadiusKm), slopeR = bulge - 2 * Math.Sqrt(500 * RxM / RadiusKm);
        var meet = (RxM - TxM + slopeR * LengthKm) / (slopeT + slopeR);
        var above = TxM + slopeT * meet - (TxM * (LengthKm - meet) + RxM * meet) / LengthKm;
        return new(above * BullingtonEdge.Root(LengthKm, meet * (LengthKm - meet)), LengthKm);
    }

    /// <summary>The loss for a wave.</summary>
    /// <param name="wave">The wave.</param>
    /// <param name="seaFraction">Share of sea, 0 to 1.</param>
    /// <returns>Loss [dB].</returns>
    internal double LossDb(RadioWave wave, double seaFraction)
    {
        if (BeyondHorizon) return FirstTermDb(RadiusKm, wave, seaFraction);
        var required = 17.456 * Math.Sqrt(NearestTxKm * (LengthKm - NearestTxKm) * wave.LengthM / LengthKm);
        if (ClearanceM > required) return 0;
        var root = LengthKm / (Math.Sqrt(TxM) + Math.Sqrt(RxM));
        // The radius at which the antennas would just see each other.
        var marginal = 500 * root * root;
        return (1 - ClearanceM / required) * Math.Max(0, FirstTermDb(marginal, wave, seaFraction));
    }

    /// <summary>The first term of the residue series, mixed of land and sea [dB]; may be negative.</summary>
    internal double FirstTermDb(double radiusKm, RadioWave wave, double seaFraction)
    {
        var land = seaFraction < 1 ? FirstTerm.LandDb(this, radiusKm, wave) : 0;
        var sea = seaFraction > 0 ? FirstTerm.SeaDb(this, radiusKm, wave) : 0;
        return seaFraction * sea + (1 - seaFraction) * land;
    }
}
