using InstallPacket.Tests;

namespace InstallPacket.Rules.Tests;

/// <summary>Rules about the documentation: what is generated is fresh, what is promised is there.</summary>
public class DocumentRules
{
    /// <summary>Keys that no demo job writes, and why that is all right.</summary>
    private static readonly Dictionary<string, string> NotShown = new()
    {
        ["paper"] = "follows the code family",
        ["reception.reserve"] = "the default is shown in every packet",
        ["reception.multipath"] = "the default is shown in every packet",
        ["reception.within"] = "the default is shown on the reference page",
        ["cabling.chain.NAME.setting"] = "tested in the planner tests",
        ["cabling.also-carries"] = "no demo tree is shared with another service; the bad jobs show it",
        ["cabling.internet.connected"] = "no demo run stays on a service; the planner tests and the bad jobs show it",
        ["cabling.internet.over"] = "the default is shown in every packet",
        ["cabling.chain.NAME.second"] = "no demo has two antennas; tested in the planner tests",
        ["cabling.chain.NAME.second-run"] = "no demo has two antennas; tested in the planner tests",
        ["siting.under-roof"] = "no demo antenna stands in an attic; tested in the planner tests",
        ["mounting.chimney"] = "no demo mast hangs on a chimney; bad jobs show it",
        ["mounting.chimney.strap-spacing"] = "no demo mast hangs on a chimney; bad jobs show it",
        ["mounting.chimney.state"] = "no demo mast hangs on a chimney; bad jobs show it",
        ["mounting.chimney.allowed"] = "no demo mast hangs on a chimney; bad jobs show it",
        ["mounting.ballast.friction"] = "nobody measured the friction of the demo roof",
        ["mounting.fixings.wet"] = "all demo timber stands outdoors, which is the default",
        ["mounting.survey.old-mast"] = "no demo house has an old mast; tested in the planner tests",
        ["mounting.plate"] = "the part of one plate in the library states its holes; tested in the planner tests",
        ["bonding.note"] = "free text",
        ["prepared-by.address"] = "free text",
        ["prepared-by.note"] = "free text",
        ["prepared-by.mail"] = "invented firms have none; a test of the pages shows it",
        ["prepared-by.licence"] = "invented firms have none; a test of the pages shows it",
        ["customer.mail"] = "free text",
        ["customer.licence"] = "for the firm",
        ["handover.warranty"] = "invented firms promise nothing; a test of the pages shows it",
        ["import"] = "for a table of addresses; its tests show it",
        ["import.column"] = "for a table of addresses; its tests show it",
        ["import.key"] = "for a table of addresses; its tests show it",
        ["customer.phone"] = "free text",
    };

    [Fact]
    public void Key_reference_is_fresh() => Fresh("docs/reference/job-keys.md", KeyReference.Page(InstallPacket.Cli.Commands.NewCommand.Example()));

    [Fact]
    public void Schemas_are_fresh()
    {
        Fresh("docs/reference/job.schema.json", InstallPacket.Plans.Json.PlanJson.Text(JobSchema.Tree()));
        Fresh("docs/reference/firm.schema.json", InstallPacket.Plans.Json.PlanJson.Text(JobSchema.Firm()));
        Fresh("docs/reference/kit.schema.json", InstallPacket.Plans.Json.PlanJson.Text(JobSchema.Kit()));
        Fresh("docs/reference/parts.schema.json", InstallPacket.Plans.Json.PlanJson.Text(JobSchema.Parts()));
    }

    [Fact]
    public void Page_of_equations_is_fresh() => Fresh("docs/methods/equations.md", FormulaPage.Text());

    [Fact]
    public void Every_key_is_used_by_a_demo_job_or_by_the_readme()
    {
        var texts = Directory.EnumerateFiles(Path.Combine(DemoJobs.Checkout, "jobs"), "*.yaml", SearchOption.AllDirectories)
            .Append(Path.Combine(DemoJobs.Checkout, "README.md")).Select(File.ReadAllText)
            .Append(InstallPacket.Cli.Commands.NewCommand.Example()).ToArray();
        var unused = KeyCatalogue.AllKeys().Where(k => !NotShown.ContainsKey(k.Path) && !k.Path.StartsWith("materials.parts.NAME.", StringComparison.Ordinal) && // the parts files show them
             !texts.Any(t => t.Contains(k.Key.Name + ":", StringComparison.Ordinal))).Select(k => k.Path);
        Assert.Empty(unused);
    }

    [Fact]
    public void Links_between_pages_lead_somewhere()
    {
        var pages = Directory.EnumerateFiles(Path.Combine(DemoJobs.Checkout, "docs"), "*.md", SearchOption.AllDirectories)
            .Concat(Directory.EnumerateFiles(DemoJobs.Checkout, "*.md"));
        var broken = from page in pages
                     from System.Text.RegularExpressions.Match link in System.Text.RegularExpressions.Regex.Matches(File.ReadAllText(page), @"\]\((?!https?:|#|mailto:)([^)#\s]+)")
                     let target = Path.Combine(Path.GetDirectoryName(page)!, link.Groups[1].Value)
                     where !File.Exists(target) && !Directory.Exists(target)
                     select $"{Path.GetRelativePath(DemoJobs.Checkout, page)}: {link.Groups[1].Value}";
        Assert.Empty(broken);
    }

    private static void Fresh(string path, string text)
    {
        var full = Path.Combine(DemoJobs.Checkout, path);
        if (Environment.GetEnvironmentVariable("INSTALLPACKET_ACCEPT") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(full)!);
            File.WriteAllText(full, text);
        }
        Assert.Equal(text, File.ReadAllText(full));
    }
}
