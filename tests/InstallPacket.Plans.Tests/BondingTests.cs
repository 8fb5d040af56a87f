using InstallPacket.Calc.Bonding;
using InstallPacket.Calc.Sources;
using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

/// <summary>Sizes, routes, rod, surge, flashes and the zone of the wall: verdicts move in the direction that rule and physics say.</summary>
public class BondingTests
{
    private const string Us = "alder-lane/job.yaml";
    private const string Eu = "brook-terrace/job.yaml";
    private const string Farm = "far-meadow/job.yaml";
    private const string Parts = "_shared/parts/hardware.yaml";

    private static readonly string[] Ids = ["bond-too-small", "bond-metal-unfit", "bond-size-unknown", "bond-coiled", "bond-bent-sharply", "bond-near-power", "rod-unjoined", "rod-too-short", "zone-contradicted"];

    [Theory]
    [InlineData("alder-lane")]
    [InlineData("brook-terrace")]
    [InlineData("far-meadow")]
    [InlineData("mill-yard")]
    public void The_demo_jobs_are_bonded_by_the_rules(string job)
    {
        var plan = DemoPlans.House(job);
        Assert.All(Ids, id => Assert.False(plan.Has(id), id));
        Assert.True(plan.Bonding.Sizes.Count >= 2);
        Assert.All(plan.Bonding.Sizes, s => Assert.InRange(s.UseShare, 0, 1 + 1e-9));
    }

    [Theory]
    [InlineData("copper", 12, true)]
    [InlineData("copper", 10, false)]
    [InlineData("copper", 8, false)]
    [InlineData("aluminium", 10, true)]
    [InlineData("aluminium", 8, false)]
    [InlineData("bronze", 18, true)]
    [InlineData("copper-clad-steel", 17, false)]
    public void American_gauges_stop_below_the_least_one(string metal, int gauge, bool stops)
    {
        var plan = DemoPlans.House("alder-lane", DemoJobs.Load().With(Parts, "    metal: copper\n    gauge: 10\n", $"    metal: {metal}\n    gauge: {gauge}\n"));
        Assert.Equal(stops, plan.Findings.Any(f => f.Id == "bond-too-small" && (string?)f.Values["what"] == "the conductor from the mast"));
        var row = plan.Bonding.Sizes.Single(s => s.Use == "the conductor from the mast");
        Assert.Equal(row.LeastMm2 / row.HasMm2, row.UseShare, 1e-9);
        Assert.Equal(stops, row.UseShare > 1 + 1e-9);
    }

    [Theory]
    [InlineData("copper", 10, true)]
    [InlineData("copper", 16, false)]
    [InlineData("aluminium", 16, true)]
    [InlineData("aluminium", 25, false)]
    [InlineData("steel", 35, true)]
    [InlineData("steel", 50, false)]
    public void European_sections_stop_below_the_least_one(string metal, int section, bool stops)
    {
        var plan = DemoPlans.House("brook-terrace", DemoJobs.Load().With(Parts, "    metal: copper\n    cross-section: 16 mm2\n", $"    metal: {metal}\n    cross-section: {section} mm2\n"));
        Assert.Equal(stops, plan.Has("bond-too-small"));
        Assert.Equal(stops, plan.Stopped);
    }

    [Fact]
    public void A_metal_without_a_size_stops_and_an_unknown_one_is_told()
    {
        Assert.True(DemoPlans.House("alder-lane", DemoJobs.Load().With(Parts, "    metal: copper\n    gauge: 10\n", "    metal: steel\n    gauge: 6\n")).Stopped);
        var plan = DemoPlans.House("alder-lane", DemoJobs.Load().With(Parts, "    metal: copper\n    gauge: 10\n", ""));
        Assert.Equal("bond-size-unknown", Assert.Single(plan.Findings, f => f.Id.StartsWith("bond-", StringComparison.Ordinal)).Id);
        Assert.Empty(plan.Bonding.Sizes);
        Assert.Null(plan.Bonding.Surge);
    }

