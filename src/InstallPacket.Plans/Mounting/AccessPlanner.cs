using InstallPacket.Calc.Mounting;

namespace InstallPacket.Plans.Mounting;

/// <summary>The ladder, and what keeps people from falling.</summary>
internal sealed class AccessPlanner(Job job, CodeFamily code, Workings work, FindingList findings)
{
    private readonly MountingSection _mounting = job.Mounting;

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
        if (_mounting.Access != Access.LadderAndRoof
            || _mounting.FallProtection?.Value is FallProtection.Edge or FallProtection.Harness or FallProtection.Platform) return;
        var from = code.LimitOf("fall-protection");
        if (from is not null && _mounting.WorkHeight.Metres < from.Value) return;
        var severity = _mounting.FallProtection is null ? Severity.Caution : Severity.Stop;
        findings.Add(severity, "fall-unprotected", _mounting.FallProtection?.At ?? _mounting.At, ("height_m", _mounting.WorkHeight.Metres),
            ("known", _mounting.FallProtection is not null), ("from_m", from?.Value),
            ("rule", from?.Source()));
    }

    private int? Size(Term railsM)
    {
        if (!code.ExtensionLadders) return null;
        var size = LadderSet.ExtensionSizeFt(railsM / 0.3048);
        if (size is not null) work.Apply(LadderSet.ExtensionSizeFormula, "ladder", railsM.In(1 / 0.3048));
        else
            findings.Add(Severity.Stop, "ladder-too-short", _mounting.At, ("rail_m", railsM.Number));
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
        findings.Add(Severity.Stop, "ladder-overloaded", load.At, ("load_kg", load.Value), ("capacity_kg", strongest.CapacityKg),
            ("rating", strongest.Rating),
            ("rule", RuleValues.Of(strongest.Document, strongest.Edition, strongest.Provenance)));
        return "";
    }
}
