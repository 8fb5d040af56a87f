using InstallPacket.Calc.Mounting;

namespace InstallPacket.Plans.Mounting;

/// <summary>A tripod on the roof: pull of the foot upwind. Its weight is left out, on the safe side.</summary>
internal sealed class TripodPlanner(Job job, WorkLog log, HoldLedger ledger)
{
    private const int Feet = 3;

    public void Check(WindPlan wind)
    {
        var mount = job.Mounting.Mount;
        if (mount.FeetRadiusM is not { } radius)
        {
            ledger.Unknown("the fixing of the tripod", mount.At, $"the mount `{mount.Id}` does not state `feet-radius`", "add the distance from its middle to a foot");
            return;
        }
        var length = job.Mounting.MastLength.Metres;
        var moment = log.Record(MountingFormulas.FootMoment, "tripod", wind.ForceN * length + wind.LineLoadNPerM * length * length / 2, wind.ForceN, length, wind.LineLoadNPerM);
        var pull = log.Record(MountReactions.TripodOneFormula, "foot upwind", MountReactions.TripodOnePullN(moment, radius, 0), moment, radius, 0);
        log.Record(MountReactions.TripodThrustFormula, "foot downwind", MountReactions.TripodThrustN(moment, radius, 0), moment, radius, 0);
        var each = FixingChecker.Holding(job).Sum(f => f.Count) / Feet;
        if (each == 0)
        {
            FixingChecker.TooFew(job, ledger, Feet);
            return;
        }
        var push = wind.ForceN + wind.LineLoadNPerM * length;
        new FixingChecker(job, log, ledger).Check([
            new("one foot upwind",
                log.Record(MountReactions.BoltShareFormula, "foot upwind, pull", pull / each, pull, each),
                log.Record(MountReactions.BoltShareFormula, "feet, shear", push / (Feet * each), push, Feet * each))]);
    }
}
