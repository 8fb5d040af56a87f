using InstallPacket.Calc.Mounting;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans.Codes.Us;

/// <summary>The capacity of one lag screw or thin wood screw in its place, after the NDS.</summary>
internal sealed class NdsCapacity(ScrewCase screw, LoadPathLedger ledger)
{
    /// <summary>Load duration of wind.</summary>
    private static readonly Constant WindDuration = new("load-duration-of-wind", 1.6, "nds-chapter-12", Provenance.Read);
    private static readonly Constant WetLag = new("wet-service", 0.7, "nds-chapter-12", Provenance.Read);
    private static readonly Constant Dry = new("dry-service", 1, "nds-chapter-12", Provenance.Read);
    private static readonly Constant AcrossTheGrain = new("across-the-grain", 90, "project-notes", Provenance.Derived);

    private readonly Workings _work = screw.Work;
    private readonly Fixing _fixing = screw.Fixing;

    /// <summary>Specific gravity of the timber; the lightest where nobody named it.</summary>
    public static Term GravityOf(Fixing f) =>
        Term.Table(NumberTables.WoodSpecificGravity, f.Timber?.Value ?? SpecificGravity.Unknown, Gravity(f));

    /// <summary>A lag screw through the plate of the mount; null when a figure is missing.</summary>
    public LagResistance? Lag()
    {
        var f = _fixing;
        if (ScrewShape.Of(screw, ledger) is not { } shape) return null;
        if (LagScrew.Find(shape.DiameterM) is not { } lag)
        {
            ledger.Unknown("the fixing " + f.Part.Name, "lag-screw", f.Part.At, ("part", f.Part.Id), ("diameter_m", shape.DiameterM));
            return null;
        }
        var (name, plate, wet) = (screw.Subject, shape.PlateM, f.Wet ? WetLag : Dry);
        var gravity = Gravity(f);
        var (thread, depth) = (lag.ThreadInTimberM(shape.LengthM, plate + f.GapM, f.Part.ThreadM),
            lag.PenetrationM(shape.LengthM, plate + f.GapM));
        Term g = GravityOf(f), d = Term.Table(NumberTables.LagScrews, $"{f.Part.Id}.diameter", lag.DiameterM), theta = AcrossTheGrain;
        var (steel, gap, bearing) = (screw.Job.Mounting.Mount.Figure(MountPartKeys.Plate, plate), f.Key("gap", f.GapM),
            ScrewShape.Of(name, "bearing_m", 8 * lag.DiameterM));
        var end = EndShare(f, lag.DiameterM);
        ledger.Screws.Add(new(name, thread, depth, 8 * lag.DiameterM, end));
        var perMetre = _work.Apply(Withdrawal.LagFormula, name, g, d);
        var pull = _work.Apply(Withdrawal.AdjustedFormula, name, perMetre, ScrewShape.Of(name, "thread_m", thread), WindDuration, wet);
        // Across the grain is the weaker direction; what direction the wind takes is not known.
        var least = depth > 0 ? YieldModes.Of(lag, gravity, plate, Steel(plate), 90, 8 * lag.DiameterM, gapM: f.GapM).LeastN : 0;
        var plain = _work.Apply(YieldModes.LateralFormula, least, name, d, g, steel, gap, theta, bearing);
        var shear = _work.Apply(YieldModes.AdjustedFormula, name, plain, ScrewShape.Of(name, "depth_m", depth), d, WindDuration, wet,
            ScrewShape.Of(name, "end_share", end));
        return new LagResistance(_work, pull, shear);
    }

    /// <summary>A wood screw thinner than 1/4 in; null when a figure is missing.</summary>
    public LagResistance? ThinScrew()
    {
        var f = _fixing;
        if (ScrewShape.Of(screw, ledger) is not { } shape) return null;
        if (WoodScrew.Find(shape.DiameterM) is not { } wood)
        {
            ledger.Unknown("the fixing " + f.Part.Name, "wood-screw", f.Part.At, ("part", f.Part.Id), ("diameter_m", shape.DiameterM),
                ("thinnest", WoodScrew.All[0].Name), ("thickest", WoodScrew.All[^1].Name));
            return null;
        }
        if (f.Part.ThreadM is not { } threadLength)
        {
            ScrewShape.Missing(f, ledger, "thread");
            return null;
        }
        var (name, plate, wet) = (screw.Subject, shape.PlateM, f.Wet ? WetLag : Dry);
        var (gravity, depth, bearing) = (Gravity(f), wood.PenetrationM(shape.LengthM, plate + f.GapM),
            WoodScrew.FullDiameters * wood.DiameterM);
        // Less than the least depth is worth nothing in either direction.
        var thread = depth < WoodScrew.LeastDiameters * wood.DiameterM - 1e-9 ? 0
            : wood.ThreadInTimberM(shape.LengthM, plate + f.GapM, threadLength);
        Term g = GravityOf(f), d = Term.Table(NumberTables.WoodScrews, $"{wood.Name}.diameter", wood.DiameterM);
        ledger.Screws.Add(new(name, thread, depth, bearing, 1));
        var perMetre = _work.Apply(Withdrawal.WoodScrewFormula, name, g, d);
        var pull = _work.Apply(Withdrawal.AdjustedFormula, name, perMetre, ScrewShape.Of(name, "thread_m", thread), WindDuration, wet);
        var plain = _work.Apply(WoodScrew.LateralFormula, YieldModes.Of(wood, gravity, plate, Steel(plate), bearing, f.GapM), name,
            d, g, screw.Job.Mounting.Mount.Figure(MountPartKeys.Plate, plate), f.Key("gap", f.GapM),
                ScrewShape.Of(name, "bearing_m", bearing));
        var shear = _work.Apply(WoodScrew.AdjustedFormula, wood, name, plain, ScrewShape.Of(name, "depth_m", depth), d, WindDuration, wet);
        return new LagResistance(_work, pull, shear, "memory");
    }

    private static double Gravity(Fixing f) =>
        (SpecificGravity.Find(f.Timber?.Value ?? "") ?? SpecificGravity.Find(SpecificGravity.Unknown)!).Gravity;

    private static double Steel(double plateM) => plateM < 0.25 * 0.0254 ? YieldModes.SheetSteelPa : YieldModes.PlateSteelPa;

    private static double EndShare(Fixing f, double diameterM) => f.EndM is { } end ? Math.Clamp(end.Value / (7 * diameterM), 0, 1) : 1;
}
