using System.Text;

namespace InstallPacket.Packets.Forms;

/// <summary>Writes the two tools: a height from angles or a shadow, a true bearing from a compass.</summary>
internal static class FormToolWriter
{
    private static readonly (string Way, string[] Fields)[] Heights =
    [
        ("foot", ["distance", "top", "foot"]), ("eye", ["eye", "distance", "top"]), ("step", ["eye", "step", "near", "far"]),
        ("shadow", ["stick", "stick-shadow", "shadow"]),
    ];

    private static readonly (string Way, string[] Fields)[] Bearings =
        [("declination", ["reading", "declination"]), ("mark", ["reading", "mark-reading", "mark-true"])];

    private static readonly HashSet<string> Angles =
        ["top", "foot", "near", "far", "reading", "declination", "mark-reading", "mark-true"];

    /// <summary>Writes both.</summary>
    /// <param name="us">Whether a bare number is in feet.</param>
    public static void Append(StringBuilder page, Words words, bool us)
    {
        Tool(page, words, "height", Heights, us);
        Tool(page, words, "bearing", Bearings, us);
    }

    private static void Tool(StringBuilder page, Words words, string tool, (string Way, string[] Fields)[] ways, bool us)
    {
        string Say(string id) => HtmlText.Escape(words.Plain($"form.tools.{tool}.{id}"));
        page.Append($"<dialog class=\"tools\" id=\"tool-{tool}\" aria-labelledby=\"tool-{tool}-title\">");
        page.Append($"<h2 id=\"tool-{tool}-title\">{Say("deed")}</h2><div class=\"choices\">");
        foreach (var (way, _) in ways)
            page.Append($"<label class=\"choice\"><input type=\"radio\" name=\"tool-{tool}\" value=\"{way}\">")
                .Append($"<span>{Say("ways." + way)}</span></label>");
        page.Append("</div>\n");
        foreach (var field in ways.SelectMany(w => w.Fields).Distinct())
        {
            var (dimension, unit) = Angles.Contains(field) ? ("angle", "deg") : ("length", us ? "ft" : "m");
            page.Append($"<div class=\"tool-field\" data-field=\"{field}\" ");
            page.Append($"data-ways=\"{string.Join(' ', ways.Where(w => w.Fields.Contains(field)).Select(w => w.Way))}\">");
            page.Append($"<label class=\"sub\" for=\"t-{tool}-{field}\">{Say("fields." + field)}</label><div class=\"measure\">");
            page.Append($"<input id=\"t-{tool}-{field}\" autocomplete=\"off\" data-dimension=\"{dimension}\" data-unit=\"{unit}\">");
            page.Append($"<span class=\"unit-name\">{unit}</span></div></div>\n");
        }
        page.Append("<p class=\"said result\" aria-live=\"polite\"></p><div class=\"deeds\">");
        foreach (var deed in new[] { "take", "close" })
            page.Append($"<button type=\"button\" class=\"{deed}\">{HtmlText.Escape(words.Plain("form.deeds." + deed))}</button>");
        page.Append("</div></dialog>\n");
    }
}
