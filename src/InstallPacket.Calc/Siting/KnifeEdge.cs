using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Siting;

/// <summary>The loss over a single sharp edge.</summary>
public static class KnifeEdge
{
    /// <summary>The diffraction parameter.</summary>
    public static readonly Formula NuFormula = new(
        "knife-edge-parameter",
        "Diffraction parameter of an edge",
        "nu = h sqrt((2 / lambda) (1 / d1 + 1 / d2))",
        new("nu", "", "diffraction parameter"),
        [new("h", "m", "height of the edge above the ray"), new("lambda", "m", "wavelength"), new("d1", "m", "distance to one end"),
            new("d2", "m", "distance to the other end")],
        "itu-p526", "section 4.1", Provenance.Memory) { Method = v => ParameterNu(v[0], v[1], v[2], v[3]) };

    /// <summary>The loss over an edge.</summary>
    public static readonly Formula LossFormula = new(
        "knife-edge-loss",
        "Loss over a single edge",
        "J = 6.9 + 20 log10(sqrt((nu - 0.1)^2 + 1) + nu - 0.1) for nu > -0.78, else 0",
        new("J", "dB", "loss"), [new("nu", "", "diffraction parameter")],
        "itu-p526", "section 4.1", Provenance.Memory) { Method = v => LossDb(v[0]) };

    /// <summary>The diffraction parameter of an edge.</summary>
    /// <param name="heightAboveLineM">Height of the edge above the straight ray [m]; negative when the ray passes above.</param>
    /// <param name="wavelengthM">Wavelength [m], above 0; outside throws.</param>
    /// <param name="d1M">Distance to one end [m], above 0; outside throws.</param>
    /// <param name="d2M">Distance to the other end [m], above 0; outside throws.</param>
    /// <returns>Parameter nu.</returns>
    public static double ParameterNu(double heightAboveLineM, double wavelengthM, double d1M, double d2M)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(wavelengthM);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(d1M);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(d2M);
        return heightAboveLineM * Math.Sqrt(2 / wavelengthM * (1 / d1M + 1 / d2M));
    }

    /// <summary>The loss over an edge.</summary>
    /// <param name="nu">Diffraction parameter.</param>
    /// <returns>Loss [dB], 0 at and below nu = -0.78, where the approximation crosses zero.</returns>
    public static double LossDb(double nu)
    {
        if (nu <= -0.78) return 0;
        var x = nu - 0.1;
        return Math.Max(0, 6.9 + 20 * Math.Log10(Math.Sqrt(x * x + 1) + x));
    }
}
