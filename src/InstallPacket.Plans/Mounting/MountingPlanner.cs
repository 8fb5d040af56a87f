using InstallPacket.Calc.Mounting;
using InstallPacket.Calc.Quantities;
using InstallPacket.Jobs;

namespace InstallPacket.Plans;

/// <summary>Gathers what the job says of the mount, sets the ladder and checks overhead wires.</summary>
internal sealed class MountingPlanner(Job job, CodeFamily code, WorkLog log, FindingList findings)
{
    private readonly MountingSection _mounting = job.Mounting;
    private readonly UnitPrinter _print = UnitPrinter.Of(job);

    public MountingPlan Plan()
    {
        if (_mounting.FreeLength > _mounting.MastLength)
            findings.Add(Severity.Stop, "mast-too-short", _mounting.FreeLengthAt,
                $"mounting.free-length is {_print.Length(_mounting.FreeLength.Metres)} of a mast of {_print.Length(_mounting.MastLength.Metres)}",
                "the free length is a part of the mast", "correct one of the two");
        else if ((_mounting.MastLength - _mounting.FreeLength).Metres < _mounting.MastLength.Metres / 6 && _mounting.Kind != "tripod" && _mounting.Kind != "ballast")
            findings.Add(Severity.Caution, "mast-held-short", _mounting.FreeLengthAt,
                $"only {_print.Length((_mounting.MastLength - _mounting.FreeLength).Metres)} of {_print.Length(_mounting.MastLength.Metres)} of mast is held",
                $"at least one sixth, {_print.AtLeast(_mounting.MastLength.Metres / 6)} (EN IEC 60728-11 practice, read in a secondary text)", "hold the mast at two points farther apart, or shorten it");
        var required = RequiredDistance();
        return new MountingPlan(
            _mounting.Kind, _mounting.Mount.Name, _mounting.Mast.Name, _mounting.MastLength.Metres, _mounting.FreeLength.Metres, _mounting.On,
            [.. _mounting.Fixings.Select(Fixing)], _mounting.RoofPitchDeg, _mounting.WorkHeight.Metres, _mounting.Access, Ladder(), job.Siting.PowerLines is not null,
            required, PowerLines(required), [.. code.RulesOf("mounting"), .. code.RulesOf("height")]) { Wind = new WindPlanner(job, log, findings).Plan() };
    }

    private static FixingPlan Fixing(Fixing f) => new(
        f.Part.Id, f.Part.Name, f.Count, f.Pilot?.Metres, f.Into, f.Part.TorqueNm, f.Part.TorqueNm is null ? "" : f.Part.ProvenanceOf("torque"));

    private LadderSetPlan? Ladder()
    {
        var height = _mounting.WorkHeight.Metres;
        if (_mounting.Access is not ("ladder" or "ladder-and-roof") || height <= 0) return null;
        var working = log.Record(LadderSet.WorkingLengthFormula, "ladder", LadderSet.WorkingLengthM(height), height);
        return new LadderSetPlan(
            working,
            log.Record(LadderSet.FootDistanceFormula, "ladder", LadderSet.FootDistanceM(working), working),
            log.Record(LadderSet.RailLengthFormula, "ladder", LadderSet.RailLengthM(height), height));
    }

    private double RequiredDistance()
    {
        var antenna = job.Cabling.Chain.First(e => e.Part.Kind == "antenna").Part.LengthM ?? 0;
        var mast = _mounting.MastLength.Metres;
        var fall = mast + antenna / 2;
        return log.Record(PowerLineDistance.RequiredFormula, "overhead wires", PowerLineDistance.RequiredM(antenna, mast, fall), antenna, mast, fall);
    }

    private PowerLinePlan[] PowerLines(double requiredM)
    {
        if (job.Siting.PowerLines is not { } lines)
        {
            findings.Add(Severity.Caution, "power-lines-unknown", job.Siting.At, "the job does not say whether overhead wires are near", "every survey looks for them",
                "add `siting.power-lines` (`{}` when there are none)");
            return [];
        }
        foreach (var l in lines.Where(l => l.Distance.Metres < requiredM))
            findings.Add(Severity.Stop, "power-line-near", l.At,
                $"{l.What} is {_print.Length(l.Distance.Metres)} from the mast foot",
                $"{_print.AtLeast(requiredM)}: the larger of twice the length of antenna and mast, and the fall radius plus 10 ft (CPSC-style instruction sheets; 29 CFR 1926.1408 table A)",
                "choose another place for the mast, or have the network operator make the line safe before anything is raised");
        return [.. lines.Select(l => new PowerLinePlan(l.Name, l.What, l.Distance.Metres, l.Height.Metres, l.Distance.Metres >= requiredM))];
    }
}
