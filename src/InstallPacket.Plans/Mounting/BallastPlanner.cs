using InstallPacket.Calc.Sources;
using InstallPacket.Calc.Mounting;

namespace InstallPacket.Plans.Mounting;

/// <summary>A base held down by blocks on a flat roof.</summary>
internal sealed class BallastPlanner(Job job, CodeFamily code, Workings work, FindingList findings, HoldLedger ledger)
{
    private static readonly Constant UsualFriction = new("friction-on-the-roof", BallastBase.Friction, "project-notes", Provenance.Memory);

    /// <summary>Beyond this weight nobody speaks of blocks any more [N].</summary>
    private const double MostN = 1e5;

    private const double SteepestDeg = 5;
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
        var (top, line) = Loads(wind);
        var (pull, moment) = (top + line * length, work.Apply(MountingFormulas.FootMoment, "ballast", top, job.MastLength(), line));
        Term Of(string key, double number) => MountTerms.Hold("ballast." + key, number);
        Term force = Of("force_n", pull), lever = Of("lever_m", pull > 0 ? moment / pull : 0), side = Term.Key("mounting.ballast.side", ballast.SideM);
        var turn = work.Apply(BallastBase.OverturningFormula, "ballast", force, lever, side);
        Term friction = ballast.Friction is { } measured ? Term.Key("mounting.ballast.friction", measured) : UsualFriction;
        var slide = work.Apply(BallastBase.SlidingFormula, "ballast", force, friction);
        var share = code.Limit("weight-share").Term;
        var need = work.Apply(MountingFormulas.BallastNeed, "ballast", turn, slide, share);
        Term own = Of("own_n", weightN ?? 0), block = Term.Key("mounting.ballast.block", ballast.BlockKg);
        if (need > MostN)
        {
            ledger.Force("ballast-turn", "the base against overturning and sliding", need, MostN, "more weight than a base of blocks can have (our rule)", "derived", ballast.At, "choose a mount that is fixed to the structure, or a shorter mast");
            return null;
        }
        var needed = (int)work.Apply(BallastBase.BlocksFormula, "ballast", need, own, block).Number;
        var blocks = ballast.Blocks ?? needed;
        var total = own + blocks * ballast.BlockKg * StandardGravity.MS2;
        Check("ballast-turn", "the base against overturning", turn / share, total, ballast, needed);
        Check("ballast-slide", "the base against sliding", slide / share, total, ballast, needed);
        var pressure = work.Apply(BallastBase.RoofPressureFormula, "ballast", own, Of("blocks", blocks), block, side);
        Roof(ballast, pressure);
        return new BallastPlan(ballast.SideM, force, lever, turn, slide, own, blocks, ballast.BlockKg, total, pressure, ballast.RoofBearsPa);
    }

    private (Term Top, Term Line) Loads(WindPlan wind) => code.WeightAgainstGust
        ? (MountTerms.Wind("gust_force_n", wind.GustForceN), MountTerms.Wind("gust_line_n_per_m", wind.GustLineNPerM))
        : (MountTerms.Wind("force_n", wind.ForceN), MountTerms.Wind("line_load_n_per_m", wind.LineLoadNPerM));

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
        if (code.LimitOf("ballast-fastest-wind") is { } fastest && wind.SpeedMs > fastest.Value)
            findings.Add(Severity.Stop, "ballast-unfit", ballast.At, $"the base stands by its weight where the basic wind speed is {_print.Speed(wind.SpeedMs)}", $"{_print.Speed(fastest.Value)}: not in regions of hurricanes ({fastest.Document})", "choose a mount that is fixed to the structure");
    }
}
