using System.Text.Json.Nodes;

namespace InstallPacket.Jobs.Keys;

/// <summary>
/// The JSON Schemas of job, firm, kit and parts files, for editors; written from the catalogue. What a job needs may come from the firm's
/// file or a kit, which an editor does not see: only the items of lists, which are taken whole, say what they need.
/// </summary>
public sealed class JobSchema
{
    private const string Blank = "<[A-Za-z][A-Za-z0-9-]*>";
    private readonly bool _blanks;
    private readonly JsonObject _forms = [];

    private JobSchema(bool blanks) => _blanks = blanks;

    /// <summary>The schema of a job file (draft 2020-12).</summary>
    public static JsonObject Tree() => Job("Install packet job");

    /// <summary>The schema of the file of a firm: any key of a job.</summary>
    public static JsonObject Firm() => Job("What a firm says for all its jobs");

    /// <summary>The schema of a kit; where its piece of a job holds a value, a name between angle brackets may stand.</summary>
    public static JsonObject Kit()
    {
        var schema = new JobSchema(blanks: true);
        var kit = new JobSchema(blanks: false).Group(KitKeys.Group, whole: true);
        kit["properties"]![KitKeys.Takes.Name]!["additionalProperties"] = new JobSchema(blanks: false).Group(KitValueKeys.Group, whole: true);
        kit["properties"]![KitKeys.Gives.Name] = schema.Group(KeyCatalogue.Job, whole: false);
        return schema.Document("Kit: a piece of a job with values to fill in", kit);
    }

    /// <summary>The schema of a parts file; which keys a part has, its kind decides.</summary>
    public static JsonObject Parts()
    {
        var schema = new JobSchema(blanks: false);
        var part = new JsonObject
        {
            ["type"] = "object",
            ["properties"] = new JsonObject { [PartKeys.Kind.Name] = schema.Described(PartKeys.Kind, false) },
            ["required"] = new JsonArray(PartKeys.Kind.Name, PartKeys.Name.Name),
            ["allOf"] = new JsonArray([.. Enum.GetValues<PartKind>().Select(k => (JsonNode)new JsonObject
            {
                ["if"] = new JsonObject { ["properties"] = new JsonObject { [PartKeys.Kind.Name] = new JsonObject { ["const"] = Word.Of(k) } } },
                ["then"] = schema.Group(PartCatalogue.KeysOf(k), whole: true),
            })]),
        };
        return schema.Document("Parts", new()
        {
            ["type"] = "object",
            ["properties"] = new JsonObject { [PartCatalogue.Parts.Name] = new JsonObject
                { ["type"] = "object", ["minProperties"] = 1, ["propertyNames"] = SchemaPatterns.Of(SchemaPatterns.Name), ["additionalProperties"] = part } },
            ["required"] = new JsonArray(PartCatalogue.Parts.Name),
            ["additionalProperties"] = false,
        });
    }

    private static JsonObject Job(string title)
    {
        var schema = new JobSchema(blanks: false);
        return schema.Document(title, schema.Group(KeyCatalogue.Job, whole: false));
    }

    private JsonObject Document(string title, JsonObject body)
    {
        body.Insert(0, "$schema", "https://json-schema.org/draft/2020-12/schema");
        body.Insert(1, "title", title);
        body["$defs"] = _forms;
        return body;
    }

    private JsonObject Of(KeyKind kind, bool whole = false) => kind switch
    {
        GroupKind g when _blanks => new() { ["anyOf"] = new JsonArray(Group(g, whole), Form("blank", Blank)) },
        GroupKind g => Group(g, whole),
        TreeKind => new() { ["type"] = "object" },
        IShortKind s => new() { ["anyOf"] = new JsonArray(Of(s.Full), Of(s.Other)) },
        IMapKind m => new()
        {
            ["type"] = "object", ["minProperties"] = m.Min, ["maxProperties"] = m.Max,
            ["propertyNames"] = SchemaPatterns.Of(SchemaPatterns.Name), ["additionalProperties"] = Of(m.Item),
        },
        IListKind l => new() { ["type"] = "array", ["minItems"] = l.Min, ["maxItems"] = l.Max, ["items"] = Of(l.Item, whole: true) },
        PositionKind p => new()
        {
            ["type"] = "array", ["minItems"] = p.Axes.Length, ["maxItems"] = p.Axes.Length,
            ["items"] = Form("length-signed", SchemaPatterns.Quantity(Calc.Quantities.Dimension.Length, signed: true)),
        },
        CurveKind c => new()
        {
            ["anyOf"] = new JsonArray(Quantity(c.Dimension, c.Min), new JsonObject
            {
                ["type"] = "object", ["minProperties"] = 1,
                ["propertyNames"] = Form("frequency", SchemaPatterns.Quantity(Calc.Quantities.Dimension.Frequency, signed: false)),
                ["additionalProperties"] = Quantity(c.Dimension, c.Min),
            }),
        },
        _ when _blanks => new() { ["anyOf"] = new JsonArray(Single(kind), Form("blank", Blank)) },
        _ => Single(kind),
    };

