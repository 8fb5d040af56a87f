using System.Text;
using InstallPacket.Drawings;
using InstallPacket.Packets.Language;

namespace InstallPacket.Packets.Themes;

/// <summary>Everything that decides how a packet looks and what it says: fonts, style and templates, held in memory.</summary>
public sealed class Theme
{
    private const string TemplateFolder = "templates/";
    private const string TemplateEnding = ".md.liquid";
    private const string DocumentsFile = "documents.yaml";
    private const string StyleFile = "style/packet.css";

    private readonly WordsShelf _words;

    private static readonly UTF8Encoding StrictUtf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>Takes the files of a theme and reads its fonts and style.</summary>
    /// <param name="files">Bytes by relative path with forward slashes.</param>
    /// <exception cref="DocumentException">A needed file is missing or no UTF-8.</exception>
    public Theme(IReadOnlyDictionary<string, byte[]> files)
    {
        Files = files;
        Fonts = new FontSet(
            Face("fonts/SourceSans3-Regular.ttf"), Face("fonts/SourceSans3-Semibold.ttf"),
            Face("fonts/SourceSans3-It.ttf"), Face("fonts/SourceCodePro-Regular.ttf"));
        Style = Text(StyleFile);
        TemplateNames = [.. files.Keys
            .Where(p => p.StartsWith(TemplateFolder, StringComparison.Ordinal) && p.EndsWith(TemplateEnding, StringComparison.Ordinal))
            .Select(p => p[TemplateFolder.Length..^TemplateEnding.Length]).Order(StringComparer.Ordinal)];
        _words = new WordsShelf(files);
        Documents = DocumentList.Read(new[] { DocumentsFile, ThemeFolder.Own + DocumentsFile }.Where(files.ContainsKey).Select(p =>
            (p, files[p])));
        // The licence of the fonts asks that its text travels with the files.
        WebFonts = new SortedDictionary<string, byte[]>(files.Where(f => f.Key.StartsWith("fonts/", StringComparison.Ordinal)
            && (f.Key.EndsWith(".woff2", StringComparison.Ordinal) || f.Key.StartsWith("fonts/LICENSE", StringComparison.Ordinal)))
            .ToDictionary(f => f.Key, f => f.Value), StringComparer.Ordinal);
    }

    /// <summary>All files by relative path.</summary>
    public IReadOnlyDictionary<string, byte[]> Files { get; }

    /// <summary>The faces of PDF and PNG.</summary>
    public FontSet Fonts { get; }

    /// <summary>The style sheet of the pages.</summary>
    public string Style { get; }

    /// <summary>Names of the templates, in order: <c>crew</c> for <c>templates/crew.md.liquid</c>.</summary>
    public IReadOnlyList<string> TemplateNames { get; }

    /// <summary>Fonts of the pages and their licences by relative path; the caller writes them beside each packet's HTML.</summary>
    public IReadOnlyDictionary<string, byte[]> WebFonts { get; }

    /// <summary>Loads the built-in theme, single files of which an own theme may replace.</summary>
    /// <param name="builtInFolder">The theme of the project.</param>
    /// <param name="overlayFolder">A firm's own theme, or null.</param>
    public static Theme FromFolder(string builtInFolder, string? overlayFolder = null) =>
        new(ThemeFolder.Read(builtInFolder, overlayFolder));

    /// <summary>The documents of a packet, in order.</summary>
    public IReadOnlyList<DocumentEntry> Documents { get; }

    /// <summary>The languages that the theme has words for.</summary>
    public IReadOnlyList<string> Languages => _words.Languages;

    /// <summary>The words of a language, loaded once.</summary>
    /// <param name="language">BCP 47 tag.</param>
    /// <exception cref="DocumentException">The theme has no such language, or its words have a mistake.</exception>
    public Words Words(string language) => _words.Words(language);

    /// <summary>Source of a template, or null when the theme has none of that name.</summary>
    /// <param name="name">Its name without folder and ending.</param>
    public string? Template(string name) => Files.ContainsKey(TemplatePath(name)) ? Text(TemplatePath(name)) : null;

    /// <summary>Where a template stands in the theme, for messages.</summary>
    /// <param name="name">Its name without folder and ending.</param>
    public static string TemplatePath(string name) => TemplateFolder + name + TemplateEnding;

    private FontFace Face(string path)
    {
        try
        {
            return new(path, Bytes(path));
        }
        catch (InvalidDataException e)
        {
            throw new DocumentException($"{e.Message}. If it is a pointer to a file kept elsewhere, fetch the file itself", e);
        }
    }

    private byte[] Bytes(string path) =>
        Files.TryGetValue(path, out var bytes) ? bytes : throw new DocumentException($"the theme has no file '{path}'");

    private string Text(string path)
    {
        try
        {
            return StrictUtf8.GetString(Bytes(path)).TrimStart('\uFEFF').Replace("\r\n", "\n", StringComparison.Ordinal);
        }
        catch (DecoderFallbackException e)
        {
            throw new DocumentException($"the theme file '{path}' is not UTF-8", e);
        }
    }
}
