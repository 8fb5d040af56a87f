namespace InstallPacket.Calc.Siting;

/// <summary>
/// The order-6 expansions of one geodesic in its small parameter q. The coefficients are those of Karney (2013)
/// as polynomials in q and the third flattening n. The 600 check lines prove the distance terms up to
/// the fourth order and the longitude terms, which enter times f, up to the third (a change there makes the tests fail). What the higher
/// ones
/// add on this earth is below a micrometre; they rest on the comparison with a published implementation alone.
/// </summary>
internal readonly struct GeodesicSeries
{
    private const double N = Wgs84.N;
    private readonly double[] _c1, _c2, _c3, _d;

    /// <summary>The expansions for a geodesic that crosses the equator at azimuth alpha0.</summary>
    /// <param name="cosAlpha0">Cosine of that azimuth.</param>
    public GeodesicSeries(double cosAlpha0)
    {
        var k2 = Wgs84.Ep2 * cosAlpha0 * cosAlpha0;
        var q = k2 / (2 * (1 + Math.Sqrt(1 + k2)) + k2);
        double q2 = q * q, q3 = q2 * q, q4 = q2 * q2, q5 = q4 * q, q6 = q3 * q3;
        A1 = (1 + q2 / 4 + q4 / 64 + q6 / 256) / (1 - q);
        A2 = (1 - q) * (1 + q2 / 4 + 9 * q4 / 64 + 25 * q6 / 256);
        A3 = 1 - (0.5 - N / 2) * q - (0.25 + N / 8 - 3 * N * N / 8) * q2
            - (1 / 16.0 + 3 * N / 16 + N * N / 16) * q3 - (3 / 64.0 + N / 32) * q4 - 3 / 128.0 * q5;
        _c1 = [0, -q / 2 + 3 * q3 / 16 - q5 / 32, -q2 / 16 + q4 / 32 - 9 * q6 / 2048, -q3 / 48 + 3 * q5 / 256,
            -5 * q4 / 512 + 3 * q6 / 512, -7 * q5 / 1280, -7 * q6 / 2048];
        _c2 = [0, q / 2 + q3 / 16 + q5 / 32, 3 * q2 / 16 + q4 / 32 + 35 * q6 / 2048, 5 * q3 / 48 + 5 * q5 / 256,
            35 * q4 / 512 + 7 * q6 / 512, 63 * q5 / 1280, 77 * q6 / 2048];
        _d = [0, q / 2 - 9 * q3 / 32 + 205 * q5 / 1536, 5 * q2 / 16 - 37 * q4 / 96 + 1335 * q6 / 4096, 29 * q3 / 96 - 75 * q5 / 128,
            539 * q4 / 1536 - 2391 * q6 / 2560, 3467 * q5 / 7680, 38081 * q6 / 61440];
        _c3 = [0,
            (0.25 - N / 4) * q + (1 / 8.0 - N * N / 8) * q2 + (3 / 64.0 + 3 * N / 64 - N * N / 64) * q3 + (5 / 128.0 + N / 64) * q4
                + 3 / 128.0 * q5,
            (1 / 16.0 - 3 * N / 32 + N * N / 32) * q2 + (3 / 64.0 - N / 32 - 3 * N * N / 64) * q3 + (3 / 128.0 + N / 128) * q4
                + 5 / 256.0 * q5,
            (5 / 192.0 - 3 * N / 64 + 5 * N * N / 192) * q3 + (3 / 128.0 - 5 * N / 192) * q4 + 7 / 512.0 * q5,
            (7 / 512.0 - 7 * N / 256) * q4 + 7 / 512.0 * q5,
            21 / 2560.0 * q5];
    }

    /// <summary>Scale of the distance integral.</summary>
    public double A1 { get; }

    /// <summary>Scale of the second integral of the reduced length.</summary>
    public double A2 { get; }

    /// <summary>Scale of the longitude integral.</summary>
    public double A3 { get; }

    /// <summary>Periodic part of the distance at arc sigma.</summary>
    public double B1(double sin, double cos) => SineSum(_c1, sin, cos);

    /// <summary>Periodic part of the second integral.</summary>
    public double B2(double sin, double cos) => SineSum(_c2, sin, cos);

    /// <summary>Periodic part of the longitude.</summary>
    public double B3(double sin, double cos) => SineSum(_c3, sin, cos);

    /// <summary>Turns scaled distance back into arc.</summary>
    public double Inverse(double sin, double cos) => SineSum(_d, sin, cos);

    // Sum of c[l] sin(2 l s) by Clenshaw's recurrence from the pair (sin s, cos s): no sine is taken inside.
    private static double SineSum(double[] c, double sin, double cos)
    {
        var twoCos2 = 2 * (cos - sin) * (cos + sin);
        double b0 = 0, b1 = 0;
        for (var l = c.Length - 1; l >= 1; l--) (b0, b1) = (twoCos2 * b0 - b1 + c[l], b0);
        return 2 * sin * cos * b0;
    }
}
