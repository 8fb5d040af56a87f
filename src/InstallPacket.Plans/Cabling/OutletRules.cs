using InstallPacket.Calc.Quantities;

namespace InstallPacket.Plans.Cabling;

/// <summary>Findings about levels and margins at the outlets: one a station, naming its worst outlet.</summary>
internal sealed class OutletRules(Job job, CodeFamily code, ReceptionPlan reception, FindingList findings)
{
    private const double LargestDifferenceDb = 12;

    public void Check(IReadOnlyList<OutletPlan> outlets)
    {
        foreach (var want in job.Reception.Want)
        {
            var rows = outlets.SelectMany(o => o.Channels.Where(c => c.Station == want.Value).Select(c => (Outlet: o, Channel: c))).ToArray();
            if (rows.Length == 0) continue;
            CheckMargin(want, rows);
            CheckTooStrong(want, rows);
            CheckTooWeak(want, rows);
        }
        if (outlets.Where(o => o.Channels.Count > 1).MaxBy(Difference) is { } uneven) CheckDifference(uneven);
    }

    // Below the family's window a good C/N does not help: the next cable, the next television may be worse than the one reckoned with.
    private void CheckTooWeak(Sourced<string> want, (OutletPlan Outlet, OutletChannel Channel)[] rows)
    {
        var station = reception.Stations.First(s => s.Id == want.Value);
        if (code.Outlet(station.System, station.Mode) is not { } window) return;
        var (outlet, channel) = rows.MinBy(r => r.Channel.LevelHotDbm);
        var least = Level.FromDbuV(window.LeastDbuv).Dbm;
        if (channel.Verdict == "short" || channel.LevelHotDbm >= least) return;
        var print = UnitPrinter.Of(job);
        findings.Add(Severity.Caution, "outlet-too-weak", want.At, $"`{want.Value}` reaches {print.Level(channel.LevelHotDbm)} at outlet {outlet.Id} ({outlet.Serves}) with hot cable",
            $"an outlet should have {print.Level(least)} or more ({window.Words}); check the local code", "amplify more, or lose less on the way: the level counts as well as C/N");
    }

    private static double Difference(OutletPlan outlet) => outlet.Channels.Max(c => c.LevelDbm) - outlet.Channels.Min(c => c.LevelDbm);

    private void CheckDifference(OutletPlan outlet)
    {
        var (low, high) = (outlet.Channels.MinBy(c => c.LevelDbm)!, outlet.Channels.MaxBy(c => c.LevelDbm)!);
        var difference = high.LevelDbm - low.LevelDbm;
        if (difference <= LargestDifferenceDb || low.Verdict == "short") return;
        var element = job.Cabling.Chain.First(e => e.Id == outlet.Id);
        findings.Add(Severity.Note, "outlet-uneven", element.At, $"at outlet {outlet.Id} ({outlet.Serves}) the wanted channels lie {UnitText.Write(difference, 0, "dB")} apart: `{high.Station}` above `{low.Station}`",
            "12 dB over the whole band (EN 60728-1 and the practice of the trade; memory)", "lower the strong ones, not the weak: turn the antenna, or put a filter or a channel attenuator for them in front of the amplifier");
    }

    private void CheckMargin(Sourced<string> want, (OutletPlan Outlet, OutletChannel Channel)[] rows)
    {
        var (outlet, channel) = rows.MinBy(r => r.Channel.MarginDb);
        var others = rows.Count(r => r.Channel.Verdict == channel.Verdict);
        var found = $"`{want.Value}` has a margin of {UnitText.Write(channel.MarginDb, 1, "dB")} and a chance of {UnitPrinter.Plain.Chance(channel.ChancePct)} at outlet {outlet.Id} ({outlet.Serves}), {(rows.Length == 1 ? "its only one" : $"the worst of {rows.Length}; {channel.Verdict} at {others} of them")}";
        if (channel.Verdict == "short")
            findings.Add(Severity.Stop, "channel-short", want.At, found, "0 dB is the edge of reception by this model",
                "amplify nearer to the antenna, use an antenna with more gain, shorten or better the cable, raise the antenna, or do not want the station");
        else if (channel.Verdict == "thin")
            findings.Add(Severity.Caution, "channel-thin", want.At, found, $"reception.reserve asks for {UnitText.Write(job.Reception.Reserve.Db, 1, "dB")} and reception.chance for {UnitText.Number(job.Reception.ChancePct, 0)} %",
                "expect dropouts in bad weather or in leaf; measure before fixing, and tell the customer");
    }

    private void CheckTooStrong(Sourced<string> want, (OutletPlan Outlet, OutletChannel Channel)[] rows)
    {
        if (job.Cabling.Receiver.LargestLevel is not { } largest) return;
        var print = UnitPrinter.Of(job);
        var (outlet, channel) = rows.MaxBy(r => r.Channel.LevelColdDbm);
        if (channel.LevelColdDbm > largest.Dbm)
            findings.Add(Severity.Caution, "outlet-too-strong", want.At,
                $"`{want.Value}` reaches {print.Level(channel.LevelColdDbm)} at outlet {outlet.Id} ({outlet.Serves}) with cold cable",
                $"the receiver takes {print.Level(largest.Dbm)} ({job.Cabling.Receiver.ProvenanceOf(PartKeys.LargestLevel)}: see the part {job.Cabling.Receiver.Id})",
                "lower the amplifier's setting, leave the amplifier out, or add an attenuator");
    }
}
