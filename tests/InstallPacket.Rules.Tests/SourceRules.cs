using System.Text.RegularExpressions;
using InstallPacket.Tests;

namespace InstallPacket.Rules.Tests;

/// <summary>Rules about the text of the code.</summary>
public partial class SourceRules
{
    private const int MostLines = 400;

    /// <summary>What must not be called, why, and where it may.</summary>
    private static readonly (string Pattern, string Instead, string[] Allowed)[] Forbidden =
    [
        (@"DateTime(Offset)?\.(Now|UtcNow|Today)", "dates come from the job", []),
        (@"Guid\.NewGuid|new Random\(", "the same inputs give the same bytes", []),
        (@"CultureInfo\.CurrentCulture|CurrentUICulture", "CultureInfo.InvariantCulture", []),
        (@"\bConsole\.", "ITerminal", ["src/InstallPacket.Cli/Console/ITerminal.cs"]),
        (@"\b(File|Directory|FileInfo|DirectoryInfo)\b\.?(?=\w*\()|\b(File|Directory)\.\w+\(", "only Cli and the theme's reader touch files", ["src/InstallPacket.Cli/", "src/InstallPacket.Packets/Themes/ThemeFolder.cs", "src/InstallPacket.Packets/Themes/Theme.cs"]),
        (@"using SkiaSharp", "only the PNG painter knows the graphics library", ["src/InstallPacket.Drawings/Canvas/PngPainter.cs"]),
        (@"using PdfSharp", "only the PDF writer knows the PDF library", ["src/InstallPacket.Packets/Pdf/"]),
        (@"using BitMiracle", "only the unpacker knows the TIFF library", ["src/InstallPacket.Terrain/GeoTiff/TiffDecoder.cs"]),
        (@"using YamlDotNet", "only the gate and the tree builder know the YAML library", ["src/InstallPacket.Jobs/Text/YamlGate.cs", "src/InstallPacket.Jobs/Text/YamlTreeBuilder.cs"]),
    ];

    private static IEnumerable<(string Path, string Text)> Sources =>
        Directory.EnumerateFiles(Path.Combine(DemoJobs.Checkout, "src"), "*.cs", SearchOption.AllDirectories)
            .Select(p => (Path: Path.GetRelativePath(DemoJobs.Checkout, p).Replace('\\', '/'), Full: p))
            .Where(p => !p.Path.Contains("/obj/", StringComparison.Ordinal) && !p.Path.Contains("/bin/", StringComparison.Ordinal))
            .Select(p => (p.Path, File.ReadAllText(p.Full)));

    [Fact]
    public void Nothing_calls_what_would_make_packets_differ()
    {
        var sources = Sources.ToArray();
        Assert.True(sources.Length > 100);
        var hits = from s in sources
                   from f in Forbidden
                   where !f.Allowed.Any(a => s.Path.StartsWith(a, StringComparison.Ordinal)) && Regex.IsMatch(Code(s.Text), f.Pattern)
                   select $"{s.Path}: {f.Pattern}; instead: {f.Instead}";
        Assert.Empty(hits);
    }

    [Fact]
    public void No_file_is_too_long_to_read() =>
        Assert.Empty(Sources.Where(s => s.Text.Split('\n').Length > MostLines).Select(s => s.Path));

    [Fact]
    public void A_namespace_is_its_folder()
    {
        foreach (var (path, text) in Sources)
            Assert.Equal(Path.GetDirectoryName(path)!["src/".Length..].Replace('\\', '/').Replace('/', '.'), Namespace().Match(text).Groups[1].Value);
    }

    [Fact]
    public void No_namespace_is_called_like_a_type_that_it_holds()
    {
        var clashes = from s in Sources
                      from Match type in Type().Matches(Code(s.Text))
                      where Space(s.Text).Split('.')[^1] == type.Groups["name"].Value
                      select $"{s.Path}: {type.Groups["name"].Value}";
        Assert.Empty(clashes);
    }

    [Fact]
    public void No_type_is_called_by_a_word_that_says_nothing() =>
        Assert.Empty(Sources.Where(s => Vague().IsMatch(Code(s.Text))).Select(s => s.Path));

    private static string Space(string text) => Namespace().Match(text).Groups[1].Value;

    // Comments may speak of anything.
    private static string Code(string text) => Comment().Replace(text, "");

    [GeneratedRegex(@"//[^\n]*")]
    private static partial Regex Comment();

    [GeneratedRegex(@"^namespace ([\w.]+);", RegexOptions.Multiline)]
    private static partial Regex Namespace();

    [GeneratedRegex(@"\b(class|record|struct|interface|enum) (struct |class )?(?<name>[A-Z]\w*)")]
    private static partial Regex Type();

    [GeneratedRegex(@"(class|record|struct|interface) \w*(Manager|Helper|Utility|Utils|Service)\b")]
    private static partial Regex Vague();
}
