using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Json.Schema;

namespace InstallPacket.Jobs.Tests.Keys;

/// <summary>The schema for editors and the reader agree, though the one is only generated from the catalogue that the other uses.</summary>
public class JobSchemaTests
{
    private static readonly JsonSerializerOptions Lines = new() { WriteIndented = true };

    private static readonly JsonSchema Schema = JsonSchema.FromText(JobSchema.Tree().ToJsonString());

    public static TheoryData<string> Ids => [.. DemoJobs.Ids];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Demo_jobs_are_valid(string id) => Assert.True(IsValid(Json(id)));

    [Theory]
    [MemberData(nameof(Ids))]
    public void An_unknown_key_in_any_group_is_refused_by_both(string id)
    {
        foreach (var path in Groups(Trees[id], KeyCatalogue.Job))
        {
            var job = Json(id);
            Group(job, path)["zzz-unknown"] = "1";
            Assert.False(IsValid(job), $"the schema allows an unknown key at {path}");
            Assert.Contains(Findings(job), f => f.Id == "unknown-key");
        }
    }

    // A pattern holds the unit; the range stands in words.
    [Theory]
    [InlineData("job", 150)]
    [InlineData("firm", 150)]
    [InlineData("kit", 150)]
    [InlineData("parts", 100)]
    public void Range_of_each_quantity_stands_in_words_at_its_key(string file, int least)
    {
        var schema = file switch { "job" => JobSchema.Tree(), "firm" => JobSchema.Firm(), "kit" => JobSchema.Kit(), _ => JobSchema.Parts() };
        var found = Described(schema, file).ToArray();
        Assert.True(found.Length >= least, $"only {found.Length} quantities");
        var silent = found.Where(f => !Regex.IsMatch(f.Description, @" a value from -?[0-9.]+(E[+-]?[0-9]+)? to -?[0-9.]+(E[+-]?[0-9]+)? .+ in "));
        var said = string.Join('\n', silent.Select(f => $"{f.Path}: {f.Description}"));
        Assert.True(said.Length == 0, said);
    }

    // Each property that is a quantity, or a list or a map of quantities, with what is said of it.
    private static IEnumerable<(string Path, string Description)> Described(JsonNode? node, string path)
    {
        if (node is JsonArray list) return list.SelectMany((n, i) => Described(n, $"{path}[{i}]"));
        if (node is not JsonObject map) return [];
        var properties = map["properties"] as JsonObject ?? [];
        var own = properties.Where(p => p.Value is JsonObject key && HoldsQuantity(key))
            .Select(p => ($"{path}.{p.Key}", (string?)p.Value!["description"] ?? ""));
        return own.Concat(map.Where(m => m.Key != "$defs").SelectMany(m => Described(m.Value, $"{path}.{m.Key}")));
    }

    private static bool HoldsQuantity(JsonObject key) => (string?)key["$ref"] is { } form ? Dimensions.Contains(form["#/$defs/".Length..])
        : new[] { key["items"], key["additionalProperties"] }.OfType<JsonObject>().Any(HoldsQuantity)
            || (key["anyOf"] is JsonArray ways && ways.OfType<JsonObject>().Any(HoldsQuantity));

    private static readonly HashSet<string> Dimensions = [.. Enum.GetValues<Calc.Quantities.Dimension>().Select(Word.Of)
        .SelectMany(d => new[] { d, d + "-signed" })];

    // What a job needs may come from the firm's file or a kit, which the schema does not see.
    [Theory]
    [InlineData("alder-lane")]
    [InlineData("brook-terrace")]
    public void A_key_that_the_schema_asks_for_is_asked_for_by_the_reader(string id)
    {
        var (left, asked) = (0, 0);
        foreach (var path in Groups(Trees[id], KeyCatalogue.Job))
        {
            foreach (var key in Group(Trees[id], path).Select(p => p.Key).ToArray())
            {
                var job = Json(id);
                Group(job, path).Remove(key);
                var missing = Findings(job).Any(f => f.Id == "missing-key");
                Assert.True(IsValid(job) || missing, $"{path}.{key}: the schema asks for it and the reader does not");
                if (missing) left++;
                if (!IsValid(job)) asked++;
            }
        }
        Assert.True(left > 50, $"only {left} required keys were left out");
        Assert.True(asked > 1, "the items of lists say what they need");
    }

