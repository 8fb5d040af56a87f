using InstallPacket.Calc.Reception;
using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

/// <summary>A plan is no surer than what it rests on, and both ends of the level count.</summary>
public class CertaintyTests
{
    private static readonly Plan Blind = DemoPlans.Of("alder-lane", DemoJobs.Load().With("alder-lane/job.yaml", "  terrain: tamarack\n", ""));

    [Fact]
    public void Without_ground_the_house_is_one_drawn_at_random_and_no_chance_is_above_95()
    {
        var s = Blind.Station("kes-21");
        Assert.Equal("nothing", s.Budget!.Ground);
        Assert.Equal(AreaSpread.LocationDb(s.FrequencyMhz, s.DistanceKm, AreaSpread.HillsM), s.Budget.Spread.LocationDb, 9);
        Assert.True(s.Budget.Spread.TotalDb > DemoPlans.Of("alder-lane").Station("kes-21").Budget!.Spread.TotalDb);
        Assert.Equal(95, Blind.At("O1", "kes-21").ChancePct, 9);
        Assert.Contains(Blind.Findings, f => f is { Id: "hills-not-seen", Severity: Severity.Caution });
        Assert.All(Blind.Handover.Scan, r => Assert.Equal("nothing", r.Ground));
        Assert.DoesNotContain(Blind.Handover.Scan, r => r.Verdict == "steady");
        Assert.Contains(Blind.Siting.PathsUnknown, p => p.Known == "nothing");
    }

    [Fact]
    public void Terrain_models_promise_98_at_most() => Assert.Equal(98, DemoPlans.Of("alder-lane").At("O1", "kes-21").ChancePct, 9);

    [Fact]
    public void Negative_margin_is_less_likely_than_not_and_a_positive_one_more()
    {
        var plans = new[] { "alder-lane", "brook-terrace", "far-meadow", "mill-yard", "quay-loft" }.Select(id => DemoPlans.Of(id)).Append(Blind);
        var channels = plans.SelectMany(p => p.Cabling.Outlets).SelectMany(o => o.Channels).Where(c => c.Verdict != "strong").ToArray();
        Assert.Contains(channels, c => c.MarginDb < 0);
        Assert.All(channels, c => Assert.Equal(c.MarginDb < 0, c.ChancePct < 50));
    }

    [Theory]
    [InlineData("alder-lane", 90)]
    [InlineData("brook-terrace", 99)]
    public void Code_family_says_for_which_share_of_the_time(string id, double pct)
    {
        var plan = DemoPlans.Of(id);
        Assert.Equal(pct, plan.Reception.ServedPct);
        Assert.All(plan.Reception.Wanted, s =>
        {
            var planned = s.Budget!.Estimates.Single(e => e.Model == s.Budget.PlannedBy);
            var fade = s.Budget.Spread.TimeDb * 1.2816;
            Assert.Equal(TimeShare.ServedDbuVm(s.Budget.MedianDbuvM, s.Budget.MedianDbuvM - fade, pct), s.Budget.FieldDbuvM, 3);
            Assert.True(planned.TenthDbuvM >= planned.MedianDbuvM);
        });
    }

    [Fact]
    public void Job_may_demand_another_share_of_the_time_and_the_margin_follows()
    {
        var more = DemoPlans.Of("alder-lane", DemoJobs.Load().With("alder-lane/job.yaml", "  want: [kes-9", "  time: 99 %\n  want: [kes-9"));
        var (a, b) = (DemoPlans.Of("alder-lane").Station("blu-33").Budget!, more.Station("blu-33").Budget!);
        Assert.Equal(99, more.Reception.ServedPct);
        Assert.Equal(a.MedianDbuvM, b.MedianDbuvM, 9);
        Assert.True(b.FieldDbuvM < a.FieldDbuvM && b.StrongDbuvM > a.StrongDbuvM);
    }

    [Fact]
    public void Too_much_level_is_judged_by_the_strong_side_and_by_the_spread()
    {
        var plan = DemoPlans.Of("mill-yard");
        var channel = plan.Cabling.Outlets.SelectMany(o => o.Channels).MaxBy(c => c.TooStrongPct)!;
        Assert.InRange(channel.TooStrongPct, 10, 50);
        Assert.True(channel.LevelStrongDbm >= channel.LevelColdDbm);
        Assert.Equal(Severity.Note, plan.Finding("outlet-too-strong").Severity);
    }

    [Fact]
    public void Next_to_a_strong_transmitter_the_verdict_is_too_strong_and_the_chance_small()
    {
        var list = DemoJobs.Load().Read("_shared/stations/ormvik.csv", 1 << 20).Text;
        var row = list.Split('\n').Single(l => l.StartsWith("qua-1,", StringComparison.Ordinal));
        var fields = row.Split(',');
        fields[10] = "1000";
        var plan = DemoPlans.Of("mill-yard", DemoJobs.Load().With("_shared/stations/ormvik.csv", row, string.Join(',', fields)));
        var channel = plan.At("L4", "qua-1");
        Assert.Equal("strong", channel.Verdict);
        Assert.True(channel.MarginDb > 20);
        Assert.InRange(channel.ChancePct, 0, 50);
        Assert.Contains(plan.Findings, f => f is { Id: "outlet-too-strong", Severity: Severity.Caution });
    }
}
