using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>What a predicted level rests on.</summary>
public enum PredictionBasis
{
    /// <summary>Curves without terrain.</summary>
    Curves,

    /// <summary>A model over the terrain profile.</summary>
    Terrain,

    /// <summary>A measurement at the place of the antenna.</summary>
    Measured,
}

/// <summary>The independent parts of the spread between prediction and truth, as standard deviations.</summary>
/// <param name="LocationDb">From place to place [dB].</param>
/// <param name="TimeDb">Over time [dB].</param>
/// <param name="ModelDb">Of the prediction [dB].</param>
/// <param name="BuildingDb">Of the loss by roof or walls [dB]; 0 for an antenna outdoors.</param>
/// <param name="InstallDb">Of the work: aim, cable, parts [dB].</param>
public readonly record struct ReceptionSpread(double LocationDb, double TimeDb, double ModelDb, double BuildingDb, double InstallDb)
{
    /// <summary>The spread over time.</summary>
    public static readonly Formula TimeFormula = new(
        "time-spread",
        "Spread of the field over time",
        "sigma = (E50 - E90) / 1.28",
        new("sigma", "dB", "standard deviation"),
            [new("E50", "dB(uV/m)", "field for half of the time"), new("E90", "dB(uV/m)", "field for nine tenths of the time")],
        "project-notes", "1.28 is the normal deviate of nine tenths", Provenance.Derived);

    // The deviate as the notes round it, so that the working can be followed by hand.
    private const double NineTenths = 1.28;

    /// <summary>All parts together [dB], see <see cref="Probability.CombinedSigmaDb"/>.</summary>
    public double TotalDb => Probability.CombinedSigmaDb([LocationDb, TimeDb, ModelDb, BuildingDb, InstallDb]);

    /// <summary>The suggested parts for a prediction. Recalled engineer's figures, but for the spread between places.</summary>
    /// <param name="basis">What the level rests on; a measurement takes the spread between places away.</param>
    /// <param name="timeDb">Over time [dB], not negative; outside throws.</param>
    /// <param name="buildingDb">Of roof or walls [dB], not negative; outside throws.</param>
    /// <param name="installDb">Of the work [dB], not negative; 1 to 2 dB are suggested; outside throws.</param>
    /// <returns>The parts.</returns>
    public static ReceptionSpread For(PredictionBasis basis, double timeDb, double buildingDb, double installDb) => new(
        basis == PredictionBasis.Measured ? 0 : LocationVariation.DigitalSigmaDb,
        Limit.AtLeast(timeDb, 0, "spread over time in dB"), ModelSigmaDb(basis),
        Limit.AtLeast(buildingDb, 0, "spread of the building in dB"), Limit.AtLeast(installDb, 0, "spread of the work in dB"));

    /// <summary>The suggested spread of a prediction itself. Recalled.</summary>
    /// <param name="basis">What the level rests on.</param>
    /// <returns>Standard deviation [dB].</returns>
    public static double ModelSigmaDb(PredictionBasis basis) => basis switch
    {
        PredictionBasis.Curves => 8,
        PredictionBasis.Terrain => 6,
        _ => 2,
    };

    /// <summary>The spread over time from two fields.</summary>
    /// <param name="half50DbuVm">Field for half of the time [dB(uV/m)].</param>
    /// <param name="most90DbuVm">Field for nine tenths of the time [dB(uV/m)], not above the other; otherwise throws.</param>
    /// <returns>Standard deviation [dB].</returns>
    public static double TimeSigmaDb(double half50DbuVm, double most90DbuVm) =>
        Limit.AtLeast(half50DbuVm - most90DbuVm, 0, "difference of the fields in dB") / NineTenths;

    /// <summary>The chance that a margin holds under this spread. Channels of one site go together: their chances must not be
    /// multiplied.</summary>
    /// <param name="marginDb">Predicted median less requirement [dB].</param>
    /// <returns>Chance, 0 to 1; throws when no part spreads.</returns>
    public double ChanceOf(double marginDb) => Probability.OfMargin(marginDb, TotalDb);
}
