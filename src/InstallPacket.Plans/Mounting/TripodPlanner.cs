using InstallPacket.Calc.Mounting;

namespace InstallPacket.Plans.Mounting;

/// <summary>A tripod on the roof: pull of the foot upwind. Its weight is left out, on the safe side.</summary>
internal sealed class TripodPlanner(Job job, CodeFamily code, Workings work, LoadPathLedger ledger)
{
    private const int Feet = 3;

    /// <summary>What it takes; null where it could not be checked.</summary>
    public TripodPlan? Plan { get; private set; }

    private static Given Of(string key, double number) => MountTerms.LoadPath("tripod." + key, number);

    public void Check(WindPlan wind)
    {
        var mount = job.Mounting.Mount;
        if (mount.FeetRadiusM is not { } radius)
        {
            ledger.Unknown("the fixing of the tripod", "feet-radius", mount.At, ("mount", mount.Id));
            return;
        }
        var length = job.Mounting.MastLength.Metres;
        var moment = work.Apply(MountingFormulas.FootMoment, "tripod", MountTerms.Wind("force_n", wind.ForceN), job.MastLength(),
            MountTerms.Wind("line_load_n_per_m", wind.LineLoadNPerM));
        var pull = work.Apply(MountReactions.TripodOneFormula, "foot upwind", moment, mount.Figure(MountPartKeys.FeetRadius, radius),
            MountTerms.None);
        work.Apply(MountReactions.TripodThrustFormula, "foot downwind", moment, mount.Figure(MountPartKeys.FeetRadius, radius),
            MountTerms.None);
        var each = FixingChecker.Holding(job).Sum(f => f.Count) / Feet;
        if (each == 0)
        {
            FixingChecker.TooFew(job, ledger, Feet);
            return;
        }
        var push = wind.ForceN + wind.LineLoadNPerM * length;
        Plan = new(each, Feet * each, push);
        new FixingChecker(job, code, work, ledger).Check([
            new("one foot upwind",
                work.Apply(MountReactions.BoltShareFormula, "foot upwind, pull", pull, Of("fixings", each)),
                work.Apply(MountReactions.BoltShareFormula, "feet, shear", Of("push_n", push), Of("all_fixings", Feet * each)))]);
    }
}
