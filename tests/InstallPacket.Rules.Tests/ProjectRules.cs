using System.Text.RegularExpressions;
using System.Xml.Linq;
using InstallPacket.Tests;

namespace InstallPacket.Rules.Tests;

/// <summary>Rules about the projects: who uses whom, and what they bring in.</summary>
public partial class ProjectRules
{
    private static readonly string[] Order = ["Calc", "Terrain", "Jobs", "Plans", "Drawings", "Packets", "Cli"];

    [Fact]
    public void Each_project_uses_only_the_ones_to_its_left()
    {
        foreach (var project in Order)
        {
            foreach (var used in References(project, "ProjectReference").Select(p => ProjectName().Match(p).Groups[1].Value))
                Assert.True(Array.IndexOf(Order, used) < Array.IndexOf(Order, project), $"{project} must not use {used}");
        }
    }

    [Fact]
    public void Arithmetic_and_plans_bring_in_no_package()
    {
        Assert.Empty(References("Calc", "PackageReference"));
        Assert.Empty(References("Plans", "PackageReference"));
        Assert.Equal(["BitMiracle.LibTiff.NET"], References("Terrain", "PackageReference"));
        Assert.Equal(["YamlDotNet"], References("Jobs", "PackageReference"));
    }

    [Fact]
    public void Every_package_has_its_line_in_the_decisions()
    {
        var decisions = string.Concat(Directory.EnumerateFiles(Path.Combine(DemoJobs.Checkout, "docs", "decisions")).Select(File.ReadAllText));
        var central = XDocument.Load(Path.Combine(DemoJobs.Checkout, "Directory.Packages.props"));
        foreach (var package in central.Descendants("PackageVersion").Select(e => e.Attribute("Include")!.Value))
            Assert.Contains($"`{package}`", decisions, StringComparison.Ordinal);
    }

    [Fact]
    public void Lock_files_and_settings_name_no_registry()
    {
        var files = Directory.EnumerateFiles(DemoJobs.Checkout, "packages.lock.json", SearchOption.AllDirectories)
            .Concat(Directory.EnumerateFiles(DemoJobs.Checkout, "*.config", SearchOption.TopDirectoryOnly)).Append(Path.Combine(DemoJobs.Checkout, ".config", "dotnet-tools.json"))
            .ToArray();
        Assert.True(files.Length >= 12);
        Assert.All(files, f => Assert.DoesNotMatch("https?://", File.ReadAllText(f)));
    }

    private static IEnumerable<string> References(string project, string kind)
    {
        var file = Path.Combine(DemoJobs.Checkout, "src", $"InstallPacket.{project}", $"InstallPacket.{project}.csproj");
        return XDocument.Load(file).Descendants(kind).Select(e => e.Attribute("Include")!.Value);
    }

    [GeneratedRegex(@"InstallPacket\.(\w+)\.csproj$")]
    private static partial Regex ProjectName();
}
