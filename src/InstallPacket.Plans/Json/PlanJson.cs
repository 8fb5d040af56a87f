using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans.Json;

/// <summary>The plan as data: the tree of <c>plan.json</c>, which is also what templates see.</summary>
public static class PlanJson
{
    private static readonly PlanJsonContext Context = new(new JsonSerializerOptions
    {
        PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower,
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        Converters =
        {
            new RoundedNumberConverter(), new WordConverter<UnitFamily>(), new WordConverter<PaperSize>(), new WordConverter<LevelUnit>(),
            new WordConverter<ObstructionKind>(), new WordConverter<Polarisation>(), new WordConverter<PartKind>(),
                new WordConverter<CableWay>(),
            new WordConverter<EntrySurface>(), new OptionalWordConverter<RoofForm>(), new OptionalWordConverter<RidgeAxis>(),
            new WordConverter<MountKind>(), new WordConverter<Access>(), new OptionalWordConverter<FallProtection>(),
            new OptionalWordConverter<FixingForm>(), new WordConverter<PieceKind>(), new WordConverter<StockKind>(),
                new WordConverter<CuttingAim>(),
            new WordConverter<InternetKind>(), new WordConverter<ServiceUnit>(), new WordConverter<ServiceLine>(), new WordConverter<Severity>(),
        },
    });

    /// <summary>What writes the types that are no plain data.</summary>
    internal static IReadOnlyList<JsonConverter> Converters => [.. Context.Options.Converters];

    /// <summary>The whole plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="speak">Gives the texts of a finding; null for values alone.</param>
    public static JsonObject Tree(Plan plan, Func<Finding, FindingText>? speak = null)
    {
        var tree = new JsonObject
        {
            ["format"] = 1,
            ["state"] = plan.State,
            ["job"] = Node(plan.Job, Context.JobFacts),
            ["siting"] = Node(plan.Siting, Context.SitingPlan),
            ["reception"] = Node(plan.Reception, Context.ReceptionPlan),
            ["cabling"] = Node(plan.Cabling, Context.CablingPlan),
            ["routing"] = Node(plan.Routing, Context.RoutingPlan),
            ["mounting"] = Node(plan.Mounting, Context.MountingPlan),
            ["bonding"] = Node(plan.Bonding, Context.BondingPlan),
            ["materials"] = Node(plan.Materials, Context.MaterialsPlan),
            ["handover"] = Node(plan.Handover, Context.HandoverPlan),
            ["findings"] = Findings(plan.Findings, speak),
            ["workings"] = Workings(plan.Workings),
        };
        return tree;
    }

    /// <summary>Findings as data.</summary>
    /// <param name="findings">The findings.</param>
    /// <param name="speak">Gives the texts of a finding; null for values alone.</param>
    public static JsonArray Findings(IReadOnlyList<Finding> findings, Func<Finding, FindingText>? speak = null) =>
        [.. findings.Select(f => (JsonNode)FindingNode(f, speak?.Invoke(f)))];

    private static JsonObject FindingNode(Finding f, FindingText? text)
    {
        var node = new JsonObject
        {
            ["severity"] = Word.Of(f.Severity),
            ["id"] = f.Id,
            ["case"] = f.Case,
            ["file"] = f.At.File,
            ["line"] = f.At.Line,
            ["column"] = f.At.Column,
        };
        if (text is not null) (node["found"], node["limit"], node["remedy"]) = (text.Found, text.Limit, text.Remedy);
        node["values"] = Values(f.Values);
        return node;
    }

    /// <summary>The values of a finding as data.</summary>
    public static JsonObject Values(FindingValues values) => new(values.Select(v => KeyValuePair.Create(v.Name, ValueNode(v.Value))));

    private static JsonNode? ValueNode(object? value) => value switch
    {
        null => null,
        double d => Number(d),
        int i => JsonValue.Create(i),
        bool b => JsonValue.Create(b),
        FindingValues group => Values(group),
        IEnumerable<FindingValues> groups => new JsonArray([.. groups.Select(g => (JsonNode)Values(g))]),
        IEnumerable<string> list => new JsonArray([.. list.Select(t => (JsonNode)JsonValue.Create(t))]),
        _ => JsonValue.Create((string)value),
    };

    /// <summary>A tree as text, with a line feed at the end.</summary>
    public static string Text(JsonNode tree) => tree.ToJsonString(Context.Options) + "\n";

    // One entry a formula, with a row for each application, in the order of first use.
    private static JsonArray Workings(IReadOnlyList<Row> workings) =>
        [.. workings.GroupBy(w => w.Formula.Id, StringComparer.Ordinal).Select(g => (JsonNode)Group(g.First().Formula, [.. g]))];

    private static JsonObject Group(Formula f, Row[] rows)
    {
        var source = SourceRegister.Get(f.Source);
        return new JsonObject
        {
            ["id"] = f.Id,
            ["title"] = f.Title,
            ["equation"] = f.Equation,
            ["source"] = new JsonObject { ["id"] = source.Id, ["title"] = source.Title, ["publisher"] = source.Publisher,
                ["edition"] = source.Edition },
            ["place"] = f.Place,
            ["provenance"] = ProvenanceWord.Of(f.Provenance),
            ["result"] = SymbolNode(f.Result),
            ["inputs"] = new JsonArray([.. f.Inputs.Select(s => (JsonNode)SymbolNode(s))]),
            ["rows"] = new JsonArray([.. rows.Select(r => (JsonNode)RowNode(r))]),
        };
    }

    private static JsonObject SymbolNode(Symbol s) => new() { ["sign"] = s.Sign, ["unit"] = s.Unit, ["meaning"] = s.Meaning };

    private static JsonObject RowNode(Row w) => new()
    {
        ["subject"] = w.Subject,
        ["inputs"] = new JsonArray([.. w.Inputs.Select(v => Number(v))]),
        ["from"] = new JsonArray([.. w.Inputs.Select(t => (JsonNode)From(t))]),
        ["result"] = Number(w),
    };

    // Where an input comes from: a row by formula and subject, or whoever gave the number.
    private static string From(Term term) => term switch
    {
        Row row => $"row {row.Formula.Id}: {row.Subject}",
        Given given => $"{given.By.ToString().ToLowerInvariant()} {given.Path}",
        Constant constant => $"constant {constant.Name} ({constant.Source})",
        Converted converted => From(converted.Of),
        _ => throw new InvalidOperationException($"{term.GetType().Name} has no origin."),
    };

    private static JsonValue? Number(double value) => double.IsFinite(value) ? JsonValue.Create(Math.Round(value, 9)) : null;

    private static JsonNode Node<T>(T value, System.Text.Json.Serialization.Metadata.JsonTypeInfo<T> type) =>
        JsonSerializer.SerializeToNode(value, type)!;
}

/// <summary>Source-generated serialisation of the parts of a plan.</summary>
[JsonSerializable(typeof(JobFacts))]
[JsonSerializable(typeof(SitingPlan))]
[JsonSerializable(typeof(ReceptionPlan))]
[JsonSerializable(typeof(CablingPlan))]
[JsonSerializable(typeof(RoutingPlan))]
[JsonSerializable(typeof(MountingPlan))]
[JsonSerializable(typeof(BondingPlan))]
[JsonSerializable(typeof(MaterialsPlan))]
[JsonSerializable(typeof(HandoverPlan))]
internal sealed partial class PlanJsonContext : JsonSerializerContext;
