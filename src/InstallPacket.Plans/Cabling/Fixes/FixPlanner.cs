using InstallPacket.Calc.Quantities;

namespace InstallPacket.Plans.Cabling.Fixes;

/// <summary>Looks for single changes that fix what the chain falls short of, and for the window of each gain control.</summary>
internal sealed class FixPlanner(Job job, CodeFamily code, ReceptionPlan reception, RoutingPlan routing, PartLibrary parts, Func<Job,
    ReceptionPlan> receive)
{
    private readonly FindingList _findings = new();

    /// <summary>How many changes are tried at most; the list says so when it is cut.</summary>
    public const int MostTrials = 160;

    private const int MostFixes = 6;
    private static readonly double[] RaisesMetric = [1, 2, 3];
    private static readonly double[] RaisesUs = [0.9144, 1.8288, 3.048];
    private readonly TrialBench _bench = new(code, reception, routing);
    private readonly ChainView _chain = new(job.Cabling);

    public Planned<CablingPlan> Plan(CablingPlan cabling) => new(WithFixes(cabling), new Workings(), _findings);

    private CablingPlan WithFixes(CablingPlan cabling)
    {
        if (!reception.Wanted.Any() || cabling.Outlets.Count == 0) return cabling;
        var today = _bench.Try(job);
        var windows = (from e in job.Cabling.Chain
                       where e.Part is AmplifierPart { LeastAmplificationDb: not null, AmplificationDb: not null }
                       select Window(e, (AmplifierPart)e.Part, today)).ToArray();
        CheckNeedless(today);
        if (today.Weight == 0) return cabling with { Windows = windows };
        var trials = Turned().Concat(Raised()).Concat(new TrialSource(job, _chain, parts).All()).Take(MostTrials + 1).ToArray();
        return cabling with { Windows = windows, Fixes = [.. Fixes(trials.Take(MostTrials), today)],
            TrialsCut = trials.Length > MostTrials };
    }

    // An aim that the job fixes may be worse than the best one.
    private IEnumerable<Trial> Turned()
    {
        if (job.Reception.Aim is null) yield break;
        var free = job with { Reception = job.Reception with { Aim = null } };
        var reception = receive(free);
        yield return new(Change.Turn(reception.Aim.TrueDeg), free, [], reception);
    }

    // A metre or two is often all that is missing. The mast must be proved again for it.
    private IEnumerable<Trial> Raised()
    {
        foreach (var metres in job.Units == UnitFamily.Us ? RaisesUs : RaisesMetric)
        {
            var height = job.Siting.AntennaHeight;
            var higher = job with { Siting = job.Siting with { AntennaHeight = height with { Value = Length.FromMetres(height.Value.Metres + metres) } } };
            yield return new(Change.Raise(metres), higher, [], receive(higher));
        }
    }

    // Where everything keeps reserve and chance without it, an amplifier brings nothing but overload and one more thing that fails.
    private void CheckNeedless(Outcome today)
    {
        foreach (var trial in new TrialSource(job, _chain, parts).Removals())
        {
            var after = _bench.Try(trial.Job);
            if (after.Weight > 0) continue;
            var amplifier = job.Cabling.Chain.First(e => e.Id == trial.Change.Element);
            var (station, margin) = after.Margins.OrderBy(m => m.Value).ThenBy(m => m.Key, StringComparer.Ordinal).First();
            _findings.Add(Severity.Note, "amplifier-needless", amplifier.At, ("element", amplifier.Id), ("station", station),
                ("margin_db", margin), ("today_db", today.Margins[station]), ("fed", amplifier.Part.SupplyV is not null));
        }
    }

    private IEnumerable<FixPlan> Fixes(IEnumerable<Trial> trials, Outcome today)
    {
        var weakest = today.Margins.OrderBy(m => m.Value).ThenBy(m => m.Key, StringComparer.Ordinal).First().Key;
        var known = today.Faults.Select(Key).ToHashSet();
        return trials.Select(t => (Trial: t, After: (t.Reception is { } moved ? new TrialBench(code, moved, routing) : _bench).Try(t.Job)))
            .Where(p => p.After.Weight < today.Weight
                && p.After.Faults.Where(f => f.Severity == Severity.Stop).All(f => known.Contains(Key(f))))
            .OrderBy(p => p.After.Weight).ThenBy(p => p.Trial.Change.Rank).ThenBy(p => p.Trial.Change.RaiseM).ThenBy(p => p.Trial.Adds.Count)
            .ThenByDescending(p => Math.Round(p.After.Margins[weakest], 3))
            .ThenBy(p => p.Trial.Change.Id, StringComparer.Ordinal).ThenBy(p => p.Trial.Change.Run, StringComparer.Ordinal)
            .ThenBy(p => p.Trial.Change.Part, StringComparer.Ordinal).ThenBy(p => p.Trial.Change.Element, StringComparer.Ordinal)
            .ThenBy(p => p.Trial.Change.SetDb)
            .Take(MostFixes)
            .Select(p => Fix(p.Trial, weakest, p.After, today, known));
    }

    private static FixPlan Fix(Trial trial, string weakest, Outcome after, Outcome today, HashSet<(string, SourceSpan)> known) =>
        new(trial.Change.Id, [.. trial.Adds.Select(a => a.Name)], weakest, after.Margins[weakest],
            after.Margins[weakest] - today.Margins[weakest],
            known.Count(k => after.Faults.All(f => Key(f) != k)), after.Faults.Count(f => f.Severity != Severity.Note))
        {
            Element = trial.Change.Element,
            Run = trial.Change.Run,
            Part = trial.Change.Part,
            Inserter = trial.Change.Inserter,
            SetDb = trial.Change.SetDb,
            BearingDeg = trial.Change.BearingDeg,
            RaiseM = trial.Change.RaiseM,
            AddedCost = trial.Cost,
        };

    private static (string, SourceSpan) Key(Finding f) => (f.Id, f.At);

    // The run of settings with the fewest faults that holds today's setting, or the longest such run.
    private GainWindow Window(Element e, AmplifierPart part, Outcome today)
    {
        var set = e.Setting?.Db ?? part.AmplificationDb!.Points.Max(p => p.Value);
        var tried = TrialSource.Range(part).Select(db =>
            (Db: db, _bench.Try(ChainEdit.Exchange(job, e, e.Part, Gain.FromDb(db))).Weight)).ToArray();
        var least = tried.Select(t => t.Weight).Append(today.Weight).Min();
        var runs = Runs([.. tried.Where(t => t.Weight == least).Select(t => t.Db)]);
        var (from, to) = runs.Length == 0 ? (set, set)
            : runs.FirstOrDefault(r => r.From <= set && set <= r.To, runs.MaxBy(r => r.To - r.From));
        if (set < from || set > to)
            _findings.Add(Severity.Caution, "setting-outside-window", e.SettingAt, ("element", e.Id), ("set_db", set), ("from_db", from),
                ("to_db", to),
                ("whole", least == 0));
        return new GainWindow(e.Id, from, to, set, least == 0);
    }

    private static (double From, double To)[] Runs(double[] settings)
    {
        var runs = new List<(double From, double To)>();
        foreach (var db in settings)
        {
            if (runs.Count > 0 && db - runs[^1].To <= 1) runs[^1] = (runs[^1].From, db);
            else runs.Add((db, db));
        }
        return [.. runs];
    }
}
