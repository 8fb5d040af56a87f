namespace InstallPacket.Calc.Reception.P1812;

/// <summary>What is asked of a path: a channel, a share of time and a share of places.</summary>
/// <param name="FrequencyMHz">Frequency [MHz], 30 to 6000.</param>
/// <param name="TimePercent">Share of an average year for which the loss is not exceeded, p [%], 1 to 50; small for interference, 50 for
/// the median.</param>
/// <param name="Polarisation">Plane of the electric field.</param>
/// <param name="LocationPercent">Share of places for which the loss is not exceeded, pL [%], 1 to 99; 50 for the median place.</param>
/// <param name="LocationSpreadDb">Standard deviation between places [dB], not negative; 0 for one house with its own profile.</param>
public readonly record struct PredictionCase(
    double FrequencyMHz, double TimePercent, WavePolarisation Polarisation = WavePolarisation.Horizontal, double LocationPercent = 50,
        double LocationSpreadDb = 0)
{
    /// <summary>Lowest frequency [MHz].</summary>
    public const double LowestMHz = 30;

    /// <summary>Highest frequency [MHz].</summary>
    public const double HighestMHz = 6000;

    internal RadioWave Wave => new(FrequencyMHz / 1000, Polarisation);

    /// <summary>Throws unless all values lie within the limits.</summary>
    internal void Check()
    {
        Limit.Within(FrequencyMHz, LowestMHz, HighestMHz, "frequency in MHz");
        Limit.Within(TimePercent, 1, 50, "share of time in %");
        Limit.Within(LocationPercent, 1, 99, "share of places in %");
        Limit.AtLeast(LocationSpreadDb, 0, "spread between places in dB");
        if (!Enum.IsDefined(Polarisation)) throw new ArgumentOutOfRangeException(nameof(Polarisation), Polarisation,
            "A wave is polarised horizontally or vertically.");
    }
}
