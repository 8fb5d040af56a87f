using InstallPacket.Calc.Mounting;
using InstallPacket.Jobs;

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
        if (_mounting.Access is not ("ladder" or "ladder-and-roof") || height <= 0) return null;
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
        if (_mounting.Access != "ladder-and-roof" || _mounting.FallProtection?.Value is "edge" or "harness" or "platform") return;
        if (code.FallProtectionM is { } from && _mounting.WorkHeight.Metres < from) return;
        var limit = code.FallProtectionM is { } m ? $"from {_print.Length(m)} an unprotected edge needs a guard, a net or a harness (29 CFR 1926.501(b)(1))" : "national law on work at height asks for protection, in some countries at any height (ask locally)";
        var severity = _mounting.FallProtection is null ? Severity.Caution : Severity.Stop;
        findings.Add(severity, "fall-unprotected", _mounting.FallProtection?.At ?? _mounting.At,
            $"somebody works on the roof at {_print.Length(_mounting.WorkHeight.Metres)} and {(_mounting.FallProtection is null ? "the job does not say what keeps that person from falling" : "nothing keeps that person from falling")}", limit,
            "plan edge protection, a harness on a rated anchor fitted by someone trained, or a platform, and write `mounting.fall-protection`");
    }

    private int? Size(Term railsM)
    {
        if (job.Code != "us") return null;
        var size = LadderSet.ExtensionSizeFt(railsM / 0.3048);
        if (size is not null) work.Apply(LadderSet.ExtensionSizeFormula, "ladder", railsM.In(1 / 0.3048));
        else
            findings.Add(Severity.Stop, "ladder-too-short", _mounting.At, $"the rails of the ladder must be {_print.AtLeast(railsM)} long", "60 ft is the longest extension ladder (29 CFR 1926.1053, sizes recalled)", "work from a platform or a lift");
        return size;
    }

    private string Rating()
    {
        if (_mounting.LadderLoadKg is not { } load) return "";
        if (LadderRating.For(load.Value, job.Code == "us") is { } rating)
        {
            work.Apply(LadderRating.RatingFormula, job.Code == "us", "ladder", Term.Key("mounting.ladder-load", load.Value));
            return rating.Word;
        }
        findings.Add(Severity.Stop, "ladder-overloaded", load.At, $"person, tools and load come to {_print.Mass(load.Value)}", job.Code == "us" ? $"{_print.Mass(LadderRating.Us[^1].CapacityKg)}, rating IAA" : $"{_print.Mass(LadderRating.Europe.CapacityKg)} (EN 131, recalled)", "haul the load up on a line, or work from a platform");
        return "";
    }
}
