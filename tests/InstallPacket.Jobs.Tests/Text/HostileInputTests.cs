using CsCheck;

namespace InstallPacket.Jobs.Tests.Text;

/// <summary>Any text as a job file gives a job, or a finding of severity stop that points into the file.</summary>
public class HostileInputTests
{
    private static readonly string[] Pieces =
    [
        "a", "format", "1", ": ", ":", "- ", "-", "? ", "\n", "\n  ", "\n    ", " ", "{", "}", "[", "]", ", ", "'", "\"", "|", ">", "|-\n ", "#", " #", "&a ", "*a", "!!str ", "!", "%YAML 1.2\n",
        "---\n", "...\n", "\t", "@", "`", "\\", "\\U00110000", "\u0000", "\u0085", "\u2028", "\uFEFF", "\uD800", "\u00E9", "~", "null", "<<: ", "siting:", "4 m", "\r", "\r\n",
    ];

    [Fact]
    public void Random_text() => Gen.String[0, 200].Sample(Check, iter: 600);

    [Fact]
    public void Random_text_that_looks_like_YAML() => Gen.OneOf(Pieces).Array[0, 60].Sample(p => Check(string.Concat(p)), iter: 1200);

    [Fact]
    public void Random_changes_of_a_demo_job()
    {
        var change = Gen.Select(Gen.Int[0, 4], Gen.Int[0, 1_000_000], Gen.Int[0, 1_000_000], Gen.OneOf(Pieces));
        Gen.Select(Gen.OneOf(DemoJobs.Ids.ToArray()), change.Array[1, 6]).Sample((id, changes) =>
        {
            var text = DemoJobs.Text(id);
            foreach (var (kind, a, b, piece) in changes) text = Change(text, kind, a, b, piece);
            return Check(text);
        }, iter: 600);
    }

    public static TheoryData<string, string> Bombs => new()
    {
        { "open brackets", new string('[', 100_000) },
        { "nested brackets", new string('[', 100_000) + new string(']', 100_000) },
        { "nested braces", string.Concat(Enumerable.Repeat("{a: ", 50_000)) },
        { "closing brackets in quotes", "a: " + string.Concat(Enumerable.Repeat("[\"]\", ", 40_000)) },
        { "dashes", string.Concat(Enumerable.Repeat("- ", 100_000)) },
        { "bare dashes", new string('-', 200_000) },
        { "questions", string.Concat(Enumerable.Repeat("? ", 100_000)) },
        { "dashes behind tabs", string.Concat(Enumerable.Repeat("-\t", 100_000)) },
        { "stairs", string.Concat(Enumerable.Range(0, 700).Select(i => new string(' ', i) + "a:\n")) },
        { "dash stairs", string.Concat(Enumerable.Range(0, 700).Select(i => new string(' ', i) + "-\n")) },
        { "huge plain text", "title: " + new string('x', 250_000) },
        { "huge quoted text", "title: \"" + new string('x', 250_000) + "\"" },
        { "quote that never ends", "title: \"" + new string('x', 250_000) },
        { "huge key", new string('k', 250_000) + ": 1" },
        { "many aliases", "a: &a [1]\nb: [" + string.Concat(Enumerable.Repeat("*a, ", 50_000)) + "1]" },
        { "many anchors", string.Concat(Enumerable.Range(0, 15_000).Select(i => $"k{i}: &a{i} 1\n")) },
        { "many keys", string.Concat(Enumerable.Range(0, 20_000).Select(i => $"k{i}: 1\n")) },
        { "one key many times", string.Concat(Enumerable.Repeat("title: x\n", 20_000)) },
        { "many documents", string.Concat(Enumerable.Repeat("--- {}\n", 20_000)) },
        { "more than the bound", new string('#', 300_000) },
    };

    [Theory]
    [MemberData(nameof(Bombs))]
    public void Bombs_are_findings(string name, string text)
    {
        var reading = DemoJobs.Read(text);
        Assert.True(reading.Job is null, name);
        Assert.True(PointsIntoTheFile(reading, text), name);
    }

    private static bool Check(string text)
    {
        var reading = DemoJobs.Read(text);
        return reading.Job is not null ? reading.Findings.All(f => f.Severity != Severity.Stop) : PointsIntoTheFile(reading, text);
    }

    private static bool PointsIntoTheFile(JobReading reading, string text)
    {
        var lines = text.ReplaceLineEndings("\n").Split('\n');
        return reading.Findings.Any(f => f.Severity == Severity.Stop)
            && reading.Findings.Where(f => f.At is { File: "job/job.yaml", Line: > 0 })
                .All(f => f.At.Line <= lines.Length && f.At.Column >= 1 && f.At.Column <= lines[f.At.Line - 1].Length + 1);
    }

    private static string Change(string text, int kind, int a, int b, string piece)
    {
        var at = a % (text.Length + 1);
        var lines = text.Split('\n').ToList();
        var (from, to) = (a % lines.Count, b % (lines.Count + 1));
        switch (kind)
        {
            case 0: return text.Remove(at, Math.Min(1 + (b % 5), text.Length - at));
            case 1: return text.Insert(at, piece);
            case 2: lines.RemoveAt(from); break;
            case 3: lines.Insert(to, lines[from]); break;
            default: return text.Insert(at, text.Substring(b % (text.Length + 1), Math.Min(8, text.Length - (b % (text.Length + 1)))));
        }
        return string.Join('\n', lines);
    }
}
