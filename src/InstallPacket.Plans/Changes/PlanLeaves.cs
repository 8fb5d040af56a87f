using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Sources;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace InstallPacket.Plans.Changes;

/// <summary>A leaf of a plan: a number, a word, or a list of words.</summary>
/// <param name="Subject">What it is about: the groups and entries above it.</param>
/// <param name="Key">Its own name, which carries the unit of a number.</param>
/// <param name="Number">The number, or null for words.</param>
/// <param name="Text">The words; empty for a number.</param>
/// <param name="Weight">How many words a list holds; 1 for anything else.</param>
internal sealed record PlanLeaf(string Subject, string Key, double? Number, string Text, int Weight = 1)
{
    /// <summary>What two leaves share that are compared.</summary>
    public string Path => $"{Subject}: {Key}";
}

/// <summary>Lists the leaves of a plan's tree in its order.</summary>
internal static class PlanLeaves
{
    // What an entry of a list is called by, the first of these that it has.
    private static readonly string[] Names =
        ["id", "station", "name", "element", "outlet", "amplifier", "role", "run", "use", "what", "point", "site", "model", "label",
            "part", "stock", "clock", "path", "number"];

    /// <summary>All leaves but those of the parts that are compared apart.</summary>
    public static IReadOnlyList<PlanLeaf> Of(JsonObject plan)
    {
        var leaves = new List<PlanLeaf>();
        foreach (var (key, value) in plan)
            if (!PlanComparer.Apart.ContainsKey(key)) Walk(value, "", key, leaves);
        return leaves;
    }

    private static void Walk(JsonNode? node, string subject, string key, List<PlanLeaf> leaves)
    {
        switch (node)
        {
            case JsonObject group:
                foreach (var (name, value) in group) Walk(value, Below(subject, key), name, leaves);
                break;
            case JsonArray list when list.Any(e => e is JsonObject):
                Entries(list, Below(subject, key), leaves);
                break;
            case JsonArray words:
                leaves.Add(new(subject, key, null, string.Join(", ", words.Select(w => w?.ToString())), Math.Max(1, words.Count)));
                break;
            default:
                leaves.Add(node?.GetValueKind() == JsonValueKind.Number ? new(subject, key, CsvNumber.Of(node.ToJsonString()), "")
                    : new(subject, key, null, Words(node)));
                break;
        }
    }

    private static string Below(string subject, string key) => subject.Length == 0 ? key : $"{subject}, {key}";

    private static string Words(JsonNode? node) =>
        node?.GetValueKind() switch { null => "", JsonValueKind.True => "yes", JsonValueKind.False => "no", _ => node.ToString() };

    // Entries of one name are told apart by their order among each other.
    private static void Entries(JsonArray list, string subject, List<PlanLeaf> leaves)
    {
        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < list.Count; i++)
        {
            var name = Name(list[i]) ?? UnitText.Number(i + 1, 0);
            seen[name] = seen.GetValueOrDefault(name) + 1;
            var called = seen[name] == 1 ? name : $"{name} ({UnitText.Number(seen[name], 0)})";
            foreach (var (key, value) in list[i] as JsonObject ?? []) Walk(value, $"{subject} {called}", key, leaves);
        }
    }

    private static string? Name(JsonNode? entry) =>
        entry is JsonObject o && Names.FirstOrDefault(n => o[n] is JsonValue v && v.ToString().Length > 0) is { } name
            ? o[name]!.ToString() : null;
}