    private JsonObject Single(KeyKind kind) => kind switch
    {
        IWordKind w => Words(w),
        IntegerKind i => new() { ["type"] = "integer", ["minimum"] = i.Min, ["maximum"] = i.Max },
        NumberKind n => new() { ["type"] = "number", ["minimum"] = n.Min, ["maximum"] = n.Max },
        QuantityKind q => Quantity(q.Dimension, q.Min),
        TextKind t => new() { ["type"] = new JsonArray("string", "number"), ["maxLength"] = t.MaxCharacters, ["pattern"] = SchemaPatterns.Text },
        DateKind => Form("day", SchemaPatterns.Day),
        CoordinateKind c => Form(c.Latitude ? "latitude" : "longitude", SchemaPatterns.Coordinate(c.Latitude)),
        BearingKind => Form("bearing", SchemaPatterns.Bearing),
        WishKind => Form("wish", SchemaPatterns.Wish),
        PathKind => Form("path", SchemaPatterns.Path),
        ReferenceKind { Target: ReferenceTarget.Element } => Named(SchemaPatterns.Element),
        ReferenceKind { Target: ReferenceTarget.Station } => Named(SchemaPatterns.Text),
        ReferenceKind => Named(SchemaPatterns.Name),
        _ => throw new InvalidOperationException(kind.GetType().Name),
    };

    private JsonObject Quantity(Calc.Quantities.Dimension dimension, double min)
    {
        var signed = min < 0 || dimension == Calc.Quantities.Dimension.Temperature || dimension == Calc.Quantities.Dimension.Level;
        return Form(Word.Of(dimension) + (signed ? "-signed" : ""), SchemaPatterns.Quantity(dimension, signed));
    }

    // Each form stands once and is named where it is used.
    private JsonObject Form(string name, string pattern)
    {
        if (!_forms.ContainsKey(name)) _forms[name] = SchemaPatterns.Of(pattern);
        return new() { ["$ref"] = "#/$defs/" + name };
    }

    // An author may call a thing 1.
    private static JsonObject Named(string pattern) => new() { ["type"] = new JsonArray("string", "number"), ["pattern"] = pattern };

    private JsonObject Described(Key key, bool whole)
    {
        var schema = Of(key.Kind, whole);
        schema["description"] = Holds(key.Kind) is { } form ? $"{key.Meaning} Holds {form}." : key.Meaning;
        if (key.Default is not null) schema["default"] = key.Default;
        return schema;
    }

    private static string? Holds(KeyKind kind) => kind switch
    {
        QuantityKind or CurveKind or BearingKind or CoordinateKind or DateKind or PositionKind or WishKind or IntegerKind or NumberKind =>
            ScalarChecker.Expectation(kind),
        IListKind { Item: QuantityKind or CurveKind or BearingKind or WishKind or PositionKind } => ScalarChecker.Expectation(kind),
        IMapKind { Item: QuantityKind or CurveKind or PositionKind } m => "names, each with " + ScalarChecker.Expectation(m.Item),
        IShortKind s => Holds(s.Full),
        _ => null,
    };

    private JsonObject Group(GroupKind group, bool whole) => new()
    {
        ["type"] = "object",
        ["properties"] = new JsonObject(group.Keys.Select(k => KeyValuePair.Create(k.Name, (JsonNode?)Described(k, whole)))),
        ["required"] = new JsonArray([.. group.Keys.Where(k => k.Required && whole).Select(k => (JsonNode)k.Name)]),
        ["additionalProperties"] = false,
    };

    // YAML 1.1 editors read yes and no as booleans.
    private static JsonObject Words(IWordKind w) => w.Words.Contains("yes")
        ? new() { ["enum"] = new JsonArray([.. w.Words.Select(x => (JsonNode)x), true, false]) }
        : new() { ["enum"] = new JsonArray([.. w.Words.Select(x => (JsonNode)x)]) };
}
