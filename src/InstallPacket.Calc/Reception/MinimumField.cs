using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>The European way from the required ratio to the field that must be planned, step by step.</summary>
public static class MinimumField
{
    // 10 log10(120 pi) + 120, which the documents print as 145.8.
    private static readonly double FluxToField = 10 * Math.Log10(120 * Math.PI) + 120;

    /// <summary>The least power at the receiver.</summary>
    public static readonly Formula InputFormula = new(
        "minimum-input",
        "Least power at the receiver's input",
        "Ps = C/N + F + 10 log10(k T0 B)",
        new("Ps", "dBW", "least power"),
            [new("C/N", "dB", "required ratio"), new("F", "dB", "noise figure"), new("B", "MHz", "noise bandwidth")],
        "itu-bt2033", "receiver noise input power and minimum receiver signal input power");

    /// <summary>The aperture of the antenna.</summary>
    public static readonly Formula ApertureFormula = new(
        "antenna-aperture",
        "Effective aperture of the antenna",
        "Aa = Gd + 10 log10(1.64 lambda^2 / (4 pi))",
        new("Aa", "dB(m^2)", "effective aperture"), [new("Gd", "dBd", "gain over a half-wave dipole"), new("lambda", "m", "wavelength")],
        "itu-bt2033", "effective antenna aperture");

    /// <summary>The least flux.</summary>
    public static readonly Formula FluxFormula = new(
        "minimum-flux",
        "Least power flux density at the antenna",
        "phi = Ps - Aa + Lf",
        new("phi", "dB(W/m^2)", "least flux density"),
            [new("Ps", "dBW", "least power"), new("Aa", "dB(m^2)", "effective aperture"), new("Lf", "dB", "loss of the feeder")],
        "itu-bt2033", "minimum power flux density");

    /// <summary>The least field.</summary>
    public static readonly Formula FieldFormula = new(
        "minimum-field",
        "Least field at the antenna",
        "Emin = phi + 120 + 10 log10(120 pi)",
        new("Emin", "dB(uV/m)", "least field"), [new("phi", "dB(W/m^2)", "least flux density")],
        "itu-bt2033", "minimum field strength; the sum of the constants is printed as 145.8");

    /// <summary>The median field to be planned.</summary>
    public static readonly Formula MedianFormula = new(
        "median-field",
        "Least median field",
        "Emed = Emin + Pmmn + Cl + Lh + Lb",
        new("Emed", "dB(uV/m)", "median over places and time"),
        [new("Emin", "dB(uV/m)", "least field"), new("Pmmn", "dB", "allowance for man-made noise"), new("Cl", "dB", "location correction"),
            new("Lh", "dB", "height loss, 0 on the roof"), new("Lb", "dB", "building loss, 0 outdoors")],
        "itu-bt2033", "minimum median equivalent field strength");

    /// <summary>The least power at the receiver.</summary>
    /// <param name="requiredCnDb">Required carrier-to-noise ratio [dB].</param>
    /// <param name="noiseFigureDb">Noise figure of the receiver [dB].</param>
    /// <param name="bandwidthMHz">Noise bandwidth [MHz], above 0; outside throws.</param>
    /// <returns>Power [dBW].</returns>
    public static double InputDbw(double requiredCnDb, double noiseFigureDb, double bandwidthMHz) =>
        requiredCnDb + ReceiverNoiseDbw(noiseFigureDb, bandwidthMHz);

    /// <summary>The noise of the receiver, referred to its input.</summary>
    /// <param name="noiseFigureDb">Noise figure of the receiver [dB].</param>
    /// <param name="bandwidthMHz">Noise bandwidth [MHz], above 0; outside throws.</param>
    /// <returns>Power [dBW].</returns>
    public static double ReceiverNoiseDbw(double noiseFigureDb, double bandwidthMHz) =>
        noiseFigureDb + ThermalNoise.Dbm(bandwidthMHz, ThermalNoise.ReferenceK) - 30;

    /// <summary>The effective aperture of the antenna.</summary>
    /// <param name="gainDbd">Gain over a half-wave dipole [dBd].</param>
    /// <param name="wavelengthM">Wavelength [m], above 0; outside throws.</param>
    /// <returns>Aperture [dB(m^2)].</returns>
    public static double ApertureDbm2(double gainDbd, double wavelengthM)
    {
        Limit.Between(wavelengthM, 0, double.PositiveInfinity, "wavelength in m");
        return gainDbd + 10 * Math.Log10(1.64 * wavelengthM * wavelengthM / (4 * Math.PI));
    }

    /// <summary>The least flux density at the antenna.</summary>
    /// <param name="inputDbw">Least power at the receiver [dBW].</param>
    /// <param name="apertureDbm2">Effective aperture [dB(m^2)].</param>
    /// <param name="feederLossDb">Loss of the feeder [dB].</param>
    /// <returns>Flux density [dB(W/m^2)].</returns>
    public static double FluxDbwm2(double inputDbw, double apertureDbm2, double feederLossDb) => inputDbw - apertureDbm2 + feederLossDb;

    /// <summary>The field of a flux density.</summary>
    /// <param name="fluxDbwm2">Flux density [dB(W/m^2)].</param>
    /// <returns>Field [dB(uV/m)].</returns>
    public static double FieldDbuVm(double fluxDbwm2) => fluxDbwm2 + FluxToField;

    /// <summary>The median field to be planned.</summary>
    /// <param name="fieldDbuVm">Least field [dB(uV/m)].</param>
    /// <param name="manMadeDb">Allowance for man-made noise [dB], see <see cref="ManMadeAllowance"/>.</param>
    /// <param name="locationDb">Location correction [dB], see <see cref="LocationVariation.CorrectionDb"/>.</param>
    /// <param name="heightDb">Height loss [dB], see <see cref="ReferenceInstallation.HeightLossDb"/>; 0 on the roof.</param>
    /// <param name="buildingDb">Building loss [dB]; 0 outdoors.</param>
    /// <returns>Field [dB(uV/m)].</returns>
    public static double MedianDbuVm(double fieldDbuVm, double manMadeDb, double locationDb, double heightDb = 0, double buildingDb = 0) =>
        fieldDbuVm + manMadeDb + locationDb + heightDb + buildingDb;
}
