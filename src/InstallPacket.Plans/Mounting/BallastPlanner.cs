using InstallPacket.Calc.Mounting;
using InstallPacket.Jobs;

namespace InstallPacket.Plans.Mounting;

/// <summary>A base held down by blocks on a flat roof.</summary>
internal sealed class BallastPlanner(Job job, WorkLog log, FindingList findings, HoldLedger ledger)
{
    /// <summary>Share of the weight that counts in Europe (recalled).</summary>
    private const double EuropeanShare = 0.9;

    /// <summary>Beyond this weight nobody speaks of blocks any more [N].</summary>
    private const double MostN = 1e5;

    private const double SteepestDeg = 5;
    private const double FastestUsMs = 130 * 0.44704;
    private readonly UnitPrinter _print = UnitPrinter.Of(job);

    public BallastPlan? Plan(WindPlan wind, double? weightN)
    {
        if (job.Mounting.Ballast is not { } ballast)
        {
            ledger.Unknown("the ballast", job.Mounting.At, "the mount stands by its weight, and the job does not say which", "add `mounting.ballast`");
            return null;
        }
        Place(ballast, wind);
        var length = job.Mounting.MastLength.Metres;
        var (top, line) = Ultimate(wind);
        var (force, moment) = (top + line * length, log.Record(MountingFormulas.FootMoment, "ballast", top * length + line * length * length / 2, top, length, line));
        var lever = force > 0 ? moment / force : 0;
        var turn = log.Record(BallastBase.OverturningFormula, "ballast", BallastBase.OverturningN(force, lever, ballast.SideM), force, lever, ballast.SideM);
        var friction = ballast.Friction ?? BallastBase.Friction;
        var slide = log.Record(BallastBase.SlidingFormula, "ballast", BallastBase.SlidingN(force, friction), force, friction);
        var share = job.Code == "us" ? 1 : EuropeanShare;
        var need = log.Record(MountingFormulas.BallastNeed, "ballast", Math.Max(turn, slide) / share, turn, slide, share);
        var own = weightN ?? 0;
        if (need > MostN)
        {
            ledger.Force("ballast-turn", "the base against overturning and sliding", need, MostN, "more weight than a base of blocks can have (our rule)", "derived", ballast.At, "choose a mount that is fixed to the structure, or a shorter mast");
            return null;
        }
        var needed = (int)log.Record(BallastBase.BlocksFormula, "ballast", BallastBase.Blocks(need, own, ballast.BlockKg), need, own, ballast.BlockKg);
        var blocks = ballast.Blocks ?? needed;
        var total = own + blocks * ballast.BlockKg * StandardGravity.MS2;
        Check("ballast-turn", "the base against overturning", turn / share, total, ballast, needed);
        Check("ballast-slide", "the base against sliding", slide / share, total, ballast, needed);
        var pressure = log.Record(BallastBase.RoofPressureFormula, "ballast", BallastBase.RoofPressurePa(own, blocks, ballast.BlockKg, ballast.SideM), own, blocks, ballast.BlockKg, ballast.SideM);
        Roof(ballast, pressure);
        return new BallastPlan(ballast.SideM, force, lever, turn, slide, own, blocks, ballast.BlockKg, total, pressure, ballast.RoofBearsPa);
    }

    // The ultimate wind against the plain weight for `us`: the 0.6 of allowable stress stands on both sides.
    private (double Top, double Line) Ultimate(WindPlan wind) => job.Code == "us" ? (wind.GustForceN, wind.GustLineNPerM) : (wind.ForceN, wind.LineLoadNPerM);

    private void Check(string id, string what, double demand, double total, BallastSection ballast, int needed) => ledger.Force(
        id, what, demand, total, "the weight of base, mast, antenna and blocks", "derived", ballast.At, $"lay {needed} blocks on it, take a wider base, or a shorter mast");

    private void Roof(BallastSection ballast, double pressure)
    {
        if (ballast.RoofBearsPa is { } bears)
        {
            ledger.Stress("roof-load", "the roof under the base", pressure, bears, ballast.Stated ?? "stated in the job: name the paper", "stated", ballast.At, "take a wider base or spread the load, and ask whoever knows the roof");
            return;
        }
        if (pressure <= BallastBase.RoofPressureLimitPa) return;
        ledger.Unknown("the roof under the base", ballast.At, $"the base presses the roof with {_print.Pressure(pressure)}, and the job does not say what the roof bears", $"ask the owner for the figures of the roof ({_print.Pressure(BallastBase.RoofPressureLimitPa)} and more is not for guessing) and write `roof-bears`");
    }

    private void Place(BallastSection ballast, WindPlan wind)
    {
        if (job.Mounting.RoofPitchDeg is > SteepestDeg and var pitch)
            findings.Add(Severity.Stop, "ballast-unfit", ballast.At, $"the base stands by its weight on a roof of {UnitPrinter.Plain.Angle(pitch)}", $"flat roofs, to {UnitPrinter.Plain.Angle(SteepestDeg)} (our rule)", "choose a mount that is fixed to the structure");
        if (job.Code == "us" && wind.SpeedMs > FastestUsMs)
            findings.Add(Severity.Stop, "ballast-unfit", ballast.At, $"the base stands by its weight where the basic wind speed is {_print.Speed(wind.SpeedMs)}", $"{_print.Speed(FastestUsMs)}: not in regions of hurricanes (advice of a disaster agency as read; the speed is our rule)", "choose a mount that is fixed to the structure");
    }
}
