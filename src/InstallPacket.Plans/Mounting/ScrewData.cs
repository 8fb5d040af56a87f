using InstallPacket.Calc.Mounting;

namespace InstallPacket.Plans.Mounting;

/// <summary>The capacity of a screw in its place in the timber.</summary>
internal sealed class ScrewData(Job job, Workings work, HoldLedger ledger)
{
    /// <summary>Load duration of wind.</summary>
    private static readonly Constant WindDuration = new("load-duration-of-wind", 1.6, "nds-chapter-12", Calc.Sources.Provenance.Read);
    private static readonly Constant WetLag = new("wet-service", 0.7, "nds-chapter-12", Calc.Sources.Provenance.Read);
    private static readonly Constant Dry = new("dry-service", 1, "nds-chapter-12", Calc.Sources.Provenance.Read);
    private static readonly Constant AcrossTheGrain = new("across-the-grain", 90, "project-notes", Calc.Sources.Provenance.Derived);
    private static readonly Constant Tensile = new("tensile-strength-of-screws", EuropeanScrew.TensilePa / 1e6, "en-1995-1-1", Calc.Sources.Provenance.Memory);


    private const double LongestM = 0.5;

    /// <summary>A lag screw through the plate of the mount; null when a figure is missing.</summary>
    public LagResistance? Lag(Fixing f)
    {
        if (Shape(f) is not { } shape) return null;
        if (LagScrew.Find(shape.DiameterM) is not { } lag)
        {
            ledger.Unknown("the fixing " + f.Part.Name, "lag-screw", f.Part.At, ("part", f.Part.Id), ("diameter_m", shape.DiameterM));
            return null;
        }
        var (name, plate, wet) = (f.Subject(job), shape.PlateM, f.Wet ? WetLag : Dry);
        var gravity = Gravity(f);
        var (thread, depth) = (lag.ThreadInTimberM(shape.LengthM, plate + f.GapM, f.Part.ThreadM), lag.PenetrationM(shape.LengthM, plate + f.GapM));
        Term g = GravityOf(f), d = Term.Table($"lag-screws.{f.Part.Id}.diameter", lag.DiameterM), theta = AcrossTheGrain;
        var (steel, gap, bearing) = (f.Part.Figure("plate", plate), f.Key("gap", f.GapM), Of(name, "bearing_m", 8 * lag.DiameterM));
        ledger.Screws.Add(new(name, thread, depth, 8 * lag.DiameterM, EndShare(f, lag.DiameterM)));
        var perMetre = work.Apply(Withdrawal.LagFormula, name, g, d);
        var pull = work.Apply(Withdrawal.AdjustedFormula, name, perMetre, Of(name, "thread_m", thread), WindDuration, wet);
        // Across the grain is the weaker direction; what direction the wind takes is not known.
        var least = depth > 0 ? YieldModes.Of(lag, gravity, plate, Steel(plate), 90, 8 * lag.DiameterM, gapM: f.GapM).LeastN : 0;
        var plain = work.Apply(YieldModes.LateralFormula, least, name, d, g, steel, gap, theta, bearing);
        var shear = work.Apply(YieldModes.AdjustedFormula, name, plain, Of(name, "depth_m", depth), d, WindDuration, wet, Of(name, "end_share", EndShare(f, lag.DiameterM)));
        return new LagResistance(work, pull, shear);
    }

    /// <summary>A wood screw thinner than 1/4 in after the NDS; null when a figure is missing.</summary>
    public LagResistance? ThinScrew(Fixing f)
    {
        if (Shape(f) is not { } shape) return null;
        if (WoodScrew.Find(shape.DiameterM) is not { } screw)
        {
            ledger.Unknown("the fixing " + f.Part.Name, "wood-screw", f.Part.At, ("part", f.Part.Id), ("diameter_m", shape.DiameterM),
                ("thinnest", WoodScrew.All[0].Name), ("thickest", WoodScrew.All[^1].Name));
            return null;
        }
        if (f.Part.ThreadM is not { } threadLength)
        {
            Missing(f, "thread");
            return null;
        }
        var (name, plate, wet) = (f.Subject(job), shape.PlateM, f.Wet ? WetLag : Dry);
        var (gravity, depth, bearing) = (Gravity(f), screw.PenetrationM(shape.LengthM, plate + f.GapM), WoodScrew.FullDiameters * screw.DiameterM);
        // Less than the least depth is worth nothing in either direction.
        var thread = depth < WoodScrew.LeastDiameters * screw.DiameterM - 1e-9 ? 0 : screw.ThreadInTimberM(shape.LengthM, plate + f.GapM, threadLength);
        Term g = GravityOf(f), d = Term.Table($"wood-screws.{screw.Name}.diameter", screw.DiameterM);
        ledger.Screws.Add(new(name, thread, depth, bearing, 1));
        var perMetre = work.Apply(Withdrawal.WoodScrewFormula, name, g, d);
        var pull = work.Apply(Withdrawal.AdjustedFormula, name, perMetre, Of(name, "thread_m", thread), WindDuration, wet);
        var plain = work.Apply(WoodScrew.LateralFormula, YieldModes.Of(screw, gravity, plate, Steel(plate), bearing, f.GapM), name,
            d, g, f.Part.Figure("plate", plate), f.Key("gap", f.GapM), Of(name, "bearing_m", bearing));
        var shear = work.Apply(WoodScrew.AdjustedFormula, screw, name, plain, Of(name, "depth_m", depth), d, WindDuration, wet);
        return new LagResistance(work, pull, shear, "memory");
    }

