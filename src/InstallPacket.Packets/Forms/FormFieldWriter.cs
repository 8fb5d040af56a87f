using System.Globalization;
using System.Text;
using InstallPacket.Calc.Quantities;

namespace InstallPacket.Packets.Forms;

/// <summary>Writes the field of a question: label, reason and control, as the kind of its key asks.</summary>
internal sealed class FormFieldWriter(StringBuilder page, Words words, FormLibrary library)
{
    private const int MostButtons = 5;
    private const int LongText = 250;

    // Keys that hold a height above the ground, which angles or a shadow can give.
    private static readonly string[] Heights = ["eaves", "ridge", "height", "antenna-height", "work-height"];

    // Words for the corner and the side of a place; those of the reader of places.
    private static readonly string[] Sides = ["front", "back", "left", "right", "north", "east", "south", "west"];
    private static readonly string[] Corners = [.. Sides, "left-end", "right-end"];

    /// <summary>The name by which the script knows a control.</summary>
    public static string KindOf(FormQuestion question, Key? key) => question.Shape switch
    {
        FormShape.Coordinates => "coordinates",
        FormShape.WallPlace => "place",
        FormShape.Stations or FormShape.MoreKits => "ticks",
        FormShape.KitOrPart or FormShape.MountKit => "select",
        FormShape.List => "list",
        FormShape.ListOrNone => "list-or-none",
        FormShape.YesNo or FormShape.Gate or FormShape.HouseForm or FormShape.Corner => "choice",
        FormShape.Text => "text",
        FormShape.Key => key?.Kind switch
        {
            QuantityKind => "quantity",
            BearingKind => "bearing",
            IntegerKind => "whole",
            DateKind => "date",
            IWordKind w => w.Words.Count <= MostButtons ? "choice" : "select",
            _ when question.Parts.Count > 0 => "select",
            ReferenceKind { Target: ReferenceTarget.Part } => "select",
            _ => "text",
        },
    };

    /// <summary>Writes it.</summary>
    /// <param name="question">The question.</param>
    /// <param name="key">Its key; null when it has none.</param>
    /// <param name="id">Its name on the page.</param>
    /// <param name="ask">The question as HTML.</param>
    /// <param name="why">The reason as HTML.</param>
    public void Append(FormQuestion question, Key? key, string id, string ask, string why)
    {
        var kind = KindOf(question, key);
        var grouped = kind is "choice" or "ticks" or "place" or "bearing" or "list-or-none" or "list";
        page.Append(grouped ? $"<fieldset aria-describedby=\"w-{id}\"><legend class=\"ask\">{ask}</legend>\n"
            : $"<label class=\"ask\" for=\"f-{id}\">{ask}</label>\n");
        page.Append($"<p class=\"why\" id=\"w-{id}\">{why}</p>\n");
        switch (kind)
        {
            case "quantity": Quantity(id, (QuantityKind)key!.Kind, Heights.Contains(key.Name)); break;
            case "bearing": Bearing(id); break;
            case "whole": Whole(id, (IntegerKind)key!.Kind); break;
            case "choice": Buttons(id, Offered(question, key), key?.Name ?? question.Id); break;
            case "list-or-none": Buttons(id, ["some", "none"], "list-or-none"); break;
            case "ticks": Ticks(id, question); break;
            case "select": Select(id, question, key); break;
            case "place": Place(id); break;
            case "coordinates": Coordinates(id); break;
            case "list": break;
            default: Text(id, kind, key); break;
        }
        if (grouped) page.Append("</fieldset>\n");
    }

    /// <summary>A word of the catalogue as a person reads it.</summary>
    /// <param name="word">The word.</param>
    /// <param name="key">The key that holds it, where the word means something else there.</param>
    public string Spoken(string word, string key = "") =>
        words.Has($"form.words.{key}.{word}") ? words.Plain($"form.words.{key}.{word}")
        : words.Has("form.words." + word) ? words.Plain("form.words." + word) : word.Replace('-', ' ');

