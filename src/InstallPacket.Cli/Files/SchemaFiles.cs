using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using InstallPacket.Packets.Forms;

namespace InstallPacket.Cli.Files;

/// <summary>The schemas for editors, beside the jobs, and the first lines by which files name them.</summary>
internal static class SchemaFiles
{
    private const string Folder = "_shared/schema";
    private const string Named = FormWriter.SchemaNamed;

    /// <summary>The first line of a job file.</summary>
    public const string OfJob = FormWriter.SchemaOfJob + "\n";

    /// <summary>The first line of a firm's file.</summary>
    public const string OfFirm = Named + "schema/firm.schema.json\n";

    /// <summary>The first line of a parts file.</summary>
    public const string OfParts = Named + "../schema/parts.schema.json\n";

    /// <summary>Writes the schemas where they are not there as they are now.</summary>
    /// <param name="jobs">The jobs folder.</param>
    public static void Write(string jobs)
    {
        var folder = Directory.CreateDirectory(Path.Combine(jobs, Folder)).FullName;
        Write(folder, "job", JobSchema.Tree());
        Write(folder, "firm", JobSchema.Firm());
        Write(folder, "kit", JobSchema.Kit());
        Write(folder, "parts", JobSchema.Parts());
    }

    // One line: an editor reads it, a person reads the page of keys.
    private static string Text(System.Text.Json.Nodes.JsonObject schema)
    {
        using var bytes = new MemoryStream();
        using (var writer = new Utf8JsonWriter(bytes, new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping })) schema.WriteTo(writer);
        return Encoding.UTF8.GetString(bytes.ToArray()) + "\n";
    }

    private static void Write(string folder, string name, System.Text.Json.Nodes.JsonObject schema)
    {
        var (path, text) = (Path.Combine(folder, name + ".schema.json"), Text(schema));
        if (!File.Exists(path) || File.ReadAllText(path) != text) File.WriteAllText(path, text);
    }
}
