using System.Text;
using System.Text.Json.Nodes;
using InstallPacket.Plans;

namespace InstallPacket.Packets.Data;

/// <summary>Findings in the Static Analysis Results Interchange Format 2.1.0 (OASIS), which editors and code hosts read.</summary>
public static class Sarif
{
    /// <summary>One run with all findings.</summary>
    /// <param name="findings">The findings.</param>
    /// <param name="speak">Gives the texts of a finding.</param>
    /// <param name="version">Version of the program.</param>
    public static byte[] Write(IReadOnlyList<Finding> findings, Func<Finding, FindingText> speak, string version)
    {
        var rules = findings.Select(f => f.Id).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToList();
        var tree = new JsonObject
        {
            ["$schema"] = "https://json.schemastore.org/sarif-2.1.0.json",
            ["version"] = "2.1.0",
            ["runs"] = new JsonArray(new JsonObject
            {
                ["tool"] = new JsonObject
                {
                    ["driver"] = new JsonObject
                    {
                        ["name"] = "installpacket",
                        ["version"] = version,
                        ["rules"] = new JsonArray([.. rules.Select(id => (JsonNode)new JsonObject { ["id"] = id })]),
                    },
                },
                ["results"] = new JsonArray([.. findings.Select(f => (JsonNode)Result(f, speak(f), rules))]),
            }),
        };
        return Encoding.UTF8.GetBytes(PlanJson.Text(tree));
    }

    private static JsonObject Result(Finding f, FindingText text, List<string> rules) => new()
    {
        ["ruleId"] = f.Id,
        ["ruleIndex"] = rules.IndexOf(f.Id),
        ["level"] = f.Severity switch { Severity.Stop => "error", Severity.Caution => "warning", _ => "note" },
        ["message"] = new JsonObject { ["text"] = text.Found + (text.Limit.Length > 0 ? ". Limit: " + text.Limit : "") + ". Do: "
            + text.Remedy + "." },
        ["locations"] = new JsonArray(new JsonObject
        {
            ["physicalLocation"] = new JsonObject
            {
                ["artifactLocation"] = new JsonObject { ["uri"] = f.At.File },
                ["region"] = new JsonObject { ["startLine"] = Math.Max(1, f.At.Line), ["startColumn"] = Math.Max(1, f.At.Column) },
            },
        }),
    };
}
