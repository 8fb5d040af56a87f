using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans.Reception;

/// <summary>What the roof costs an antenna in the attic.</summary>
internal sealed class RoofPlanner(Job job, Workings work, FindingList findings)
{
    // Used where a row states no spread: the widest that the table has.
    private const double WidestSigmaDb = 4;
    private const double LeastBlockedDb = 20;

    /// <summary>Loss and spread [dB]; both 0 outdoors.</summary>
    public (double LossDb, double SigmaDb) Plan(Arrival a)
    {
        if (job.Siting.UnderRoof is not { } roof) return (0, 0);
        var f = a.Channel.CentreMHz;
        // Some roofs are known at UHF only; a longer wave loses less there, so the lowest known figure is a safe one below.
        var row = AtticLoss.Find(roof.Value, f)
            ?? AtticLoss.All.Where(r => r.Word == roof.Value && r.LowestMHz > f).MinBy(r => r.LowestMHz);
        if (row is { Blocks: false, TypicalDb: not null })
            return (work.Apply(AtticLoss.RowFormula, row, $"{a.Station.Id}, {roof.Value}", a.Station.Centre()), row.SigmaDb
                ?? WidestSigmaDb);
        findings.Add(Severity.Stop, "roof-blocks", row is null ? "not-known" : "", roof.At, ("roof", roof.Value), ("frequency_mhz", f),
            ("loss_db", row?.LowDb ?? LeastBlockedDb),
            ("provenance", row is null ? null : ProvenanceWord.Of(row.Provenance)), ("source", row?.SourceText));
        return (row?.LowDb ?? LeastBlockedDb, WidestSigmaDb);
    }
}
