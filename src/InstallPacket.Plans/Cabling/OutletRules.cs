using InstallPacket.Calc.Quantities;

namespace InstallPacket.Plans.Cabling;

/// <summary>Findings about levels and margins at the outlets: one a station, naming its worst outlet.</summary>
internal sealed class OutletRules(Job job, CodeFamily code, ReceptionPlan reception, FindingList findings)
{
    private const double LargestDifferenceDb = 12;
    private const double Likely = 50;

    public void Check(IReadOnlyList<OutletPlan> outlets)
    {
        foreach (var want in job.Reception.Want)
        {
            var rows = Rows(outlets, want);
            if (rows.Length == 0) continue;
            CheckMargin(want, rows);
            CheckTooWeak(want, rows);
        }
        CheckTooStrong(outlets);
        if (outlets.Where(o => o.Channels.Count > 1).MaxBy(Difference) is { } uneven) CheckDifference(uneven);
    }

    // Below the family's window a good C/N does not help: the next cable, the next television may be worse than the one calculated with.
    private void CheckTooWeak(Sourced<string> want, (OutletPlan Outlet, OutletChannel Channel)[] rows)
    {
        var station = reception.Stations.First(s => s.Id == want.Value);
        if (code.Outlet(station.System, station.Mode) is not { } window) return;
        var (outlet, channel) = rows.MinBy(r => r.Channel.LevelHotDbm);
        var least = Level.FromDbuV(window.LeastDbuv).Dbm;
        if (channel.Verdict == "short" || channel.LevelHotDbm >= least) return;
        findings.Add(Severity.Caution, "outlet-too-weak", want.At, ("station", want.Value), ("level_dbm", channel.LevelHotDbm),
            ("outlet", outlet.Id),
            ("serves", outlet.Serves), ("least_dbm", least),
            ("mode", window.MovedFrom.Length > 0 ? window.MovedFrom : window.Mode), ("moved", window.MovedFrom.Length > 0), ("own", station.Mode),
                ("rule", window.Source()));
    }

    private static double Difference(OutletPlan outlet) => outlet.Channels.Max(c => c.LevelDbm) - outlet.Channels.Min(c => c.LevelDbm);

    private void CheckDifference(OutletPlan outlet)
    {
        var (low, high) = (outlet.Channels.MinBy(c => c.LevelDbm)!, outlet.Channels.MaxBy(c => c.LevelDbm)!);
        var difference = high.LevelDbm - low.LevelDbm;
        if (difference <= LargestDifferenceDb || low.Verdict == "short") return;
        var element = job.Cabling.Chain.First(e => e.Id == outlet.Id);
        findings.Add(Severity.Note, "outlet-uneven", element.At, ("outlet", outlet.Id), ("serves", outlet.Serves),
            ("difference_db", difference),
            ("high", high.Station), ("low", low.Station));
    }

    private void CheckMargin(Sourced<string> want, (OutletPlan Outlet, OutletChannel Channel)[] rows)
    {
        var (outlet, channel) = rows.MinBy(r => r.Channel.MarginDb);
        var others = rows.Count(r => r.Channel.Verdict == channel.Verdict);
        (string, object?)[] values =
        [
            ("station", want.Value), ("margin_db", channel.MarginDb), ("chance_pct", channel.ChancePct), ("outlet", outlet.Id),
                ("serves", outlet.Serves),
            ("outlets", rows.Length), ("verdict", channel.Verdict), ("same", others),
        ];
        if (channel.Verdict == "short")
            findings.Add(Severity.Stop, "channel-short", want.At, values);
        else if (channel.Verdict == "thin")
            findings.Add(Severity.Caution, "channel-thin", want.At,
                [.. values, ("reserve_db", job.Reception.Reserve.Db), ("demanded_pct", job.Reception.ChancePct)]);
    }

    // Judged by the level for the rest of the time and by the spread. Too much more likely than not is told of each station; what may be
    // too much is set by meter, and the worst of it is told once.
    private void CheckTooStrong(IReadOnlyList<OutletPlan> outlets)
    {
        var worst = job.Reception.Want.Select(w => (Want: w, Rows: Rows(outlets, w))).Where(p => p.Rows.Length > 0)
            .Select(p => (p.Want, Row: p.Rows.MaxBy(r => r.Channel.TooStrongPct)))
            .Where(p => p.Row.Channel.TooStrongPct > 100 - job.Reception.ChancePct).ToArray();
        foreach (var (want, row) in worst.Where(p => p.Row.Channel.TooStrongPct >= Likely))
            findings.Add(Severity.Caution, "outlet-too-strong", "wanted", want.At, Strong(want, row, 0));
        var perhaps = worst.Where(p => p.Row.Channel.TooStrongPct < Likely).ToArray();
        if (perhaps.Length == 0) return;
        var (most, at) = perhaps.MaxBy(p => p.Row.Channel.TooStrongPct);
        findings.Add(Severity.Note, "outlet-too-strong", "perhaps", most.At, Strong(most, at, perhaps.Length - 1));
    }

    private (string, object?)[] Strong(Sourced<string> want, (OutletPlan Outlet, OutletChannel Channel) row, int others) =>
    [
        ("station", want.Value), ("level_dbm", row.Channel.LevelStrongDbm), ("chance_pct", row.Channel.TooStrongPct),
        ("outlet", row.Outlet.Id), ("serves", row.Outlet.Serves), ("most_dbm", job.Cabling.Receiver.LargestLevel!.Value.Dbm),
        ("source", job.Cabling.Receiver.ProvenanceOf(PartKeys.LargestLevel)), ("receiver", job.Cabling.Receiver.Id),
        ("usual_dbm", row.Channel.LevelDbm), ("others", others),
    ];

    private static (OutletPlan Outlet, OutletChannel Channel)[] Rows(IReadOnlyList<OutletPlan> outlets, Sourced<string> want) =>
        [.. outlets.SelectMany(o => o.Channels.Where(c => c.Station == want.Value).Select(c => (Outlet: o, Channel: c)))];
}
