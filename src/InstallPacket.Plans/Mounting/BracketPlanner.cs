using InstallPacket.Calc.Mounting;

namespace InstallPacket.Plans.Mounting;

/// <summary>Brackets on a wall, a gable or an eave: pull and shear of their fixings, wind away from the wall and along it.</summary>
internal sealed class BracketPlanner(Job job, WorkLog log, FindingList findings, HoldLedger ledger)
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
            findings.Add(Severity.Note, "bracket-fixings-few", _mounting.Fixings[0].At, $"{each} fixings for each of {brackets} brackets".Replace("each of 1 brackets", "the bracket"), $"{UsualFixings} to a bracket is common practice", "look whether the bracket has holes for more");
        if (_mounting.Mount.StandOffM is not { } standOff)
        {
            ledger.Unknown("the fixing of the bracket", _mounting.Mount.At, $"the mount `{_mounting.Mount.Id}` does not state `stand-off`", "add how far it holds the mast from the wall");
            return;
        }
        // The foot of a ground mast carries the weight, not its bracket.
        var weight = brackets == 1 ? 0 : Heavier(weightN ?? 0);
        var couple = weight > 0 ? log.Record(MountReactions.StandoffFormula, "upper bracket", MountReactions.StandoffPullN(weight, standOff, wind.SpacingM), weight, standOff, wind.SpacingM) : 0;
        // Guys can make the lower one bear more than the upper one.
        var force = brackets == 1 ? Math.Abs(wind.UpperN) : Math.Max(Math.Abs(wind.UpperN), Math.Abs(wind.LowerN));
        var demands = new List<FixingDemand> { Away(force, couple, weight / 2, each) };
        if (Along(force, couple, weight / 2, each, standOff) is { } along) demands.Add(along);
        new FixingChecker(job, log, ledger).Check(demands);
    }

    private FixingDemand Away(double force, double couple, double weight, int each) => new(
        "wind away from the wall",
        log.Record(MountingFormulas.PullAway, "upper bracket", force / each + couple / each, force, couple, each),
        log.Record(MountingFormulas.Shear, "upper bracket, wind away from the wall", weight / each, 0, weight, each));

    private FixingDemand? Along(double force, double couple, double weight, int each, double standOff)
    {
        // Fixings side by side share by halves; those in one upright line share all, but only with the edge of the plate as lever.
        var (lever, sharing) = _mounting.Mount.AcrossM is { } across ? (across, Math.Max(1, each / 2)) : (_mounting.Mount.EdgeM ?? 0, each);
        if (lever <= 0)
        {
            ledger.Unknown("the fixing of the bracket in wind along the wall", _mounting.Mount.At, $"the mount `{_mounting.Mount.Id}` states neither `across` nor `edge`", "add the level distance between its fixings, or from them to the edge of the plate");
            return null;
        }
        var pull = log.Record(MountReactions.AlongWallFormula, "upper bracket", MountReactions.AlongWallPullN(force, standOff, lever), force, standOff, lever);
        return new("wind along the wall",
            log.Record(MountingFormulas.PullAlong, "upper bracket", pull / sharing + couple / each, pull, sharing, couple, each),
            log.Record(MountingFormulas.Shear, "upper bracket, wind along the wall", Math.Sqrt(force * force + weight * weight) / each, force, weight, each));
    }

    private double Heavier(double weight) => job.Code == "us" ? weight : weight * 1.35;

    private void CheckSpacing(WindPlan wind)
    {
        if (_mounting.Guys is not null || wind.SpacingM >= wind.FreeM / 3 - 1e-9) return;
        var print = UnitPrinter.Of(job);
        findings.Add(Severity.Caution, "bracket-spacing-weak", _mounting.FreeLengthAt, $"the supports stand {print.Length(wind.SpacingM)} apart under {print.Length(wind.FreeM)} of free mast",
            $"a third of the free length, {print.AtLeast(wind.FreeM / 3)}, keeps the forces on them low (our rule)", "set the brackets farther apart, or shorten the free length");
    }
}
