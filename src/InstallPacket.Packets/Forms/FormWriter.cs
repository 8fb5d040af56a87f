using System.Text;
using System.Text.Json.Nodes;

namespace InstallPacket.Packets.Forms;

/// <summary>Writes the survey form: one page that needs no network and no other file.</summary>
public static class FormWriter
{
    /// <summary>How the first line of a file begins that names its schema to an editor.</summary>
    public const string SchemaNamed = "# yaml-language-server: $schema=";

    /// <summary>The first line of a job file, where the program writes the schemas beside the jobs.</summary>
    public const string SchemaOfJob = SchemaNamed + "../_shared/schema/job.schema.json";

    private const string StyleFile = "style/form.css";

    /// <summary>Writes the page.</summary>
    /// <param name="library">What the folder of jobs offers.</param>
    /// <param name="theme">How it looks and what it says.</param>
    /// <returns>The page, lines ended by LF.</returns>
    /// <exception cref="DocumentException">The theme lacks the language or the style of the form.</exception>
    public static string Write(FormLibrary library, Theme theme)
    {
        var words = theme.Words(library.Language);
        var page = new StringBuilder();
        AppendHead(page, words, theme);
        AppendTop(page, words);
        page.Append("<main id=\"content\" tabindex=\"-1\">\n");
        var questions = new FormQuestionWriter(page, words, new FormFieldWriter(page, words, library), library);
        foreach (var section in FormSections.All) AppendSection(page, words, section, questions);
        AppendCheck(page, words);
        page.Append("</main>\n");
        AppendBottom(page, words);
        FormToolWriter.Append(page, words, library.IsUs);
        page.Append($"<script type=\"application/json\" id=\"form-data\">{Data(library, words)}</script>\n");
        page.Append($"<script>{FormScript.Text}</script>\n</body>\n</html>\n");
        return page.ToString();
    }

    private static void AppendHead(StringBuilder page, Words words, Theme theme)
    {
        if (!theme.Files.TryGetValue(StyleFile, out var style)) throw new DocumentException($"the theme has no file '{StyleFile}'");
        page.Append($"<!doctype html>\n<html lang=\"{HtmlText.Escape(words.Language)}\">\n<head>\n<meta charset=\"utf-8\">\n");
        page.Append("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'; ");
        page.Append($"script-src '{FormScript.Hash}'; base-uri 'none'; form-action 'none'\">\n");
        page.Append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
        page.Append("<meta name=\"color-scheme\" content=\"light dark\">\n");
        page.Append($"<title>{Say(words, "title")}</title>\n<style>\n");
        page.Append(Encoding.UTF8.GetString(style).ReplaceLineEndings("\n").Replace("</", "<\\/", StringComparison.Ordinal));
        page.Append("</style>\n</head>\n<body>\n");
    }

    private static void AppendTop(StringBuilder page, Words words)
    {
        page.Append($"<noscript><p class=\"alarm\">{Say(words, "no-script")}</p></noscript>\n");
        page.Append("<header class=\"bar top\"><p class=\"where\" id=\"where\"></p>");
        page.Append("<p class=\"count\" id=\"count\" aria-live=\"polite\"></p>");
        page.Append("<div class=\"strip\" id=\"strip\" aria-hidden=\"true\"></div></header>\n");
    }

    private static void AppendSection(StringBuilder page, Words words, FormSection section, FormQuestionWriter questions)
    {
        page.Append($"<section id=\"s-{section.Id}\" data-section=\"{section.Id}\">\n");
        page.Append($"<h1 tabindex=\"-1\">{Say(words, $"sections.{section.Id}.title")}</h1>\n");
        page.Append($"<p class=\"lead\">{Say(words, $"sections.{section.Id}.lead")}</p>\n");
        foreach (var question in section.Questions) questions.Append(question, "");
        page.Append("</section>\n");
    }

