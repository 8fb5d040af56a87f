using InstallPacket.Calc.Quantities;
using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

public class AimTests
{
    private const string Job = "alder-lane/job.yaml";

    [Fact]
    public void Best_heading_is_the_one_a_fixed_aim_is_measured_against()
    {
        var free = DemoPlans.Of("alder-lane").Reception.Aim;
        var fixedAim = DemoPlans.Of("alder-lane", DemoJobs.Load().With(Job, "  want:", "  aim: 170 deg true\n  want:"));
        Assert.Equal(free.TrueDeg, free.BestDeg);
        Assert.Equal(free.BestDeg, fixedAim.Reception.Aim.BestDeg);
        Assert.Equal(170, fixedAim.Reception.Aim.TrueDeg);
        Assert.True(fixedAim.Has("aim-costs"));
        Assert.False(DemoPlans.Of("alder-lane", DemoJobs.Load().With(Job, "  want:", $"  aim: {free.BestDeg + 1} deg true\n  want:")).Has("aim-costs"));
    }

    // The ends of the arc are tried as fixed aims: inside nothing changes its verdict for the worse, one degree outside something does.
    [Fact]
    public void Arc_ends_where_something_is_lost()
    {
        var aim = DemoPlans.Of("alder-lane").Reception.Aim;
        var arc = aim.Arc!;
        Assert.Equal(Bearing.Wrap(arc.ToDeg - arc.FromDeg), arc.WidthDeg, 9);
        Assert.Superset(aim.Held.ToHashSet(), Aimed(arc.FromDeg).Held.ToHashSet());
        foreach (var (inside, outside) in new[] { (arc.FromDeg, arc.FromDeg - 1), (arc.ToDeg, arc.ToDeg + 1) })
        {
            Assert.Equal(Lost(aim, aim), Lost(aim, Aimed(inside)));
            Assert.NotEqual(Lost(aim, aim), Lost(aim, Aimed(Bearing.Wrap(outside))));
        }
    }

    [Fact]
    public void Change_at_the_end_of_the_arc_is_what_a_turn_there_gives()
    {
        var aim = DemoPlans.Of("alder-lane").Reception.Aim;
        var turned = Aimed(aim.Arc!.ToDeg);
        foreach (var end in aim.Arc.Ends)
            Assert.Equal(end.MarginDb + end.AtToDb, turned.Arc!.Ends.Single(e => e.Station == end.Station).MarginDb, 6);
    }

    [Fact]
    public void Chance_rises_with_margin_and_never_reads_better_than_it_is()
    {
        var rows = DemoPlans.Of("alder-lane").Cabling.Outlets.SelectMany(o => o.Channels).ToArray();
        Assert.All(rows, r => Assert.InRange(r.ChancePct, 0, 100));
        Assert.Equal("89 %", UnitPrinter.Plain.Chance(89.97).Replace('\u00A0', ' '));
        Assert.Equal("over 99 %", UnitPrinter.Plain.Chance(99.2).Replace('\u00A0', ' '));
        Assert.Equal("under 1 %", UnitPrinter.Plain.Chance(0.4).Replace('\u00A0', ' '));
        foreach (var channel in rows.GroupBy(r => r.Station))
            Assert.Equal(channel.OrderBy(r => r.MarginDb).Select(r => r.ChancePct), channel.OrderBy(r => r.MarginDb).Select(r => r.ChancePct).Order());
    }

    [Fact]
    public void Sun_of_the_day_is_given_in_clock_time_and_turns_with_the_day()
    {
        var sun = DemoPlans.Of("alder-lane").Reception.Sun;
        Assert.NotEmpty(sun);
        Assert.Equal(sun.Select(h => h.AzimuthDeg).Order(), sun.Select(h => h.AzimuthDeg));
        Assert.DoesNotContain(sun, h => h.Clock.Contains("UTC", StringComparison.Ordinal));
        var universal = DemoPlans.Of("alder-lane", DemoJobs.Load().With(Job, "  utc-offset: -5 h\n", "")).Reception.Sun;
        Assert.Equal(sun.Single(h => h.Clock == "17:00").AzimuthDeg, universal.Single(h => h.Clock == "22:00 UTC").AzimuthDeg, 9);
    }

    private static AimPlan Aimed(double deg) =>
        DemoPlans.Of("alder-lane", DemoJobs.Load().With(Job, "  want:", System.FormattableString.Invariant($"  aim: {deg} deg true\n  want:"))).Reception.Aim;

    private static string Lost(AimPlan reference, AimPlan other) =>
        string.Join(", ", reference.Held.Except(other.Held).Concat(other.Arc?.Ends.Where(e => e.MarginDb < 0).Select(e => e.Station) ?? reference.Held));
}