    /// <summary>A wood screw after EN 1995-1-1; null when a figure is missing.</summary>
    public WoodScrewResistance? European(Fixing f)
    {
        if (Shape(f) is not { } shape) return null;
        if (f.Part.ThreadM is not { } threadLength)
        {
            Missing(f, "thread");
            return null;
        }
        if (shape.DiameterM is < 0.006 or > 0.012)
        {
            ledger.Unknown("the fixing " + f.Part.Name, "screw-size", f.Part.At, ("part", f.Part.Id), ("diameter_m", shape.DiameterM));
            return null;
        }
        var (name, timber) = (f.Subject(job), Class(f));
        var depth = Math.Max(0, shape.LengthM - shape.PlateM - f.GapM);
        var thread = Math.Min(threadLength, depth);
        if (f.GapM > 0)
            ledger.Unknown("the shear of " + f.Part.Name, "gap", f.At, ("gap_m", f.GapM));
        if (thread <= 0) return new WoodScrewResistance(work, MountTerms.None, MountTerms.None);
        Term d = f.Part.Figure("diameter", shape.DiameterM).In(1000), kmod = Term.Table(f.Wet ? "kmod.wet" : "kmod.dry", EuropeanScrew.Modification(f.Wet));
        ledger.Screws.Add(new(name, thread, depth, depth, 1));
        Term length = Of(name, "thread_m", thread).In(1000), density = Term.Table($"timber-classes.{timber.Name}.density", timber.DensityKgM3);
        var strength = work.Apply(EuropeanScrew.StrengthFormula, name, d, length, density);
        var axial = work.Apply(EuropeanScrew.WithdrawalFormula, name, strength, d, length);
        var lateral = work.Apply(EuropeanScrew.LateralFormula, name, d, Of(name, "depth_m", depth).In(1000), density, Tensile);
        return new WoodScrewResistance(work, Design(name + ", pull", axial, kmod), Design(name + ", shear", lateral, kmod));
    }

    private Row Design(string subject, Term characteristic, Term kmod) => work.Apply(EuropeanScrew.DesignFormula, subject, kmod, characteristic);

    private static Given Of(string name, string key, double number) => MountTerms.Hold($"screws[{name}].{key}", number);

    /// <summary>Specific gravity of the timber; the lightest where nobody named it.</summary>
    public static Term GravityOf(Fixing f) => Term.Table($"wood-specific-gravity.{f.Timber?.Value ?? SpecificGravity.Unknown}", Gravity(f));

    private static double Gravity(Fixing f) => (SpecificGravity.Find(f.Timber?.Value ?? "") ?? SpecificGravity.Find(SpecificGravity.Unknown)!).Gravity;

    private static TimberClass Class(Fixing f) => TimberClass.Find(f.Timber?.Value ?? "") ?? TimberClass.All[0];

    private static double Steel(double plateM) => plateM < 0.25 * 0.0254 ? YieldModes.SheetSteelPa : YieldModes.PlateSteelPa;

    private static double EndShare(Fixing f, double diameterM) => f.EndM is { } end ? Math.Clamp(end.Value / (7 * diameterM), 0, 1) : 1;

    private (double DiameterM, double LengthM, double PlateM)? Shape(Fixing f)
    {
        if (f.Part.DiameterM is not { } diameter) return Missing(f, "diameter");
        if (f.Part.LengthM is not { } length) return Missing(f, "length");
        if (job.Mounting.Mount.PlateM is not { } plate)
        {
            ledger.Unknown("the fixing " + f.Part.Name, "plate", job.Mounting.Mount.At, ("mount", job.Mounting.Mount.Id));
            return null;
        }
        if (length > LongestM)
        {
            ledger.Unknown("the fixing " + f.Part.Name, "long", f.Part.At, ("part", f.Part.Id), ("length_m", length));
            return null;
        }
        return (diameter, length, plate);
    }

    private (double, double, double)? Missing(Fixing f, string figure)
    {
        ledger.Unknown("the fixing " + f.Part.Name, "figure", f.Part.At, ("part", f.Part.Id), ("figure", figure));
        return null;
    }
}