    private static void AppendCheck(StringBuilder page, Words words)
    {
        page.Append($"<section id=\"s-check\" data-section=\"check\">\n<h1 tabindex=\"-1\">{Say(words, "sections.check.title")}</h1>\n");
        page.Append($"<p class=\"lead\">{Say(words, "sections.check.lead")}</p>\n<div id=\"findings\"></div>\n<div class=\"deeds\">");
        foreach (var deed in new[] { "save", "send", "copy" })
            page.Append($"<button type=\"button\" id=\"{deed}\">{Say(words, "deeds." + deed)}</button>");
        page.Append($"</div>\n<p class=\"said\" id=\"done\" aria-live=\"polite\"></p>\n");
        page.Append($"<label class=\"ask\" for=\"job\">{Say(words, "job-text")}</label>\n");
        page.Append("<textarea id=\"job\" readonly rows=\"14\" spellcheck=\"false\"></textarea>\n");
        page.Append($"<details id=\"opening\"><summary>{Say(words, "open.title")}</summary>\n");
        page.Append($"<p class=\"why\">{Say(words, "open.why")}</p>\n");
        page.Append($"<label class=\"file\">{Say(words, "open.file")}");
        page.Append($"<input type=\"file\" id=\"open-file\" accept=\".yaml,.yml,.txt,text/plain\"></label>\n");
        page.Append($"<label class=\"ask\" for=\"open-text\">{Say(words, "open.text")}</label>");
        page.Append($"<textarea id=\"open-text\" rows=\"6\" spellcheck=\"false\"></textarea>\n");
        page.Append($"<button type=\"button\" id=\"open\">{Say(words, "open.deed")}</button>");
        page.Append($"<p class=\"said\" id=\"opened\" aria-live=\"polite\"></p></details>\n");
        page.Append($"<details><summary>{Say(words, "forget.title")}</summary><p class=\"why\">{Say(words, "forget.why")}</p>");
        page.Append($"<button type=\"button\" class=\"danger\" id=\"forget\">{Say(words, "forget.deed")}</button></details>\n</section>\n");
    }

    private static void AppendBottom(StringBuilder page, Words words)
    {
        page.Append("<p class=\"kept\" id=\"kept\" aria-live=\"polite\"></p>\n<nav class=\"bar bottom\">");
        foreach (var deed in new[] { "back", "sections", "next" })
            page.Append($"<button type=\"button\" id=\"{deed}\">{Say(words, "deeds." + deed)}</button>");
        page.Append($"</nav>\n<dialog id=\"all-sections\" aria-label=\"{Say(words, "deeds.sections")}\"><ol id=\"section-list\"></ol>");
        page.Append($"<button type=\"button\" id=\"close-sections\">{Say(words, "deeds.close")}</button></dialog>\n");
    }

    // What the script says and what it looks up; `<` would end the element.
    private static string Data(FormLibrary library, Words words)
    {
        var said = new JsonObject();
        foreach (var id in words.Ids.Where(i => i.StartsWith("form.said.", StringComparison.Ordinal)))
            said[id["form.said.".Length..]] = words.Plain(id);
        var data = new JsonObject
        {
            ["said"] = said, ["firm"] = library.Firm?.Name, ["units"] = FormUnits.Table(), ["us"] = library.IsUs,
            ["schema"] = SchemaOfJob,
            ["parts"] = new JsonObject(library.Parts.Parts.Values.OrderBy(p => p.Id, StringComparer.Ordinal)
                .Select(p => KeyValuePair.Create(p.Id, (JsonNode?)Word.Of(p.Kind)))),
            ["takes"] = new JsonObject(library.Kits.Select(k => KeyValuePair.Create(k.Name, (JsonNode?)new JsonArray([.. k.Takes
                .Where(t => t.Needed).Select(t => (JsonNode)t.Name)])))),
        };
        return data.ToJsonString().Replace("<", "\\u003c", StringComparison.Ordinal);
    }

    private static string Say(Words words, string id) => HtmlText.Escape(words.Plain("form." + id));
}
