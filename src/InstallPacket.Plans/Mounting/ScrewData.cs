using InstallPacket.Calc.Mounting;

namespace InstallPacket.Plans.Mounting;

/// <summary>The capacity of a screw in its place in the timber.</summary>
internal sealed class ScrewData(Job job, WorkLog log, HoldLedger ledger)
{
    /// <summary>Load duration of wind.</summary>
    private const double WindDuration = 1.6;

    private const double WetLag = 0.7;

    private const double LongestM = 0.5;

    /// <summary>A lag screw through the plate of the mount; null when a figure is missing.</summary>
    public LagResistance? Lag(Fixing f)
    {
        if (Shape(f) is not { } shape) return null;
        if (LagScrew.Find(shape.DiameterM) is not { } lag)
        {
            ledger.Unknown("the fixing " + f.Part.Name, f.Part.At, $"`{f.Part.Id}` is {UnitPrinter.Of(job).Small(shape.DiameterM)} thick, which is no standard lag screw", "take 1/4, 5/16, 3/8, 7/16 or 1/2 in");
            return null;
        }
        var (name, plate, wet) = (f.Part.Name, shape.PlateM, f.Wet ? WetLag : 1);
        var gravity = Gravity(f);
        var (thread, depth) = (lag.ThreadInTimberM(shape.LengthM, plate + f.GapM, f.Part.ThreadM), lag.PenetrationM(shape.LengthM, plate + f.GapM));
        var perMetre = log.Record(Withdrawal.LagFormula, name, Withdrawal.LagNPerM(gravity, lag.DiameterM), gravity, lag.DiameterM);
        var pull = log.Record(Withdrawal.AdjustedFormula, name, Withdrawal.AdjustedN(perMetre, thread, WindDuration, wet), perMetre, thread, WindDuration, wet);
        // Across the grain is the weaker direction; what direction the wind takes is not known.
        var plain = log.Record(YieldModes.LateralFormula, name, depth > 0 ? YieldModes.Of(lag, gravity, plate, Steel(plate), 90, 8 * lag.DiameterM, gapM: f.GapM).LeastN : 0, lag.DiameterM, gravity, plate, f.GapM, 90, 8 * lag.DiameterM);
        var end = EndShare(f, lag.DiameterM);
        var shear = log.Record(YieldModes.AdjustedFormula, name, YieldModes.AdjustedN(plain, depth, lag.DiameterM, WindDuration, wet, end), plain, depth, lag.DiameterM, WindDuration, wet, end);
        return new LagResistance(log, pull, shear);
    }

    /// <summary>A wood screw thinner than 1/4 in after the NDS; null when a figure is missing.</summary>
    public LagResistance? ThinScrew(Fixing f)
    {
        if (Shape(f) is not { } shape) return null;
        if (WoodScrew.Find(shape.DiameterM) is not { } screw)
        {
            ledger.Unknown("the fixing " + f.Part.Name, f.Part.At, $"`{f.Part.Id}` is {UnitPrinter.Of(job).Small(shape.DiameterM)} thick, which is no wood screw of {WoodScrew.All[0].Name} to {WoodScrew.All[^1].Name}", "take #8, #10, #12 or #14 (0.164, 0.190, 0.216 or 0.242 in), or lag screws");
            return null;
        }
        if (f.Part.ThreadM is not { } threadLength)
        {
            Missing(f, "thread");
            return null;
        }
        var (name, plate, wet) = (f.Part.Name, shape.PlateM, f.Wet ? WetLag : 1);
        var (gravity, depth, bearing) = (Gravity(f), screw.PenetrationM(shape.LengthM, plate + f.GapM), WoodScrew.FullDiameters * screw.DiameterM);
        // Less than the least depth is worth nothing in either direction.
        var thread = depth < WoodScrew.LeastDiameters * screw.DiameterM - 1e-9 ? 0 : screw.ThreadInTimberM(shape.LengthM, plate + f.GapM, threadLength);
        var perMetre = log.Record(Withdrawal.WoodScrewFormula, name, Withdrawal.WoodScrewNPerM(gravity, screw.DiameterM), gravity, screw.DiameterM);
        var pull = log.Record(Withdrawal.AdjustedFormula, name, Withdrawal.AdjustedN(perMetre, thread, WindDuration, wet), perMetre, thread, WindDuration, wet);
        var plain = log.Record(WoodScrew.LateralFormula, name, YieldModes.Of(screw, gravity, plate, Steel(plate), bearing, f.GapM).LeastN, screw.DiameterM, gravity, plate, f.GapM, bearing);
        var shear = log.Record(WoodScrew.AdjustedFormula, name, screw.AdjustedN(plain, depth, WindDuration, wet), plain, depth, screw.DiameterM, WindDuration, wet);
        return new LagResistance(log, pull, shear, "memory");
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
            ledger.Unknown("the fixing " + f.Part.Name, f.Part.At, $"`{f.Part.Id}` is {UnitPrinter.Of(job).Small(shape.DiameterM)} thick", "the rule holds for 6 to 12 mm: take such a screw, or the approval of this one");
            return null;
        }
        var (name, timber) = (f.Part.Name, Class(f));
        var depth = Math.Max(0, shape.LengthM - shape.PlateM - f.GapM);
        var thread = Math.Min(threadLength, depth);
        if (f.GapM > 0)
            ledger.Unknown("the shear of " + f.Part.Name, f.At, $"{UnitPrinter.Of(job).Small(f.GapM)} lie between plate and timber, and the rule for the shear of a screw knows no gap", "cut the cladding out so that the plate lies on the timber, or have an engineer look");
        if (thread <= 0) return new WoodScrewResistance(log, 0, 0);
        var (d, kmod) = (1000 * shape.DiameterM, EuropeanScrew.Modification(f.Wet));
        var strength = log.Record(EuropeanScrew.StrengthFormula, name, EuropeanScrew.StrengthPa(shape.DiameterM, thread, timber.DensityKgM3) / 1e6, d, 1000 * thread, timber.DensityKgM3);
        var axial = log.Record(EuropeanScrew.WithdrawalFormula, name, EuropeanScrew.WithdrawalN(shape.DiameterM, thread, timber.DensityKgM3), strength, d, 1000 * thread);
        var lateral = log.Record(EuropeanScrew.LateralFormula, name, EuropeanScrew.LateralN(shape.DiameterM, depth, timber.DensityKgM3), d, 1000 * depth, timber.DensityKgM3, EuropeanScrew.TensilePa / 1e6);
        return new WoodScrewResistance(log, Design(name + ", pull", axial, kmod), Design(name + ", shear", lateral, kmod));
    }

    private double Design(string subject, double characteristic, double kmod) =>
        log.Record(EuropeanScrew.DesignFormula, subject, EuropeanScrew.DesignN(characteristic, kmod), kmod, characteristic);

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
            ledger.Unknown("the fixing " + f.Part.Name, job.Mounting.Mount.At, $"the mount `{job.Mounting.Mount.Id}` does not state `plate`", "add the thickness of its plate from the maker's sheet");
            return null;
        }
        if (length > LongestM)
        {
            ledger.Unknown("the fixing " + f.Part.Name, f.Part.At, $"`{f.Part.Id}` is {UnitPrinter.Of(job).Length(length)} long", "the rules hold for screws: correct `length`");
            return null;
        }
        return (diameter, length, plate);
    }

    private (double, double, double)? Missing(Fixing f, string figure)
    {
        ledger.Unknown("the fixing " + f.Part.Name, f.Part.At, $"the fixing `{f.Part.Id}` does not state `{figure}`", $"add `{figure}` to the part");
        return null;
    }
}
