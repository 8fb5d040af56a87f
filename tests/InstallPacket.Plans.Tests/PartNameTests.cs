using System.Text.RegularExpressions;
using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

/// <summary>The name of a part decides nothing: its kind, its role and its figures do.</summary>
public partial class PartNameTests
{
    private const string Prefix = "zz-";

    [Theory]
    [InlineData("alder-lane")]
    [InlineData("brook-terrace")]
    [InlineData("mill-yard")]
    [InlineData("quay-loft")]
    public void Renaming_every_part_of_the_library_changes_names_alone(string id)
    {
        var jobs = DemoJobs.Load();
        string[] names = [.. jobs.Parts().Parts.Keys.OrderByDescending(n => n.Length)];
        var renamed = new RenamedParts(jobs, names);
        var parts = PartLibraryReader.Read(renamed, new FindingList());
        Assert.Equal(names.Select(n => Prefix + n).Order(StringComparer.Ordinal), parts.Parts.Keys.Order(StringComparer.Ordinal));
        var reading = new JobReader(renamed, parts).Read(id);
        Assert.NotNull(reading.Job);
        Assert.Equal(Text(Planner.Plan(jobs.Job(id), jobs.Parts(), null, [])), Text(Planner.Plan(reading.Job, parts, null, [])));
    }

    // Names are cut back, and columns of findings, which stand behind longer names, are left out.
    private static string Text(Plan plan) => Column().Replace(PlanJson.Text(PlanJson.Tree(plan)), "").Replace(Prefix, "", StringComparison.Ordinal);

    [GeneratedRegex("\"column\": \\d+,")]
    private static partial Regex Column();

    private sealed class RenamedParts(DemoJobs jobs, string[] names) : IJobFiles
    {
        private readonly Regex _names = new(@"(?<![\w-])(" + string.Join('|', names.Select(Regex.Escape)) + @")(?![\w-])");

        public JobFile Read(string path, int maxBytes)
        {
            var file = jobs.Read(path, maxBytes);
            return file with { Text = string.Join('\n', file.Text.Split('\n').Select(l => Renamed(path, l))) };
        }

        public IReadOnlyList<string> List(string folder) => jobs.List(folder);

        public Stream? Open(string path) => jobs.Open(path);

        // A kind or a role may be spelled like a part's name, and texts may use its words.
        private string Renamed(string path, string line) =>
            !path.EndsWith(".yaml", StringComparison.Ordinal) || Word().IsMatch(line) ? line : _names.Replace(line, Prefix + "$1");

        private static Regex Word() => WordLine();
    }

    [GeneratedRegex(@"^\s*(kind|role|name|form|title|on|by|connection|words|note):")]
    private static partial Regex WordLine();
}
