namespace InstallPacket.Jobs.Tests.Layers;

/// <summary>What a firm, a kit, a job and the program say about one key, and who wins.</summary>
public class JobLayersTests
{
    private const string Kit = """
        what: Antenna and amplifier on one bracket
        takes:
          at: { holds: point }
          gain: { holds: ratio, absent: 11 dB }
          lead: { holds: group, needed: no }
        out: amplifier
        gives:
          reception: { reserve: 7 dB }
          cabling:
            chain:
              antenna: { part: antenna, at: <at> }
              amplifier: { part: amplifier, at: <at>, from: antenna, setting: <gain>, run: <lead> }
          mounting: { on: "the eave at <at>" }
        """;

    private const string Job = """
        format: 1
        title: A house
        customer: { name: Nobody (invented) }
        kits:
          top: { kit: head, at: eave }
        cabling:
          chain:
            G1: { part: grounding-block, at: box, from: top, run: { cable: coax, path: [eave, box], way: outside } }
            O1: { outlet: Den, at: den, from: top.2, run: R7 }
        """;

    private const string Firm = """
        code: eu
        prepared-by: { name: A firm (invented) }
        reception: { reserve: 5 dB, chance: 80 % }
        cabling: { outlet: wall-plate }
        """;

    [Fact]
    public void The_nearest_to_the_job_wins_and_every_value_names_who_said_it()
    {
        var full = Full(Job);
        Assert.Contains("  reserve: 7 dB  # _shared/kits/head.yaml, line 8\n", full, StringComparison.Ordinal);
        Assert.Contains("  chance: 80 %  # _shared/firm.yaml, line 3\n", full, StringComparison.Ordinal);
        Assert.Contains("  multipath: 2 dB  # built in\n", full, StringComparison.Ordinal);
        Assert.Contains("title: A house  # line 2\n", full, StringComparison.Ordinal);
        Assert.Contains("  reserve: 9 dB  # line 10\n", Full(Job + "\nreception: { reserve: 9 dB }\n"), StringComparison.Ordinal);
    }

    [Fact]
    public void Elements_and_runs_of_a_kit_are_called_after_it_and_the_job_connects_to_its_output()
    {
        var full = Full(Job);
        Assert.Contains("    top-antenna:\n      part: antenna  #", full, StringComparison.Ordinal);
        Assert.Contains("      from: top-antenna  #", full, StringComparison.Ordinal);
        Assert.Contains("      from: top-amplifier  # line 8\n", full, StringComparison.Ordinal);
        Assert.Contains("      from: top-amplifier.2  # line 9\n", full, StringComparison.Ordinal);
    }

    [Fact]
    public void A_value_that_need_not_be_given_leaves_its_key_out_and_one_that_is_absent_takes_its_own()
    {
        var full = Full(Job);
        Assert.Contains("      setting: 11 dB  # _shared/kits/head.yaml, line 4\n", full, StringComparison.Ordinal);
        Assert.DoesNotContain("run: top-amplifier", full, StringComparison.Ordinal);
        var with = Full(Job.Replace("at: eave }", "at: eave, gain: 14 dB, lead: { cable: coax, path: [eave, box], way: outside } }", StringComparison.Ordinal));
        Assert.Contains("      setting: 14 dB  # line 5\n", with, StringComparison.Ordinal);
        Assert.Contains("      run: top-amplifier  #", with, StringComparison.Ordinal);
        Assert.Contains("    top-amplifier:\n      cable: coax  # line 5\n", with, StringComparison.Ordinal);
    }

    [Fact]
    public void A_blank_within_a_text_is_filled() =>
        Assert.Contains("  on: \"the eave at eave\"  # _shared/kits/head.yaml, line 13\n", Full(Job), StringComparison.Ordinal);

    [Fact]
    public void A_run_that_is_written_at_an_element_is_called_after_it()
    {
        var full = Full(Job);
        Assert.Contains("    G1:\n      cable: coax  # line 8\n", full, StringComparison.Ordinal);
        Assert.Contains("      run: R7  # line 9\n", full, StringComparison.Ordinal);
        Assert.Contains("      part: wall-plate  # _shared/firm.yaml, line 4\n", full, StringComparison.Ordinal);
        Assert.Contains("      serves: Den  # line 9\n", full, StringComparison.Ordinal);
    }

    [Fact]
    public void A_map_with_nothing_in_it_says_none_and_is_not_filled()
    {
        var files = Files(Job + "\nsiting: { obstructions: {} }\n", Firm + "\nsiting: { obstructions: { barn: { kind: building } } }\n");
        Assert.Contains("  obstructions: {}  #", JobInFull.Of(files, "job", new FindingList()), StringComparison.Ordinal);
    }

    [Fact]
    public void A_place_on_one_line_is_latitude_and_longitude()
    {
        var full = Full(Job + "\nsiting: { place: \"44.29 N, 71.61 W\" }\n");
        Assert.Contains("  latitude: 44.29 N  # line 10\n", full, StringComparison.Ordinal);
        Assert.Contains("  longitude: 71.61 W  # line 10\n", full, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("west wall, 2 m from the south corner, 1.5 m up", 4, "6 m", "1.5 m")]
    [InlineData("west wall, 2 m from the north corner, at the eaves", 4, "2 m", "5 m")]
    [InlineData("east gable, at the ridge", 2, "4 m", "8 m")]
    [InlineData("front wall, 6 ft from the left corner, 5 ft up", 1, "1.8288 m", "5 ft")]
    [InlineData("right wall, 1 m from the back corner, 1 m up", 2, "7 m", "1 m")]
    public void A_place_in_words_is_a_point_on_a_wall(string words, int wall, string along, string height)
    {
        var full = Full(Job + $$"""

            routing:
              house: { width: 12 m, depth: 8 m, front: 180 deg true, eaves: 5 m, ridge: 8 m }
              places: { spot: "{{words}}" }

            """);
        Assert.Contains($"    spot:\n      wall: {wall}  #", full, StringComparison.Ordinal);
        Assert.Contains($"      along: {along}  #", full, StringComparison.Ordinal);
        Assert.Contains($"      height: {height}  #", full, StringComparison.Ordinal);
        Assert.Contains("  plan-up: 0 deg true  #", full, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_printed_in_full_is_printed_the_same_again()
    {
        var full = Full(Job);
        var again = JobInFull.Of(Files(full, ""), "job", new FindingList())!;
        Assert.Equal(Said(full), Said(again));
    }

    private static string Said(string text) => string.Join('\n', text.Split('\n').Select(l => l.Split("  #")[0]));

    private static string Full(string job) => JobInFull.Of(Files(job, Firm), "job", new FindingList())!;

    private static FewFiles Files(string job, string firm) =>
        new(("job/job.yaml", job), ("_shared/kits/head.yaml", Kit), firm.Length == 0 ? ("_", "") : ("_shared/firm.yaml", firm));

    private sealed class FewFiles(params (string Path, string Text)[] all) : IJobFiles
    {
        public JobFile Read(string path, int maxBytes) => all.FirstOrDefault(f => f.Path == path) is { Path: not null } found
            ? new(path, FileState.Present, found.Text.ReplaceLineEndings("\n")) : new(path, FileState.Absent, "");

        public IReadOnlyList<string> List(string folder) => [.. all.Select(f => f.Path).Where(p => p.StartsWith(folder + "/", StringComparison.Ordinal))];
    }
}
