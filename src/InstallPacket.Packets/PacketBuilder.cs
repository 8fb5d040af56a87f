using System.Collections.Concurrent;
using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using InstallPacket.Drawings;
using InstallPacket.Packets.Language;
using InstallPacket.Plans;

namespace InstallPacket.Packets;

/// <summary>Plan to packet: every file of a packet, in memory.</summary>
/// <param name="theme">The theme.</param>
/// <param name="pictures">Each figure also as a PNG file, to send by message.</param>
public sealed class PacketBuilder(Theme theme, bool pictures = false)
{
    private const double PngDpi = 160;
    private readonly FontTextMeasure _measure = new(theme.Fonts);
    private readonly ConcurrentDictionary<(string Language, bool UsUnits, LevelUnit LevelUnit), Pages> _pages = new();

    /// <summary>The files of one packet, without the folder of the job.</summary>
    /// <param name="plan">The plan.</param>
    /// <exception cref="DocumentException">The theme does not have the language of the job, or a template or text has a
    /// mistake.</exception>
    public IReadOnlyList<OutputFile> Build(Plan plan)
    {
        var pages = PagesOf(plan.Job);
        var figures = FigureSet.Of(plan, pages.Words, _measure);
        FindingText Speak(Finding finding) => FindingWords.Spoken(finding, pages.Words);
        var model = PlanJson.Tree(plan, Speak);
        var files = new List<OutputFile>
        {
            new("plan.json", Utf8(PlanJson.Text(model))),
            new("findings.json", Utf8(PlanJson.Text(PlanJson.Findings(plan.Findings, Speak)))),
            new("findings.sarif", Sarif.Write(plan.Findings, Speak, ProgramVersion.Text)),
        };
        if (!plan.Job.Study)
            files.AddRange([new("cut-list.csv", MaterialsCsv.CutList(plan, pages.Words)), new("materials.csv", MaterialsCsv.Materials(plan, pages.Words)),
                new("van-list.csv", MaterialsCsv.VanList(plan, pages.Words))]);
        var ids = new RowIds(plan.Workings);
        ForPages(model, plan, pages, ids);
        var links = ids.Links(plan.Workings);
        foreach (var entry in theme.Documents.Where(d => d.Serves(plan.Job.Study)))
            AddDocument(files, entry, Document(plan, model, figures, entry, pages) with { RowLinks = links }, plan.Job.Paper);
        foreach (var figure in figures.Values) AddFigure(files, figure);
        files.AddRange(theme.WebFonts.Select(f => new OutputFile(f.Key, f.Value)));
        return [.. files.OrderBy(f => f.Path, StringComparer.Ordinal)];
    }

    /// <summary>What the pages and figures of a packet say, without HTML, PDF and pictures.</summary>
    /// <param name="plan">The plan.</param>
    internal string Said(Plan plan)
    {
        var pages = PagesOf(plan.Job);
        var figures = FigureSet.Of(plan, pages.Words, _measure);
        var model = PlanJson.Tree(plan, finding => FindingWords.Spoken(finding, pages.Words));
        ForPages(model, plan, pages, new RowIds(plan.Workings));
        var documents = theme.Documents.Where(d => d.Serves(plan.Job.Study)).Select(entry => Document(plan, model, figures, entry, pages))
            .Select(d => $"{d.Title}\n{d.Footer}\n{d.Stamp}\n{d.Markdown}");
        return string.Join('\n', documents.Concat(figures.Values.Select(f => SvgPainter.PaintFile(f))));
    }

    // What templates see beside the data of plan.json.
    private void ForPages(JsonObject model, Plan plan, Pages pages, RowIds ids)
    {
        SpokenWorkings.Into(model, plan.Workings, ids, pages.Words);
        model["documents"] = Documents(plan.Job.Study);
    }

    // The documents that the entry page lists: those that have a reader.
    private JsonArray Documents(bool study) => [.. theme.Documents.Where(d => d.Reader is not null && d.Serves(study)).Select(d => (JsonNode)new JsonObject
    {
        ["id"] = d.Id,
        ["reader"] = d.Reader,
        ["formats"] = new JsonArray([.. d.Formats.Select(f => (JsonNode)Ending(f))]),
    })];

    private static PacketDocument Document(
        Plan plan, JsonObject model, IReadOnlyDictionary<string, Drawing> figures, DocumentEntry entry, Pages pages)
    {
        var (words, job) = (pages.Words, plan.Job);
        var markdown = pages.Renderer.Render(entry.Template, model);
        var title = words.Say("running-heads.title", ("document", words.Say(entry.Title)), ("job", job.Title));
        var stops = plan.Findings.Count(f => f.Severity == Severity.Stop);
        var stamp = plan.Stopped ? words.Say("stamps.stopped", ("stops", stops)) : job.Study ? words.Say("stamps.not-surveyed") : null;
        var footer = words.Say("running-heads.footer", ("job", job.Id),
            ("date", job.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)), ("firm", job.PreparedBy.Name));
        return new PacketDocument(entry.Id, title, TidyMarkdown.Of(markdown), figures, stamp, footer, words)
        {
            Logo = entry.Logo ? LogoImage.Of(job.PreparedBy) : null,
        };
    }

    private void AddDocument(List<OutputFile> files, DocumentEntry entry, PacketDocument document, PaperSize paper)
    {
        foreach (var format in entry.Formats)
            files.Add(new($"{entry.Id}.{Ending(format)}", format switch
            {
                DocumentFormat.Html => Utf8(HtmlDocumentWriter.Write(document, theme)),
                DocumentFormat.Pdf => PdfDocumentWriter.Write(document, theme, Format(paper)),
                _ => Utf8(document.Stamp is null ? document.Markdown : $"**{document.Stamp}**\n\n{document.Markdown}"),
            }));
    }

    private static PageFormat Format(PaperSize paper) => paper switch
    {
        PaperSize.Letter => PageFormat.Letter,
        PaperSize.A4 => PageFormat.A4,
    };

    private static string Ending(DocumentFormat format) =>
        format switch { DocumentFormat.Html => "html", DocumentFormat.Pdf => "pdf", _ => "md" };

    private void AddFigure(List<OutputFile> files, Drawing figure)
    {
        files.Add(new($"figures/{figure.Id}.svg", Utf8(SvgPainter.PaintFile(figure))));
        if (pictures) files.Add(new($"figures/{figure.Id}.png", PngPainter.Paint(figure, theme.Fonts, PngDpi)));
    }

    // One renderer for each way of printing, so that templates are parsed once.
    private Pages PagesOf(JobFacts job) => _pages.GetOrAdd((job.Language, job.Units == UnitFamily.Us, job.LevelUnit), key =>
    {
        var words = new JobWords(theme.Words(key.Language), key.UsUnits, key.LevelUnit);
        return new Pages(words, new TemplateRenderer(theme, words));
    });

    private sealed record Pages(JobWords Words, TemplateRenderer Renderer);

    private static byte[] Utf8(string text) => Encoding.UTF8.GetBytes(text);
}
