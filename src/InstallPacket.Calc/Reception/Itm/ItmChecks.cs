using System.Numerics;

namespace InstallPacket.Calc.Reception.Itm;

/// <summary>What a stage of checks found; the first refusal ends the work and keeps the warnings found before it.</summary>
internal readonly record struct ItmVerdict(ItmWarnings Warnings, ItmRefusal Refusal);

/// <summary>The checks of the published model, in its order. Written so that a NaN fails.</summary>
internal static class ItmChecks
{
    public static bool HasTerrain(in ItmPath path) =>
        Within(path.TxHeightM, 0.5, 3000) && Within(path.RxHeightM, 0.5, 3000)
        && (path.Air.AtGround ? Within(path.Air.Refractivity, 150, 400) : Within(path.Air.Refractivity, 250, 400));

    /// <summary>Before any work.</summary>
    public static ItmVerdict Inputs(in ItmPath path, in ItmSettings s)
    {
        var warnings = Caution(ItmWarnings.TxHeight, path.TxHeightM, 1, 1000);
        if (!Within(path.TxHeightM, 0.5, 3000)) return new(warnings, ItmRefusal.TxHeight);
        warnings |= Caution(ItmWarnings.RxHeight, path.RxHeightM, 1, 1000);
        if (!Within(path.RxHeightM, 0.5, 3000)) return new(warnings, ItmRefusal.RxHeight);
        if (s.Climate is < ItmClimate.Equatorial or > ItmClimate.MaritimeTemperateSea) return new(warnings, ItmRefusal.Climate);
        if (!path.Air.AtGround && !Within(path.Air.Refractivity, 250, 400)) return new(warnings, ItmRefusal.Refractivity);
        warnings |= Caution(ItmWarnings.Frequency, s.FrequencyMHz, 40, 10000);
        if (!Within(s.FrequencyMHz, 20, 20000)) return new(warnings, ItmRefusal.Frequency);
        return new(warnings, Ground(s));
    }

    /// <summary>The percentages, after the inputs.</summary>
    public static ItmRefusal Percentages(double timePct, double locationPct, double situationPct)
    {
        if (!Share(situationPct)) return ItmRefusal.Situation;
        if (!Share(timePct)) return ItmRefusal.Time;
        return Share(locationPct) ? ItmRefusal.None : ItmRefusal.Location;
    }

    /// <summary>Cautions about the path, after the terrain work.</summary>
    public static ItmWarnings Path(in ItmPath path)
    {
        var d = path.LengthM;
        ItmEnd tx = path.Terrain.Tx, rx = path.Terrain.Rx;
        return If(ItmWarnings.LongPath, d > 1000e3) | If(ItmWarnings.VeryLongPath, d > 2000e3) | If(ItmWarnings.ShortPath, d < 1000)
            | If(ItmWarnings.SteepPath, d < Math.Abs(tx.EffectiveHeightM - rx.EffectiveHeightM) / 0.2)
            | End(tx, ItmWarnings.TxHorizonAngle, ItmWarnings.TxHorizonNear, ItmWarnings.TxHorizonFar)
            | End(rx, ItmWarnings.RxHorizonAngle, ItmWarnings.RxHorizonNear, ItmWarnings.RxHorizonFar);
    }

    /// <summary>Air and ground, after the terrain work.</summary>
    public static ItmVerdict AirAndGround(in ItmPath path, Complex impedance)
    {
        // A fixed refractivity out of range has no terrain, so look at what was given.
        var ns = path.Air.AtGround ? path.Air.Refractivity : path.Terrain.SurfaceRefractivity;
        if (!(ns >= 150)) return new(ItmWarnings.None, ItmRefusal.SurfaceRefractivityLow);
        if (ns > 400) return new(ItmWarnings.None, ItmRefusal.SurfaceRefractivityHigh);
        var warnings = If(ItmWarnings.Refractivity, ns < 250);
        // The published limit is the curvature 75e-9 per metre.
        if (!Within(path.Terrain.EarthRadiusM, 4000e3, 1 / 75e-9)) return new(warnings, ItmRefusal.EarthRadius);
        return new(warnings, impedance.Real > Math.Abs(impedance.Imaginary) ? ItmRefusal.None : ItmRefusal.GroundImpedance);
    }

    private static ItmRefusal Ground(in ItmSettings s)
    {
        if (s.Polarisation is not (ItmPolarisation.Horizontal or ItmPolarisation.Vertical)) return ItmRefusal.Polarisation;
        if (!(s.Permittivity >= 1)) return ItmRefusal.Permittivity;
        if (!(s.ConductivitySm > 0)) return ItmRefusal.Conductivity;
        return s.Variability is >= 0 and <= 33 && s.Variability % 10 <= 3 ? ItmRefusal.None : ItmRefusal.Variability;
    }

    private static ItmWarnings End(in ItmEnd end, ItmWarnings angle, ItmWarnings near, ItmWarnings far) =>
        If(angle, Math.Abs(end.HorizonRad) > 0.2)
        | If(near, end.HorizonM < 0.1 * end.SmoothHorizonM)
        | If(far, end.HorizonM > 3 * end.SmoothHorizonM);

    private static ItmWarnings Caution(ItmWarnings warning, double value, double low, double high) =>
        If(warning, !Within(value, low, high));

    private static ItmWarnings If(ItmWarnings warning, bool holds) => holds ? warning : ItmWarnings.None;

    private static bool Within(double value, double low, double high) => value >= low && value <= high;

    private static bool Share(double percent) => percent > 0 && percent < 100;
}
