using InstallPacket.Calc.Quantities;
using InstallPacket.Jobs;

namespace InstallPacket.Plans;

/// <summary>Findings about levels and margins at the outlets: one a station, naming its worst outlet.</summary>
internal sealed class OutletRules(Job job, FindingList findings)
{
    public void Check(IReadOnlyList<OutletPlan> outlets)
    {
        foreach (var want in job.Reception.Want)
        {
            var rows = outlets.SelectMany(o => o.Channels.Where(c => c.Station == want.Value).Select(c => (Outlet: o, Channel: c))).ToArray();
            if (rows.Length == 0) continue;
            CheckMargin(want, rows);
            CheckTooStrong(want, rows);
        }
    }

    private void CheckMargin(Sourced<string> want, (OutletPlan Outlet, OutletChannel Channel)[] rows)
    {
        var (outlet, channel) = rows.MinBy(r => r.Channel.MarginDb);
        var others = rows.Count(r => r.Channel.Verdict == channel.Verdict);
        var found = $"`{want.Value}` has a margin of {UnitText.Write(channel.MarginDb, 1, "dB")} and a chance of {UnitPrinter.Chance(channel.ChancePct)} at outlet {outlet.Id} ({outlet.Serves}), {(rows.Length == 1 ? "its only one" : $"the worst of {rows.Length}; {channel.Verdict} at {others} of them")}";
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
                $"the receiver takes {print.Level(largest.Dbm)} ({job.Cabling.Receiver.ProvenanceOf("largest-level")}: see the part {job.Cabling.Receiver.Id})",
                "lower the amplifier's setting, leave the amplifier out, or add an attenuator");
    }
}
