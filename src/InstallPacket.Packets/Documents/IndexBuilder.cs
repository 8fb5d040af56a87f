using System.Text;
using System.Text.Json.Nodes;
using InstallPacket.Packets.Language;

namespace InstallPacket.Packets.Documents;

/// <summary>One job on the page of all jobs.</summary>
/// <param name="Id">The job.</param>
/// <param name="Title">Its title.</param>
/// <param name="Date">Day of work, ISO; empty when unknown.</param>
/// <param name="State"><c>planned</c>, <c>stopped</c>, <c>stale</c> or <c>not built</c>.</param>
/// <param name="Findings">Findings in words.</param>
public sealed record IndexRow(string Id, string Title, string Date, string State, string Findings);

/// <summary>The page of all jobs.</summary>
/// <param name="theme">The theme.</param>
/// <param name="language">The language of the page.</param>
public sealed class IndexBuilder(Theme theme, string language = "en-US")
{
    /// <summary>The page.</summary>
    public byte[] Build(IReadOnlyList<IndexRow> rows)
    {
        var model = new JsonObject
        {
            ["jobs"] = new JsonArray([.. rows.Select(r => (JsonNode)new JsonObject
            {
                ["id"] = r.Id, ["title"] = r.Title, ["date"] = r.Date, ["state"] = r.State, ["findings"] = r.Findings,
                    ["link"] = r.State != "not built" ? Uri.EscapeDataString(r.Id) + "/index.html" : null,
            })]),
        };
        var words = new JobWords(theme.Words(language), false, LevelUnit.DBuV);
        var markdown = new TemplateRenderer(theme, words).Render("jobs", model);
        var document = new PacketDocument("index", words.Say("pages.jobs.title"), TidyMarkdown.Of(markdown), new Dictionary<string,
            Drawing>(), null, "", words);
        return Encoding.UTF8.GetBytes(HtmlDocumentWriter.Write(document, theme));
    }
}
