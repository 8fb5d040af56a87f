using System.Text.Json.Nodes;

namespace InstallPacket.Jobs.Keys;

/// <summary>
/// The JSON Schema of a job file, for editors; written from the catalogue. What a job needs may come from the firm's file or a kit, which
/// an editor does not see: only the items of lists, which are taken whole, say what they need.
/// </summary>
public static class JobSchema
{
    /// <summary>The schema (draft 2020-12).</summary>
    public static JsonObject Tree()
    {
        var schema = Group(KeyCatalogue.Job, whole: false);
        schema.Insert(0, "$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.Insert(1, "title", "Install packet job");
        return schema;
    }

    private static JsonObject Of(KeyKind kind, bool whole = false) => kind switch
    {
        GroupKind g => Group(g, whole),
        TreeKind => new() { ["type"] = "object" },
        IShortKind s => new() { ["anyOf"] = new JsonArray(Of(s.Full), Of(s.Other)) },
        IMapKind m =>
            new() { ["type"] = "object", ["minProperties"] = m.Min, ["maxProperties"] = m.Max, ["additionalProperties"] = Of(m.Item) },
        IListKind l => new() { ["type"] = "array", ["minItems"] = l.Min, ["maxItems"] = l.Max, ["items"] = Of(l.Item, whole: true) },
        PositionKind p =>
            new() { ["type"] = "array", ["minItems"] = p.Axes.Length, ["maxItems"] = p.Axes.Length,
            ["items"] = Text("a length with its unit") },
        IWordKind w => Words(w),
        IntegerKind i => new() { ["type"] = "integer", ["minimum"] = i.Min, ["maximum"] = i.Max },
        NumberKind n => new() { ["type"] = "number", ["minimum"] = n.Min, ["maximum"] = n.Max },
        CurveKind c =>
            new() { ["anyOf"] = new JsonArray(Text(ScalarChecker.Expectation(c)),
            new JsonObject { ["type"] = "object", ["additionalProperties"] = Text("a value with its unit") }) },
        TextKind t => new() { ["type"] = new JsonArray("string", "number"), ["maxLength"] = t.MaxCharacters },
        DateKind => new() { ["type"] = "string", ["format"] = "date" },
        _ => Text(ScalarChecker.Expectation(kind)),
    };

    private static JsonObject Group(GroupKind group, bool whole)
    {
        var properties = new JsonObject();
        foreach (var key in group.Keys)
        {
            var schema = Of(key.Kind, whole);
            schema["description"] = key.Meaning;
            if (key.Default is not null) schema["default"] = key.Default;
            properties[key.Name] = schema;
        }
        return new()
        {
            ["type"] = "object",
            ["properties"] = properties,
            ["required"] = new JsonArray([.. group.Keys.Where(k => k.Required && whole).Select(k => (JsonNode)k.Name)]),
            ["additionalProperties"] = false,
        };
    }

    // YAML 1.1 editors read yes and no as booleans.
    private static JsonObject Words(IWordKind w) => w.Words.Contains("yes")
        ? new() { ["enum"] = new JsonArray([.. w.Words.Select(x => (JsonNode)x), true, false]) }
        : new() { ["enum"] = new JsonArray([.. w.Words.Select(x => (JsonNode)x)]) };

    private static JsonObject Text(string expectation) => new() { ["type"] = "string", ["$comment"] = expectation };
}
