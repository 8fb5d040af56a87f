using Json.Schema;

namespace InstallPacket.Jobs.Tests.Keys;

/// <summary>What the reader refuses because of its form, an editor marks while it is typed; and what reads, it lets pass.</summary>
public class FormErrorTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(JobSchema.Tree().ToJsonString());

    public static TheoryData<string, string> Errors => new()
    {
        // units
        { "antenna-height: 8.4 m", "antenna-height: 8.4" },
        { "antenna-height: 8.4 m", "antenna-height: 8.4 meters" },
        { "antenna-height: 8.4 m", "antenna-height: 8.4 kg" },
        { "antenna-height: 8.4 m", "antenna-height: 8.4 M" },
        { "antenna-height: 8.4 m", "antenna-height: m 8.4" },
        { "antenna-height: 8.4 m", "antenna-height: about 8 m" },
        { "antenna-height: 8.4 m", "antenna-height: -8.4 m" },
        { "antenna-height: 8.4 m", "antenna-height: \"8,4 m\"" },
        { "ground: 118 m", "ground: 1 180 m" },
        { "ground: 118 m", "ground: \"1,180 m\"" },
        { "chance: 90 %", "chance: 90" },
        { "chance: 90 %", "chance: 0.9" },
        { "cold: -25 C", "cold: -25" },
        { "cold: -25 C", "cold: -25 K" },
        { "utc-offset: 2 h", "utc-offset: 2" },
        { "utc-offset: 2 h", "utc-offset: 02:00" },
        { "wall: 360 mm", "wall: 360mm wide" },
        { "eaves: 5.2 m", "eaves: 5..2 m" },
        { "speed: 24 m/s", "speed: 24" },
        { "speed: 24 m/s", "speed: 24 kt" },
        { "pull: 1.4 kN", "pull: 140 kg" },
        { "ladder-load: 110 kg", "ladder-load: 110" },
        { "slope: 5 deg", "slope: 5" },
        { "mast-foot: [6.5 m, 5.8 m, 6.4 m]", "mast-foot: [6.5, 5.8, 6.4]" },

        // directions and places
        { "plan-up: 341 deg true", "plan-up: 341 deg" },
        { "plan-up: 341 deg true", "plan-up: 341" },
        { "plan-up: 341 deg true", "plan-up: 341 true" },
        { "plan-up: 341 deg true", "plan-up: 341 deg north" },
        { "plan-up: 341 deg true", "plan-up: -19 deg true" },
        { "plan-up: 341 deg true", "plan-up: NNW" },
        { "latitude: 56.31000 N", "latitude: 56.31000" },
        { "latitude: 56.31000 N", "latitude: -56.31000" },
        { "latitude: 56.31000 N", "latitude: 56.31000 E" },
        { "latitude: 56.31000 N", "latitude: 56,31 N" },
        { "longitude: 14.21000 E", "longitude: 14.21000 O" },
        { "longitude: 14.21000 E", "longitude: 14 12 36 E" },

        // days, words, counts
        { "date: 2026-04-21", "date: 21.04.2026" },
        { "date: 2026-04-21", "date: 04/21/2026" },
        { "date: 2026-04-21", "date: 2026-13-21" },
        { "date: 2026-04-21", "date: 2026-4-21" },
        { "surroundings: residential", "surroundings: Residential" },
        { "kind: wall-bracket", "kind: wall bracket" },
        { "exposure: III", "exposure: 3" },
        { "units: metric", "units: meters" },
        { "count: 8", "count: eight" },
        { "count: 8", "count: 4.5" },
        { "count: 8", "count: 0" },
        { "thunder-days: 14", "thunder-days: 14 days" },
        { "format: 1", "format: 2" },
        { "title: Semi-detached house at Brook Terrace, wall bracket, three outlets", "title: \"\"" },

        // shapes and names
        { "power-lines: {}", "power-lines: none" },
        { "power-lines: {}", "power-lines: []" },
        { "want: [mux-a, mux-b, mux-c]", "want: []" },
        { "want: [mux-a, mux-b, mux-c]", "want: { mux-a: yes }" },
        { "want: [mux-a, mux-b, mux-c]", "want: all within 60" },
        { "lounge: [1.2 m, 0.4 m, 0.4 m]", "lounge: [1.2 m, 0.4 m]" },
        { "temperature: { cold: -25 C, hot: 60 C }", "temperature: -25 C" },
        { "stations: lindmark.csv", "stations: ../lindmark.csv" },
        { "stations: lindmark.csv", "stations: /home/lindmark.csv" },
        { "from: S1.3", "from: S1.x" },
        { "storeys: { ground:", "storeys: { the ground:" },
        { "on: the east gable wall, solid brick", "on: [east, gable]" },
    };

    [Theory]
    [MemberData(nameof(Errors))]
    public void A_form_error_is_refused_by_the_reader_and_by_the_schema(string good, string bad)
    {
        var text = DemoJobs.Text("brook-terrace");
        Assert.Contains(good, text, StringComparison.Ordinal);
        var at = text.IndexOf(good, StringComparison.Ordinal);
        var changed = text[..at] + bad + text[(at + good.Length)..];
        Assert.Contains(DemoJobs.Read(changed).Findings, f => f.Severity == Severity.Stop);
        Assert.False(Schema.IsValid(SchemaJson.Of(changed)), $"the schema allows `{bad}`");
    }

    [Theory]
    [InlineData("antenna-height: 8.4 m", "antenna-height: 27' 6\"")]
    [InlineData("antenna-height: 8.4 m", "antenna-height: 27'")]
    [InlineData("antenna-height: 8.4 m", "antenna-height: 27 ft 6 1/2 in")]
    [InlineData("antenna-height: 8.4 m", "antenna-height: 840cm")]
    [InlineData("wall: 360 mm", "wall: 14 1/4\"")]
    [InlineData("wall: 360 mm", "wall: 14-1/4 in")]
    [InlineData("latitude: 56.31000 N", "latitude: 56°18'36\" N")]
    [InlineData("latitude: 56.31000 N", "latitude: N 56.31")]
    [InlineData("latitude: 56.31000 N", "latitude: 56.31 deg N")]
    [InlineData("plan-up: 341 deg true", "plan-up: 341.5 deg magnetic")]
    [InlineData("want: [mux-a, mux-b, mux-c]", "want: all within 60 km")]
    [InlineData("want: [mux-a, mux-b, mux-c]", "want: [all within 40 mi]")]
    [InlineData("speed: 24 m/s", "speed: 54 mph")]
    [InlineData("ladder-load: 110 kg", "ladder-load: 240 lb")]
    public void What_reads_is_let_pass_by_both(string good, string other)
    {
        var text = DemoJobs.Text("brook-terrace");
        Assert.Contains(good, text, StringComparison.Ordinal);
        var changed = text.Replace(good, other, StringComparison.Ordinal);
        Assert.DoesNotContain(DemoJobs.Read(changed).Findings, f => f.Id is "wrong-type" or "unit-missing" or "unit-unknown" or "unknown-key");
        Assert.True(Schema.IsValid(SchemaJson.Of(changed)), $"the schema refuses `{other}`");
    }

    [Fact]
    public void Every_unit_of_every_kind_of_value_is_let_pass()
    {
        foreach (var dimension in Enum.GetValues<Calc.Quantities.Dimension>())
        {
            foreach (var unit in Calc.Quantities.UnitTable.For(dimension))
            {
                Assert.Matches(SchemaPatterns.Quantity(dimension, signed: false), $"1.5 {unit.Name}");
                Assert.Matches(SchemaPatterns.Quantity(dimension, signed: true), $"-3/4 {unit.Name}");
                Assert.DoesNotMatch(SchemaPatterns.Quantity(dimension, signed: true), $"1.5 {unit.Name}s");
            }
        }
    }

    public static TheoryData<string> Files => [.. Directory.GetFiles(DemoJobs.Folder, "*.yaml", SearchOption.AllDirectories)
        .Select(p => Path.GetRelativePath(DemoJobs.Folder, p).Replace('\\', '/')).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_file_of_the_demo_set_is_valid(string path)
    {
        var schema = path.StartsWith("_shared/parts/", StringComparison.Ordinal) ? JobSchema.Parts()
            : path.StartsWith("_shared/kits/", StringComparison.Ordinal) ? JobSchema.Kit()
            : path.StartsWith("_shared/", StringComparison.Ordinal) ? JobSchema.Firm() : JobSchema.Tree();
        var result = JsonSchema.FromText(schema.ToJsonString()).Evaluate(
            System.Text.Json.JsonSerializer.SerializeToElement(SchemaJson.Of(File.ReadAllText(Path.Combine(DemoJobs.Folder, path)))),
            new EvaluationOptions { OutputFormat = OutputFormat.List });
        Assert.True(result.IsValid, string.Join("\n", (result.Details ?? []).Where(d => !d.IsValid && d.Errors is not null)
            .Select(d => $"{d.InstanceLocation}: {string.Join("; ", d.Errors!.Values)}").Take(20)));
    }

    [Theory]
    [InlineData("parts: { s: { kind: splitter, name: Splitter, outputs: 2, loss: 4 } }")]
    [InlineData("parts: { s: { kind: splitter, name: Splitter, gain: 4 dB } }")]
    [InlineData("parts: { s: { kind: spliter, name: Splitter } }")]
    [InlineData("parts: { s: { kind: splitter } }")]
    [InlineData("parts: { s: { kind: splitter, name: Splitter, loss: { 50: 3 dB } } }")]
    [InlineData("parts: { our splitter: { kind: splitter, name: Splitter } }")]
    [InlineData("parts: {}")]
    [InlineData("part: {}")]
    public void A_form_error_in_a_parts_file_is_refused(string text) =>
        Assert.False(JsonSchema.FromText(JobSchema.Parts().ToJsonString()).IsValid(SchemaJson.Of(text)));

    [Theory]
    [InlineData("what: A kit\ngives: { reception: { reserve: 6 } }")]
    [InlineData("what: A kit\ngives: { recepton: {} }")]
    [InlineData("what: A kit\ntakes: { at: { holds: place } }\ngives: {}")]
    [InlineData("gives: {}")]
    public void A_form_error_in_a_kit_is_refused(string text) =>
        Assert.False(JsonSchema.FromText(JobSchema.Kit().ToJsonString()).IsValid(SchemaJson.Of(text)));

    [Fact]
    public void The_schema_says_units_range_and_north()
    {
        var schema = JobSchema.Tree();
        string Says(string section, string key) => (string)schema["properties"]![section]!["properties"]![key]!["description"]!;
        Assert.Contains("in m, cm, mm, km, ft, in or mi", Says("siting", "antenna-height"), StringComparison.Ordinal);
        Assert.Contains("a bearing with its north, for example `214 deg true`", Says("routing", "plan-up"), StringComparison.Ordinal);
        Assert.Contains("from 50 to 99 %", Says("reception", "chance"), StringComparison.Ordinal);
    }
}
