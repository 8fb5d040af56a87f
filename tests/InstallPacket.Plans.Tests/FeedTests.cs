using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

/// <summary>Direct current is one net: what hangs on an inserter shares its cable, its voltage and its rating.</summary>
public class FeedTests
{
    private const string Passives = "_shared/parts/passives.yaml";
    private const string Actives = "_shared/parts/actives.yaml";

    private const string Branches = "    B1: { part: masthead-amplifier-16, at: mast-head, from: A1 }\n"
        + "    B2: { part: masthead-amplifier-16, at: mast-low, from: A2 }\n";

    // The amplifier of the demo job makes way for those in front of the combiner.
    private static DemoJobs Joined(string before, string first, string second) => TwoAntennas.Joined("", before, first)
        .With(TwoAntennas.Job, "second: A2, second-run", $"second: {second}, second-run")
        .With(TwoAntennas.Job, "P1: { part: masthead-amplifier-16,", "P1: { part: surge-protector,");

    private static Plan Two(Func<DemoJobs, DemoJobs>? more = null) => DemoPlans.House("alder-lane", (more ?? (j => j))(Joined(Branches, "B1", "B2")));

    private static double Ohm(Plan plan, params string[] runs) => plan.Routing.Runs.Where(r => runs.Contains(r.Id)).Sum(r => r.LengthM) * 129.75 / 1000;

    [Fact]
    public void Currents_of_two_amplifiers_add_where_the_cable_is_common()
    {
        var plan = Two();
        var (first, second) = (plan.Cabling.Feeds[0], plan.Cabling.Feeds[1]);
        Assert.Equal((120, 200), (Math.Round(first.TotalMa!.Value, 9), first.LargestMa));
        Assert.Equal(["B2"], first.Others);
        Assert.Equal(12 - 0.120 * Ohm(plan, "R1", "R2", "R3"), first.ArrivesV!.Value, 9);
        Assert.Equal(12 - 0.120 * Ohm(plan, "R1", "R2", "R3") - 0.060 * Ohm(plan, "RV"), second.ArrivesV!.Value, 9);
        Assert.False(plan.Has("supply-overloaded") || plan.Has("supply-unused") || plan.Has("supply-sum-unknown"));
    }

    [Fact]
    public void Steered_ports_take_the_drop_of_a_diode_each()
    {
        var plan = Two(j => j.With(Passives, "    loss: 0.8 dB\n    passes-power: yes", "    loss: 0.8 dB\n    passes-power: steered"));
        var sound = Two();
        Assert.All(plan.Cabling.Feeds, f => Assert.Equal(1, f.SteeredPorts));
        Assert.All(plan.Cabling.Feeds.Zip(sound.Cabling.Feeds), p => Assert.Equal(p.Second.ArrivesV!.Value - 0.7, p.First.ArrivesV!.Value, 9));
    }

    [Fact]
    public void Amplifier_in_the_second_branch_is_fed_as_well()
    {
        var plan = DemoPlans.House("alder-lane", Joined("    B2: { part: masthead-amplifier-16, at: mast-low, from: A2 }\n", "A1", "B2"));
        Assert.Equal("B2", Assert.Single(plan.Cabling.Feeds).Amplifier);
        Assert.False(plan.Has("supply-unused"));
    }

    [Fact]
    public void Combiner_that_passes_power_to_its_first_input_only_leaves_the_second_branch_without()
    {
        var plan = Two(j => j.With(Passives, "    loss: 0.8 dB\n    passes-power: yes", "    loss: 0.8 dB\n    passes-power: input-1"));
        Assert.Equal("B1", Assert.Single(plan.Cabling.Feeds).Amplifier);
        Assert.Equal("C1", plan.Finding("power-blocked").Values["element"]);
    }

    [Fact]
    public void Sum_over_the_rating_is_a_stop_though_each_alone_stays_below()
    {
        var plan = Two(j => j.With(Passives, "largest-current: 200 mA", "largest-current: 100 mA"));
        Assert.Equal(120, (double)plan.Finding("supply-overloaded").Values["draws_ma"]!, 9);
        var alone = DemoPlans.House("alder-lane", DemoJobs.Load().With(Passives, "largest-current: 200 mA", "largest-current: 100 mA"));
        Assert.False(alone.Has("supply-overloaded"));
    }

