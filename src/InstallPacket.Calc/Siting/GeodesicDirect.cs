namespace InstallPacket.Calc.Siting;

/// <summary>The direct problem: start, bearing and distance give the end.</summary>
internal static class GeodesicDirect
{
    public static GeodesicPoint Solve(double lat1Deg, double lon1Deg, double azimuthDeg, double distanceM)
    {
        var (sinAlpha1, cosAlpha1) = Degrees.SinCos(azimuthDeg);
        var (sinBeta1, cosBeta1) = Wgs84.ReducedLatitude(lat1Deg);
        var sinAlpha0 = sinAlpha1 * cosBeta1;
        var cosAlpha0 = Hypot(cosAlpha1, sinAlpha1 * sinBeta1);

        // A start on the equator due east or west lies at the vertex of the sphere; its cosine is 1 by continuity.
        var k1 = sinBeta1 == 0 && cosAlpha1 == 0 ? 1 : cosAlpha1 * cosBeta1;
        var (sinOmega1, cosOmega1) = (sinAlpha0 * sinBeta1, k1);
        var (sinSigma1, cosSigma1) = Degrees.Normalise(sinBeta1, k1);

        var series = new GeodesicSeries(cosAlpha0);
        var b11 = series.B1(sinSigma1, cosSigma1);
        var t12 = distanceM / (Wgs84.B * series.A1);
        var (st, ct) = Math.SinCos(b11 + t12);
        // tau2 = sigma1 + B1(sigma1) + t12, formed by rotating the pair of sigma1: at a pole the pair holds more than the angle does.
        var (sinTau2, cosTau2) = (sinSigma1 * ct + cosSigma1 * st, cosSigma1 * ct - sinSigma1 * st);
        var sigma12 = t12 + series.Inverse(sinTau2, cosTau2) + b11;

        var (s12, c12) = Math.SinCos(sigma12);
        var sinSigma2 = sinSigma1 * c12 + cosSigma1 * s12;
        var cosSigma2 = cosSigma1 * c12 - sinSigma1 * s12;
        var sinBeta2 = cosAlpha0 * sinSigma2;
        var cosBeta2 = Hypot(sinAlpha0, cosAlpha0 * cosSigma2);
        if (cosBeta2 == 0) cosBeta2 = cosSigma2 = Wgs84.Tiny;

        var (sinOmega2, cosOmega2) = (sinAlpha0 * sinSigma2, cosSigma2);
        var omega12 = Math.Atan2(sinOmega2 * cosOmega1 - cosOmega2 * sinOmega1, cosOmega2 * cosOmega1 + sinOmega2 * sinOmega1);
        var b3 = series.B3(sinSigma2, cosSigma2) - series.B3(sinSigma1, cosSigma1);
        var lambda12 = omega12 - Wgs84.F * series.A3 * sinAlpha0 * (sigma12 + b3);
        return new GeodesicPoint(
            Math.Atan2(sinBeta2, (1 - Wgs84.F) * cosBeta2) * Degrees.PerRadian,
            ReduceLongitude(lon1Deg, lambda12 * Degrees.PerRadian),
            Geodesic.Azimuth(sinAlpha0, cosAlpha0 * cosSigma2));
    }

    private static double ReduceLongitude(double lon1Deg, double turnDeg)
    {
        var lon = Math.IEEERemainder(Math.IEEERemainder(lon1Deg, 360) + turnDeg, 360);
        return lon >= 180 ? lon - 360 : lon;
    }

    private static double Hypot(double x, double y) => Math.Sqrt(x * x + y * y);
}
