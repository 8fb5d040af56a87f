using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;

namespace InstallPacket.Jobs.Tests.Keys;

/// <summary>YAML files as an editor sees them, and what a schema says of them.</summary>
internal static class SchemaJson
{
    /// <summary>A file as JSON.</summary>
    public static JsonObject Of(string yaml) => (JsonObject)Node(YamlGate.Load(new JobFile("job/job.yaml", FileState.Present, yaml), new FindingList())!);

    /// <summary>Whether a schema lets a file pass.</summary>
    public static bool IsValid(this JsonSchema schema, JsonObject file) => schema.Evaluate(JsonSerializer.SerializeToElement(file)).IsValid;

    // As a YAML 1.2 editor reads plain scalars: whole numbers, numbers, otherwise text.
    private static JsonNode Node(YamlNode node) => node switch
    {
        YamlMap map => new JsonObject(map.Entries.Select(e => KeyValuePair.Create(e.Key.Value, (JsonNode?)Node(e.Value)))),
        YamlList list => new JsonArray([.. list.Items.Select(i => (JsonNode?)Node(i))]),
        YamlScalar { Quoted: false } s when int.TryParse(s.Value, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var whole) => whole,
        YamlScalar { Quoted: false } s when double.TryParse(s.Value, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) => number,
        YamlScalar s => s.Value,
        _ => throw new InvalidOperationException(node.GetType().Name),
    };
}
