using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Reception;
using InstallPacket.Jobs;

namespace InstallPacket.Plans.Reception;

/// <summary>What the roof costs an antenna in the attic.</summary>
internal sealed class RoofPlanner(Job job, Workings work, FindingList findings)
{
    // Used where a row states no spread: the widest that the table has.
    private const double WidestSigmaDb = 4;

    /// <summary>Loss and spread [dB]; both 0 outdoors.</summary>
    public (double LossDb, double SigmaDb) Plan(Arrival a)
    {
        if (job.Siting.UnderRoof is not { } roof) return (0, 0);
        var f = a.Channel.CentreMHz;
        // Some roofs are known at UHF only; a longer wave loses less there, so the lowest known figure is a safe one below.
        var row = AtticLoss.Find(roof.Value, f) ?? AtticLoss.All.Where(r => r.Word == roof.Value && r.LowestMHz > f).MinBy(r => r.LowestMHz);
        if (row is { Blocks: false, TypicalDb: not null })
            return (work.Apply(AtticLoss.RowFormula, row, $"{a.Station.Id}, {roof.Value}", a.Station.Centre()), row.SigmaDb ?? WidestSigmaDb);
        findings.Add(Severity.Stop, "roof-blocks", roof.At, $"the antenna stands under a roof of the kind {roof.Value}",
            row is null ? $"nothing is known of it at {UnitText.Write(f, 0, "MHz")}" : $"it takes {UnitText.Write(row.LowDb ?? 20, 0, "dB")} or more ({ProvenanceWord.Of(row.Provenance)}: {row.SourceText})",
            "put the antenna outdoors");
        return (row?.LowDb ?? 20, WidestSigmaDb);
    }
}
