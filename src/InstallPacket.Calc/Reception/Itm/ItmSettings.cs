namespace InstallPacket.Calc.Reception.Itm;

/// <summary>Polarisation of the wave; the numbers are the codes of the published model.</summary>
public enum ItmPolarisation
{
    /// <summary>Horizontal.</summary>
    Horizontal = 0,

    /// <summary>Vertical.</summary>
    Vertical = 1,
}

/// <summary>Radio climate; the numbers are the codes of the published model.</summary>
public enum ItmClimate
{
    /// <summary>Equatorial.</summary>
    Equatorial = 1,

    /// <summary>Continental subtropical.</summary>
    ContinentalSubtropical = 2,

    /// <summary>Maritime subtropical.</summary>
    MaritimeSubtropical = 3,

    /// <summary>Desert.</summary>
    Desert = 4,

    /// <summary>Continental temperate.</summary>
    ContinentalTemperate = 5,

    /// <summary>Maritime temperate, over land.</summary>
    MaritimeTemperateLand = 6,

    /// <summary>Maritime temperate, over sea.</summary>
    MaritimeTemperateSea = 7,
}

/// <summary>What the terrain model must know beside the path. Nothing is checked here: the model refuses what it cannot use, in its
/// published order.</summary>
/// <param name="FrequencyMHz">Frequency [MHz], 20 to 20,000.</param>
/// <param name="Polarisation">Polarisation.</param>
/// <param name="Climate">Radio climate.</param>
/// <param name="Permittivity">Relative permittivity of the ground, at least 1.</param>
/// <param name="ConductivitySm">Conductivity of the ground [S/m], above 0.</param>
/// <param name="Variability">
/// Code of the mode of variability: 0 single message, 1 accidental, 2 mobile, 3 broadcast; 10 more without the spread between locations,
/// 20 more without
/// the spread between situations.
/// </param>
public readonly record struct ItmSettings(
    double FrequencyMHz, ItmPolarisation Polarisation, ItmClimate Climate, double Permittivity, double ConductivitySm, int Variability)
{
    /// <summary>The mode of variability for broadcasting.</summary>
    public const int Broadcast = 3;

    /// <summary>Average ground in a continental temperate climate, horizontal polarisation, broadcast mode: the inputs of television
    /// studies.</summary>
    /// <remarks>Ground and climate were read in a regulator's annex; polarisation and mode are recalled, verify.</remarks>
    /// <param name="frequencyMHz">Frequency [MHz].</param>
    /// <returns>The settings.</returns>
    public static ItmSettings Television(double frequencyMHz) =>
        new(frequencyMHz, ItmPolarisation.Horizontal, ItmClimate.ContinentalTemperate, 15, 0.005, Broadcast);
}
