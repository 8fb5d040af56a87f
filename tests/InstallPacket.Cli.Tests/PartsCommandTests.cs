using System.Text.Json.Nodes;
using System.Diagnostics;
using System.Text.RegularExpressions;
using InstallPacket.Tests;

namespace InstallPacket.Cli.Tests;

public sealed partial class PartsCommandTests : IDisposable
{
    private const string Own = "_shared/parts/own.yaml";
    private readonly Workshop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public void The_commands_of_the_guide_print_what_the_guide_shows()
    {
        var path = Path.Combine(DemoJobs.Checkout, "docs", "guide", "parts.md");
        var page = File.ReadAllText(path);
        var examples = Example().Matches(page);
        Assert.True(examples.Count >= 4, $"{examples.Count} examples");
        foreach (Match example in examples)
        {
            var run = Run([.. Argument().Matches(example.Groups["command"].Value).Select(m => m.Value.Trim('"'))]);
            Assert.Equal(("", ExitCode.Done), (run.Errors, run.Code));
            if (BadJobs.Repository.Accepts) page = page.Replace(example.Value, $"    installpacket {example.Groups["command"].Value}\n\n```text\n{run.Output}```\n", StringComparison.Ordinal);
            else Assert.Equal(example.Groups["printed"].Value, run.Output);
        }
        if (BadJobs.Repository.Accepts) File.WriteAllText(path, page);
    }

    [Fact]
    public void A_copy_never_takes_the_place_of_a_part_of_ones_own()
    {
        Assert.Equal(ExitCode.Done, Run("parts", "--copy", "splitter-3").Code);
        Edit(Own, "5.6 dB, 88", "5.1 dB, 88");
        var changed = _shop.Read("jobs/" + Own);
        var again = Run("parts", "--copy", "splitter-3");
        Assert.Equal(ExitCode.WrongCommandLine, again.Code);
        Assert.Contains("`splitter-3` is a part of your own already, in _shared/parts/own.yaml, line ", again.Errors, StringComparison.Ordinal);
        Assert.Equal(ExitCode.WrongCommandLine, Run("parts", "--copy", "splitter-4", "--as", "splitter-3").Code);
        Assert.Equal(changed, _shop.Read("jobs/" + Own));
        Assert.Equal(ExitCode.Done, Run("parts", "--copy", "splitter-3", "--as", "attic-splitter").Code);
        Assert.StartsWith(changed, _shop.Read("jobs/" + Own), StringComparison.Ordinal);
        Assert.Contains("  attic-splitter:\n    kind: splitter\n", _shop.Read("jobs/" + Own), StringComparison.Ordinal);
        Assert.Contains("loss 5.1 dB at 54 MHz", Run("parts", "attic").Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--kind spliter", "did you mean `splitter`?")]
    [InlineData("--units imperial", "the words are us, metric")]
    [InlineData("--copy spliter-3", "did you mean `splitter-3`?")]
    [InlineData("--as mine", "`--as` goes with `--copy`")]
    [InlineData("--copy splitter-3 --kind splitter", "`--copy` takes one part")]
    [InlineData("--copy splitter-3 --as ../mine", "does not fit as a name")]
    [InlineData("no-such-word", "no part fits")]
    public void What_cannot_be_done_is_said_and_nothing_is_written(string arguments, string says)
    {
        var run = Run(["parts", .. arguments.Split(' ')]);
        Assert.Equal(ExitCode.WrongCommandLine, run.Code);
        Assert.Contains(says, run.Errors, StringComparison.Ordinal);
        Assert.Empty(Workshop.Files(_shop.Root));
    }

    [Fact]
    public void Files_that_are_written_name_schemas_that_are_there()
    {
        Assert.Equal(ExitCode.Done, Workshop.Run("new", "--jobs", _shop.Jobs, "first").Code);
        Assert.Equal(ExitCode.Done, Run("parts", "--copy", "splitter-3").Code);
        foreach (var path in new[] { "first/job.yaml", Own })
        {
            var line = _shop.Read("jobs/" + path).Split('\n')[0];
            Assert.StartsWith("# yaml-language-server: $schema=", line, StringComparison.Ordinal);
            var schema = Path.Combine(_shop.Jobs, Path.GetDirectoryName(path)!, line["# yaml-language-server: $schema=".Length..]);
            Assert.Contains("https://json-schema.org/draft/2020-12/schema", File.ReadAllText(schema), StringComparison.Ordinal);
        }
        foreach (var (topic, name) in new[] { ("schema", "job"), ("schema-firm", "firm"), ("schema-kit", "kit"), ("schema-parts", "parts") })
            Assert.True(JsonNode.DeepEquals(JsonNode.Parse(_shop.Read($"jobs/_shared/schema/{name}.schema.json")), JsonNode.Parse(Workshop.Run("explain", topic).Output)), name);
    }

    [Fact]
    public void Packet_and_changes_follow_a_part_that_comes_to_override_a_generic_one()
    {
        Assert.Equal(ExitCode.Done, Workshop.Run("new", "--jobs", _shop.Jobs, "first").Code);
        Git("init", "-q", "-b", "main");
        Git("add", ".");
        Git("-c", "user.name=t", "-c", "user.email=t@example.invalid", "commit", "-q", "-m", "first");
        Assert.Equal(ExitCode.Done, _shop.Build().Code);
        var before = _shop.Read("out/first/plan.json");
        var part = Splitter();
        Assert.Equal(ExitCode.Done, Run("parts", "--copy", part, "--as", "other-splitter").Code);
        Assert.Contains("No change of plan.", Changes(), StringComparison.Ordinal);
        Assert.Equal(ExitCode.Done, Run("parts", "--copy", part).Code);
        var own = _shop.Read("jobs/" + Own);
        var at = own.IndexOf($"  {part}:\n", StringComparison.Ordinal);
        _shop.Write("jobs/" + Own, own[..at] + own[at..].Replace("54 MHz: ", "54 MHz: 1", StringComparison.Ordinal).Replace("470 MHz: ", "470 MHz: 1", StringComparison.Ordinal).Replace("608 MHz: ", "608 MHz: 1", StringComparison.Ordinal));
        Assert.DoesNotContain("No change of plan.", Changes(), StringComparison.Ordinal);
        Assert.Equal(ExitCode.Done, _shop.Build().Code);
        Assert.NotEqual(before, _shop.Read("out/first/plan.json"));
    }

    private string Splitter() => Regex.Match(_shop.Read("jobs/first/job.yaml"), @"part: (splitter-[0-9a-z-]+)").Groups[1].Value;

    private string Changes() => Workshop.Run("changes", "--from", "HEAD", "--jobs", _shop.Jobs).Output;

    private RunResult Run(params string[] arguments) => Workshop.Run([.. arguments, "--jobs", _shop.Jobs]);

    private void Edit(string path, string old, string text) => _shop.Edit("jobs/" + path, old, text);

    private void Git(params string[] arguments)
    {
        var start = new ProcessStartInfo("git") { WorkingDirectory = _shop.Root, RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var a in arguments) start.ArgumentList.Add(a);
        using var git = Process.Start(start)!;
        git.WaitForExit();
        Assert.Equal(0, git.ExitCode);
    }

    [GeneratedRegex(@"^    installpacket (?<command>parts.*)\n\n```text\n(?<printed>(?s:.*?))```\n", RegexOptions.Multiline | RegexOptions.ExplicitCapture)]
    private static partial Regex Example();

    [GeneratedRegex("\"[^\"]*\"|\\S+")]
    private static partial Regex Argument();
}
