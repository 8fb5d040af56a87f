using InstallPacket.Cli.Commands;
using InstallPacket.Cli.Console;
using InstallPacket.Cli.Files;
using InstallPacket.Drawings;
using InstallPacket.Packets;
using InstallPacket.Packets.Themes;
using InstallPacket.Plans;

namespace InstallPacket.Tests.Fuzz;

/// <summary>A damaged file of a theme of which the pages are written as text, without HTML, PDF and pictures.</summary>
internal abstract class SpokenKind : FuzzKind
{
    private static readonly PartLibrary Parts = DemoJobs.Load().Parts();
    private readonly Dictionary<string, Plan> _plans = new(StringComparer.Ordinal);

    protected Scene Scene { get; } = new();

    public override string Depth => "pages as text, figures";

    public override void Dispose()
    {
        Scene.Dispose();
        base.Dispose();
    }

    protected override int Try(Random random, ITerminal terminal)
    {
        var id = Pick(random, JobKind.Ids);
        if (!_plans.TryGetValue(id, out var plan)) _plans[id] = plan = PlannedJob.One(new FolderJobFiles(Scene.Jobs, ""), Parts, id).Plan!;
        Damage(random);
        try
        {
            var theme = InstalledData.ThemeUnder(Scene.Theme);
            new PacketBuilder(theme).Said(plan);
            return ExitCode.Done;
        }
        catch (Exception e) when (e is DocumentException or MissingGlyphException)
        {
            terminal.Error.WriteLine(FindingPrinter.Safe(e.Message));
            return ExitCode.JobFailed;
        }
        finally
        {
            Scene.Restore();
        }
    }

    /// <summary>Puts a damaged file into the theme of the scene.</summary>
    protected abstract void Damage(Random random);
}

/// <summary>A damaged template.</summary>
internal sealed class TemplateKind : SpokenKind
{
    private static readonly string[] Templates = ThemeFiles.Below("templates");

    public override int Share => 5;

    public override int InTests => 12;

    protected override void Damage(Random random)
    {
        var path = Pick(random, Templates);
        Scene.Put("theme/" + path, new Damage(random, HostileWords.Liquid).Of(ThemeFiles.Read(path)));
    }
}

/// <summary>Damaged words.</summary>
internal sealed class WordKind : SpokenKind
{
    private static readonly string[] Words = ThemeFiles.Below("words");

    public override int Share => 3;

    public override int InTests => 4;

    protected override void Damage(Random random)
    {
        var path = Pick(random, Words);
        Scene.Put("theme/" + path, new Damage(random, HostileWords.Spoken).Of(ThemeFiles.Read(path)));
    }
}

/// <summary>Any damaged file of a theme; the whole packet is built.</summary>
internal sealed class ThemeKind : PacketKind
{
    private static readonly string[] Small = [.. ThemeFiles.Below("templates"), .. ThemeFiles.Below("words"), "documents.yaml",
        "documents.yaml", "documents.yaml"];
    private static readonly string[] Fonts = ThemeFiles.Below("fonts");

    public override string Depth => "whole packet";

    public override int Share => 1;

    public override int InTests => 4;

    protected override int Try(Random random, ITerminal terminal)
    {
        var path = random.Next(10) switch { < 3 => Pick(random, Fonts), 3 => "style/packet.css", _ => Pick(random, Small) };
        var sound = ThemeFiles.Read(path);
        var damaged = path.StartsWith("fonts/", StringComparison.Ordinal) ? new Damage(random, []).OfBytes(sound, 3000)
            : new Damage(random, path.EndsWith(".css", StringComparison.Ordinal) ? HostileWords.Css
                : path.EndsWith(".yaml", StringComparison.Ordinal) ? HostileWords.Spoken : HostileWords.Liquid).Of(sound, 2);
        Scene.Put("theme/" + path, damaged);
        return Build(terminal, Pick(random, JobKind.Ids));
    }
}

/// <summary>The theme of the checkout.</summary>
internal static class ThemeFiles
{
    private static readonly string Root = Path.Combine(DemoJobs.Checkout, "theme");

    /// <summary>Paths of the files of a part of the theme, in order.</summary>
    public static string[] Below(string part) =>
        [.. Directory.EnumerateFiles(Path.Combine(Root, part), "*", SearchOption.AllDirectories).Select(p => Path.GetRelativePath(Root, p)
            .Replace('\\', '/')).Order(StringComparer.Ordinal)];

    public static byte[] Read(string path) => File.ReadAllBytes(Path.Combine(Root, path));
}
