using InstallPacket.Packets.Language;
using InstallPacket.Tests;

namespace InstallPacket.Packets.Tests;

/// <summary>The set phrases that a plan carries have a text, so that another language can say them.</summary>
public class PhraseTests
{
    // A capacity may rest on a document alone, which no language says otherwise.
    private static readonly HashSet<string> Sources = ["NDS chapter 12"];

    [Theory]
    [InlineData("alder-lane")]
    [InlineData("far-meadow")]
    [InlineData("mill-yard")]
    [InlineData("pine-corner")]
    [InlineData("quay-loft")]
    [InlineData("brook-terrace")]
    public void What_the_plan_calls_checks_capacities_and_uses_has_a_text(string id)
    {
        var plan = Planned(id);
        var names = plan.Mounting.Fixings.Select(f => f.Name).Concat(plan.Materials.Items.Select(i => i.Name)).ToHashSet(StringComparer.Ordinal);
        string[] phrases =
        [
            .. plan.Mounting.LoadPath?.Checks.SelectMany(c => new[] { c.What, c.Basis }) ?? [], .. plan.Mounting.LoadPath?.Unproved ?? [],
            .. plan.Mounting.Wind?.Supports.Select(s => s.Name) ?? [], .. plan.Bonding.Sizes.Select(s => s.Use), .. plan.Bonding.Lengths.Select(l => l.What),
            .. plan.Bonding.Routes.Select(r => r.Use), .. plan.Materials.Tools.Select(t => t.Why).Where(w => !names.Any(n => w.Contains(n, StringComparison.Ordinal))),
        ];
        Assert.NotEmpty(phrases);
        var written = DemoJobs.Load().Text(id + "/job.yaml");
        Assert.All(phrases.Except(Sources).Where(p => !written.Contains(p, StringComparison.Ordinal)), p => Assert.True(HasText(p), $"no text in 'phrases' says: {p}"));
    }

    // As Phrases reads them: whole, beside a name before or behind a comma or colon, or before the last blank.
    private static bool HasText(string phrase)
    {
        var words = Sample.Theme.Words("en-US");
        string?[] heads = [phrase, Before(phrase, ", "), After(phrase, ", "), Before(phrase, ": "), After(phrase, ": "), Before(phrase, " ")];
        return heads.Any(h => h is not null && words.Has("phrases." + Phrases.Slug(h)));
    }

    private static string? Before(string text, string sign) => text.LastIndexOf(sign, StringComparison.Ordinal) is > 0 and var at ? text[..at] : null;

    private static string? After(string text, string sign) => text.LastIndexOf(sign, StringComparison.Ordinal) is > 0 and var at ? text[(at + sign.Length)..] : null;

    private static Plan Planned(string id)
    {
        var jobs = DemoJobs.Load();
        var parts = jobs.Parts();
        var reading = new JobReader(jobs, parts).Read(id);
        return Planner.Plan(reading.Job!, parts, null, reading.Findings)!;
    }
}
