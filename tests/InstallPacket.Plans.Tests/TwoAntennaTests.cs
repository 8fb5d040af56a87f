using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

/// <summary>Two antennas joined by a combiner: each station comes through the input whose band holds its channel.</summary>
public class TwoAntennaTests
{
    [Fact]
    public void Each_station_comes_through_the_antenna_of_its_band_and_each_antenna_has_its_own_aim()
    {
        var plan = DemoPlans.Of("alder-lane", TwoAntennas.Joined(""));
        var vhf = Assert.Single(plan.Reception.MoreAntennas);
        Assert.Equal("A2", vhf.AntennaId);
        Assert.Equal(["kes-9"], vhf.Stations);
        // Alone for one site, the second antenna looks straight at it.
        Assert.Equal(plan.Station("kes-9").BearingTrueDeg, vhf.Aim.TrueDeg, 0.51);
        Assert.InRange(plan.Station("kes-9").OffAimDeg, -0.51, 0.51);
        Assert.NotEqual(plan.Reception.Aim.TrueDeg, vhf.Aim.TrueDeg);
        Assert.All(plan.Reception.Wanted.Where(s => s.Id != "kes-9"), s => Assert.Equal(s.BearingTrueDeg - plan.Reception.Aim.TrueDeg, s.OffAimDeg, 6));
    }

    [Fact]
    public void Loss_of_the_run_to_the_second_input_counts_for_its_stations_only()
    {
        var near = DemoPlans.Of("alder-lane", TwoAntennas.Joined(""));
        var far = DemoPlans.Of("alder-lane", TwoAntennas.Joined(", service-loop: 30 ft"));
        var vhf = near.At("O1", "kes-9").LevelDbm - far.At("O1", "kes-9").LevelDbm;
        var uhf = near.At("O1", "kes-21").LevelDbm - far.At("O1", "kes-21").LevelDbm;
        Assert.InRange(vhf, 0.7, 1.1); // 9 m of Series 6 at 189 MHz
        Assert.Equal(0, uhf, 9);
    }

    [Fact]
    public void Amplifier_in_front_of_the_combiner_sees_the_stations_of_its_branch_only()
    {
        var plan = DemoPlans.Of("alder-lane", TwoAntennas.Joined(""));
        var amplifier = Assert.Single(plan.Cabling.Amplifiers);
        Assert.Equal("kes-9", amplifier.Strongest);
        var branch = DemoPlans.Of("alder-lane", TwoAntennas.Joined("", "    B1: { part: masthead-amplifier-16, at: mast-head, from: A1 }\n", "B1"));
        Assert.NotEqual("kes-9", branch.Cabling.Amplifiers.Single(a => a.Amplifier == "B1").Strongest);
    }

    [Fact]
    public void Fixed_aim_of_the_second_antenna_is_kept()
    {
        var plan = DemoPlans.Of("alder-lane", TwoAntennas.Joined("").With(TwoAntennas.Job, "A2: { part: antenna-vhf-high-yagi,", "A2: { part: antenna-vhf-high-yagi, aim: 180 deg true,"));
        Assert.Equal(180, plan.Reception.MoreAntennas[0].Aim.TrueDeg);
        Assert.Equal("job", plan.Reception.MoreAntennas[0].Aim.ChosenBy);
    }

    [Fact]
    public void Sway_needs_the_mass_of_both_antennas()
    {
        Plan Of(string mass) => DemoPlans.House("alder-lane", TwoAntennas.Joined("").WithFile("_shared/parts/antennas.yaml",
            TwoAntennas.Joined("").Text("_shared/parts/antennas.yaml").Replace("""
                length: 1.6 m
                    mass: 2.5 kg

                """, "length: 1.6 m\n" + mass, StringComparison.Ordinal).Replace("""
                length: "memory: class of part"
                      mass: "memory: class of antenna"
                      wind-area: "memory: estimate from the outline, drag included; the maker states it"
                """, "length: \"memory: class of part\"\n      wind-area: \"memory: estimate from the outline, drag included; the maker states it\"", StringComparison.Ordinal)));
        Assert.NotNull(DemoPlans.House("alder-lane", TwoAntennas.Joined("")).Mounting.Wind!.FrequencyHz);
        Assert.Null(Of("").Mounting.Wind!.FrequencyHz);
    }
}
