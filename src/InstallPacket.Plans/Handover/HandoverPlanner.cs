namespace InstallPacket.Plans.Handover;

/// <summary>What a scan should find, and what the customer is told.</summary>
internal sealed class HandoverPlanner(Job job, ReceptionPlan reception, CablingPlan cabling, RoutingPlan routing, MountingPlan mounting,
    BondingPlan bonding, MaterialsPlan materials)
{
    public HandoverPlan Plan()
    {
        ScanRow[] rows = [.. reception.Wanted.Select(Row)];
        var weakest = rows.MinBy(r => r.WorstMarginDb);
        return new(job.Internet, job.Handover.Words ?? "", [.. rows.Select(r => r with { Weakest = r == weakest })])
        {
            Warranty = job.Handover.Warranty ?? "",
            OutletsAsRows = cabling.Outlets.Count > rows.Length,
            Steps = new WorkStepPlanner(job, reception, cabling, routing, mounting, bonding, materials).Plan(),
        };
    }

    // The worst first.
    private static readonly string[] Verdicts = ["short", "strong", "thin", "unseen", "steady"];

    // Nothing is steady that nobody looked at.
    private static string Verdict(OutletChannel[] channels) =>
        channels.Select(c => c is { Verdict: "steady", Ground: "nothing" } ? "unseen" : c.Verdict).MinBy(v => Array.IndexOf(Verdicts, v))!;

    private ScanRow Row(StationPlan s)
    {
        var rows = cabling.Outlets.SelectMany(o => o.Channels.Where(c => c.Station == s.Id).Select(c => (Outlet: o, Channel: c))).ToArray();
        var (outlet, channel) = rows.MinBy(r => r.Channel.MarginDb);
        var unlikely = rows.MinBy(r => r.Channel.ChancePct).Channel;
        return new ScanRow(s.Id, s.Name, s.ShowsAs, s.RfChannel, s.FrequencyMhz, rows.Min(r => r.Channel.LevelDbm),
            rows.Max(r => r.Channel.LevelDbm), outlet.Id,
            channel.MarginDb, unlikely.ChancePct, unlikely.ChanceWord, Verdict([.. rows.Select(r => r.Channel)]))
        {
            Ground = channel.Ground,
            Site = s.Site,
            SameSite = [.. reception.Wanted.Where(o => o.Site == s.Site && o.Id != s.Id).Select(o => o.Name)],
            TerminalsDbm = s.Budget!.LevelDbm,
            Outlets = [.. rows.Select(r => new ScanOutlet(r.Outlet.Id, r.Channel.LevelDbm, r.Channel.MarginDb, r.Channel.ChancePct))],
        };
    }
}