    private static IReadOnlyList<string> Offered(FormQuestion question, Key? key) => question.Shape switch
    {
        FormShape.YesNo or FormShape.Gate => ["yes", "no"],
        FormShape.HouseForm => ["box", "other"],
        FormShape.Corner => ["outer", "inner"],
        _ => ((IWordKind)key!.Kind).Words,
    };

    private void Text(string id, string kind, Key? key)
    {
        var most = key?.Kind is TextKind text ? text.MaxCharacters : 80;
        if (kind == "date") page.Append($"<input type=\"date\" id=\"f-{id}\" aria-describedby=\"w-{id}\">\n");
        else if (most > LongText)
            page.Append($"<textarea id=\"f-{id}\" rows=\"3\" maxlength=\"{most}\" aria-describedby=\"w-{id}\"></textarea>\n");
        else page.Append($"<input id=\"f-{id}\" maxlength=\"{most}\" autocomplete=\"off\" aria-describedby=\"w-{id}\">\n");
    }

    private void Quantity(string id, QuantityKind kind, bool isHeight)
    {
        var units = FormUnits.Of(kind, library.IsUs);
        var (min, max) = (FormUnits.Stored(kind, kind.Min), FormUnits.Stored(kind, kind.Max));
        page.Append($"<div class=\"measure\"><input id=\"f-{id}\" inputmode=\"decimal\" maxlength=\"40\" autocomplete=\"off\"");
        page.Append($" aria-describedby=\"w-{id}\" data-dimension=\"{Word.Of(kind.Dimension)}\" data-unit=\"{units[0]}\"");
        page.Append($" data-min=\"{FormUnits.Number(min)}\" data-max=\"{FormUnits.Number(max)}\">");
        foreach (var unit in units) page.Append($"<button type=\"button\" class=\"unit\" data-unit=\"{unit}\">{unit}</button>");
        page.Append("</div>\n");
        if (isHeight) page.Append($"<button type=\"button\" class=\"tool\" data-tool=\"height\">{Say("tools.height.deed")}</button>\n");
    }

    private void Bearing(string id)
    {
        page.Append($"<div class=\"measure\"><input id=\"f-{id}\" inputmode=\"decimal\" maxlength=\"12\" autocomplete=\"off\"");
        page.Append($" aria-label=\"{Say("degrees")}\" aria-describedby=\"w-{id}\">");
        page.Append("<span class=\"unit-name\">deg</span></div>\n");
        Buttons(id, ["true", "magnetic"]);
        page.Append($"<button type=\"button\" class=\"tool\" data-tool=\"bearing\">{Say("tools.bearing.deed")}</button>\n");
    }

    private void Whole(string id, IntegerKind kind)
    {
        page.Append($"<input id=\"f-{id}\" inputmode=\"numeric\" maxlength=\"6\" autocomplete=\"off\" aria-describedby=\"w-{id}\"");
        page.Append(CultureInfo.InvariantCulture, $" data-min=\"{kind.Min}\" data-max=\"{kind.Max}\">\n");
    }

    private void Buttons(string id, IReadOnlyList<string> offered, string key = "")
    {
        page.Append("<div class=\"choices\">");
        foreach (var word in offered)
            page.Append($"<label class=\"choice\"><input type=\"radio\" name=\"r-{id}\" value=\"{word}\">")
                .Append($"<span>{HtmlText.Escape(Spoken(word, key))}</span></label>");
        page.Append("</div>\n");
    }

    private void Ticks(string id, FormQuestion question)
    {
        page.Append("<div class=\"ticks\">");
        foreach (var (value, name, more) in question.Shape == FormShape.MoreKits ? KitTicks() : StationTicks())
            page.Append($"<label class=\"tick\"><input type=\"checkbox\" name=\"r-{id}\" value=\"{HtmlText.Escape(value)}\">")
                .Append($"<span>{HtmlText.Escape(name)}<small>{HtmlText.Escape(more)}</small></span></label>");
        page.Append("</div>\n");
    }