    // 34 ft of 10 AWG: L = 0.2 l (ln(4 l / d) - 1), then 1.25 kA/us.
    [Fact]
    public void The_surge_follows_step_by_step_from_length_and_gauge()
    {
        var surge = DemoPlans.House("alder-lane").Bonding.Surge!;
        var planned = surge.Lengths.Single(l => l.Planned);
        var length = 34 * 0.3048;
        var uh = 0.2 * length * (Math.Log(4 * length / (0.127e-3 * Math.Pow(92, 26 / 39.0))) - 1);
        Assert.Equal(uh, planned.InductanceUh, 9);
        Assert.Equal(1.25 * uh, planned.InducedKv, 9);
        Assert.Equal(10 * uh, planned.StrokeKv, 9);
        Assert.Equal([length / 2, length, 2 * length], surge.Lengths.Select(l => l.LengthM));
        Assert.True(surge.Lengths[2].InductanceUh > 2 * surge.Lengths[1].InductanceUh);
        Assert.True(surge.Lengths[1].InductanceUh > 2 * surge.Lengths[0].InductanceUh);
        Assert.True(surge.StrokeMelts);
        Assert.False(DemoPlans.House("brook-terrace").Bonding.Surge!.StrokeMelts);
    }

    [Fact]
    public void A_coil_adds_by_the_square_of_its_turns()
    {
        BondSurgePlan Coiled(int turns) => DemoPlans.House("alder-lane", DemoJobs.Load().With(Us, "bend-radius: 10 in, coils: 0", $"bend-radius: 10 in, coils: {turns}")).Bonding.Surge!;
        Assert.Equal(0, Coiled(0).CoilUh);
        Assert.Equal(9, Coiled(6).CoilUh / Coiled(2).CoilUh, 6);
        Assert.True(Coiled(6).CoilUh > Coiled(6).Lengths.Single(l => l.Planned).InductanceUh);
        Assert.True(DemoPlans.House("alder-lane", DemoJobs.Load().With(Us, "bend-radius: 10 in, coils: 0", "bend-radius: 10 in, coils: 1")).Has("bond-coiled"));
    }

    [Theory]
    [InlineData("23 in", "up-to-250-v", true)]
    [InlineData("2 ft", "up-to-250-v", false)]
    [InlineData("9 ft", "above-250-v", true)]
    [InlineData("10 ft", "above-250-v", false)]
    public void Power_conductors_keep_their_distance(string distance, string circuit, bool near) => Assert.Equal(near,
        DemoPlans.House("alder-lane", DemoJobs.Load().With(Us, "distance: 5 ft, circuit: up-to-250-v", $"distance: {distance}, circuit: {circuit}")).Has("bond-near-power"));

    [Fact]
    public void The_rod_takes_its_resistance_from_soil_or_measurement()
    {
        const string both = "    soil: loam\n    resistivity: 85 ohm m\n";
        var rod = DemoPlans.House("far-meadow", DemoJobs.Load().With(Farm, both, "    soil: loam\n")).Bonding.Rod!;
        Assert.Equal(10, rod.HighOhm!.Value / rod.LowOhm!.Value, 6);
        Assert.Equal("memory", rod.SoilProvenance);
        var measured = DemoPlans.House("far-meadow", DemoJobs.Load().With(Farm, both, "    soil: loam\n    resistivity: 10000 ohm cm\n")).Bonding.Rod!;
        Assert.Equal(39.90, measured.LowOhm!.Value, 0.005);
        Assert.Equal(measured.LowOhm, measured.HighOhm);
        Assert.Null(DemoPlans.House("far-meadow", DemoJobs.Load().With(Farm, both, "")).Bonding.Rod!.LowOhm);
    }

    [Fact]
    public void A_rod_is_joined_by_six_gauge_and_is_long_enough()
    {
        Assert.True(DemoPlans.House("far-meadow", DemoJobs.Load().With(Farm, "    jumper: { part: bond-copper-6awg, length: 68 ft }\n", "")).Has("rod-unjoined"));
        Assert.True(DemoPlans.House("far-meadow", DemoJobs.Load().With(Farm, "part: bond-copper-6awg", "part: bond-copper-10awg")).Has("bond-too-small"));
        Assert.True(DemoPlans.House("far-meadow", DemoJobs.Load().With(Parts, "    length: 8 ft\n    diameter: 5/8 in\n", "    length: 6 ft\n    diameter: 5/8 in\n")).Has("rod-too-short"));
    }

