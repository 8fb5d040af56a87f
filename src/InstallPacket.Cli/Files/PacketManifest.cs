using System.Security.Cryptography;
using System.Text.Json.Nodes;
using InstallPacket.Packets;
using InstallPacket.Plans;

namespace InstallPacket.Cli.Files;

/// <summary>The small file in each packet folder that says what the packet is, what it was made from, and which files it has.</summary>
/// <param name="Title">Title of the job.</param>
/// <param name="Date">Day of work.</param>
/// <param name="State"><c>planned</c> or <c>stopped</c>.</param>
/// <param name="Findings">Findings in words.</param>
/// <param name="Inputs">Hash of everything it was made from.</param>
/// <param name="Placed">Shared files of which findings name a line.</param>
/// <param name="Files">The files of the packet, this one left out.</param>
internal sealed record PacketManifest(string Title, string Date, string State, string Findings, string Inputs,
    IReadOnlyList<string> Placed, IReadOnlyList<ManifestFile> Files)
{
    /// <summary>Its name in the packet folder.</summary>
    public const string FileName = "packet.json";

    public string Text() => PlanJson.Text(new JsonObject
    {
        ["title"] = Title, ["date"] = Date, ["state"] = State, ["findings"] = Findings, ["inputs"] = Inputs,
        ["placed"] = new JsonArray([.. Placed.Select(p => (JsonNode)p)]),
        ["files"] = new JsonArray([.. Files.Select(f =>
            (JsonNode)new JsonObject { ["path"] = f.Path, ["size"] = f.Size, ["sha256"] = f.Sha256 })]),
    });

    /// <summary>Whether each file of the packet is there as it was written.</summary>
    /// <param name="folder">The packet folder.</param>
    public bool IsWhole(string folder) => Files.Count > 0 && Files.All(f => f.IsIn(folder));

    /// <summary>The manifest of a packet folder, or null when there is none that reads.</summary>
    public static PacketManifest? Of(string folder)
    {
        var path = Path.Combine(folder, FileName);
        try
        {
            // A pipe has no length, and reading it might never end.
            if (new FileInfo(path) is not { Exists: true, Length: > 0 } || JsonNode.Parse(File.ReadAllText(path)) is not JsonObject o || o["inputs"] is null) return null;
            string Get(string key) => o[key]?.GetValue<string>() ?? "";
            var files = (o["files"] as JsonArray ?? []).Select(f =>
                new ManifestFile(f!["path"]!.GetValue<string>(), f["size"]!.GetValue<long>(), f["sha256"]!.GetValue<string>()));
            var placed = (o["placed"] as JsonArray ?? []).Select(p => p!.GetValue<string>());
            return new(Get("title"), Get("date"), Get("state"), Get("findings"), Get("inputs"), [.. placed], [.. files]);
        }
        catch (Exception e) when (e is System.Text.Json.JsonException or InvalidOperationException or IOException or UnauthorizedAccessException or FormatException or NullReferenceException)
        {
            return null;
        }
    }
}

/// <summary>One file of a packet as it was written.</summary>
/// <param name="Path">Its path in the packet folder, with forward slashes.</param>
/// <param name="Size">Its size in bytes.</param>
/// <param name="Sha256">Hash of its bytes.</param>
internal sealed record ManifestFile(string Path, long Size, string Sha256)
{
    public static ManifestFile Of(OutputFile file) =>
        new(file.Path, file.Bytes.Length, Convert.ToHexStringLower(SHA256.HashData(file.Bytes)));

    /// <summary>Whether the file stands in a folder with these bytes.</summary>
    public bool IsIn(string folder)
    {
        try
        {
            var info = new FileInfo(System.IO.Path.Combine(folder, Path));
            if (!info.Exists || info.Length == 0 || info.Length != Size || info.LinkTarget is not null) return false;
            using var bytes = info.OpenRead();
            return Convert.ToHexStringLower(SHA256.HashData(bytes)) == Sha256;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }
}
