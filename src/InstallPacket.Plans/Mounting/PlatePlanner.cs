using InstallPacket.Calc.Mounting;

namespace InstallPacket.Plans.Mounting;

/// <summary>
/// A mount of one plate: its own rows of holes carry the couple of the mast, wind away from the wall and along it. Both cases are
/// checked and the worse one decides. Prying of a plate that bends is not in these forces; the page says so.
/// </summary>
internal sealed class PlatePlanner(Job job, CodeFamily code, Workings work, FindingList findings, LoadPathLedger ledger)
{
    /// <summary>Fixings of a plate by common practice.</summary>
    private const int UsualFixings = 4;

    private readonly MountingSection _mounting = job.Mounting;
    private readonly PlatePlan _plate = PlateShape.Of(job.Mounting)!;

    /// <summary>What the plate takes; null where it could not be checked.</summary>
    public PlateLoadPlan? Plan { get; private set; }

    public void Check(WindPlan wind, double? weightN)
    {
        if (_plate.Fixings < 2)
        {
            FixingChecker.TooFew(job, ledger, 2);
            return;
        }
        CheckPattern();
        CheckCount();
        if (_plate.ReachM is null)
        {
            ledger.Unknown("the fixing of the plate", "arm", _mounting.Mount.At, ("mount", _mounting.Mount.Id));
            return;
        }
        var weight = (weightN ?? 0) * code.Limit("weight-factor").Value;
        var paired = _plate.WidthM > 0 && _plate.Fixings >= 4;
        // More fixings than holes cannot all hold.
        var count = Math.Min(_plate.Fixings, _plate.Holes ?? _plate.Fixings);
        var load = new PlateLoadPlan(wind.UpperN, weight, wind.MomentNm, 0, 0, count, paired ? 2 : 1, Sharing(count), paired ? 4 : 2);
        var (away, turn) = Away(load, count);
        var (along, twist) = Along(load, count);
        new FixingChecker(job, code, work, ledger).Check([away, .. along is null ? [] : new[] { along }]);
        Plan = load with { TurnNm = turn, TwistNm = twist };
    }
    // In one upright line all share, with the edge of the plate as lever; side by side half of them stand upwind.
    private int Sharing(int count) => _plate.WidthM > 0 ? Math.Max(1, count / 2) : count;

    private static Given Load(string key, double number) => MountTerms.LoadPath("plate." + key, number);

    private static Given Shape(string key, double number) => Term.Plan("mounting.plate." + key, number);

    private Term Rows => Shape("height_m", _plate.HeightM);

    // A bent arm is worked out on the page; of a level one the reach is its length.
    private (Term ReachM, Term RiseM) Arm()
    {
        if (_plate.TiltDeg == 0) return (Shape("reach_m", _plate.ReachM!.Value), MountTerms.None);
        Term arm = Shape("arm_m", _plate.ArmM!.Value), tilt = Shape("tilt_deg", _plate.TiltDeg);
        return (work.Apply(OnePlate.ReachFormula, "arm of the mount", arm, tilt), work.Apply(OnePlate.RiseFormula, "arm of the mount", arm, tilt));
    }

    private (FixingDemand Demand, double TurnNm) Away(PlateLoadPlan load, int count)
    {
        var (reach, rise) = Arm();
        var (force, fixings) = (Load("force_n", load.ForceN), Load("holding", count));
        var turn = work.Apply(OnePlate.MomentFormula, "plate, wind away from the wall", Load("moment_nm", load.MomentNm), force, rise,
            Load("weight_n", load.WeightN), reach);
        return (new("wind away from the wall",
            work.Apply(OnePlate.RowPullFormula, "plate", turn, Load("in_row", load.InRow), Rows, force, fixings),
            work.Apply(MountingFormulas.Shear, "plate, wind away from the wall", MountTerms.None, Load("weight_n", load.WeightN), fixings)),
            turn);
    }

    private (FixingDemand? Demand, double TwistNm) Along(PlateLoadPlan load, int count)
    {
        var (reach, rise) = Arm();
        var (force, fixings) = (Load("force_n", load.ForceN), Load("holding", count));
        var twist = work.Apply(OnePlate.MomentFormula, "plate, wind along the wall", Load("moment_nm", load.MomentNm), force, rise,
            MountTerms.None, reach);
        Term? lever = _plate.WidthM > 0 ? Shape("width_m", _plate.WidthM)
            : _mounting.Mount.EdgeM is { } edge ? _mounting.Mount.Figure(MountPartKeys.Edge, edge) : null;
        if (lever is null)
        {
            ledger.Unknown("the fixing of the plate in wind along the wall", "edge", _mounting.Mount.At, ("mount", _mounting.Mount.Id));
            return (null, twist);
        }
        var pull = work.Apply(OnePlate.SidePullFormula, "plate", force, reach, Load("sharing", load.Sharing), lever,
            Load("weight_n", load.WeightN), Load("in_row", load.InRow), Rows);
        var shear = work.Apply(OnePlate.TurnShearFormula, "plate", force, Load("weight_n", load.WeightN), fixings, twist,
            Load("outer", load.Outer), Shape("width_m", _plate.WidthM), Rows);
        return (new("wind along the wall", pull, shear), twist);
    }

    private void CheckPattern()
    {
        if (_plate.PatternAssumed) findings.Add(Severity.Caution, "plate-pattern-unknown", _mounting.Mount.At,
            ("mount", _mounting.Mount.Id), ("width_m", _plate.WidthM), ("height_m", _plate.HeightM));
    }

    private void CheckCount()
    {
        var at = _mounting.Fixings[0].At;
        if (_plate.Holes is { } holes && holes != _plate.Fixings)
        {
            var severity = _plate.Fixings > holes ? Severity.Stop : Severity.Caution;
            findings.Add(severity, "plate-holes-unfit", at, ("fixings", _plate.Fixings), ("holes", holes), ("mount", _mounting.Mount.Id));
        }
        else if (_plate.Fixings < UsualFixings) findings.Add(Severity.Note, "bracket-fixings-few", at, ("fixings", _plate.Fixings),
            ("brackets", 1), ("usual", UsualFixings));
    }
}