    [Fact]
    public void Sum_that_nobody_can_know_is_said_and_so_is_the_voltage()
    {
        var plan = Two(j => j.With(Actives, "    draws: 60 mA\n", "").With(Actives, "      draws: \"memory: 30 to 150 mA\"\n  masthead-amplifier-variable:", "  masthead-amplifier-variable:"));
        Assert.True(plan.Has("supply-sum-unknown"));
        Assert.All(plan.Cabling.Feeds, f => Assert.Null(f.ArrivesV));
    }

    [Fact]
    public void One_inserter_is_plugged_in_once_and_each_amplifier_tested()
    {
        var steps = Two().Handover.Steps;
        Assert.Equal("B1", Assert.Single(steps, s => s.Id == "supply").Name);
        Assert.Equal("B2", Assert.Single(steps, s => s.Id == "supply-test").Name);
    }

    [Fact]
    public void Amplifiers_with_their_own_supply_are_plugged_in_before_anything_is_measured()
    {
        var steps = DemoPlans.Of("mill-yard").Handover.Steps;
        var plug = Assert.Single(steps, s => s.Id == "plug-in").Number;
        Assert.True(plug < steps.Where(s => s.Id is "fine-aim" or "measure" or "scan").Min(s => s.Number));
        Assert.True(plug > steps.Where(s => s.Id is "outlet" or "device" or "run").Max(s => s.Number));
    }

    [Fact]
    public void Splitter_that_passes_power_everywhere_lets_it_out_at_an_outlet_and_steered_ports_do_not()
    {
        static Plan Of(string power) => DemoPlans.House("alder-lane", DemoJobs.Load()
            .With(Passives, "    outputs: 4\n", $"    outputs: 4\n    passes-power: {power}\n")
            .With(TwoAntennas.Job, "    I1: { part: power-inserter-12v, at: utility, from: G1, run: R3 }\n", "")
            .With(TwoAntennas.Job, "from: I1 }\n", "from: G1, run: R3 }\n    I1: { part: power-inserter-12v, at: utility, from: S1.1 }\n")
            .With(TwoAntennas.Job, "from: S1.1, run: R4", "from: I1, run: R4"));
        Assert.Equal(["O2", "O3", "O4"], Of("yes").Findings.Where(f => f.Id == "supply-at-outlet").Select(f => f.Values["outlet"]).Order());
        Assert.Equal(Of("output-1").Cabling.Feeds[0].ArrivesV!.Value - 0.7, Of("steered").Cabling.Feeds[0].ArrivesV!.Value, 9);
        Assert.False(Of("steered").Has("supply-at-outlet") || Of("output-1").Has("supply-at-outlet"));
    }

    [Fact]
    public void Inserter_that_passes_power_lets_it_out_toward_the_house()
    {
        var plan = DemoPlans.House("alder-lane", DemoJobs.Load()
            .With(Passives, "    outputs: 4\n", "    outputs: 4\n    passes-power: output-1\n")
            .With(Passives, "    largest-current: 200 mA\n    passes-power: no\n", "    largest-current: 200 mA\n    passes-power: yes\n"));
        // A splitter that passes power on its first output only.
        Assert.Equal("O1", plan.Finding("supply-at-outlet").Values["outlet"]);
    }

    [Fact]
    public void Outlet_that_says_that_it_blocks_keeps_the_supply_from_the_television()
    {
        static Plan Of(string outlet) => DemoPlans.House("alder-lane", DemoJobs.Load()
            .With(Passives, "    outputs: 4\n", "    outputs: 4\n    passes-power: yes\n")
            .With(Passives, "    largest-current: 200 mA\n    passes-power: no\n", "    largest-current: 200 mA\n    passes-power: yes\n")
            .With(Passives, "    name: Wall plate with one F socket\n", "    name: Wall plate with one F socket\n" + outlet));
        Assert.Equal(4, Of("").Findings.Count(f => f.Id == "supply-at-outlet"));
        Assert.False(Of("    passes-power: no\n").Has("supply-at-outlet"));
    }

    [Fact]
    public void Antenna_that_is_a_short_stops_a_supply_that_reaches_it_past_the_amplifier_of_the_other_branch()
    {
        var jobs = Joined("    B2: { part: masthead-amplifier-16, at: mast-low, from: A2 }\n", "A1", "B2")
            .With("_shared/parts/antennas.yaml", "  antenna-uhf-yagi-long:\n    kind: antenna\n", "  antenna-uhf-yagi-long:\n    kind: antenna\n    shorts-power: yes\n");
        Assert.Equal("A1", DemoPlans.House("alder-lane", jobs).Finding("supply-shorted").Values["element"]);
    }
}
