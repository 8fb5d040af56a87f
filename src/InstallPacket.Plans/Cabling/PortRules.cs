using InstallPacket.Jobs;

namespace InstallPacket.Plans;

/// <summary>Findings about open outputs.</summary>
internal sealed class PortRules(Job job, ChainView chain, FindingList findings)
{
    public void Check()
    {
        foreach (var e in job.Cabling.Chain.Where(e => e.Part.Outputs > 1))
        {
            var open = OpenPorts(e);
            if (open > 0)
                findings.Add(Severity.Note, "port-open", e.At, $"{open} of {e.Part.Outputs} outputs of {e.Id} feed nothing",
                    "an open output upsets the others (measured: up to 6 dB on a two-way part)", "the parts list holds a 75 ohm terminator for each; fit them");
        }
    }

    /// <summary>How many outputs feed nothing.</summary>
    public int OpenPorts(Element e) => e.Part.Outputs > 1 ? e.Part.Outputs - chain.FedBy(e).Count() : 0;
}
