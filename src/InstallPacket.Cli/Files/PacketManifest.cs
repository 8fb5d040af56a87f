using System.Text.Json.Nodes;
using InstallPacket.Plans;

namespace InstallPacket.Cli.Files;

/// <summary>The small file in each packet folder that says what the packet is and what it was made from.</summary>
/// <param name="Title">Title of the job.</param>
/// <param name="Date">Day of work.</param>
/// <param name="State"><c>planned</c> or <c>stopped</c>.</param>
/// <param name="Findings">Findings in words.</param>
/// <param name="Inputs">Hash of everything it was made from.</param>
internal sealed record PacketManifest(string Title, string Date, string State, string Findings, string Inputs)
{
    /// <summary>Its name in the packet folder.</summary>
    public const string FileName = "packet.json";

    public string Text() => PlanJson.Text(new JsonObject
    {
        ["title"] = Title, ["date"] = Date, ["state"] = State, ["findings"] = Findings, ["inputs"] = Inputs,
    });

    /// <summary>The manifest of a packet folder, or null when there is none that reads.</summary>
    public static PacketManifest? Of(string folder)
    {
        var path = Path.Combine(folder, FileName);
        try
        {
            if (!File.Exists(path) || JsonNode.Parse(File.ReadAllText(path)) is not JsonObject o) return null;
            string Get(string key) => o[key]?.GetValue<string>() ?? "";
            return new(Get("title"), Get("date"), Get("state"), Get("findings"), Get("inputs"));
        }
        catch (Exception e) when (e is System.Text.Json.JsonException or InvalidOperationException or IOException)
        {
            return null;
        }
    }
}
