using System.Text;
using InstallPacket.Cli.Tests.CodeFamilies.Highland;
using InstallPacket.Tests;

namespace InstallPacket.Cli.Tests.CodeFamilies;

/// <summary>A code family is a folder of tables and one class: a made-up one plans a demo job and gives its packet, and nothing else knows of it.</summary>
public class CodeFamilyTests
{
    private static readonly Plans.Codes.CodeFamilies Families = new([.. Plans.Codes.CodeFamilies.BuiltIn.All, new HighlandCodeFamily()]);
    private static readonly Lazy<Plan> Highland = new(PlanHighland);

    private static Plan PlanHighland()
    {
        var jobs = DemoJobs.Load().With("alder-lane/job.yaml", "code: us\nunits: us\n", "code: highland\n");
        var reading = new JobReader(jobs, jobs.Parts(), Families.Defaults).Read("alder-lane");
        Assert.NotNull(reading.Job);
        return Planner.Plan(reading.Job, jobs.Parts(), null, reading.Findings, Families);
    }

    [Fact]
    public void Units_paper_and_language_are_those_of_the_family() =>
        Assert.Equal(("highland", UnitFamily.Metric, PaperSize.A4, "en-GB"), (Highland.Value.Job.Code, Highland.Value.Job.Units, Highland.Value.Job.Paper, Highland.Value.Job.Language));

    [Fact]
    public void Wind_mast_screws_and_weights_follow_the_family()
    {
        var (wind, hold) = (Highland.Value.Mounting.Wind!, Highland.Value.Mounting.LoadPath!);
        Assert.Equal(wind.SpeedMs * wind.SpeedMs, wind.PressurePa, 9);
        Assert.Equal(1.2 * wind.GustForceN, wind.ForceN, 9);
        Assert.Equal("partial-factors", wind.TubeMethod);
        Assert.Equal(2 * hold.WeightN!.Value, hold.Bracket!.WeightN, 9);
        Assert.Contains(hold.Checks, c => c.Id == "fixing" && c.Basis == "NDS chapter 12");
    }

    [Fact]
    public void Routing_bonding_outlets_and_ladders_follow_its_tables()
    {
        var plan = Highland.Value;
        Assert.Contains(plan.Routing.Runs, r => r.ClipSpacingM == 0.25 && r.UprightClipSpacingM == 0.2);
        Assert.All(plan.Routing.Conduits, c => Assert.Equal(10, c.LimitPct));
        Assert.All(plan.Bonding.Sizes, s => Assert.Equal("Highland code", s.Document));
        Assert.Contains(plan.Findings, f => f.Id == "bond-too-small");
        Assert.Contains(plan.Findings, f => f.Id == "outlet-too-weak");
        Assert.Equal("H", plan.Mounting.Ladder!.Rating);
        Assert.Null(plan.Mounting.Ladder.SizeFt);
        Assert.Null(plan.Mounting.FallFromM);
    }

    [Fact]
    public void Its_packet_quotes_its_rules_and_no_other()
    {
        var theme = Theme.FromFolder(Path.Combine(DemoJobs.Checkout, "theme"));
        var crew = Encoding.UTF8.GetString(new PacketBuilder(theme).Build(Highland.Value).Single(f => f.Path == "crew.md").Bytes);
        Assert.Contains("Highland (made up)", crew, StringComparison.Ordinal);
        Assert.Contains("Bond the mast to the peat. (Highland code, 1; check the local code; our rule)", crew, StringComparison.Ordinal);
        Assert.DoesNotContain("NEC", crew, StringComparison.Ordinal);
    }

    [Fact]
    public void A_family_that_nobody_knows_is_a_finding()
    {
        var jobs = DemoJobs.Load().With("alder-lane/job.yaml", "code: us\n", "code: uss\n");
        Assert.Contains(new JobReader(jobs, jobs.Parts()).Read("alder-lane").Findings, f => f.Id == "unknown-word" && f.At.Line > 0);
    }
}
