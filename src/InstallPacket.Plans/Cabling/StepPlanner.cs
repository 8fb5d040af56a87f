using InstallPacket.Calc.Sources;
using InstallPacket.Calc.Cabling;
using InstallPacket.Calc.Quantities;

namespace InstallPacket.Plans.Cabling;

/// <summary>Turns cables and parts into stages with gain and noise figure at a frequency and a cable temperature.</summary>
/// <param name="job">The job.</param>
/// <param name="routing">Its runs with their lengths.</param>
/// <param name="kept">Whether the workings are kept; see <see cref="Workings"/>.</param>
internal sealed class StepPlanner(Job job, RoutingPlan routing, bool kept = true)
{
    private readonly Workings _work = new(kept);
    private readonly FindingList _findings = new();

    /// <summary>The workings of the chain.</summary>
    public Workings Work => _work;

    /// <summary>Findings about parts whose figures are missing.</summary>
    public FindingList Findings => _findings;

    /// <summary>The cable temperature of the levels that the crew compares with, and of cable that lies indoors [C].</summary>
    public const double ReferenceC = 20;

    private static readonly Constant Indoors = new("cable-indoors", ReferenceC, "project-notes", Provenance.CommonPractice);
    private static readonly Constant Joints = new("joints-of-a-run", 2, "project-notes", Provenance.CommonPractice);
    private static readonly Constant Unknown = new("loss-not-known", 0, "project-notes", Provenance.Derived);
    private readonly Dictionary<string, IReadOnlyList<AttenuationPoint>> _tables = new(StringComparer.Ordinal);

    // The outlets share their runs: what a cable loses is asked for again and again.
    private readonly Dictionary<(string Cable, string Id, double FrequencyMHz, double Celsius), Term> _losses = [];
    private readonly Dictionary<(string Element, string Run, double FrequencyMHz, double Celsius), ChainStep> _runSteps = [];
    private readonly Dictionary<(string Element, int Output, double FrequencyMHz), ChainStep> _partSteps = [];
    private readonly Dictionary<string, RunPlan> _runs = routing.Runs.ToDictionary(r => r.Id, StringComparer.Ordinal);
    private readonly Dictionary<string, CablePart> _cables = job.Routing.Runs.ToDictionary(r => r.Id, r => r.Cable, StringComparer.Ordinal);

    /// <summary>Steps from the antenna's terminals to the output of the last element of a path.</summary>
    public IReadOnlyList<ChainStep> Steps(IReadOnlyList<Element> path, double frequencyMHz, double celsius)
    {
        var steps = new List<ChainStep>();
        for (var i = 1; i < path.Count; i++)
        {
            var e = path[i];
            var second = path[i - 1].Id == e.Second;
            if ((second ? e.SecondRun : e.Run) is { } run) steps.Add(RunStep(e, run, frequencyMHz, celsius));
            // The last element of a path is looked at behind its own socket or its first output; the others behind the output that goes on.
            var output = i < path.Count - 1 ? path[i + 1].Second == e.Id ? path[i + 1].SecondPort : path[i + 1].FromPort
                : e.Part is OutletPart ? 0 : 1;
            steps.Add(PartStep(e, output, frequencyMHz));
        }
        return steps;
    }

    /// <summary>Half of the range of the loss of a path [dB]: cables whose kind or age nobody knows.</summary>
    public double UncertaintyDb(IReadOnlyList<Element> path, double frequencyMHz) =>
        path.Skip(1).Select((e, i) => path[i].Id == e.Second ? e.SecondRun : e.Run).OfType<string>().Sum(run =>
        {
            var tolerancePct = _cables[run].TolerancePct;
            return tolerancePct == 0 ? 0 : tolerancePct / 100 * RunLoss(run, frequencyMHz, ReferenceC);
        });

    /// <summary>The lead from an outlet to its receiver; it lies indoors.</summary>
    public ChainStep FlyLead(Element outlet, double frequencyMHz) => Lossy("fly lead", outlet, Once(("fly lead", outlet.Id, frequencyMHz,
        Indoors), () => CableLoss(job.Cabling.FlyCable, $"fly lead {outlet.Id}",
            Term.Key($"cabling.chain.{outlet.Id}.fly-lead", outlet.FlyLead.Metres), frequencyMHz, Indoors)));

    /// <summary>Gain and noise figure of the chain up to each step, with their workings.</summary>
    /// <param name="steps">The steps from the antenna terminals on.</param>
    /// <param name="frequencyMHz">Frequency [MHz].</param>
    /// <param name="celsius">Cable temperature [C].</param>
    /// <param name="outlet">The outlet at their end; its own steps, from the receiver cable on, carry its name.</param>
    public IReadOnlyList<(Term Gain, Term Noise)> Cascade(IReadOnlyList<ChainStep> steps, double frequencyMHz, double celsius,
        Element? outlet)
    {
        var sums = new List<(Term Gain, Term Noise)>();
        for (var i = 0; i < steps.Count; i++)
        {
            var name = outlet is not null && i >= steps.Count - 2 ? $"{steps[i].Name} at {outlet.Id}" : steps[i].Name;
            Subject subject = $"{name}, {frequencyMHz:0.###} MHz, {celsius:0.###} C";
            sums.Add(i == 0 ? (steps[0].Gain, steps[0].Noise)
                : (_work.Apply(CablingFormulas.ChainGain, subject, sums[^1].Gain, steps[i].Gain),
                _work.Apply(NoiseCascade.FriisFormula, subject, sums[^1].Noise, sums[^1].Gain, steps[i].Noise)));
        }
        return sums;
    }

