using InstallPacket.Calc.Cabling;
using InstallPacket.Calc.Quantities;

namespace InstallPacket.Plans.Cabling;

/// <summary>Turns cables and parts into stages with gain and noise figure at a frequency and a cable temperature.</summary>
internal sealed class StepPlanner(Job job, RoutingPlan routing, WorkLog log, FindingList findings)
{
    /// <summary>The cable temperature of the levels that the crew compares with, and of cable that lies indoors [C].</summary>
    public const double ReferenceC = 20;

    private const double JointDb = 0.1;
    private readonly Dictionary<string, IReadOnlyList<AttenuationPoint>> _tables = new(StringComparer.Ordinal);

    /// <summary>Steps from the antenna's terminals to the output of the last element of a path.</summary>
    public IReadOnlyList<ChainStep> Steps(IReadOnlyList<Element> path, double frequencyMHz, double celsius)
    {
        var steps = new List<ChainStep>();
        for (var i = 1; i < path.Count; i++)
        {
            var e = path[i];
            var second = path[i - 1].Id == e.Second;
            if ((second ? e.SecondRun : e.Run) is { } run) steps.Add(new($"run {run}", e, CableStage(routing.Runs.First(r => r.Id == run), frequencyMHz, celsius)));
            // The last element of a path is looked at behind its own socket or its first output; the others behind the output that goes on.
            var output = i < path.Count - 1 ? path[i + 1].Second == e.Id ? path[i + 1].SecondPort : path[i + 1].FromPort : e.Part is OutletPart ? 0 : 1;
            steps.Add(new($"{e.Id} {Word.Of(e.Part.Kind)}", e, PartStage(e, output, frequencyMHz)));
        }
        return steps;
    }

    /// <summary>Half of the range of the loss of a path [dB]: cables whose kind or age nobody knows.</summary>
    public double UncertaintyDb(IReadOnlyList<Element> path, double frequencyMHz) =>
        path.Skip(1).Select((e, i) => path[i].Id == e.Second ? e.SecondRun : e.Run).OfType<string>().Sum(run =>
        {
            var cable = job.Routing.Runs.First(r => r.Id == run).Cable;
            return cable.TolerancePct == 0 ? 0 : cable.TolerancePct / 100 * -CableStage(routing.Runs.First(r => r.Id == run), frequencyMHz, ReferenceC).GainDb;
        });

    /// <summary>The lead from an outlet to its receiver; it lies indoors.</summary>
    public ChainStep FlyLead(Element outlet, double frequencyMHz) =>
        new("fly lead", outlet, Lossy("fly lead", CableLoss(job.Cabling.FlyCable, $"fly lead {outlet.Id}", outlet.FlyLead.Metres, frequencyMHz, ReferenceC, 2)));

    private Stage CableStage(RunPlan run, double frequencyMHz, double celsius)
    {
        var cable = job.Routing.Runs.First(r => r.Id == run.Id).Cable;
        var outdoor = run.Lies(CableWay.Outside, CableWay.Attic, CableWay.Conduit, CableWay.Buried, CableWay.Span);
        return Lossy(run.Id, CableLoss(cable, $"run {run.Id}", run.LengthM, frequencyMHz, outdoor ? celsius : ReferenceC, 2));
    }

    private double CableLoss(CablePart cable, string subject, double lengthM, double frequencyMHz, double celsius, int joints)
    {
        if (cable.AttenuationDbPer100M is not { } curve)
        {
            Missing(cable, CablePartKeys.Attenuation);
            return 0;
        }
        if (!Covers(cable, curve, frequencyMHz)) return 0;
        if (!_tables.TryGetValue(cable.Id, out var table))
            _tables[cable.Id] = table = [.. curve.Points.Select(p => new AttenuationPoint(p.MHz, p.Value))];
        var alpha = CoaxAttenuation.DbPer100M(table, frequencyMHz);
        var factor = CoaxTemperature.Factor(celsius);
        var loss = CoaxLoss.Db(alpha, lengthM, factor);
        var (below, above) = CoaxAttenuation.Neighbours(table, frequencyMHz);
        log.Record(CoaxAttenuation.PerLengthFormula, FormattableString.Invariant($"{cable.Id}, {frequencyMHz:0.###} MHz"), alpha,
            frequencyMHz, below.FrequencyMHz, below.DbPer100M, above.FrequencyMHz, above.DbPer100M);
        log.Record(CoaxTemperature.FactorFormula, FormattableString.Invariant($"{celsius:0} C"), factor, celsius);
        log.Record(CoaxLoss.LossFormula, FormattableString.Invariant($"{subject}, {frequencyMHz:0.###} MHz, {celsius:0} C"), loss, alpha, lengthM, factor);
        log.Record(CablingFormulas.JointLoss, subject, joints * JointDb, joints);
        return loss + joints * JointDb;
    }

    private Stage PartStage(Element e, int output, double frequencyMHz)
    {
        if (e.Part is AmplifierPart part)
        {
            if (part.AmplificationDb is null) Missing(part, AmplifierPartKeys.Amplification);
            if (part.NoiseFigureDb is null) Missing(part, PartKeys.NoiseFigure);
            return new(e.Id, e.Setting?.Db ?? part.AmplificationDb?.At(frequencyMHz) ?? 0, part.NoiseFigureDb?.At(frequencyMHz) ?? 0);
        }
        var loss = e.Part.LossTo(output, frequencyMHz);
        if (loss is null) Missing(e.Part, PassiveKeys.Loss);
        return Lossy(e.Id, loss ?? 0);
    }

    private bool Covers(Part cable, FrequencyCurve curve, double frequencyMHz)
    {
        var first = curve.Points[0].MHz;
        if (first > 0 && frequencyMHz >= first) return true;
        findings.Add(Severity.Stop, "part-figure-missing", cable.At,
            first > 0 ? $"the cable `{cable.Id}` states no `attenuation` at {UnitText.Write(frequencyMHz, 0, "MHz")}: its table begins at {UnitText.Write(first, 0, "MHz")}"
                : $"the cable `{cable.Id}` states one `attenuation` for every frequency",
            "the loss of coax rises with frequency, so it is read from a table that begins below every channel",
            "write `attenuation` as a map from frequencies to losses, from the maker's sheet");
        return false;
    }

    private void Missing(Part part, Key figure) =>
        findings.Add(Severity.Stop, "part-figure-missing", part.At, $"the part `{part.Id}` does not state `{figure.Name}`", "without it no level can be reckoned",
            $"add `{figure.Name}` to the part from the maker's sheet");

    // A passive part at 290 K adds noise equal to its loss.
    private static Stage Lossy(string name, double lossDb) => new(name, -lossDb, lossDb);
}
