namespace InstallPacket.Plans.Cabling.Fixes;

/// <summary>What a chain comes to: the margins of the wanted stations and what is wrong with it.</summary>
/// <param name="Margins">Smallest margin of each wanted station over all outlets [dB].</param>
/// <param name="Faults">Findings about the chain, each by its identifier and place.</param>
internal sealed record Outcome(IReadOnlyDictionary<string, double> Margins, IReadOnlyList<Finding> Faults)
{
    /// <summary>How bad the faults are: any stop outweighs all cautions.</summary>
    public int Weight => Faults.Sum(f => f.Severity switch { Severity.Stop => 1000, Severity.Caution => 1, _ => 0 });
}

/// <summary>Plans a changed chain against the same reception and the same runs.</summary>
internal sealed class TrialBench(CodeFamily code, ReceptionPlan reception, RoutingPlan routing)
{
    public Outcome Try(Job job)
    {
        var chain = new ChainView(job.Cabling);
        var steps = new StepPlanner(job, routing, kept: false);
        var findings = steps.Findings;
        var loads = new AmplifierLoads(job, reception, chain, steps);
        var outlets = chain.Outlets.Select(o =>
        {
            var budget = new OutletBudget(job, steps, loads, chain, o);
            return new OutletPlan(o.Id, o.Serves ?? o.Id, [], 0, [.. reception.Wanted.Select(budget.Channel)]);
        }).ToArray();
        new OutletRules(job, code, reception, findings).Check(outlets);
        new AmplifierRules(job, reception, chain, steps, loads, findings).Check();
        new FeedPlanner(job, chain, routing, steps.Work, findings).Plan();
        var margins = outlets.SelectMany(o => o.Channels).GroupBy(c => c.Station, StringComparer.Ordinal).ToDictionary(g => g.Key, g =>
            g.Min(c => c.MarginDb), StringComparer.Ordinal);
        return new Outcome(margins, findings.Sorted);
    }
}