    private ChainStep RunStep(Element e, string run, double frequencyMHz, double celsius)
    {
        if (!_runSteps.TryGetValue((e.Id, run, frequencyMHz, celsius), out var step))
            _runSteps.Add((e.Id, run, frequencyMHz, celsius), step = Lossy($"run {run}", e, RunLoss(run, frequencyMHz, celsius)));
        return step;
    }

    private Term RunLoss(string id, double frequencyMHz, double celsius) => Once(("run", id, frequencyMHz, celsius), () =>
    {
        var run = _runs[id];
        var outdoor = run.Lies(CableWay.Outside, CableWay.Attic, CableWay.Conduit, CableWay.Buried, CableWay.Span);
        Term temperature = !outdoor || celsius.Equals(ReferenceC) ? Indoors
            : Term.Key(celsius.Equals(job.Cabling.HotC) ? "cabling.temperature.hot" : "cabling.temperature.cold", celsius);
        return CableLoss(_cables[id], $"run {id}", Term.Plan($"routing.runs[{id}].length_m", run.LengthM), frequencyMHz, temperature);
    });

    private Term Once((string Cable, string Id, double FrequencyMHz, double Celsius) which, Func<Term> loss)
    {
        if (!_losses.TryGetValue(which, out var known)) _losses.Add(which, known = loss());
        return known;
    }

    private Term CableLoss(CablePart cable, Subject subject, Term lengthM, double frequencyMHz, Term celsius)
    {
        if (cable.AttenuationDbPer100M is not { } curve)
        {
            Missing(cable, CablePartKeys.Attenuation);
            return Unknown;
        }
        if (!Covers(cable, curve, frequencyMHz)) return Unknown;
        if (!_tables.TryGetValue(cable.Id, out var table))
            _tables[cable.Id] = table = [.. curve.Points.Select(p => new AttenuationPoint(p.MHz, p.Value))];
        var (below, above) = CoaxAttenuation.Neighbours(table, frequencyMHz);
        Term Point(double number) => cable.Figure(CablePartKeys.Attenuation, number);
        var alpha = _work.Apply(CoaxAttenuation.PerLengthFormula, table, $"{cable.Id}, {frequencyMHz:0.###} MHz",
            Channel(frequencyMHz), Point(below.FrequencyMHz), Point(below.DbPer100M), Point(above.FrequencyMHz), Point(above.DbPer100M));
        var factor = _work.Apply(CoaxTemperature.FactorFormula, $"{celsius.Number:0.###} C", celsius);
        Subject named = $"{subject}, {frequencyMHz:0.###} MHz, {celsius.Number:0.###} C";
        var loss = _work.Apply(CoaxLoss.LossFormula, named, alpha, lengthM, factor);
        return _work.Apply(CablingFormulas.RunLoss, named, loss, _work.Apply(CablingFormulas.JointLoss, subject, Joints));
    }

    private static Given Channel(double frequencyMHz) => Term.Table(NumberTables.Channels, "centre", frequencyMHz);

    private ChainStep PartStep(Element e, int output, double frequencyMHz)
    {
        if (!_partSteps.TryGetValue((e.Id, output, frequencyMHz), out var step))
            _partSteps.Add((e.Id, output, frequencyMHz), step = NewPartStep(e, output, frequencyMHz));
        return step;
    }

    private ChainStep NewPartStep(Element e, int output, double frequencyMHz)
    {
        Subject label = $"{e.Id} {Word.Of(e.Part.Kind)}";
        if (e.Part is AmplifierPart part)
        {
            if (part.AmplificationDb is null) Missing(part, AmplifierPartKeys.Amplification);
            if (part.NoiseFigureDb is null) Missing(part, PartKeys.NoiseFigure);
            Term gain = e.Setting is { } set ? Term.Key($"cabling.chain.{e.Id}.setting", set.Db)
                : part.Figure(AmplifierPartKeys.Amplification, part.AmplificationDb?.At(frequencyMHz) ?? 0);
            return new(label, e, gain, part.Figure(PartKeys.NoiseFigure, part.NoiseFigureDb?.At(frequencyMHz) ?? 0), output);
        }
        var loss = e.Part.LossTo(output, frequencyMHz);
        if (loss is null) Missing(e.Part, PassiveKeys.Loss);
        return Lossy(label, e, e.Part.Figure(PassiveKeys.Loss, loss ?? 0), output);
    }

    private bool Covers(Part cable, FrequencyCurve curve, double frequencyMHz)
    {
        var first = curve.Points[0].MHz;
        if (first > 0 && frequencyMHz >= first) return true;
        _findings.Add(Severity.Stop, "part-figure-missing", first > 0 ? "cable-table" : "cable-constant", cable.At, ("part", cable.Id),
            ("frequency_mhz", frequencyMHz), ("first_mhz", first));
        return false;
    }

    private void Missing(Part part, Key figure) =>
        _findings.Add(Severity.Stop, "part-figure-missing", "part", part.At, ("part", part.Id), ("figure", figure.Name));

    // A passive part at 290 K adds noise equal to its loss.
    private static ChainStep Lossy(Subject label, Element e, Term lossDb, int output = 0) => new(label, e, lossDb.In(-1), lossDb, output);
}
