namespace InstallPacket.Calc.Siting;

/// <summary>Schmidt semi-normalised Legendre functions of sin(phi') and their derivatives by colatitude.</summary>
internal sealed class LegendreTable
{
    private readonly double[,] _p, _q;

    /// <param name="s">Sine of the geocentric latitude.</param>
    /// <param name="c">Its cosine.</param>
    /// <param name="degree">Highest degree.</param>
    public LegendreTable(double s, double c, int degree)
    {
        _p = new double[degree + 1, degree + 1];
        _q = new double[degree + 1, degree + 1];
        _p[0, 0] = 1;
        for (var n = 1; n <= degree; n++)
        {
            var k = n == 1 ? 1 : Math.Sqrt((2.0 * n - 1) / (2.0 * n));
            _p[n, n] = k * c * _p[n - 1, n - 1];
            _q[n, n] = k * (c * _q[n - 1, n - 1] + s * _p[n - 1, n - 1]);
            for (var m = 0; m < n; m++) Fill(n, m, s, c);
        }
    }

    public double P(int n, int m) => _p[n, m];

    public double Q(int n, int m) => _q[n, m];

    private void Fill(int n, int m, double s, double c)
    {
        var root = Math.Sqrt((double)n * n - m * m);
        var k1 = (2.0 * n - 1) / root;
        var (p2, q2) = (0.0, 0.0);
        if (m <= n - 2)
        {
            var k2 = Math.Sqrt((n - 1.0) * (n - 1) - m * m) / root;
            (p2, q2) = (k2 * _p[n - 2, m], k2 * _q[n - 2, m]);
        }
        _p[n, m] = k1 * s * _p[n - 1, m] - p2;
        _q[n, m] = k1 * (s * _q[n - 1, m] - c * _p[n - 1, m]) - q2;
    }
}
