using System.Diagnostics;
using System.Globalization;
using InstallPacket.Mutation;

// Changes the code in one small place at a time and runs the tests: a change that no test notices shows a test that is missing.
var options = Enumerable.Range(0, args.Length / 2).ToDictionary(i => args[2 * i].TrimStart('-'), i => args[2 * i + 1]);
string Option(string name, string absent) => options.GetValueOrDefault(name, absent);

var domain = Option("project", "Calc");
var folder = Path.GetFullPath($"src/InstallPacket.{domain}");
var tests = Path.GetFullPath($"tests/InstallPacket.{domain}.Tests");
var program = new TestProgram(Path.Combine(tests, "bin/Debug/net10.0"), Path.Combine(tests, "obj/mutation"));
var code = new ProjectCode(folder, program.Folder);
var place = Path.Combine(program.Folder, code.Name + ".dll");

// The packets of the demo jobs and the bad jobs in the tests of the program take part where asked.
var packets = Option("packets", "no") == "yes"
    ? new TestProgram(Path.GetFullPath("tests/InstallPacket.Cli.Tests/bin/Debug/net10.0"), Path.GetFullPath("tests/InstallPacket.Cli.Tests/obj/mutation"))
    : null;
string[] packetTests = ["-class", "*.GoldenTests", "-class", "*.BadJobTests"];
var before = Option("again", "") is { Length: > 0 } log ? File.ReadAllLines(log).Where(l => l.StartsWith("Survived", StringComparison.Ordinal)).ToArray() : null;

var below = Option("below", "").Split(',', StringSplitOptions.RemoveEmptyEntries);
var all = code.Mutants().Where(m => below.Length == 0 || below.Any(b => m.Path.StartsWith(b, StringComparison.Ordinal))).ToArray();
var seed = int.Parse(Option("seed", "1"), CultureInfo.InvariantCulture);
var most = int.Parse(Option("sample", "0"), CultureInfo.InvariantCulture) is var asked and > 0 ? asked : all.Length;
var until = TimeSpan.FromMinutes(double.Parse(Option("minutes", "600"), CultureInfo.InvariantCulture));
var order = new Random(seed);
var sample = all.Select(m => (Mutant: m, Key: order.Next())).OrderBy(m => m.Key).Take(most).Select(m => m.Mutant)
    .Where(m => before is null || before.Any(l => l.EndsWith($" {m}", StringComparison.Ordinal))).ToArray();
Console.WriteLine($"{all.Length} mutants of {code.Name}, {sample.Length} in the sample of seed {seed}");

// The tests of the mutant's own word of the trade and the reference sets come first: most mutants die there.
string[] Near(Mutant m) => [$"*.{m.Folder[..Math.Min(5, m.Folder.Length)]}*", "*.Checks.*"];
string[] Classes(string option, Mutant m) => [.. Near(m).SelectMany(n => (string[])[option, n])];
var watch = Stopwatch.StartNew();
code.Compile(null, place);
var nearOnly = Option("near-only", "no") == "yes";
string[] unchanged = nearOnly ? [.. sample.SelectMany(Near).Distinct().SelectMany(n => (string[])["-class", n])] : [];
if (program.Run(TimeSpan.FromMinutes(20), unchanged) != Outcome.Survived) throw new InvalidOperationException("The tests fail without any change.");
var limit = 4 * watch.Elapsed + TimeSpan.FromSeconds(20);
Console.WriteLine($"without a change {watch.Elapsed.TotalSeconds:0} s");

Outcome Judge(Mutant m)
{
    if (!code.Compile(m, place)) return Outcome.NotCompiled;
    var near = program.Run(limit, Classes("-class", m));
    if (near != Outcome.Survived || nearOnly) return near;
    // What survived an earlier run has seen the other tests of its project.
    var rest = before is null ? program.Run(limit, Classes("-class-", m)) : near;
    return rest == Outcome.Survived && packets is not null ? InPackets() : rest;
}

Outcome InPackets()
{
    File.Copy(place, Path.Combine(packets!.Folder, code.Name + ".dll"), true);
    return packets.Run(TimeSpan.FromMinutes(5), packetTests) == Outcome.Survived ? Outcome.Survived : Outcome.InPackets;
}

watch.Restart();
var score = new SortedDictionary<(string, Outcome), int>();
foreach (var mutant in sample.TakeWhile(_ => watch.Elapsed < until))
{
    var outcome = Judge(mutant);
    score[(mutant.Folder, outcome)] = score.GetValueOrDefault((mutant.Folder, outcome)) + 1;
    Console.WriteLine($"{outcome,-11} {mutant.Kind,-10} {mutant}");
}
foreach (var group in score.GroupBy(s => s.Key.Item1))
    Console.WriteLine($"{group.Key,-12} " + string.Join("  ", group.Select(g => $"{g.Key.Item2} {g.Value}")));
Console.WriteLine($"{watch.Elapsed.TotalSeconds:0} s");
