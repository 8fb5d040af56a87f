using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

/// <summary>Cable, parts and holes that are in the house already, and runs that are known by their length alone.</summary>
public class ExistingHouseTests
{
    private const string Id = "sugar-lane";
    private static Plan Demo => DemoPlans.Of(Id);

    [Fact]
    public void Run_of_known_length_is_cut_to_it_with_loop_and_ends_and_nothing_for_a_way_that_was_not_seen()
    {
        var run = Demo.Routing.Runs.Single(r => r.Id == "G1");
        Assert.Equal(16 * 0.3048, run.GivenM!.Value, 9);
        Assert.Equal(16 * 0.3048, run.RoutedM, 9);
        var exact = run.RoutedM + run.DripExtraM + run.ServiceM + run.TerminationM;
        Assert.InRange(run.LengthM, exact - 1e-9, exact + 0.1524);
        Assert.Equal(0, run.Corners);
    }

    [Fact]
    public void What_is_there_already_is_neither_bought_nor_cut_nor_counted_in_hours()
    {
        var plan = Demo;
        Assert.DoesNotContain(plan.Materials.Items, i => i.Part is "coax-unknown" or "outlet-f");
        Assert.DoesNotContain(plan.Materials.Pieces, p => p.Run is "I1" or "TV1" or "TV2" or "TV3");
        Assert.Contains(plan.Materials.Items, i => i.Part == "splitter-3");
        Assert.Equal(0, plan.Materials.Time.Tasks.Where(t => t.Id == "outlet").Sum(t => t.PersonH), 9);
    }

    [Fact]
    public void New_connectors_on_old_cable_are_bought_and_fitted()
    {
        var without = DemoPlans.Of(Id, DemoJobs.Load().With(Id + "/job.yaml", ", new-connectors: yes", ""));
        int Connectors(Plan plan) => plan.Materials.Items.Where(i => i.Part == "connector-f-6").Sum(i => i.Count ?? 0);
        Assert.Equal(2, Connectors(Demo) - Connectors(without));
        Assert.Contains(Demo.Handover.Steps, s => s is { Id: "new-connectors", Subject: "I1" });
        Assert.DoesNotContain(without.Handover.Steps, s => s.Id == "new-connectors");
    }

    [Fact]
    public void Steps_find_label_and_test_what_is_there_and_drill_nothing()
    {
        var steps = Demo.Handover.Steps;
        Assert.Equal(["I1", "TV1", "TV2", "TV3"], steps.Where(s => s.Id == "existing").Select(s => s.Subject));
        Assert.Equal(["TV1", "TV2", "TV3"], steps.Where(s => s.Id == "existing-part").Select(s => s.Subject));
        Assert.Contains(steps, s => s is { Id: "entry-existing", Subject: "box" });
        Assert.DoesNotContain(steps, s => s.Id is "entry" or "outlet");
    }

    [Fact]
    public void Test_of_old_cable_expects_the_loop_resistance_from_the_least_to_the_most_that_its_kind_may_have()
    {
        var run = Demo.Routing.Runs.Single(r => r.Id == "TV2");
        Assert.Equal(30 * run.LengthM / 1000, run.LoopLeastOhm!.Value, 9);
        Assert.Equal(220 * run.LengthM / 1000, run.LoopMostOhm!.Value, 9);
        Assert.Equal(2, run.LoopSources.Count);
        Assert.Contains(Demo.Handover.Steps, s => s is { Id: "existing-test", Subject: "TV2", Phase: "inside" });
        Assert.Null(Demo.Routing.Runs.Single(r => r.Id == "G1").LoopMostOhm);
    }

