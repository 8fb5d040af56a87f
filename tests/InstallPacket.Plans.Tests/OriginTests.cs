using System.Globalization;
using System.Text.Json.Nodes;
using InstallPacket.Calc.Sources;
using InstallPacket.Tests;

namespace InstallPacket.Plans.Tests;

/// <summary>Every input of every row of the workings is another row, a number of the plan, a key of job, part or station, the ground, or a named constant.</summary>
public class OriginTests
{
    private static readonly double[] UnitFactors = [1, -1, 0.001, 1000, 1 / 0.3048];

    private static readonly PartLibrary Library = DemoJobs.Load().Parts();

    public static TheoryData<string> Jobs => [.. InstallPacket.Jobs.JobReader.JobIds(DemoJobs.Load())];

    [Theory]
    [MemberData(nameof(Jobs))]
    public void No_input_of_the_workings_is_loose(string job) => Closed(DemoPlans.Of(job));

    [Fact]
    public void No_input_of_the_workings_of_one_plate_is_loose() => Closed(DemoPlans.Of("pine-corner", OnePlateTests.Jobs()
        .With("_shared/parts/hardware.yaml", "arm: { length: 300 mm, tilt: 30 deg }", "arm: { length: 300 mm, tilt: 30 deg }\n    rating: { moment: 300 N m, wind-area: 1 m2 }")));

    private static void Closed(Plan plan)
    {
        var tree = PlanJson.Tree(plan);
        var rows = plan.Workings.Select(r => (r.Formula.Id, r.Subject)).ToHashSet();
        var loose = plan.Workings.SelectMany(r => r.Inputs.Select((input, i) => (Row: r, Input: input, Sign: r.Formula.Inputs[i].Sign)))
            .Select(x => (x.Row, x.Sign, Why: WhyLoose(x.Input, rows, tree))).Where(x => x.Why.Length > 0)
            .Select(x => $"{x.Row.Formula.Id} of {x.Row.Subject}, {x.Sign}: {x.Why}").ToArray();
        Assert.True(loose.Length == 0, $"{loose.Length} loose:\n" + string.Join("\n", loose.Take(60)));
        Assert.True(plan.Workings.Sum(r => r.Inputs.Count) > 500);
    }

    [Fact]
    public void A_formula_that_meets_one_subject_with_two_inputs_is_an_error()
    {
        var work = new Workings();
        var row = work.Apply(SitingFormulas.AboveSea, "antenna", Term.Ground("house", 100), Term.Key("siting.antenna-height", 8));
        Assert.Same(row, work.Apply(SitingFormulas.AboveSea, "antenna", Term.Ground("house", 100), Term.Key("siting.antenna-height", 8)));
        Assert.Equal(108, row.Number);
        var error = Assert.Throws<InvalidOperationException>(() =>
            work.Apply(SitingFormulas.AboveSea, "antenna", Term.Ground("house", 101), Term.Key("siting.antenna-height", 8)));
        Assert.Equal("height-above-sea was applied to 'antenna' with g = 100 and 101.", error.Message);
    }

    [Fact]
    public void Every_table_of_numbers_is_listed_once_and_names_a_registered_source()
    {
        var fields = typeof(NumberTables).GetFields().Select(f => (NumberTable)f.GetValue(null)!).ToArray();
        Assert.Equal(fields.Select(t => t.Id).Order(), NumberTables.All.Select(t => t.Id).Order());
        Assert.Equal(fields.Length, fields.Select(t => t.Id).Distinct().Count());
        Assert.All(fields, t => Assert.Contains(SourceRegister.All, s => s.Id == t.Source));
    }

    public static TheoryData<string> TablesInFiles => [.. NumberTables.All.Where(t => t.File is not null).Select(t => t.Id)];

    [Theory]
    [MemberData(nameof(TablesInFiles))]
    public void A_table_is_known_as_its_least_certain_row_is(string id)
    {
        var table = NumberTables.All.Single(t => t.Id == id);
        var path = new[] { "Calc", "Plans" }.Select(p => Path.Combine(DemoJobs.Checkout, $"src/InstallPacket.{p}", table.File!)).Single(File.Exists);
        var marks = File.ReadLines(path).Where(l => !l.StartsWith('#')).Skip(1).Select(l => l[(l.LastIndexOf(',') + 1)..]).ToArray();
        Assert.Equal(table.Provenance, marks.Max(CsvProvenance.Of));
    }

