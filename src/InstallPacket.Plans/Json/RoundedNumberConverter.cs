using System.Text.Json;
using System.Text.Json.Serialization;

namespace InstallPacket.Plans.Json;

/// <summary>Writes numbers rounded to nine decimals, so that the last bit of a machine's mathematics never shows in a diff.</summary>
internal sealed class RoundedNumberConverter : JsonConverter<double>
{
    private const int Decimals = 9;

    public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => reader.GetDouble();

    public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options)
    {
        if (!double.IsFinite(value)) { writer.WriteNullValue(); return; }
        var rounded = Math.Round(value, Decimals);
        writer.WriteNumberValue(rounded == 0 ? 0 : rounded);
    }
}
