using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception.P1812;

/// <summary>Loss and field over a real profile by Recommendation ITU-R P.1812, for outdoor antennas, 30 MHz to 6 GHz.</summary>
public static class PathSpecificPrediction
{
    // Below this length a blocked path should never be bridged by scatter.
    private const double ScatterSenseKm = 5;

    /// <summary>The loss.</summary>
    public static readonly Formula<PathLoss> LossFormula = new Formula(
        "p1812-loss",
        "Basic transmission loss over the profile",
        "Lb = max(Lb0p, -5 log10(10^(-0.2 Lbs) + 10^(-0.2 Lbam)) + Lloc); Lloc = -I(pL/100) sigmaL, 0 at sea",
        new("Lb", "dB", "basic transmission loss not exceeded for the share of time and of places"),
        [new("Lb0p", "dB", "free path"), new("Lbs", "dB", "scatter"), new("Lbam", "dB", "all other mechanisms"),
            new("pL", "%", "share of places"), new("sigmaL", "dB", "spread between places")],
        "itu-p1812", "equations (63), (69)")
        .By<PathLoss>((loss, _) => loss.LossDb);

    /// <summary>The field.</summary>
    public static readonly Formula FieldFormula = new(
        "p1812-field",
        "Field strength for 1 kW over the profile",
        "E = 199.36 + 20 log10(f) - Lb",
        new("E", "dB(uV/m)", "field strength for 1 kW effective radiated power on a dipole"),
            [new("f", "GHz", "frequency"), new("Lb", "dB", "basic transmission loss")],
        "itu-p1812", "equation (70)");

    /// <summary>Loss and field for one channel. Allocates nothing, so that a path may be asked for many channels.</summary>
    /// <param name="path">The path.</param>
    /// <param name="wanted">Channel, share of time and share of places.</param>
    /// <returns>Loss, field and every intermediate value.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside the method's validity.</exception>
    public static PathLoss Loss(PreparedPath path, in PredictionCase wanted)
    {
        ArgumentNullException.ThrowIfNull(path);
        wanted.Check();
        var wave = wanted.Wave;
        double f = wave.FrequencyGHz, p = wanted.TimePercent;
        var sight = LineOfSightLoss.Of(path, f, p);
        var diffraction = DiffractionLoss.Of(path, wave, p, sight);
        var ducting = DuctingLoss.Of(path.Ducting, f, p);
        var scatter = Troposcatter.LossDb(f, path.Frame.LengthKm, path.Horizons.AngularDistanceMrad, path.Climate.SeaLevelN0, p);
        var blend = BlendedLoss.Of(path, p, sight, diffraction, (ducting.BasicDb, scatter));
        var location = path.ReceiverAtSea ? 0 : -ShareQuantile.Inverse(wanted.LocationPercent / 100) * wanted.LocationSpreadDb;
        var loss = Math.Max(sight.BasicDb, blend.MedianPlaceDb + location); // (69)
        var suspect = scatter < blend.UnscatteredDb && path.Frame.LengthKm < ScatterSenseKm;
        return new(sight, diffraction, ducting, scatter, blend, location, loss, FieldDbuVm(f, loss), suspect);
    }

    /// <summary>The field of 1 kW behind a loss.</summary>
    /// <param name="frequencyGHz">Frequency [GHz].</param>
    /// <param name="lossDb">Basic transmission loss [dB].</param>
    /// <returns>Field strength [dB(uV/m)].</returns>
    public static double FieldDbuVm(double frequencyGHz, double lossDb) => 199.36 + 20 * Math.Log10(frequencyGHz) - lossDb; // (70)
}
