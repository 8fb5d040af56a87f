using System.Collections.Concurrent;
using System.Globalization;
using System.Text.RegularExpressions;
using CsCheck;
using InstallPacket.Tests;

namespace InstallPacket.Packets.Tests;

/// <summary>No edit changes a page or a figure of a packet without a difference between the plans, which <c>changes</c> lists.</summary>
public partial class PrintedChangeTests
{
    private const int Iterations = 24;
    private static readonly string[] Ids = [.. JobReader.JobIds(DemoJobs.Load())];
    private static readonly PacketBuilder Builder = new(Sample.Theme);
    private static readonly string[] PartFiles = [.. DemoJobs.Load().List("_shared/parts").Where(p => p.EndsWith(".yaml", StringComparison.Ordinal))];
    private static readonly string[] StationFiles = [.. DemoJobs.Load().List("_shared/stations")];
    private static readonly ConcurrentDictionary<string, Lazy<(Plan Plan, string Said)>> Unchanged = new(StringComparer.Ordinal);
    private static readonly Gen<int> Anywhere = Gen.Int[0, 1_000_000];
    private static readonly Gen<int> By = Gen.Int[1, 9];

    private static readonly Gen<(string Id, string What, DemoJobs Jobs)> Edits = Gen.OneOf(Ids).SelectMany(id => Gen.OneOf(
        Gen.Select(Anywhere, By, (at, by) => Edited(id, JobFile(id), text => Number(text, at, by))),
        Gen.Select(Anywhere, Anywhere, (at, other) => Edited(id, JobFile(id), text => Word(text, at, other))),
        Anywhere.Select(at => Edited(id, JobFile(id), text => Letter(text, at))),
        Anywhere.Select(at => Edited(id, JobFile(id), text => WithoutLine(text, at))),
        Gen.Select(Gen.OneOf(StationFiles), Anywhere, By, (file, at, by) => Edited(id, file, text => Number(text, at, by))),
        Gen.Select(Gen.OneOf(PartFiles), Anywhere, By, (file, at, by) => Edited(id, file, text => Number(text, at, by)))));

    [Fact]
    public void Nothing_that_is_printed_changes_without_a_difference_between_the_plans()
    {
        var printed = 0;
        Edits.Sample(edit =>
        {
            var before = Unchanged.GetOrAdd(edit.Id, id => new(() => Planned(id, DemoJobs.Load()) is { } plan ? (plan, Said(plan)) : default)).Value;
            if (Planned(edit.Id, edit.Jobs) is not { } after || Said(after) == before.Said) return true;
            Interlocked.Increment(ref printed);
            return !PlanComparer.Compare(before.Plan, after).Same;
        }, iter: Iterations, print: edit => edit.What);
        Assert.True(printed > 0, "no edit changed a page");
    }

    [Fact]
    public void A_ground_mast_whose_load_path_cannot_be_calculated_has_its_pages()
    {
        var plan = Planned("far-meadow", DemoJobs.Load().With("far-meadow/job.yaml", "mast-length: 40 ft", "mast-length: 60 ft"))!;
        Assert.Null(plan.Mounting.LoadPath);
        Assert.Contains("The foot on the ground carries the weight.", Builder.Said(plan), StringComparison.Ordinal);
    }

    // Null where the edit makes a job that cannot be read, or a language without words: then there is nothing to print. Tiles would cost time and are listed by themselves.
    private static Plan? Planned(string id, DemoJobs jobs)
    {
        var parts = jobs.Parts();
        var reading = new JobReader(jobs, parts).Read(id);
        return reading.Job is { } job && (job.Language is null || Sample.Theme.Languages.Contains(job.Language)) ? Planner.Plan(job with { Siting = job.Siting with { Terrain = null } }, parts, null, reading.Findings) : null;
    }

    // The line of a finding moves with any remark above it, which is no change of the packet.
    private static string Said(Plan plan) => Line().Replace(Builder.Said(plan), "");

    private static string JobFile(string id) => id + "/job.yaml";

    private static (string Id, string What, DemoJobs Jobs) Edited(string id, string path, Func<string, string> change)
    {
        var jobs = DemoJobs.Load();
        var (old, now) = (jobs.Text(path), change(jobs.Text(path)));
        var first = old.Zip(now).TakeWhile(p => p.First == p.Second).Count();
        return (id, $"{id}, {path}: '{Near(old, first)}' becomes '{Near(now, first)}'", jobs.WithFile(path, now));
    }

    private static string Near(string text, int at) => text[Math.Max(0, at - 30)..Math.Min(text.Length, at + 30)];

    private static string Number(string text, int at, int by) =>
        Changed(text, Digit(), at, m => ((int.Parse(m.Value, CultureInfo.InvariantCulture) + by) % 10).ToString(CultureInfo.InvariantCulture));

    private static string Word(string text, int at, int other)
    {
        var words = Value().Matches(text);
        return Changed(text, Value(), at, _ => words[other % words.Count].Value);
    }

    private static string Letter(string text, int at) => Changed(text, LowerCase(), at, m => m.Value + "e");

    private static string WithoutLine(string text, int at)
    {
        var lines = text.Split('\n').ToList();
        lines.RemoveAt(at % lines.Count);
        return string.Join('\n', lines);
    }

    private static string Changed(string text, Regex pattern, int at, Func<Match, string> change)
    {
        var all = pattern.Matches(text);
        var one = all[at % all.Count];
        return string.Concat(text.AsSpan(0, one.Index), change(one), text.AsSpan(one.Index + one.Length));
    }

    [GeneratedRegex(@"(?<=\.(yaml|csv)) line \d+")]
    private static partial Regex Line();

    [GeneratedRegex(@"\d")]
    private static partial Regex Digit();

    [GeneratedRegex(@"(?<=: |, |\[)[A-Za-z][A-Za-z0-9.-]+(?=[\],\n ])")]
    private static partial Regex Value();

    [GeneratedRegex("[a-z](?=[a-z])")]
    private static partial Regex LowerCase();
}
