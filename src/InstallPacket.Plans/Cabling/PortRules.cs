using InstallPacket.Calc.Quantities;

namespace InstallPacket.Plans.Cabling;

/// <summary>Findings about open outputs.</summary>
internal sealed class PortRules(Job job, ChainView chain, FindingList findings)
{
    public void Check()
    {
        foreach (var e in job.Cabling.Chain.Where(e => e.Part.Outputs > 1))
        {
            var open = OpenPorts(e);
            if (e.Part is SplitterPart && open == e.Part.Outputs - 1)
                findings.Add(Severity.Caution, "splitter-needless", e.At, ("element", e.Id), ("loss_db", e.Part.LossTo(1, 600) ?? 0));
            else if (open > 0)
                findings.Add(Severity.Note, "port-open", e.At, ("open", open), ("outputs", e.Part.Outputs), ("element", e.Id));
        }
    }

    /// <summary>How many outputs feed nothing.</summary>
    public int OpenPorts(Element e) => e.Part.Outputs > 1 ? e.Part.Outputs - chain.FedBy(e).Count() : 0;
}
