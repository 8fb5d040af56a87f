using System.Text;
using System.Text.Json.Nodes;
using InstallPacket.Drawings;
using InstallPacket.Plans;

namespace InstallPacket.Packets;

/// <summary>Plan to packet: every file of a packet, in memory.</summary>
/// <param name="theme">The theme.</param>
public sealed class PacketBuilder(Theme theme)
{
    private const double PngDpi = 160;
    private const string Language = "en";
    private readonly FontTextMeasure _measure = new(theme.Fonts);
    private readonly Dictionary<(UnitFamily, LevelUnit), TemplateRenderer> _renderers = [];

    /// <summary>The files of one packet, without the folder of the job.</summary>
    /// <param name="plan">The plan.</param>
    public IReadOnlyList<OutputFile> Build(Plan plan)
    {
        var figures = FigureSet.Of(plan, _measure);
        var model = PlanJson.Tree(plan);
        var files = new List<OutputFile>
        {
            new("plan.json", Utf8(PlanJson.Text(model))),
            new("findings.json", Utf8(PlanJson.Text(PlanJson.Findings(plan.Findings)))),
            new("findings.sarif", Sarif.Write(plan.Findings, ProgramVersion.Text)),
            new("cut-list.csv", MaterialsCsv.CutList(plan)),
            new("materials.csv", MaterialsCsv.Materials(plan)),
            new("van-list.csv", MaterialsCsv.VanList(plan)),
        };
        foreach (var (name, title, pdf) in new[] { ("crew", "Crew", true), ("customer", "Customer", true), ("workings", "Workings", false), ("packet", "Packet", false) })
            AddDocument(files, Document(plan, model, figures, name, title), pdf, plan.Job.Paper);
        foreach (var figure in figures.Values) AddFigure(files, figure);
        files.AddRange(theme.WebFonts.Select(f => new OutputFile(f.Key, f.Value)));
        return [.. files.OrderBy(f => f.Path, StringComparer.Ordinal)];
    }

    private PacketDocument Document(Plan plan, JsonObject model, IReadOnlyDictionary<string, Drawing> figures, string name, string title)
    {
        var markdown = Renderer(plan.Job).Render(name, model);
        var stamp = plan.Stopped ? Stamp(plan) : null;
        return new PacketDocument(name, $"{title}: {plan.Job.Title}", Language, TidyMarkdown.Of(markdown), figures, stamp,
            $"{plan.Job.Id} · {plan.Job.Date:yyyy-MM-dd} · {plan.Job.PreparedBy.Name}");
    }

    /// <summary>The words that stand on every page of a stopped packet.</summary>
    private static string Stamp(Plan plan)
    {
        var stops = plan.Findings.Count(f => f.Severity == Severity.Stop);
        return $"STOPPED - do not install as planned: {stops} {(stops == 1 ? "finding" : "findings")} to settle first";
    }

    private void AddDocument(List<OutputFile> files, PacketDocument document, bool pdf, PaperSize paper)
    {
        var html = Utf8(HtmlDocumentWriter.Write(document, theme));
        if (document.Name == "packet") { files.Add(new("index.html", html)); return; }
        files.Add(new(document.Name + ".html", html));
        files.Add(new(document.Name + ".md", Utf8(document.Stamp is null ? document.Markdown : $"**{document.Stamp}**\n\n{document.Markdown}")));
        if (pdf) files.Add(new(document.Name + ".pdf", PdfDocumentWriter.Write(document, theme, Format(paper))));
    }

    private static PageFormat Format(PaperSize paper) => paper switch
    {
        PaperSize.Letter => PageFormat.Letter,
        PaperSize.A4 => PageFormat.A4,
    };

    private void AddFigure(List<OutputFile> files, Drawing figure)
    {
        files.Add(new($"figures/{figure.Id}.svg", Utf8(SvgPainter.PaintFile(figure))));
        files.Add(new($"figures/{figure.Id}.png", PngPainter.Paint(figure, theme.Fonts, PngDpi)));
    }

    // One renderer for each way of printing, so that templates are parsed once.
    private TemplateRenderer Renderer(JobFacts job)
    {
        var key = (job.Units, job.LevelUnit);
        lock (_renderers)
        {
            if (!_renderers.TryGetValue(key, out var renderer))
                _renderers[key] = renderer = new TemplateRenderer(theme, PlanFilters.For(UnitPrinter.Of(job)));
            return renderer;
        }
    }

    private static byte[] Utf8(string text) => Encoding.UTF8.GetBytes(text);
}