    [Fact]
    public void What_the_rod_needs_is_on_the_list()
    {
        var items = DemoPlans.House("far-meadow").Materials.Items;
        Assert.Equal(1, items.Single(i => i.Part == "ground-rod-8ft").Count);
        Assert.Equal(68 * 0.3048, items.Single(i => i.Part == "bond-copper-6awg").LengthM!.Value, 9);
        Assert.Equal(28 * 0.3048, items.Single(i => i.Part == "bond-copper-10awg").LengthM!.Value, 9);
        Assert.Equal(4, items.Single(i => i.Part == "ground-rod-clamp").Count);
    }

    [Fact]
    public void The_larger_area_governs_the_flashes()
    {
        var house = DemoPlans.House("alder-lane").Bonding.Strikes!;
        double l = 40 * 0.3048, w = 28 * 0.3048, h = 27 * 0.3048;
        Assert.Equal(l * w + 6 * h * (l + w) + 9 * Math.PI * h * h, house.HouseM2!.Value, 6);
        Assert.Equal("house", house.Governs);
        Assert.Equal(2.4 * house.HouseM2.Value * 0.5e-6, house.PerYear, 12);
        var tall = DemoPlans.House("alder-lane", DemoJobs.Load().With(Us, "  antenna-height: 31 ft", "  antenna-height: 45 ft")).Bonding.Strikes!;
        Assert.Equal("mast", tall.Governs);
        Assert.True(tall.PerYear > house.PerYear);
        Assert.Null(DemoPlans.House("far-meadow").Bonding.Strikes);
        Assert.Equal(1.4, DemoPlans.House("mill-yard").Bonding.Strikes!.FlashesPerKm2Year, 9);
    }

    [Theory]
    [InlineData("2.01 m", "1.49 m", true)]
    [InlineData("2 m", "1.49 m", false)]
    [InlineData("2.01 m", "1.5 m", false)]
    [InlineData("-0.3 m", "0.7 m", false)]
    public void Both_conditions_of_the_zone_are_strict(string below, string far, bool exempt)
    {
        var plan = DemoPlans.House("brook-terrace", Low(below, far));
        Assert.Equal(exempt, plan.Bonding.Zone!.Exempt);
        Assert.Equal(!exempt, plan.Bonding.MastNeeded);
        Assert.Equal(!exempt, plan.Has("bond-too-small"));
        // The shield is joined all the same.
        Assert.Contains(plan.Bonding.Sizes, s => s.Use == "the conductor from the grounding block");
    }

    [Fact]
    public void The_zone_is_not_granted_against_the_heights_of_the_job()
    {
        var plan = DemoPlans.House("brook-terrace", DemoJobs.Load().With(Eu, "below-edge: -0.3 m", "below-edge: 2.5 m"));
        Assert.True(plan.Has("zone-contradicted"));
        Assert.True(plan.Bonding.MastNeeded);
        Assert.Null(DemoPlans.House("alder-lane", DemoJobs.Load().With(Us, "  lightning: {", "  zone: { below-edge: 9 ft, out: 2 ft }\n  lightning: {")).Bonding.Zone);
    }

    // An antenna low on the wall, with a conductor that would be too small if it were needed.
    private static DemoJobs Low(string below, string far) => DemoJobs.Load().With(Eu, "  antenna-height: 8.4 m", "  antenna-height: 5 m")
        .With(Eu, "below-edge: -0.3 m, out: 0.7 m", $"below-edge: {below}, out: {far}").With(Parts, "    cross-section: 16 mm2\n", "    cross-section: 10 mm2\n");

