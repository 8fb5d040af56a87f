using System.Numerics;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception.Itm;

/// <summary>A frequency with the ground it runs over.</summary>
/// <param name="FrequencyMHz">Frequency [MHz], f.</param>
/// <param name="NumberPerM">Wave number [1/m], k.</param>
/// <param name="CubeRoot">Cube root of the frequency in MHz.</param>
/// <param name="Impedance">Surface transfer impedance of the ground, Zg.</param>
internal readonly record struct ItmWave(double FrequencyMHz, double NumberPerM, double CubeRoot, Complex Impedance)
{
    /// <summary>The impedance of the ground.</summary>
    public static readonly Formula ImpedanceFormula = new(
        "itm-ground-impedance",
        "Surface transfer impedance of the ground",
        "Zg = sqrt(e - 1), divided by e when vertical; e = er + i 18000 sg / f",
        new("Zg", "", "impedance against free space, complex"),
        [new("er", "", "relative permittivity"), new("sg", "S/m", "conductivity"), new("f", "MHz", "frequency")],
        "ntia-itm", "ground impedance");

    public static ItmWave Of(in ItmSettings s)
    {
        var permittivity = new Complex(s.Permittivity, 18000 * s.ConductivitySm / s.FrequencyMHz);
        var impedance = Complex.Sqrt(permittivity - 1);
        if (s.Polarisation == ItmPolarisation.Vertical) impedance /= permittivity;
        // 47.7 is the model's own rounding of c / 2 pi.
        return new ItmWave(s.FrequencyMHz, s.FrequencyMHz / 47.7, Math.Cbrt(s.FrequencyMHz), impedance);
    }
}
