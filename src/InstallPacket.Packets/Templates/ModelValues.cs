using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Fluid;
using Fluid.Values;

namespace InstallPacket.Packets.Templates;

/// <summary>Gives a JSON tree to templates without reflection; a name that is not there is an error that tells its path.</summary>
internal static class ModelValues
{
    /// <summary>A value of the tree as templates see it.</summary>
    /// <param name="node">The value; null is nil.</param>
    /// <param name="path">Where it stands, for messages.</param>
    public static FluidValue Of(JsonNode? node, string path) => node switch
    {
        null => new KnownNull(path),
        JsonObject o => new DictionaryValue(new ModelObject(o, path)),
        JsonArray a => new ArrayValue([.. a.Select((item, i) => Of(item, string.Create(CultureInfo.InvariantCulture, $"{path}[{i}]")))]),
        _ => Scalar(node, path),
    };

    private static FluidValue Scalar(JsonNode node, string path) => node.GetValueKind() switch
    {
        JsonValueKind.String => new StringValue(node.GetValue<string>()),
        JsonValueKind.True => BooleanValue.True,
        JsonValueKind.False => BooleanValue.False,
        JsonValueKind.Null => new KnownNull(path),
        JsonValueKind.Number => NumberValue.Create(Number(node, path)),
        var kind => throw new InvalidDataException($"the model has a value of kind {kind} at '{path}'"),
    };

    // Through the text, because a node made in memory and one read from a file hold different number types.
    private static decimal Number(JsonNode node, string path) =>
        decimal.TryParse(node.ToJsonString(), NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? number
            : throw new InvalidDataException($"the number at '{path}' is too large for a template");

    /// <summary>
    /// A value that is there and null. The engine's strict mode takes every nil for an unknown name, so this one does not admit to
    /// being nil, but is empty, false and equal to nil in all else.
    /// </summary>
    private sealed class KnownNull(string path) : BaseNilValue
    {
        public override bool IsNil() => false;

        public override ValueTask<FluidValue> GetValueAsync(string name, TemplateContext context) =>
            throw new UnknownNameException(name, $"{path}.{name}", []);
    }

    private sealed class ModelObject(JsonObject node, string path) : IFluidIndexable
    {
        public int Count => node.Count;

        public IEnumerable<string> Keys => node.Select(p => p.Key);

        public bool TryGetValue(string name, out FluidValue value)
        {
            if (!node.TryGetPropertyValue(name, out var child)) throw new UnknownNameException(name, $"{path}.{name}", Keys);
            value = Of(child, $"{path}.{name}");
            return true;
        }
    }
}
