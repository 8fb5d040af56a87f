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
                findings.Add(Severity.Caution, "splitter-needless", e.At, $"{e.Id} splits for one output only", $"it costs {UnitText.Write(e.Part.LossTo(1, 600) ?? 0, 1, "dB")} at 600 MHz and gives nothing; a television on its own needs no splitter (common practice)", "leave it out, and join the cables with a barrel");
            else if (open > 0)
                findings.Add(Severity.Note, "port-open", e.At, $"{open} of {e.Part.Outputs} outputs of {e.Id} feed nothing",
                    "an open output upsets the others (measured: up to 6 dB on a two-way part)", "the parts list holds a 75 ohm terminator for each; fit them");
        }
    }

    /// <summary>How many outputs feed nothing.</summary>
    public int OpenPorts(Element e) => e.Part.Outputs > 1 ? e.Part.Outputs - chain.FedBy(e).Count() : 0;
}