    private IEnumerable<(string Value, string Name, string More)> KitTicks() => library.MoreKits.Select(k => (k.Name, k.Name, k.What));

    private IEnumerable<(string Value, string Name, string More)> StationTicks() =>
        library.Stations.OrderBy(s => s.Site, StringComparer.Ordinal).ThenBy(s => s.Channel).Select(s =>
            (s.Id, $"{s.ShowsAs} {s.Name}".Trim(), $"{s.Site}, RF {s.Channel.ToString(CultureInfo.InvariantCulture)}"));

    private void Select(string id, FormQuestion question, Key? key)
    {
        page.Append($"<select id=\"f-{id}\" aria-describedby=\"w-{id}\"><option value=\"\">{Say("choose")}</option>");
        if (question.Shape == FormShape.KitOrPart) Group(Say("kits"), library.AntennaKits.Select(k => ("kit:" + k.Name, k.What)));
        if (question.Shape == FormShape.MountKit) Group(Say("kits"), library.MountKits.Select(k => (k.Name, k.What)));
        else if (key?.Kind is IWordKind set) foreach (var word in set.Words) Option(word, Spoken(word));
        else Parts(question, key);
        page.Append("</select>\n");
    }

    private void Parts(FormQuestion question, Key? key)
    {
        var kinds = question.Parts.Count > 0 ? question.Parts : key?.Kind is ReferenceKind part ? part.PartKinds : [];
        var fit = library.Parts.Parts.Values.Where(p => kinds.Contains(p.Kind))
            .Where(p => !question.Rods || p is BondingPart { LengthM: not null }).OrderBy(p => p.Id, StringComparer.Ordinal)
            .Select(p => (p.Id, Name: string.IsNullOrEmpty(p.Name) ? p.Id : p.Name));
        if (question.Shape == FormShape.KitOrPart) Group(Say("parts"), fit.Select(p => ("part:" + p.Id, p.Name)));
        else foreach (var (value, name) in fit) Option(value, name);
    }

    private void Group(string label, IEnumerable<(string Value, string Name)> options)
    {
        page.Append($"<optgroup label=\"{label}\">");
        foreach (var (value, name) in options) Option(value, name);
        page.Append("</optgroup>");
    }

    private void Option(string value, string name) =>
        page.Append($"<option value=\"{HtmlText.Escape(value)}\">{HtmlText.Escape(name)}</option>");

    private void Coordinates(string id)
    {
        page.Append($"<input id=\"f-{id}\" maxlength=\"60\" autocomplete=\"off\" placeholder=\"44.2900 N, 71.6100 W\"");
        page.Append($" aria-describedby=\"w-{id}\">\n");
        page.Append($"<button type=\"button\" class=\"locate\">{Say("locate")}</button>\n");
    }

    private void Place(string id)
    {
        var length = new QuantityKind(Dimension.Length, 0, 200, "m");
        Sub(id, "wall", Sides);
        Labelled(id, "along", length);
        Sub(id, "corner", Corners);
        page.Append($"<p class=\"sub\">{Say("place.how-high")}</p>");
        Buttons(id, ["eaves", "ridge", "measured"]);
        Labelled(id, "up", length);
    }

    private void Sub(string id, string what, string[] offered)
    {
        page.Append($"<label class=\"sub\" for=\"f-{id}-{what}\">{Say("place." + what)}</label>");
        page.Append($"<select id=\"f-{id}-{what}\" class=\"{what}\"><option value=\"\">{Say("choose")}</option>");
        foreach (var word in offered) Option(word, Spoken(word));
        page.Append("</select>\n");
    }

    private void Labelled(string id, string what, QuantityKind kind)
    {
        page.Append($"<div class=\"{what}\"><label class=\"sub\" for=\"f-{id}-{what}\">{Say("place." + what)}</label>");
        Quantity($"{id}-{what}", kind, isHeight: what == "up");
        page.Append("</div>\n");
    }

    private string Say(string id) => HtmlText.Escape(words.Plain("form." + id));
}
