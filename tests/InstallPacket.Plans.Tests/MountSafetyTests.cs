using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

/// <summary>Area of the antenna, ladder, falls, overhead wires, hazards, attic.</summary>
public class MountSafetyTests
{
    private const string Alder = "alder-lane/job.yaml";
    private const string Antennas = "_shared/parts/antennas.yaml";

    private static Plan Of(params (string Old, string With)[] edits) => DemoPlans.House("alder-lane", edits.Aggregate(DemoJobs.Load(), (jobs, e) => jobs.With(Alder, e.Old, e.With)));

    private static bool Warns(Plan plan, string hazard) => plan.Mounting.Hazards.Any(h => h.Id == hazard);

    // Bars: 1.2 for round ones, 2.0 for square ones; the greater of front and side. 1.2 x 20 x 0.01 x 0.5 + 1.2 x 0.2 x 0.2 = 0.168; side 2 x 0.02 x 1.5 = 0.06.
    [Fact]
    public void An_outline_gives_the_area_of_its_bars()
    {
        var outline = "    outline:\n      - { count: 20, width: 10 mm, length: 500 mm, faces: front }\n      - { count: 1, width: 200 mm, length: 200 mm, faces: front }\n      - { count: 1, width: 20 mm, length: 1.5 m, form: square, faces: side }\n";
        const string area = "    mass: 2.5 kg\n    wind-area: 0.16 m2\n";
        var jobs = DemoJobs.Load().With(Antennas, area, "    mass: 2.5 kg\n" + outline);
        var plan = DemoPlans.House("alder-lane", jobs);
        Assert.Equal(1.2 * (20 * 0.01 * 0.5 + 0.2 * 0.2), plan.Mounting.Wind!.AreaM2, 9);
        var stated = DemoPlans.House("alder-lane", DemoJobs.Load().With(Antennas, area, "    mass: 2.5 kg\n    wind-area: 0.168 m2\n"));
        Assert.Equal(stated.Mounting.Wind!.ForceN, plan.Mounting.Wind.ForceN, 9);
        Assert.Equal(stated.Check("fixing", "along").UseShare, plan.Check("fixing", "along").UseShare, 9);
    }

    // Foot out one quarter of the working length: L = H / sin(acos 1/4); the rails stand 3 ft over; sections overlap by 3 ft.
    [Fact]
    public void A_ladder_is_long_enough_and_bears_the_person()
    {
        var ladder = DemoPlans.House("alder-lane").Mounting.Ladder!;
        var sin = Math.Sin(Math.Acos(0.25));
        Assert.Equal(25 * MountHand.Foot / sin, ladder.WorkingM, 9);
        Assert.Equal(ladder.WorkingM / 4, ladder.FootM, 9);
        Assert.Equal(28 * MountHand.Foot / sin, ladder.RailM, 9);
        Assert.Equal(32, ladder.SizeFt);
        Assert.Equal("I", ladder.Rating);
        Assert.Equal("IA", Of(("ladder-load: 235 lb", "ladder-load: 251 lb")).Mounting.Ladder!.Rating);
        Assert.Equal("IA", Of(("ladder-load: 235 lb", "ladder-load: 300 lb")).Mounting.Ladder!.Rating);
        Assert.True(Of(("ladder-load: 235 lb", "ladder-load: 376 lb")).Has("ladder-overloaded"));
        Assert.Equal(40, Of(("work-height: 25 ft", "work-height: 29 ft")).Mounting.Ladder!.SizeFt);
        Assert.True(Of(("work-height: 25 ft", "work-height: 60 ft")).Has("ladder-too-short"));
    }

    [Theory]
    [InlineData("", "Caution"), InlineData("  fall-protection: none\n", "Stop"), InlineData("  fall-protection: harness\n", ""), InlineData("  fall-protection: edge\n", "")]
    public void Somebody_on_the_roof_is_kept_from_falling(string words, string severity)
    {
        var plan = Of(("  access: ladder\n", words + "  access: ladder-and-roof\n"));
        Assert.Equal(severity, plan.Findings.FirstOrDefault(f => f.Id == "fall-unprotected")?.Severity.ToString() ?? "");
        Assert.Equal(words.Contains("harness", StringComparison.Ordinal), Warns(plan, "rescue"));
        Assert.False(Of().Has("fall-unprotected"));
    }

    [Fact]
    public void Below_six_feet_no_law_of_the_family_us_asks_and_a_ladder_alone_is_no_roof() =>
        Assert.False(Of(("  access: ladder\n", "  access: ladder-and-roof\n"), ("work-height: 25 ft", "work-height: 5 ft")).Has("fall-unprotected"));

    // 10 ft and 4 in for each 10 kV above 50; the fall of the mast and half the antenna, or twice both lengths.
    [Theory]
    [InlineData("", 10), InlineData(", voltage: 12.5 kV", 10), InlineData(", voltage: 69 kV", 10 + 1.9 * 4 / 12), InlineData(", voltage: 345 kV", 10 + 29.5 * 4 / 12)]
    public void Voltage_widens_the_distance_to_a_wire(string voltage, double clearFt)
    {
        var line = Of(("distance: 52 ft, height: 18 ft", "distance: 52 ft, height: 18 ft" + voltage)).Mounting.PowerLines.Single();
        Assert.Equal(clearFt * MountHand.Foot, line.KeepClearM, 6);
        var mast = 10 * MountHand.Foot;
        Assert.Equal(Math.Max(2 * (1.9 + mast), mast + 0.95 + clearFt * MountHand.Foot), line.RequiredM, 6);
        Assert.True(line.Clear);
    }

