using InstallPacket.Calc.Work;

namespace InstallPacket.Packets.Language;

/// <summary>
/// The places of the rows in the page of workings: formula, full stop, subject. No heading has a full stop in its place, so a row never
/// takes the
/// place of a heading. Subjects that are spelled alike without their signs are numbered in the order of the rows.
/// </summary>
internal sealed class RowIds
{
    private readonly Dictionary<(string Formula, string Subject), string> _ids = [];

    /// <summary>Names the places of all rows.</summary>
    /// <param name="rows">The rows in the order of the plan.</param>
    public RowIds(IReadOnlyList<Row> rows)
    {
        var taken = new Dictionary<string, int>(rows.Count, StringComparer.Ordinal);
        foreach (var row in rows)
        {
            var id = $"{row.Formula.Id}.{Phrases.Slug(row.Subject)}";
            var count = taken[id] = taken.GetValueOrDefault(id) + 1;
            _ids.Add((row.Formula.Id, row.Subject), count == 1 ? id : FormattableString.Invariant($"{id}.{count}"));
        }
    }

    /// <summary>The place of a row.</summary>
    public string Of(Row row) => _ids[(row.Formula.Id, row.Subject)];

    /// <summary>For each place the places of the rows that the inputs come from, in the order of the inputs; null where another gave the
    /// number.</summary>
    /// <param name="rows">The rows.</param>
    public IReadOnlyDictionary<string, IReadOnlyList<string?>> Links(IReadOnlyList<Row> rows) =>
        rows.ToDictionary(Of, r => (IReadOnlyList<string?>)[.. r.Inputs.Select(Behind)], StringComparer.Ordinal);

    private string? Behind(Term input) => input switch
    {
        Row row => Of(row),
        Converted converted => Behind(converted.Of),
        _ => null,
    };
}
