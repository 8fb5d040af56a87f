namespace InstallPacket.Calc.Reception.P1812;

/// <summary>The wave that a prediction is for.</summary>
/// <param name="FrequencyGHz">Frequency [GHz].</param>
/// <param name="Polarisation">Plane of the electric field.</param>
internal readonly record struct RadioWave(double FrequencyGHz, WavePolarisation Polarisation)
{
    /// <summary>Wavelength [m]. The rounded speed of light is the method's own; the exact one moves results by up to 3.5e-4 dB.</summary>
    public double LengthM => 0.2998 / FrequencyGHz;
}
