using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception.Itm;

/// <summary>Loss beyond the smooth-earth line-of-sight distance: the diffraction line up to a crossing, the scatter line from
/// there.</summary>
internal readonly record struct ItmBeyondHorizon
{
    /// <summary>The choice.</summary>
    public static readonly Formula LossFormula = new(
        "itm-beyond-horizon",
        "Reference attenuation beyond the horizon",
        "Aref = max(0, Md d + Ad0) up to dx, max(0, Ms d + As0) beyond",
        new("Aref", "dB", "loss over free space"),
        [new("Md", "dB/m", "slope of diffraction"), new("Ad0", "dB", "its start"), new("Ms", "dB/m", "slope of scatter"),
            new("As0", "dB", "its start"), new("d", "m", "distance"), new("dx", "m", "crossing")],
        "ntia-itm", "diffraction and scatter ranges");

    private readonly ItmDiffractionLine _line;

    public ItmBeyondHorizon(in ItmTerrain terrain, in ItmWave wave, in ItmDiffractionLine line)
    {
        _line = line;
        var near = terrain.HorizonsM + 200e3;
        // The far distance first: its frequency gain is carried to the near one.
        Far = ItmScatter.At(terrain, wave, terrain.HorizonsM + 400e3, -1);
        Near = ItmScatter.At(terrain, wave, near, Far.GainDb);
        if (Near.LossDb >= 1000)
        {
            (SlopeDbPerM, StartDb, CrossingM) = (line.SlopeDbPerM, line.StartDb, 10e6);
        }
        else
        {
            SlopeDbPerM = (Far.LossDb - Near.LossDb) / 200e3;
            var crossing = (Near.LossDb - line.StartDb - SlopeDbPerM * near) / (line.SlopeDbPerM - SlopeDbPerM);
            CrossingM = Math.Max(Math.Max(terrain.SmoothHorizonsM, terrain.HorizonsM + 1.088 * line.ScaleM * Math.Log(wave.FrequencyMHz)),
                crossing);
            StartDb = (line.SlopeDbPerM - SlopeDbPerM) * CrossingM + line.StartDb;
        }
    }

    /// <summary>Scatter 400 km beyond the horizons.</summary>
    public ItmScatterAt Far { get; }

    /// <summary>Scatter 200 km beyond the horizons.</summary>
    public ItmScatterAt Near { get; }

    /// <summary>Ms [dB/m].</summary>
    public double SlopeDbPerM { get; }

    /// <summary>As0 [dB].</summary>
    public double StartDb { get; }

    /// <summary>dx [m].</summary>
    public double CrossingM { get; }

    /// <summary>The reference attenuation [dB] and the mode.</summary>
    public (double Db, ItmMode Mode) At(double distanceM)
    {
        // The comparison below would take a NaN for diffraction.
        if (double.IsNaN(CrossingM)) return (double.NaN, ItmMode.None);
        return distanceM > CrossingM
            ? (Math.Max(0, SlopeDbPerM * distanceM + StartDb), ItmMode.Scatter)
            : (Math.Max(0, _line.At(distanceM)), ItmMode.Diffraction);
    }
}
