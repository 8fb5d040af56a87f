using System.Text;

namespace InstallPacket.Packets.Forms;

/// <summary>Writes a question: what is asked, why, the field, "not known", and the line for what the page says about the answer.</summary>
internal sealed class FormQuestionWriter(StringBuilder page, Words words, FormFieldWriter fields, FormLibrary library)
{
    // Stands for the number of a thing of a list, until the script makes one.
    private const string Number = "-NUMBER";

    // What a firm says once and for all is not asked again at each house.
    private static readonly HashSet<string> FirmDecides =
        ["code", "prepared-by.name", "bonding.conductor", "bonding.by", "cabling.outlet", "cabling.cable", "cabling.receiver",
            "cabling.fly-cable"];

    private static readonly string[] OfTheChain =
        ["cabling.chain", "routing.places", "routing.runs", "routing.entries", "kits"];

    private static readonly Dictionary<string, Key> Catalogue = KeyCatalogue.AllKeys().ToDictionary(k => k.Path, k => k.Key);

    /// <summary>Writes it.</summary>
    /// <param name="question">The question.</param>
    /// <param name="list">The list of whose things it is asked; empty for none.</param>
    public void Append(FormQuestion question, string list)
    {
        var firm = question.Plain && question.Path.Length > 0 ? library.Firm?.Of(question.Path) : null;
        if (firm is not null && FirmDecides.Contains(question.Path)) return;
        var key = question.Path.Length == 0 ? null : Catalogue[question.Path];
        if (!IsOffered(question)) return;
        var id = list.Length == 0 ? question.Id : $"{list}-{question.Id}{Number}";
        Open(question, id, key, needed: question.Needed && firm is null);
        var ask = Text($"ask.{(list.Length == 0 ? question.Id : list + "-" + question.Id)}");
        var optional = question.Shape == FormShape.Gate || (question.Needed && firm is null) || question.NeededWhen.Length > 0
            ? "" : $" <em>{Text("optional")}</em>";
        fields.Append(question, key, id, ask + optional, Why(question, list, ask, key, firm));
        if (question.Shape is FormShape.List or FormShape.ListOrNone) Things(question);
        if (question.MayBeUnknown)
            page.Append($"<button type=\"button\" class=\"unknown\" aria-pressed=\"false\">{Text("not-known")}</button>\n");
        page.Append("<p class=\"said\" aria-live=\"polite\"></p>\n</div>\n");
    }

    private bool IsOffered(FormQuestion question) => question.Shape switch
    {
        FormShape.MountKit => library.MountKits.Any(),
        FormShape.MoreKits => library.MoreKits.Any(),
        _ => true,
    };

    private void Open(FormQuestion question, string id, Key? key, bool needed)
    {
        page.Append($"<div class=\"q\" id=\"q-{id}\" data-q=\"{question.Id}\" data-kind=\"{FormFieldWriter.KindOf(question, key)}\"");
        if (question.Plain && question.Path.Length > 0) page.Append($" data-path=\"{question.Path}\"");
        if (needed) page.Append(" data-needed");
        // Answers of which the chain is made; a chain that this form did not write has no place for them.
        if (!question.Plain && OfTheChain.Any(p => question.Path.StartsWith(p, StringComparison.Ordinal))) page.Append(" data-chain");
        if (question.Shape == FormShape.Gate) page.Append(" data-gate");
        if (key?.Kind is ListKind<CheckedGroup>) page.Append(" data-rows");
        if (question.NeededWhen.Length > 0) page.Append($" data-needed-when=\"{HtmlText.Escape(question.NeededWhen)}\"");
        if (question.When.Length > 0) page.Append($" data-when=\"{HtmlText.Escape(question.When)}\"");
        page.Append(">\n");
    }

    private string Why(FormQuestion question, string list, string ask, Key? key, string? firm)
    {
        // A meaning that speaks of the file and not of the house has a text of its own; one of a word or two only says the question again.
        var said = "form.why." + (list.Length == 0 ? question.Id : list + "-" + question.Id);
        var meaning = words.Has(said) ? words.Plain(said)
            : key is null || key.Meaning.Split(' ').Length <= 3 || SaysAgain(key.Meaning, ask) ? "" : key.Meaning;
        var why = HtmlText.Escape(meaning.Replace("`", "", StringComparison.Ordinal));
        return firm is null ? why : $"{why} {Text("firm-says")} <strong>{HtmlText.Escape(fields.Spoken(firm))}</strong>";
    }

    private static bool SaysAgain(string meaning, string ask) =>
        meaning.TrimEnd('.').EndsWith(ask, StringComparison.OrdinalIgnoreCase) && meaning.Length - ask.Length <= "The .".Length;

    private void Things(FormQuestion question)
    {
        page.Append($"<div class=\"things\"></div>\n<button type=\"button\" class=\"add\">{Text($"add.{question.Id}")}</button>\n");
        page.Append("<template>");
        page.Append($"<div class=\"thing\"><h2>{Text($"thing.{question.Id}")} <span class=\"nth\"></span></h2>\n");
        foreach (var each in question.Each) Append(each, question.Id);
        page.Append($"<button type=\"button\" class=\"remove\">{Text("remove")}</button></div></template>\n");
    }

    private string Text(string id) => HtmlText.Escape(words.Plain("form." + id));
}
