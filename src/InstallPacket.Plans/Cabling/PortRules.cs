namespace InstallPacket.Plans.Cabling;

/// <summary>Findings about open outputs.</summary>
internal sealed class PortRules(Job job, ChainView chain, FindingList findings)
{
    public void Check()
    {
        foreach (var e in job.Cabling.Chain)
        {
            var open = OpenOutputs.Of(e, chain).Count;
            if (e.Part is SplitterPart && e.Part.Outputs > 1 && open == e.Part.Outputs - 1)
                findings.Add(Severity.Caution, "splitter-needless", e.At, ("element", e.Id), ("loss_db", e.Part.LossTo(1, 600) ?? 0));
            else if (open > 0 && e.Part is OutletPart)
                findings.Add(Severity.Note, "loop-open", e.At, ("element", e.Id), ("serves", e.Serves ?? e.Id), ("part", e.Part.Id));
            else if (open > 0)
                findings.Add(Severity.Note, "port-open", e.At, ("open", open), ("outputs", e.Part.Outputs), ("element", e.Id));
        }
    }
}
