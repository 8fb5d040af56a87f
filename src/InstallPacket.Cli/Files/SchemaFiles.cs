using InstallPacket.Plans;

namespace InstallPacket.Cli.Files;

/// <summary>The schemas for editors, beside the jobs, and the first lines by which files name them.</summary>
internal static class SchemaFiles
{
    private const string Folder = "_shared/schema";
    private const string Named = "# yaml-language-server: $schema=";

    /// <summary>The first line of a job file.</summary>
    public const string OfJob = Named + "../" + Folder + "/job.schema.json\n";

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

    private static void Write(string folder, string name, System.Text.Json.Nodes.JsonObject schema)
    {
        var (path, text) = (Path.Combine(folder, name + ".schema.json"), PlanJson.Text(schema));
        if (!File.Exists(path) || File.ReadAllText(path) != text) File.WriteAllText(path, text);
    }
}
