using InstallPacket.Calc.Quantities;
using InstallPacket.Jobs;

namespace InstallPacket.Plans;

/// <summary>Follows every station through the chain to every outlet.</summary>
internal sealed class CablingPlanner(Job job, ReceptionPlan reception, RoutingPlan routing, WorkLog log, FindingList findings)
{
    private readonly ChainView _chain = new(job.Cabling);
    private readonly StepPlanner _steps = new(job, routing, log, findings);

    public CablingPlan Plan()
    {
        var receiver = job.Cabling.Receiver;
        if (receiver.NoiseFigureDb is null)
            findings.Add(Severity.Stop, "part-figure-missing", receiver.At, $"the receiver `{receiver.Id}` does not state `noise-figure`", "without it no margin can be reckoned", "add it to the part");
        var outlets = _chain.Outlets.Select(Outlet).ToArray();
        new OutletRules(job, findings).Check(outlets);
        new AmplifierRules(job, reception, _chain, _steps, log, findings).Check();
        var feeds = new FeedPlanner(job, _chain, routing, log, findings).Plan();
        new PortRules(job, _chain, findings).Check();
        return new CablingPlan(
            job.Cabling.ColdC, job.Cabling.HotC, receiver.Name, receiver.LargestLevel?.Dbm, [.. _chain.InOrder().Select(Element)], outlets, TestPoints(), Ladder(outlets))
        {
            Unasked = Unasked(),
            Feeds = feeds,
        };
    }

    // Below one chance in ten a channel would surprise nobody by staying away.
    private UnaskedChannel[] Unasked()
    {
        var quiet = new StepPlanner(job, routing, new WorkLog(), new FindingList());
        var budgets = _chain.Outlets.Select(o => new OutletBudget(job, quiet, new WorkLog(), _chain.PathTo(o))).ToArray();
        return [.. reception.Stations.Where(s => !s.Wanted && s.Reckoned && budgets.Length > 0)
            .Select(s => (Station: s, Best: budgets.Select(b => b.Channel(s)).MaxBy(c => c.MarginDb)!)).Where(p => p.Best.ChancePct >= 10)
            .OrderByDescending(p => p.Best.MarginDb).ThenBy(p => p.Station.Id, StringComparer.Ordinal)
            .Select(p => new UnaskedChannel(p.Station.Id, p.Station.Name, p.Station.ShowsAs, p.Station.RfChannel, p.Best.MarginDb, p.Best.ChancePct))];
    }

    private OutletPlan Outlet(Element outlet)
    {
        var path = _chain.PathTo(outlet);
        var metres = path.Where(e => e.Run is not null).Sum(e => routing.Runs.First(r => r.Id == e.Run).LengthM) + outlet.FlyLead.Metres;
        var budget = new OutletBudget(job, _steps, log, path);
        return new OutletPlan(outlet.Id, outlet.Serves ?? outlet.Id, [.. path.Select(e => e.Id)], metres, [.. reception.Wanted.Select(budget.Channel)]);
    }

    private TestPointPlan[] TestPoints()
    {
        var points = new List<(Element Element, bool AtInput)> { (_chain.Root, false) };
        points.AddRange(_chain.InOrder().Where(e => e.Part.Kind is "amplifier" or "grounding-block" or "power-inserter").Select(e => (e, false)));
        points.AddRange(_chain.InOrder().Where(e => e.Part.Kind is "splitter" or "tap").Select(e => (e, true)));
        points.AddRange(_chain.Outlets.Select(e => (e, false)));
        return [.. points.Select((p, i) => new TestPointPlan(i + 1, p.Element.Id, p.AtInput ? "at its input" : p.Element.Part.Kind == "antenna" ? "at its terminals" : "at its output",
            [.. reception.Wanted.Select(s => new TestLevel(s.Id, LevelAt(p.Element, p.AtInput, s)))]))];
    }

    private double LevelAt(Element e, bool atInput, StationPlan s)
    {
        var steps = _steps.Steps(_chain.PathTo(e), s.FrequencyMhz, StepPlanner.ReferenceC);
        var level = Level.FromDbm(s.Budget!.LevelDbm);
        foreach (var step in atInput ? steps.Take(steps.Count - 1) : steps) level += Gain.FromDb(step.Stage.GainDb);
        return level.Dbm;
    }

    private LadderPlan? Ladder(OutletPlan[] outlets)
    {
        var worst = outlets.Where(o => o.Channels.Count > 0).OrderBy(o => o.Channels.Min(c => c.MarginDb)).ThenBy(o => o.Id, StringComparer.Ordinal).FirstOrDefault();
        if (worst is null) return null;
        var strongest = worst.Channels.OrderByDescending(c => c.LevelDbm).First();
        var weakest = worst.Channels.OrderBy(c => c.MarginDb).ThenBy(c => c.Station, StringComparer.Ordinal).First();
        var lines = strongest.Station == weakest.Station ? [Line(worst, weakest, "weakest")] : new[] { Line(worst, strongest, "strongest"), Line(worst, weakest, "weakest") };
        return new LadderPlan(worst.Id, job.Cabling.Receiver.LargestLevel?.Dbm, lines);
    }

    private LadderLine Line(OutletPlan outlet, OutletChannel channel, string role)
    {
        var station = reception.Wanted.First(s => s.Id == channel.Station);
        var element = job.Cabling.Chain.First(e => e.Id == outlet.Id);
        var level = Level.FromDbm(station.Budget!.LevelDbm);
        var steps = new List<LadderStep> { new("antenna", 0, level.Dbm) };
        foreach (var step in _steps.Steps(_chain.PathTo(element), station.FrequencyMhz, StepPlanner.ReferenceC).Append(_steps.FlyLead(element, station.FrequencyMhz)))
        {
            level += Gain.FromDb(step.Stage.GainDb);
            steps.Add(new(step.Label, step.Stage.GainDb, level.Dbm));
        }
        return new LadderLine(channel.Station, role, channel.MarginDb, steps);
    }

    // A part with a single output has no number to print.
    private int Port(Element e) => job.Cabling.Chain.FirstOrDefault(f => f.Id == e.From)?.Part.Outputs > 1 ? e.FromPort : 0;

    private ElementPlan Element(Element e) => new(
        e.Id, e.Part.Id, e.Part.Name, e.Part.Kind, e.Point, e.From ?? "", Port(e), e.Run ?? "", e.Serves ?? "", e.Setting?.Db)
    {
        OpenPorts = e.Part.Outputs > 1 ? [.. Enumerable.Range(1, e.Part.Outputs).Except(_chain.FedBy(e).Select(f => f.FromPort))] : [],
    };
}