    // What shares a name in the workings would stop the program: a part named twice, temperatures that round alike.
    [Fact]
    public void Parts_named_twice_and_near_temperatures_keep_rows_of_their_own()
    {
        const string screws = "    - { part: lag-screw-5-16, count: 4, pilot: 3/16 in, into: \"the end post of the shed, sound wood\", timber: douglas-fir-larch }";
        var twice = DemoJobs.Load().With("far-meadow/job.yaml", screws, screws + "\n" + screws.Replace(" }", ", gap: 1/2 in }", StringComparison.Ordinal))
            .With("far-meadow/job.yaml", "{ cold: -30 F, hot: 130 F }", "{ cold: 19.7 C, hot: 20.3 C }");
        var rows = DemoPlans.Of("far-meadow", twice).Workings;
        Assert.Equal(2, rows.Count(r => r.Formula.Id == Calc.Mounting.Wood.Withdrawal.LagFormula.Id));
        Assert.Equal(3, rows.Count(r => r.Formula.Id == Calc.Cabling.CoaxTemperature.FactorFormula.Id));
    }

    private static string WhyLoose(Term term, HashSet<(string, string)> rows, JsonObject tree) => term switch
    {
        Row row => rows.Contains((row.Formula.Id, row.Subject)) ? "" : $"the row {row.Formula.Id} of {row.Subject} is not in the plan",
        Constant c => SourceRegister.All.Any(s => s.Id == c.Source) ? "" : $"the constant {c.Name} names no source",
        Converted c => UnitFactors.Any(f => Math.Abs(f - c.Factor) < 1e-12) ? WhyLoose(c.Of, rows, tree) : $"{c.Factor} converts no unit",
        Given g => WhyLoose(g, tree),
        _ => term.GetType().Name,
    };

    private static string WhyLoose(Given g, JsonObject tree) => g.By switch
    {
        GivenBy.Key => IsKey(g.Path) ? "" : $"{g.Path} is not a key",
        GivenBy.Part => IsFigure(g.Path.Split('.')) ? "" : $"{g.Path} is no figure of a part",
        GivenBy.Station => IsKey("reception.transmitters." + g.Path) ? "" : $"{g.Path} is no field of a station",
        GivenBy.Table => NumberTables.All.Any(t => t.Id == g.Path.Split('.')[0]) ? "" : $"{g.Path} is in no table",
        GivenBy.Ground => g.Path.Length > 0 ? "" : "the ground somewhere",
        _ => Number(tree, g.Path) is { } number ? Math.Abs(number - g.Number) <= 1e-8 * Math.Max(1, Math.Abs(number)) ? "" : $"{g.Path} is {number} in the plan, not {g.Number}"
            : $"{g.Path} is not in the plan",
    };

    // A part of the library with a key of its own kind.
    private static bool IsFigure(string[] path) => path.Length == 2 && Library.Find(path[0]) is { } part && PartCatalogue.KeysOf(part.Kind).Keys.Any(k => k.Name == path[1]);

    private static bool IsKey(string path)
    {
        var wanted = path.Split('.');
        return KeyCatalogue.AllKeys().Any(k => Fits([.. k.Path.Split('.'), .. k.Key.Kind is IMapKind { Item: not GroupKind } ? ["NAME"] : Array.Empty<string>()], wanted));
    }

    // In a list the name of an entry may stand where the catalogue has none.
    private static bool Fits(string[] key, string[] wanted) =>
        (key.Length == wanted.Length && key.Zip(wanted).All(p => p.First == "NAME" || p.First == p.Second))
        || (key.Length + 1 == wanted.Length && wanted.Length > 2 && Fits(key, [.. wanted[..^2], wanted[^1]]));

    private static double? Number(JsonNode? node, string path)
    {
        while (path.Length > 0 && node is not null)
        {
            var end = path.StartsWith('[') ? path.IndexOf(']') + 1 : path.IndexOfAny(['.', '[']) is var i && i < 0 ? path.Length : i;
            var step = path[..end];
            path = path[end..].TrimStart('.');
            node = step[0] == '[' ? Entry(node as JsonArray, step[1..^1]) : (node as JsonObject)?[step];
        }
        return node is JsonValue value && value.TryGetValue<double>(out var number) ? number : null;
    }

    // An entry by its name or number, whatever that field is called, or by its place.
    private static JsonNode? Entry(JsonArray? list, string name) =>
        list?.FirstOrDefault(e => e is JsonObject o && o["id"]?.ToString() == name) ?? list?.FirstOrDefault(e => e is JsonObject o && o.Any(p => p.Value is JsonValue v && v.ToString() == name))
        ?? (int.TryParse(name, NumberStyles.None, CultureInfo.InvariantCulture, out var place) && place >= 1 && place <= list?.Count ? list[place - 1] : null);
}