    // Each key once, whichever job and whichever entry of a list has it.
    [Fact]
    public void A_list_in_place_of_any_group_or_word_is_refused_by_both()
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var id in DemoJobs.Ids)
        {
            foreach (var path in Groups(Trees[id], KeyCatalogue.Job))
            {
                foreach (var (key, value) in Group(Trees[id], path).Where(p => p.Value is not JsonArray).ToArray())
                {
                    if (!seen.Add($"{Form(path, KeyCatalogue.Job)}/{key} {value!.GetValueKind()}")) continue;
                    var job = Json(id);
                    Group(job, path)[key] = new JsonArray(new JsonArray());
                    Assert.False(IsValid(job), $"the schema allows a list at {path}.{key} of {id}, which holds {value}");
                    Assert.Contains(Findings(job), f => f.Id == "wrong-type");
                }
            }
        }
        Assert.True(seen.Count > 150, $"only {seen.Count} keys were tried");
    }

    [Theory]
    [InlineData("surroundings: residential", "surroundings: Residential")]
    [InlineData("count: 8", "count: 0")]
    [InlineData("count: 8", "count: 4.5")]
    [InlineData("count: 8", "count: four")]
    [InlineData("format: 1", "format: 2")]
    [InlineData("want: [mux-a, mux-b, mux-c]", "want: []")]
    [InlineData("lounge: [1.2 m, 0.4 m, 0.4 m]", "lounge: [1.2 m, 0.4 m]")]
    [InlineData("antenna-height: 8.4 m", "antenna-height: 8.4")]
    [InlineData("power-lines: {}", "power-lines: none")]
    public void Bad_values_are_refused_by_both(string good, string bad)
    {
        var text = DemoJobs.Text("brook-terrace");
        Assert.Contains(good, text, StringComparison.Ordinal);
        var changed = text.Replace(good, bad, StringComparison.Ordinal);
        Assert.False(IsValid(Convert(changed)));
        Assert.Contains(DemoJobs.Read(changed).Findings, f => f.Severity == Severity.Stop);
    }

    private static readonly Dictionary<string, JsonObject> Trees = DemoJobs.Ids.ToDictionary(id => id, id => Convert(DemoJobs.Text(id)), StringComparer.Ordinal);

    // A copy, to be changed.
    private static JsonObject Json(string id) => (JsonObject)Trees[id].DeepClone();

    private static bool IsValid(JsonObject job) => Schema.IsValid(job);

    // JSON is YAML, so the reader reads the changed tree as it is.
    private static IReadOnlyList<Finding> Findings(JsonObject job) => DemoJobs.Read(job.ToJsonString(Lines)).Findings;

    private static JsonObject Convert(string yaml) => SchemaJson.Of(yaml);

    // Paths of the groups whose keys the catalogue fixes; names that the author chose are passed through.
    private static IEnumerable<string> Groups(JsonNode? node, KeyKind kind, string path = "")
    {
        switch (kind)
        {
            case IShortKind spelled:
                foreach (var inner in Groups(node, spelled.Full, path)) yield return inner;
                break;
            case GroupKind group when node is JsonObject o:
                yield return path;
                foreach (var key in group.Keys.Where(k => o.ContainsKey(k.Name)))
                    foreach (var inner in Groups(o[key.Name], key.Kind, $"{path}/{key.Name}")) yield return inner;
                break;
            case IMapKind map when node is JsonObject o:
                foreach (var inner in o.SelectMany(e => Groups(e.Value, map.Item, $"{path}/{e.Key}"))) yield return inner;
                break;
            case IListKind list when node is JsonArray a:
                foreach (var inner in a.SelectMany((e, i) => Groups(e, list.Item, $"{path}/{i}"))) yield return inner;
                break;
        }
    }

    // The path with a star for names and numbers.
    private static string Form(string path, KeyKind kind)
    {
        var form = "";
        foreach (var step in path.Split('/', StringSplitOptions.RemoveEmptyEntries))
        {
            if (kind is IShortKind spelled) kind = spelled.Full;
            form += kind is GroupKind ? "/" + step : "/*";
            kind = kind switch { GroupKind g => g.Keys.Single(k => k.Name == step).Kind, IMapKind m => m.Item, IListKind l => l.Item, _ => kind };
        }
        return form;
    }

    private static JsonObject Group(JsonObject job, string path)
    {
        JsonNode at = job;
        foreach (var step in path.Split('/', StringSplitOptions.RemoveEmptyEntries))
            at = at is JsonArray list ? list[int.Parse(step, CultureInfo.InvariantCulture)]! : at[step]!;
        return (JsonObject)at;
    }
}
