using InstallPacket.Calc.Mounting;

namespace InstallPacket.Plans.Mounting;

/// <summary>The ladder, and what keeps people from falling.</summary>
internal sealed class AccessPlanner(Job job, CodeFamily code, Workings work, FindingList findings)
{
    private readonly MountingSection _mounting = job.Mounting;
    private readonly UnitPrinter _print = UnitPrinter.Of(job);

    /// <summary>How the ladder stands; null when none is used.</summary>
    public LadderSetPlan? Ladder()
    {
        var height = _mounting.WorkHeight.Metres;
        if (_mounting.Access is not (Access.Ladder or Access.LadderAndRoof) || height <= 0) return null;
        var working = work.Apply(LadderSet.WorkingLengthFormula, "ladder", job.WorkHeight());
        var rails = work.Apply(LadderSet.RailLengthFormula, "ladder", job.WorkHeight());
        return new LadderSetPlan(working, work.Apply(LadderSet.FootDistanceFormula, "ladder", working), rails)
        {
            SizeFt = Size(rails), LoadKg = _mounting.LadderLoadKg?.Value, Rating = Rating(),
        };
    }

    /// <summary>Says what is missing against a fall from the roof.</summary>
    public void CheckFall()
    {
        if (_mounting.Access != Access.LadderAndRoof || _mounting.FallProtection?.Value is FallProtection.Edge or FallProtection.Harness or FallProtection.Platform) return;
        var from = code.LimitOf("fall-protection");
        if (from is not null && _mounting.WorkHeight.Metres < from.Value) return;
        var limit = from is not null ? $"from {_print.Length(from.Value)} an unprotected edge needs a guard, a net or a harness ({from.Document})" : "national law on work at height asks for protection, in some countries at any height (ask locally)";
        var severity = _mounting.FallProtection is null ? Severity.Caution : Severity.Stop;
        findings.Add(severity, "fall-unprotected", _mounting.FallProtection?.At ?? _mounting.At,
            $"somebody works on the roof at {_print.Length(_mounting.WorkHeight.Metres)} and {(_mounting.FallProtection is null ? "the job does not say what keeps that person from falling" : "nothing keeps that person from falling")}", limit,
            "plan edge protection, a harness on a rated anchor fitted by someone trained, or a platform, and write `mounting.fall-protection`");
    }

    private int? Size(Term railsM)
    {
        if (!code.ExtensionLadders) return null;
        var size = LadderSet.ExtensionSizeFt(railsM / 0.3048);
        if (size is not null) work.Apply(LadderSet.ExtensionSizeFormula, "ladder", railsM.In(1 / 0.3048));
        else
            findings.Add(Severity.Stop, "ladder-too-short", _mounting.At, $"the rails of the ladder must be {_print.AtLeast(railsM)} long", "60 ft is the longest extension ladder (29 CFR 1926.1053, sizes recalled)", "work from a platform or a lift");
        return size;
    }

    private string Rating()
    {
        if (_mounting.LadderLoadKg is not { } load) return "";
        double[] capacities = [.. code.Ladders.Select(l => l.CapacityKg)];
        if (code.Ladders.FirstOrDefault(l => l.CapacityKg >= load.Value) is { } rating)
        {
            work.Apply(LadderRating.RatingFormula, capacities, "ladder", Term.Key("mounting.ladder-load", load.Value));
            return rating.Rating;
        }
        var strongest = code.Ladders[^1];
        findings.Add(Severity.Stop, "ladder-overloaded", load.At, $"person, tools and load come to {_print.Mass(load.Value)}", $"{_print.Mass(strongest.CapacityKg)}, rating {strongest.Rating} ({strongest.Document}, {strongest.Edition})", "haul the load up on a line, or work from a platform");
        return "";
    }
}
