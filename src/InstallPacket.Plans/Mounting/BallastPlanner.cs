using InstallPacket.Calc.Sources;
using InstallPacket.Calc.Mounting;

namespace InstallPacket.Plans.Mounting;

/// <summary>A base held down by blocks on a flat roof.</summary>
internal sealed class BallastPlanner(Job job, CodeFamily code, Workings work, FindingList findings, LoadPathLedger ledger)
{
    private static readonly Constant UsualFriction = new("friction-on-the-roof", BallastBase.Friction, "project-notes", Provenance.Memory);

    /// <summary>Beyond this weight nobody speaks of blocks any more [N].</summary>
    private const double MostN = 1e5;

    private const double SteepestDeg = 5;

    public BallastPlan? Plan(WindPlan wind, double? weightN)
    {
        if (job.Mounting.Ballast is not { } ballast)
        {
            ledger.Unknown("the ballast", "ballast", job.Mounting.At);
            return null;
        }
        Place(ballast, wind);
        var length = job.Mounting.MastLength.Metres;
        var (top, line) = Loads(wind);
        var (pull, moment) = (top + line * length, work.Apply(MountingFormulas.FootMoment, "ballast", top, job.MastLength(), line));
        Term Of(string key, double number) => MountTerms.LoadPath("ballast." + key, number);
        Term force = Of("force_n", pull), lever = Of("lever_m", pull > 0 ? moment / pull : 0),
            side = Term.Key("mounting.ballast.side", ballast.SideM);
        var turn = work.Apply(BallastBase.OverturningFormula, "ballast", force, lever, side);
        Term friction = ballast.Friction is { } measured ? Term.Key("mounting.ballast.friction", measured) : UsualFriction;
        var slide = work.Apply(BallastBase.SlidingFormula, "ballast", force, friction);
        var share = code.Limit("weight-share").Term;
        var need = work.Apply(MountingFormulas.BallastNeed, "ballast", turn, slide, share);
        Term own = Of("own_n", weightN ?? 0), block = Term.Key("mounting.ballast.block", ballast.BlockKg);
        if (need > MostN)
        {
            ledger.Force("ballast-turn", "the base against overturning and sliding", need, MostN,
                "more weight than a base of blocks can have (our rule)", "derived", ballast.At, ("blocks", null));
            return null;
        }
        var needed = (int)work.Apply(BallastBase.BlocksFormula, "ballast", need, own, block).Number;
        var blocks = ballast.Blocks ?? needed;
        var total = own + blocks * ballast.BlockKg * StandardGravity.MS2;
        Check("ballast-turn", "the base against overturning", turn / share, total, ballast, needed);
        Check("ballast-slide", "the base against sliding", slide / share, total, ballast, needed);
        var pressure = work.Apply(BallastBase.RoofPressureFormula, "ballast", own, Of("blocks", blocks), block, side);
        Roof(ballast, pressure);
        return new BallastPlan(ballast.SideM, force, lever, turn, slide, own, blocks, ballast.BlockKg, total, pressure,
            ballast.RoofBearsPa);
    }

    private (Term Top, Term Line) Loads(WindPlan wind) => code.WeightAgainstGust
        ? (MountTerms.Wind("gust_force_n", wind.GustForceN), MountTerms.Wind("gust_line_n_per_m", wind.GustLineNPerM))
        : (MountTerms.Wind("force_n", wind.ForceN), MountTerms.Wind("line_load_n_per_m", wind.LineLoadNPerM));

    private void Check(string id, string what, double demand, double total, BallastSection ballast, int needed) => ledger.Force(
        id, what, demand, total, "the weight of base, mast, antenna and blocks", "derived", ballast.At, ("blocks", needed));

    private void Roof(BallastSection ballast, double pressure)
    {
        if (ballast.RoofBearsPa is { } bears)
        {
            ledger.Stress("roof-load", "the roof under the base", pressure, bears, ballast.Stated ?? "stated in the job: name the paper",
                "stated", ballast.At);
            return;
        }
        if (pressure <= BallastBase.RoofPressureLimitPa) return;
        ledger.Unknown("the roof under the base", "roof", ballast.At, ("pressure_pa", pressure),
            ("from_pa", BallastBase.RoofPressureLimitPa));
    }

    private void Place(BallastSection ballast, WindPlan wind)
    {
        if (job.Mounting.RoofPitchDeg is > SteepestDeg and var pitch)
            findings.Add(Severity.Stop, "ballast-unfit", "pitch", ballast.At, ("pitch_deg", pitch), ("most_deg", SteepestDeg));
        if (code.LimitOf("ballast-fastest-wind") is { } fastest && wind.SpeedMs > fastest.Value)
            findings.Add(Severity.Stop, "ballast-unfit", "wind", ballast.At, ("speed_ms", wind.SpeedMs), ("most_ms", fastest.Value),
                ("rule", fastest.Source()));
    }
}
