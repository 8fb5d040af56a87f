using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using InstallPacket.Tests;

namespace InstallPacket.Cli.Tests;

/// <summary>The page of workings links each input to the row that it comes from.</summary>
public partial class WorkingsLinkTests
{
    [Theory]
    [InlineData("alder-lane")]
    [InlineData("far-meadow")]
    [InlineData("mill-yard")]
    [InlineData("pine-corner")]
    [InlineData("quay-loft")]
    [InlineData("brook-terrace")]
    public void Every_input_from_a_row_links_to_it(string job)
    {
        var page = File.ReadAllText(Path.Combine(Workshop.Built.Out, job, "workings.html"));
        var places = Place().Matches(page).Select(m => m.Groups["id"].Value).ToArray();
        Assert.Equal(places.Length, places.Distinct(StringComparer.Ordinal).Count());
        var links = Link().Matches(page).Select(m => m.Groups["id"].Value).ToArray();
        Assert.Empty(links.Except(places, StringComparer.Ordinal));

        var rows = JsonNode.Parse(File.ReadAllText(Path.Combine(Workshop.Built.Out, job, "plan.json")))!["workings"]!.AsArray()
            .SelectMany(f => f!["rows"]!.AsArray()).ToArray();
        Assert.Equal(rows.Length, places.Count(p => p.Contains('.', StringComparison.Ordinal)));
        var fromRows = rows.Sum(r => r!["from"]!.AsArray().Count(f => ((string)f!).StartsWith("row ", StringComparison.Ordinal)));
        Assert.True(fromRows > 0);
        Assert.Equal(fromRows, links.Count(l => l.Contains('.', StringComparison.Ordinal)));
    }

    // A row that somebody follows to its inputs: the level of a station is the sum of the rows that it links to.
    [Fact]
    public void A_link_leads_to_the_row_that_holds_its_number()
    {
        var page = File.ReadAllLines(Path.Combine(Workshop.Built.Out, "alder-lane", "workings.html"));
        var inputs = page.SelectMany(line => Input().Matches(line)).ToArray();
        Assert.NotEmpty(inputs);
        foreach (var input in inputs)
        {
            var row = page.Single(line => line.Contains($"<span id=\"{input.Groups["id"].Value}\"></span>", StringComparison.Ordinal));
            var result = Result().Match(row).Groups["number"].Value;
            Assert.True(result.Length > 0, row);
            if (!Converts(input.Groups["number"].Value, result)) Assert.Fail($"{input.Value} leads to {row}");
        }
    }

    // The same number, or the same quantity in another unit.
    private static bool Converts(string input, string result)
    {
        var (from, to) = (Number(result), Number(input));
        double[] factors = [1, -1, 0.001, 1000, 1 / 0.3048];
        return factors.Any(f => Math.Abs(from * f - to) <= 2e-5 * Math.Max(Math.Abs(to), 1e-4));
    }

    private static double Number(string text) =>
        double.Parse(text.Replace('−', '-'), System.Globalization.CultureInfo.InvariantCulture);

    [GeneratedRegex("\\sid=\"(?<id>[^\"]*)\"")]
    private static partial Regex Place();

    [GeneratedRegex("href=\"#(?<id>[^\"]*)\"")]
    private static partial Regex Link();

    [GeneratedRegex("<td class=\"num\"><a href=\"#(?<id>[^\"]*)\">(?<number>[^<]*)</a>")]
    private static partial Regex Input();

    [GeneratedRegex("<strong>(?<number>[^<]*)</strong></td></tr>$")]
    private static partial Regex Result();
}