    [Theory]
    [InlineData("us", "bonding_rules_us.csv", "conductor size", "mast", "copper-clad-steel", 17)]
    [InlineData("us", "bonding_rules_us.csv", "conductor size", "mast", "aluminium", 8)]
    [InlineData("us", "bonding_rules_us.csv", "conductor size", "mast", "copper", 10)]
    [InlineData("us", "bonding_rules_us.csv", "separate electrode", "jumper", "copper", 6)]
    [InlineData("us", "bonding_rules_us.csv", "coax shield (cable from a distribution system), conductor", "shield", "copper", 14)]
    [InlineData("us", "bonding_rules_us.csv", "coax shield, length", "shield-length", "", 20)]
    [InlineData("us", "bonding_rules_us.csv", "coax shield, 20 ft not possible", "one-rod-length", "", 8)]
    [InlineData("us", "bonding_rules_us.csv", "single rod", "rod-resistance", "", 25)]
    [InlineData("us", "bonding_rules_us.csv", "single rod", "second-rod-spacing", "", 6)]
    [InlineData("us", "bonding_rules_us.csv", "lead-in clearance", "power-up-to-250-v", "", 2)]
    [InlineData("us", "bonding_rules_us.csv", "lead-in clearance", "power-above-250-v", "", 10)]
    [InlineData("eu", "bonding_rules_europe.csv", "earthing conductor", "mast", "copper", 16)]
    [InlineData("eu", "bonding_rules_europe.csv", "earthing conductor", "mast", "aluminium", 25)]
    [InlineData("eu", "bonding_rules_europe.csv", "earthing conductor", "mast", "steel", 50)]
    [InlineData("eu", "bonding_rules_europe.csv", "equipotential bonding of shields", "shield", "copper", 4)]
    [InlineData("eu", "bonding_rules_europe.csv", "electrode", "one-rod-length", "", 2.5)]
    [InlineData("eu", "bonding_rules_europe.csv", "electrode", "two-rod-length", "", 1.5)]
    [InlineData("eu", "bonding_rules_europe.csv", "electrode", "second-rod-spacing", "", 3)]
    [InlineData("eu", "bonding_rules_europe.csv", "electrode size", "rod-section", "copper", 50)]
    [InlineData("eu", "bonding_rules_europe.csv", "electrode size", "rod-section", "steel", 90)]
    public void The_numbers_of_the_families_stand_in_the_rules_that_were_read(string family, string file, string item, string use, string metal, double value)
    {
        var limit = CodeFamilies.BuiltIn.Of(family).BondingOf(use, metal)!;
        Assert.Equal(value, limit.Value);
        var rule = CsvText.Rows(File.ReadAllText(Path.Combine(DemoJobs.Checkout, "tests", "Reference", "bonding", file))).Single(r => r["item"] == item);
        Assert.Matches($@"(^|[^0-9.]){System.Text.RegularExpressions.Regex.Escape(value.ToString(System.Globalization.CultureInfo.InvariantCulture))}([^0-9.]|\.?$|\. )", rule["value"] + " " + rule["rule_in_our_words"]);
        Assert.StartsWith(metal == "aluminium" && family == "us" ? "memory" : "read", limit.Provenance, StringComparison.Ordinal);
    }

    [Fact]
    public void The_collection_area_of_the_house_does_not_depend_on_where_its_outline_begins()
    {
        var jobs = DemoJobs.Load();
        var job = jobs.Job("alder-lane");
        var house = job.Routing.House!;
        var moved = job with { Routing = job.Routing with { House = house with { Footprint = [.. house.Footprint.Select(p => p with { Right = p.Right + 3, Up = p.Up + 2 })] } } };
        var here = DemoPlans.House("alder-lane").Bonding.Strikes!.HouseM2!.Value;
        Assert.Equal(here, Planner.Plan(moved, jobs.Parts(), null, []).Bonding.Strikes!.HouseM2!.Value, 6);
    }

    [Fact]
    public void Every_number_says_how_it_is_known() => Assert.All(CodeFamilies.BuiltIn.Of("us").Bonding.Concat(CodeFamilies.BuiltIn.Of("eu").Bonding), b =>
    {
        Assert.Contains(b.Provenance, (string[])["read", "memory", "derived", "common practice"]);
        Assert.All((string[])[b.Document, b.Edition], s => Assert.NotEmpty(s));
    });

    [Fact]
    public void The_jumper_between_the_gauges_is_thicker_than_the_mast_conductor() =>
        Assert.True(CodeFamilies.BuiltIn.Of("us").BondingOf("jumper", "copper")!.Mm2 > WireGauge.AreaM2(WireGauge.DiameterM(7)) * 1e6);
}