    [Fact]
    public void Test_of_cable_of_known_kind_expects_one_figure_and_of_cable_that_states_none_nothing()
    {
        var known = DemoPlans.Of(Id, DemoJobs.Load().With(Id + "/job.yaml", "{ length: 60 ft", "{ cable: coax-6, length: 60 ft"))
            .Routing.Runs.Single(r => r.Id == "TV2");
        Assert.Equal(129.75 * known.LengthM / 1000, known.LoopMostOhm!.Value, 9);
        Assert.Equal(known.LoopMostOhm, known.LoopLeastOhm);
        Assert.Single(known.LoopSources);
        var silent = DemoPlans.Of(Id, DemoJobs.Load()
            .With("_shared/parts/cables.yaml", "    loop-resistance-least: 30 ohm/km\n    loop-resistance-most: 220 ohm/km\n", "")
            .With("_shared/parts/cables.yaml", "      loop-resistance-least: \"memory: Series 6, copper core\" # 20.95 ohm/km with 10 ohm/km of close shield\n", "")
            .With("_shared/parts/cables.yaml", "      loop-resistance-most: \"memory: Series 59, steel core\" # 158.61 ohm/km, copper-clad, with 60 ohm/km of open shield\n", ""));
        Assert.Null(silent.Routing.Runs.Single(r => r.Id == "TV2").LoopMostOhm);
        Assert.Null(silent.Cabling.Feeds.Single().ArrivesV);
    }

    [Fact]
    public void Supply_over_old_cable_is_calculated_with_the_most_that_it_may_resist()
    {
        var feed = Demo.Cabling.Feeds.Single();
        Assert.True(feed.OldCable);
        var metres = Demo.Routing.Runs.ToDictionary(r => r.Id, r => r.LengthM);
        Assert.Equal(220 * metres["I1"] / 1000 + 129.75 * metres["G1"] / 1000, feed.LoopOhm!.Value, 6);
        Assert.InRange(feed.ArrivesV!.Value, 11, 12);
    }

    [Fact]
    public void Longer_old_cable_takes_more_of_the_signal()
    {
        var longer = DemoPlans.Of(Id, DemoJobs.Load().With(Id + "/job.yaml", "length: 60 ft", "length: 90 ft"));
        Assert.True(longer.At("TV2", "kes-21").LevelDbm < Demo.At("TV2", "kes-21").LevelDbm - 1);
        Assert.Equal(Demo.At("TV1", "kes-21").LevelDbm, longer.At("TV1", "kes-21").LevelDbm, 9);
    }

    [Fact]
    public void Antenna_stands_above_its_bracket_and_the_ground_is_that_of_the_tile()
    {
        Assert.Equal(20.5 * 0.3048, Demo.Siting.AntennaHeightM, 6);
        var antenna = Demo.Routing.Points.Single(p => p.Elements.Contains("top-A1"));
        var bracket = Demo.Routing.Points.Single(p => p.Name == "eave");
        Assert.Equal((20.5 * 0.3048, bracket.RightM, bracket.UpM), (Math.Round(antenna.HeightM, 4), antenna.RightM, antenna.UpM));
        Assert.InRange(Demo.Siting.GroundM, 400, 600);
    }

    [Fact]
    public void Desk_study_plans_reception_and_says_nothing_of_mount_bond_and_route()
    {
        var plan = DemoPlans.Of(Id, DemoJobs.Load().WithFile(Id + "/job.yaml", """
            format: 1
            title: Somewhere
            date: 2027-05-20
            firm: fernleigh
            customer: { name: Nobody (invented) }
            siting: { place: "43.6500 N, 99.2000 W", terrain: tamarack }
            reception: { want: [kes-9, kes-21] }
            """));
        Assert.True(plan.Job.Study);
        Assert.False(plan.Stopped);
        Assert.Equal(2, plan.Handover.Scan.Count);
        Assert.DoesNotContain(plan.Findings, f => f.Id.StartsWith("mast-", StringComparison.Ordinal) || f.Id.StartsWith("bond-", StringComparison.Ordinal));
        Assert.DoesNotContain(plan.Workings, r => r.Formula.Id.StartsWith("mast", StringComparison.Ordinal));
        Assert.Equal(25 * 0.3048, plan.Siting.AntennaHeightM, 6);
    }
}
