namespace InstallPacket.Calc.Reception.Itm;

/// <summary>A path at one frequency, worked through up to the statistics; any number of percentages can then be read for almost
/// nothing.</summary>
public readonly record struct ItmChannel
{
    private readonly ItmVerdict _inputs;
    private readonly ItmVerdict _work;
    private readonly ItmVariability _variability;
    private readonly ItmTerrain _terrain;

    private ItmChannel(in ItmPath path, in ItmSettings settings)
    {
        this = default;
        (FreeSpaceLossDb, ReferenceAttenuationDb) = (double.NaN, double.NaN);
        _inputs = ItmChecks.Inputs(path, settings);
        if (_inputs.Refusal != ItmRefusal.None) return;
        _terrain = path.Terrain;
        var wave = ItmWave.Of(settings);
        var checks = ItmChecks.AirAndGround(path, wave.Impedance);
        _work = checks with { Warnings = checks.Warnings | (_terrain.EarthRadiusM > 0 ? ItmChecks.Path(path) : ItmWarnings.None) };
        if (_work.Refusal != ItmRefusal.None) return;
        var (reference, mode) = Reference(path, wave);
        if (!double.IsFinite(reference))
        {
            _work = _work with { Refusal = ItmRefusal.Undefined };
            return;
        }
        (ReferenceAttenuationDb, Mode) = (reference, mode);
        FreeSpaceLossDb = IrregularTerrain.FreeSpaceLossDb(path.LengthM, settings.FrequencyMHz);
        _variability = new ItmVariability(path.Terrain, path.LengthM, wave, settings.Climate, settings.Variability);
    }

    /// <summary>Free-space loss [dB], NaN when refused.</summary>
    public double FreeSpaceLossDb { get; }

    /// <summary>Reference attenuation over free space [dB], NaN when refused.</summary>
    public double ReferenceAttenuationDb { get; }

    /// <summary>Which part of the model gave the reference attenuation.</summary>
    public ItmMode Mode { get; }

    /// <summary>Does the work that depends on frequency but not on percentages.</summary>
    /// <param name="path">The path.</param>
    /// <param name="settings">Frequency, ground and climate.</param>
    /// <returns>The channel; a refusal stays inside and comes with the loss.</returns>
    public static ItmChannel Of(in ItmPath path, in ItmSettings settings) => new(path, settings);

    /// <summary>The loss for shares of time, locations and situations.</summary>
    /// <param name="timePct">Share of time [%], between 0 and 100. 90 gives a greater loss than 50: the signal that is there nine tenths
    /// of the time.</param>
    /// <param name="locationPct">Share of locations [%], between 0 and 100.</param>
    /// <param name="situationPct">Share of situations, the confidence [%], between 0 and 100.</param>
    /// <returns>The answer, or a refusal.</returns>
    public ItmResult Loss(double timePct, double locationPct, double situationPct)
    {
        if (_inputs.Refusal != ItmRefusal.None) return new ItmResult(_inputs.Refusal, _inputs.Warnings);
        var percentages = ItmChecks.Percentages(timePct, locationPct, situationPct);
        if (percentages != ItmRefusal.None) return new ItmResult(percentages, _inputs.Warnings);
        var warnings = _inputs.Warnings | _work.Warnings;
        if (_work.Refusal != ItmRefusal.None) return new ItmResult(_work.Refusal, warnings) { Terrain = _terrain };
        // A channel that was never worked through.
        if (Mode == ItmMode.None) return new ItmResult(ItmRefusal.Undefined, warnings);
        var deviates = _variability.Deviates(timePct, locationPct, situationPct);
        var loss = FreeSpaceLossDb + _variability.At(ReferenceAttenuationDb, deviates).LossDb;
        if (deviates.FarTail) warnings |= ItmWarnings.FarTail;
        if (!double.IsFinite(loss)) return new ItmResult(ItmRefusal.Undefined, warnings) { Terrain = _terrain };
        return new ItmResult(ItmRefusal.None, warnings)
        {
            BasicLossDb = loss,
            FreeSpaceLossDb = FreeSpaceLossDb,
            ReferenceAttenuationDb = ReferenceAttenuationDb,
            Mode = Mode,
            Terrain = _terrain,
        };
    }

    private static (double Db, ItmMode Mode) Reference(in ItmPath path, in ItmWave wave)
    {
        var line = ItmDiffractionLine.Of(new ItmDiffraction(path, wave), path.Terrain, wave);
        // A comparison with a NaN would send the work down a branch that hides it.
        if (!double.IsFinite(line.SlopeDbPerM) || !double.IsFinite(line.StartDb)) return (double.NaN, ItmMode.None);
        return path.LengthM < path.Terrain.SmoothHorizonsM
            ? (new ItmLineOfSight(path, wave, line).At(path.LengthM), ItmMode.LineOfSight)
            : new ItmBeyondHorizon(path.Terrain, wave, line).At(path.LengthM);
    }
}
