using System.Text.Json;
using System.Text.Json.Serialization;

namespace InstallPacket.Plans.Json;

/// <summary>Writes a member of a closed set as its word.</summary>
internal sealed class WordConverter<T> : JsonConverter<T> where T : struct, Enum
{
    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        Word.Read<T>(reader.GetString() ?? "") ?? throw new JsonException();

    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) => writer.WriteStringValue(Word.Of(value));
}

/// <summary>Writes a member of a closed set as its word, and what is not known as an empty text.</summary>
internal sealed class OptionalWordConverter<T> : JsonConverter<T?> where T : struct, Enum
{
    public override bool HandleNull => true;

    public override T? Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        Word.Read<T>(reader.GetString() ?? "");

    public override void Write(Utf8JsonWriter writer, T? value, JsonSerializerOptions options) =>
        writer.WriteStringValue(value is { } member ? Word.Of(member) : "");
}
