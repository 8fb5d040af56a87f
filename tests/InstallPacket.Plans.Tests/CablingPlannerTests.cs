using InstallPacket.Calc.Cabling;
using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

public class CablingPlannerTests
{
    private const string Farm = "far-meadow/job.yaml";

    // The amplifier of the cellar goes to the mast head: same chain otherwise.
    private static DemoJobs AmplifierAtTheMast() => DemoJobs.Load()
        .With(Farm, "    G1: { part: grounding-block, at: entry, from: A1, run: R1 }\n    D1: { part: indoor-amplifier-15, at: cellar, from: G1, run: R2 }\n    S1: { part: splitter-2, at: cellar, from: D1 }",
            "    P1: { part: masthead-amplifier-16, at: mast-head, from: A1 }\n    G1: { part: grounding-block, at: entry, from: P1, run: R1 }\n    I1: { part: power-inserter-12v, at: cellar, from: G1, run: R2 }\n    S1: { part: splitter-2, at: cellar, from: I1 }");

    [Fact]
    public void Moving_the_amplifier_to_the_mast_fixes_the_farm()
    {
        var cellar = DemoPlans.Of("far-meadow");
        var mast = DemoPlans.Of("far-meadow", AmplifierAtTheMast());
        Assert.True(cellar.Stopped);
        Assert.True(cellar.Has("loss-before-amplifier"));
        Assert.False(mast.Stopped);
        Assert.False(mast.Has("loss-before-amplifier"));
        // About the loss in front (6.9 dB) and the better noise figure, less what the splitter side still adds.
        Assert.InRange(mast.At("O2", "kes-30").MarginDb - cellar.At("O2", "kes-30").MarginDb, 5, 7);
    }

    [Fact]
    public void Noise_figure_of_an_outlet_is_the_cascade_of_its_steps()
    {
        var plan = DemoPlans.Of("far-meadow");
        var stages = plan.Workings.Where(w => w.Formula.Id == NoiseCascade.FriisFormula.Id && w.Subject.Contains(", 515 MHz", StringComparison.Ordinal)).ToArray();
        var last = stages.Single(w => w.Subject.StartsWith("receiver at O2", StringComparison.Ordinal));
        Assert.Equal(plan.At("O2", "kes-21").NoiseFigureDb, last.Number, 9);
        Assert.True(stages.Length >= 8);
    }

    [Fact]
    public void Margin_is_carrier_to_noise_less_the_requirement()
    {
        var plan = DemoPlans.Of("alder-lane");
        foreach (var channel in plan.Cabling.Outlets.SelectMany(o => o.Channels))
            Assert.Equal(channel.CnDb - plan.Station(channel.Station).Budget!.RequiredCnDb, channel.MarginDb, 9);
    }

    [Fact]
    public void Hot_cable_is_weaker_than_cold_cable()
    {
        foreach (var channel in DemoPlans.Of("alder-lane").Cabling.Outlets.SelectMany(o => o.Channels))
        {
            Assert.True(channel.LevelHotDbm < channel.LevelDbm);
            Assert.True(channel.LevelDbm < channel.LevelColdDbm);
        }
    }

    [Fact]
    public void Longer_run_costs_level_at_its_own_outlet_only()
    {
        var before = DemoPlans.Of("alder-lane");
        var after = DemoPlans.Of("alder-lane", DemoJobs.Load().With("alder-lane/job.yaml", "den: [4 ft, 14 ft, 10 ft]", "den: [4 ft, 14 ft, 2 ft]"));
        Assert.True(after.At("O4", "blu-33").LevelDbm < before.At("O4", "blu-33").LevelDbm - 0.3);
        Assert.Equal(before.At("O1", "blu-33").LevelDbm, after.At("O1", "blu-33").LevelDbm, 9);
    }

    [Fact]
    public void Ladder_ends_at_the_level_of_its_outlet()
    {
        foreach (var id in new[] { "alder-lane", "far-meadow", "brook-terrace", "mill-yard", "pine-corner", "quay-loft" })
        {
            var plan = DemoPlans.Of(id);
            var ladder = plan.Cabling.Ladder!;
            foreach (var line in ladder.Lines)
            {
                Assert.Equal(plan.At(ladder.Outlet, line.Station).LevelDbm, line.Steps[^1].LevelDbm, 9);
                Assert.Equal(plan.Station(line.Station).Budget!.LevelDbm, line.Steps[0].LevelDbm, 9);
            }
        }
    }

    [Fact]
    public void Inserter_behind_the_splitter_leaves_the_amplifier_without_power()
    {
        var jobs = AmplifierAtTheMast().With(Farm, "    I1: { part: power-inserter-12v, at: cellar, from: G1, run: R2 }\n    S1: { part: splitter-2, at: cellar, from: I1 }",
            "    S1: { part: splitter-2, at: cellar, from: G1, run: R2 }\n    I1: { part: power-inserter-12v, at: cellar, from: S1.1 }").With(Farm, "from: S1.1, run: R3", "from: I1, run: R3");
        var plan = DemoPlans.Of("far-meadow", jobs);
        Assert.Equal("S1", plan.Finding("power-blocked").Values["element"]);
        Assert.True(plan.Stopped);
    }

    [Fact]
    public void Amplifier_in_a_strong_field_is_overloaded()
    {
        var plan = DemoPlans.Of("alder-lane", DemoJobs.Load().With("_shared/stations/tamarack.csv", "43.2943,-99.3780,420,318", "43.6100,-99.1500,420,318"));
        Assert.True(plan.Has("amplifier-overloaded"));
        Assert.Equal("kes-21", plan.Finding("amplifier-overloaded").Values["strongest"]);
    }

    [Fact]
    public void Open_outputs_get_a_terminator_each()
    {
        var plan = DemoPlans.Of("alder-lane", DemoJobs.Load().With("alder-lane/job.yaml", "splitter-4, at: utility", "splitter-8, at: utility"));
        Assert.Equal(4, plan.Materials.Items.Single(i => i.Kind == PartKind.Terminator).Count);
        Assert.True(plan.Has("port-open"));
        Assert.Equal([5, 6, 7, 8], plan.Cabling.Elements.Single(e => e.Id == "S1").OpenPorts);
        Assert.All(plan.Cabling.Elements.Where(e => e.Id != "S1"), e => Assert.Empty(e.OpenPorts));
    }
}