    [Fact]
    public void A_wire_that_is_too_near_stops_the_job_and_the_ladder_is_looked_at_too()
    {
        var near = Of(("distance: 52 ft", "distance: 32 ft"));
        Assert.Equal(Severity.Stop, near.Finding("power-line-near").Severity);
        Assert.True(near.Mounting.Hazards.Single(h => h.Id == "overhead-wires").Stop);
        Assert.True(Of(("distance: 52 ft", "distance: 40 ft")).Has("ladder-near-line"));
        Assert.False(Of().Has("ladder-near-line"));
        Assert.Equal("clear", Of().Mounting.Hazards.Single(h => h.Id == "overhead-wires").State);
    }

    private const string Survey = "survey: { roof: sound, asbestos: none, behind: known, buried: none }";

    // Each word of the survey switches one hazard, and nothing else of the sheet.
    [Theory]
    [InlineData("asbestos: unknown", "asbestos", "unknown", false), InlineData("asbestos: suspected", "asbestos", "suspected", true), InlineData("old-mast: yes", "old-mast", "yes", false)]
    public void The_survey_switches_hazards_on(string word, string hazard, string state, bool stop)
    {
        var without = Survey.Replace("asbestos: none, ", "", StringComparison.Ordinal);
        var with = Of((Survey, word.StartsWith("asbestos", StringComparison.Ordinal) ? without.Replace("roof", word + ", roof", StringComparison.Ordinal) : Survey.Replace("roof", word + ", roof", StringComparison.Ordinal)));
        var found = with.Mounting.Hazards.Single(h => h.Id == hazard);
        Assert.Equal((state, stop), (found.State, found.Stop));
        Assert.False(Warns(Of(), hazard));
        Assert.Equal(Of().Mounting.Hazards, with.Mounting.Hazards.Where(h => h.Id != hazard));
        Assert.Equal(stop, with.Has("asbestos-suspected"));
    }

    [Fact]
    public void What_lies_behind_the_holes_is_told_as_the_survey_says()
    {
        string State(string word) => Of(("behind: known", "behind: " + word)).Mounting.Hazards.Single(h => h.Id == "drilling").State;
        Assert.Equal(["nothing", "known", "unknown"], new[] { State("nothing"), State("known"), State("unknown") });
    }

    [Fact]
    public void Buried_services_matter_only_where_the_ground_is_opened()
    {
        Assert.False(Warns(Of(("buried: none", "buried: unmarked")), "buried"));
        Plan Far(string word) => DemoPlans.House("far-meadow", DemoJobs.Load().With("far-meadow/job.yaml", "buried: marked", "buried: " + word));
        Assert.False(Warns(Far("none"), "buried"));
        Assert.Equal("marked", Far("marked").Mounting.Hazards.Single(h => h.Id == "buried").State);
        Assert.True(Far("unmarked").Has("buried-unmarked"));
        Assert.True(Far("unmarked").Mounting.Hazards.Single(h => h.Id == "buried").Stop);
    }

    [Fact]
    public void A_fragile_roof_stops_who_must_step_on_it()
    {
        var roof = ("  access: ladder\n", "  fall-protection: edge\n  access: ladder-and-roof\n");
        Assert.True(Of(roof, ("roof: sound", "roof: fragile")).Has("roof-fragile"));
        Assert.False(Of(("roof: sound", "roof: fragile")).Has("roof-fragile"));
        Assert.Equal("sound", Of(roof).Mounting.Hazards.Single(h => h.Id == "roof").State);
        Assert.False(Warns(Of(), "roof"));
    }

    [Fact]
    public void The_sheet_lists_only_what_applies()
    {
        Assert.Equal(["overhead-wires", "height", "roof", "weather", "falling-objects", "ballast"],
            DemoPlans.House("quay-loft").Mounting.Hazards.Select(h => h.Id).Where(h => h is not ("mains" or "live-internet" or "stray-voltage" or "attic" or "drilling" or "asbestos")));
        Assert.True(Warns(DemoPlans.House("far-meadow"), "guys"));
        Assert.False(Warns(Of(), "guys") || Warns(Of(), "ballast") || Warns(Of(), "chimney") || Warns(Of(), "old-mast"));
        Assert.True(Warns(Of(), "live-internet"));
        Assert.False(Warns(Of(("  existing-internet: coax\n", "  existing-internet: none\n")), "live-internet"));
        Assert.False(Warns(Of(("  mast-length: 10 ft", "  mast-length: 9 ft")), "lifting"));
        Assert.True(Warns(Of(), "lifting"));
    }

    [Fact]
    public void In_the_attic_there_is_no_wind_to_hold_against()
    {
        var plan = Of(("kind: gable-bracket", "kind: attic"), ("  access: ladder\n", "  access: inside\n"));
        Assert.Null(plan.Mounting.Wind);
        Assert.Null(plan.Mounting.LoadPath);
        Assert.Null(plan.Mounting.Ladder);
        Assert.True(Warns(plan, "attic"));
        Assert.False(Warns(plan, "weather") || Warns(plan, "height") || Warns(plan, "falling-objects"));
        Assert.DoesNotContain(plan.Findings, f => f.Id is "wind-unknown" or "capacity-unknown" or "strength-unknown");
    }
}
