using Markdig;
using Markdig.Extensions.AutoIdentifiers;
using Markdig.Extensions.CustomContainers;
using Markdig.Extensions.Tables;
using Markdig.Extensions.TaskLists;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace InstallPacket.Packets.Markdown;

/// <summary>
/// Reads the text of a document into the one tree that all writers walk. Raw HTML is off, and so are generic attributes:
/// they would let a job value such as <c>{onclick=...}</c> through.
/// </summary>
public static class MarkdownReader
{
    private static readonly MarkdownPipeline Pipeline = Build();

    /// <summary>Parses a text; links to places that a packet must not open become plain text.</summary>
    /// <param name="markdown">The text.</param>
    public static MarkdownDocument Read(string markdown)
    {
        var document = Markdig.Markdown.Parse(markdown, Pipeline);
        foreach (var link in document.Descendants<LinkInline>().ToList())
            if (!link.IsImage && !LinkTarget.IsAllowed(link.Url)) link.ReplaceBy(new ContainerInline());
        foreach (var link in document.Descendants<AutolinkInline>().ToList())
            if (!LinkTarget.IsAllowed(link.IsEmail ? "mailto:" + link.Url : link.Url)) link.ReplaceBy(new LiteralInline(link.Url));
        // The parser leaves its mark behind when a bracket finds no partner in its table cell.
        while (document.Descendants<DelimiterInline>().FirstOrDefault() is { } mark) mark.ReplaceBy(new LiteralInline(mark.ToLiteral()));
        foreach (var task in document.Descendants<TaskList>()) TrimAfter(task);
        return document;
    }

    private static MarkdownPipeline Build()
    {
        var builder = new MarkdownPipelineBuilder()
            .UsePipeTables(new PipeTableOptions { RequireHeaderSeparator = true })
            .UseTaskLists()
            .UseAutoIdentifiers(AutoIdentifierOptions.GitHub)
            .UsePreciseSourceLocation()
            .DisableHtml();
        // Only the block form: the extension would also read :: in running text as a span.
        builder.BlockParsers.Insert(0, new CustomContainerParser());
        return builder.Build();
    }

    // The space between box and words belongs to neither.
    private static void TrimAfter(TaskList task)
    {
        if (task.NextSibling is not LiteralInline literal) return;
        var words = literal.Content;
        words.TrimStart();
        literal.Content = words;
    }
}
