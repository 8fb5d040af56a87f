using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception.Itm;

/// <summary>Standard normal deviates of the shares asked for, after the mode of variability has tied some together.</summary>
internal readonly record struct ItmDeviates(double Time, double Location, double Situation)
{
    /// <summary>True where the statistics are not known.</summary>
    public bool FarTail => Math.Abs(Time) > 3.10 || Math.Abs(Location) > 3.10 || Math.Abs(Situation) > 3.10;
}

/// <summary>The reference attenuation with its spread, and what it was made of.</summary>
internal readonly record struct ItmSpread(double TimeSigmaDb, double TimeDb, double LocationDb, double ReliabilityDb, double ConfidenceDb,
    double UnlimitedDb)
{
    /// <summary>Attenuation [dB] after the soft floor: below free space is possible, but not far.</summary>
    public double LossDb => UnlimitedDb < 0 ? UnlimitedDb * (29 - UnlimitedDb) / (29 - 10 * UnlimitedDb) : UnlimitedDb;
}

/// <summary>How the loss varies with time, location and situation.</summary>
internal readonly record struct ItmVariability
{
    /// <summary>The quantile.</summary>
    public static readonly Formula QuantileFormula = new(
        "itm-quantile",
        "Standard normal deviate exceeded with a given chance",
        "z = t - (2.515516 + 0.802853 t + 0.010328 t^2) / (1 + 1.432788 t + 0.189269 t^2 + 0.001308 t^3), t = sqrt(-2 ln q), mirrored above one half",
        new("z", "", "deviate"), [new("q", "", "chance, 0 to 1")],
        "ntia-itm", "inverse of the complementary normal distribution (cited there: Abramowitz and Stegun 26.2.23)");

    /// <summary>The attenuation for given shares.</summary>
    public static readonly Formula AttenuationFormula = new(
        "itm-variability",
        "Attenuation for shares of time, location and situation",
        "A = Aref - Vmed - YR - YS; where A < 0: A (29 - A) / (29 - 10 A)",
        new("A", "dB", "loss over free space"),
        [new("Aref", "dB", "reference attenuation"), new("Vmed", "dB", "climate median"), new("YR", "dB", "time and location"),
            new("YS", "dB", "situation")],
        "ntia-itm", "statistics (cited there: The Algorithm, 5.3 to 5.11)");

    private readonly ItmClimateRow _row;
    private readonly int _base;

    public ItmVariability(in ItmTerrain terrain, double lengthM, in ItmWave wave, ItmClimate climate, int variability)
    {
        _row = ItmClimateTable.Of(climate);
        _base = variability % 10;
        var k = wave.NumberPerM;
        ExtentM = Math.Sqrt(18e6 * terrain.Tx.EffectiveHeightM) + Math.Sqrt(18e6 * terrain.Rx.EffectiveHeightM) + Math.Cbrt(575.7e12 / k);
        EffectiveM = lengthM < ExtentM ? 130e3 * lengthM / ExtentM : 130e3 + lengthM - ExtentM;
        MedianDb = _row.Median.At(EffectiveM);
        var tens = variability / 10;
        SituationSigmaDb = tens is 2 or 3 ? 0 : 5 + 3 * Math.Exp(-EffectiveM / 100e3);
        LocationSigmaDb = tens is 1 or 3 ? 0 : LocationSigma(k * ItmRoughness.At(terrain.DeltaHM, lengthM));
        var logWave = Math.Log(0.133 * k);
        FactorBelow = _row.FactorBelow.At(logWave);
        FactorAbove = _row.FactorAbove.At(logWave);
        BelowSigmaDb = FactorBelow * _row.Below.At(EffectiveM);
        AboveSigmaDb = FactorAbove * _row.Above.At(EffectiveM);
    }

    /// <summary>d_ex [m].</summary>
    public double ExtentM { get; }

    /// <summary>d_e [m].</summary>
    public double EffectiveM { get; }

    /// <summary>V_med [dB].</summary>
    public double MedianDb { get; }

    /// <summary>sigma_S [dB].</summary>
    public double SituationSigmaDb { get; }

    /// <summary>sigma_L [dB].</summary>
    public double LocationSigmaDb { get; }

    /// <summary>g-.</summary>
    public double FactorBelow { get; }

    /// <summary>g+.</summary>
    public double FactorAbove { get; }

    /// <summary>sT- [dB].</summary>
    public double BelowSigmaDb { get; }

    /// <summary>sT+ [dB].</summary>
    public double AboveSigmaDb { get; }

    /// <summary>sTD [dB].</summary>
    public double DuctSigmaDb => _row.DuctFactor * AboveSigmaDb;

    /// <summary>Deviate that a share exceeds; good to 4.5e-4, and to be kept so: a better one would change the model's losses.</summary>
    public static double Quantile(double share)
    {
        var t = Math.Sqrt(-2 * Math.Log(share > 0.5 ? 1 - share : share));
        var z = t - ((0.010328 * t + 0.802853) * t + 2.515516) / (((0.001308 * t + 0.189269) * t + 1.432788) * t + 1);
        return share > 0.5 ? -z : z;
    }

    /// <summary>Deviates for percentages, as the mode of variability ties them.</summary>
    public ItmDeviates Deviates(double timePct, double locationPct, double situationPct)
    {
        double time = Quantile(timePct / 100), location = Quantile(locationPct / 100), situation = Quantile(situationPct / 100);
        return _base switch
        {
            0 => new(situation, situation, situation),
            1 => new(time, situation, situation),
            2 => new(time, time, situation),
            _ => new(time, location, situation),
        };
    }

    /// <summary>The attenuation for given deviates.</summary>
    public ItmSpread At(double referenceDb, in ItmDeviates z)
    {
        double timeSigma = TimeSigma(z.Time), locationSigma = LocationSigmaDb;
        double time = timeSigma * z.Time, location = locationSigma * z.Location, zs = z.Situation;
        var variance = SituationSigmaDb * SituationSigmaDb + time * time / (7.8 + zs * zs) + location * location / (24 + zs * zs);
        double both = timeSigma * timeSigma + locationSigma * locationSigma;
        var (reliability, confidence) = _base switch
        {
            0 => (0, Math.Sqrt(both + variance)),
            1 => (time, Math.Sqrt(locationSigma * locationSigma + variance)),
            2 => (z.Time * Math.Sqrt(both), Math.Sqrt(variance)),
            _ => (time + location, Math.Sqrt(variance)),
        };
        confidence *= zs;
        return new ItmSpread(timeSigma, time, location, reliability, confidence, referenceDb - MedianDb - reliability - confidence);
    }

    private static double LocationSigma(double roughInWaves) => 10 * roughInWaves / (roughInWaves + 13);

    private double TimeSigma(double z)
    {
        if (z < 0) return BelowSigmaDb;
        // Beyond the bend the distribution turns: ducts in the best few per cent of the time.
        return z <= _row.DuctDeviate ? AboveSigmaDb : DuctSigmaDb + (AboveSigmaDb - DuctSigmaDb) * _row.DuctDeviate / z;
    }
}
