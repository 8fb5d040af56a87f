using InstallPacket.Calc.Mounting;

namespace InstallPacket.Plans.Mounting;

/// <summary>Brackets on a wall, a gable or an eave: pull and shear of their fixings, wind away from the wall and along it.</summary>
internal sealed class BracketPlanner(Job job, CodeFamily code, Workings work, FindingList findings, LoadPathLedger ledger)
{
    /// <summary>Fixings of a bracket by common practice.</summary>
    private const int UsualFixings = 4;

    private readonly MountingSection _mounting = job.Mounting;

    public void Check(WindPlan wind, double? weightN)
    {
        CheckSpacing(wind);
        var brackets = _mounting.Kind == MountKind.GroundMast ? 1 : 2;
        var count = FixingChecker.Holding(job).Sum(f => f.Count);
        var each = count / brackets;
        if (each == 0)
        {
            FixingChecker.TooFew(job, ledger, brackets);
            return;
        }
        if (each < UsualFixings)
            findings.Add(Severity.Note, "bracket-fixings-few", _mounting.Fixings[0].At, ("fixings", each), ("brackets", brackets),
                ("usual", UsualFixings));
        if (_mounting.Mount.StandOffM is not { } standOff)
        {
            ledger.Unknown("the fixing of the bracket", "stand-off", _mounting.Mount.At, ("mount", _mounting.Mount.Id));
            return;
        }
        // The foot of a ground mast carries the weight, not its bracket.
        var weight = brackets == 1 ? 0 : (weightN ?? 0) * code.Limit("weight-factor").Value;
        Term couple = weight > 0
            ? work.Apply(MountReactions.StandoffFormula, "upper bracket", MountTerms.LoadPath("bracket.weight_n", weight),
            Of(MountPartKeys.StandOff, standOff), MountTerms.Wind("spacing_m", wind.SpacingM)) : MountTerms.None;
        // Guys can make the lower one bear more than the upper one.
        var force = brackets == 1 ? Math.Abs(wind.UpperN) : Math.Max(Math.Abs(wind.UpperN), Math.Abs(wind.LowerN));
        var demands = new List<FixingDemand> { Away(force, couple, weight / 2, each) };
        if (Along(force, couple, weight / 2, each, standOff) is { } along) demands.Add(along);
        new FixingChecker(job, code, work, ledger).Check(demands);
        Plan = new BracketPlan(force, weight, weight / 2, each, _mounting.Mount.AcrossM is null ? each : Math.Max(1, each / 2));
    }

    /// <summary>What the upper bracket takes; null where it could not be checked.</summary>
    public BracketPlan? Plan { get; private set; }

    private static Given Bracket(string key, double number) => MountTerms.LoadPath("bracket." + key, number);

    private Given Of(Key key, double number) => _mounting.Mount.Figure(key, number);

    private FixingDemand Away(double force, Term couple, double weight, int each) => new(
        "wind away from the wall",
        work.Apply(MountingFormulas.PullAway, "upper bracket", Bracket("force_n", force), couple, Bracket("fixings", each)),
        work.Apply(MountingFormulas.Shear, "upper bracket, wind away from the wall", MountTerms.None, Bracket("share_of_weight_n", weight),
            Bracket("fixings", each)));

    private FixingDemand? Along(double force, Term couple, double weight, int each, double standOff)
    {
        // Fixings side by side share by halves; those in one upright line share all, but only with the edge of the plate as lever.
        var (lever, sharing) = _mounting.Mount.AcrossM is { } across ? (across, Math.Max(1, each / 2)) : (_mounting.Mount.EdgeM ?? 0, each);
        if (lever <= 0)
        {
            ledger.Unknown("the fixing of the bracket in wind along the wall", "across", _mounting.Mount.At,
                ("mount", _mounting.Mount.Id));
            return null;
        }
        var pull = work.Apply(MountReactions.AlongWallFormula, "upper bracket", Bracket("force_n", force),
            Of(MountPartKeys.StandOff, standOff), Of(_mounting.Mount.AcrossM is null ? MountPartKeys.Edge : MountPartKeys.Across, lever));
        return new("wind along the wall",
            work.Apply(MountingFormulas.PullAlong, "upper bracket", pull, Bracket("sharing", sharing), couple, Bracket("fixings", each)),
            work.Apply(MountingFormulas.Shear, "upper bracket, wind along the wall", Bracket("force_n", force),
                Bracket("share_of_weight_n", weight), Bracket("fixings", each)));
    }

    private void CheckSpacing(WindPlan wind)
    {
        if (_mounting.Guys is not null || wind.SpacingM >= wind.FreeM / 3 - 1e-9) return;
        findings.Add(Severity.Caution, "bracket-spacing-weak", _mounting.FreeLengthAt, ("spacing_m", wind.SpacingM), ("free_m", wind.FreeM),
            ("least_m", wind.FreeM / 3));
    }
}
