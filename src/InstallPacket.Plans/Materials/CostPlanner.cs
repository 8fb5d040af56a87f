namespace InstallPacket.Plans.Materials;

/// <summary>Prices what the plan uses. Spares and leftovers stay with the firm and are not in the sum.</summary>
internal sealed class CostPlanner(Job job, PartLibrary parts, Workings work, FindingList findings)
{
    private const int MostNames = 6;
    private readonly MaterialsSection _materials = job.Materials;

    public CostPlan? Plan(IReadOnlyList<ItemPlan> items)
    {
        if (_materials.Prices.Count == 0 && items.All(i => PriceOf(i.Part) is null)) return null;
        foreach (var price in _materials.Prices.Where(p => items.All(i => i.Part != p.Name)))
            findings.Add(Severity.Caution, "price-unused", price.At, ("part", price.Name));
        if (_materials.Currency is null)
            findings.Add(Severity.Caution, "currency-missing", _materials.Prices.Count > 0 ? _materials.Prices[0].At : _materials.At);
        var lines = new List<CostLine>();
        foreach (var item in items)
        {
            if (PriceOf(item.Part) is not { } unit) continue;
            var quantity = item.Count ?? item.LengthM ?? 0;
            lines.Add(new(item.Part, item.Name, item.Count, item.LengthM, unit,
                work.Apply(MaterialsFormulas.LinePrice, item.Part, Line(item.Part, "unit_amount", unit),
                Line(item.Part, item.Count is null ? "length_m" : "count", quantity))));
        }
        string[] unpriced = [.. items.Where(i => PriceOf(i.Part) is null).Select(i => i.Name)];
        if (unpriced.Length > 0)
            findings.Add(Severity.Note, "price-missing", _materials.At, ("unpriced", unpriced.Length), ("parts", items.Count),
                ("names", items.Where(i => PriceOf(i.Part) is null).Select(i => i.Part).Take(MostNames)),
                    ("more", unpriced.Length > MostNames));
        var net = Hundredths(lines.Sum(l => l.LineAmount));
        Term tax = _materials.TaxPct is { } rate
            ? work.Apply(MaterialsFormulas.Tax, "materials", Term.Plan("materials.cost.net_amount", net), Term.Key("materials.tax", rate))
            : Mounting.MountTerms.None;
        return new(_materials.Currency ?? "", lines, net, _materials.TaxPct, tax,
            work.Apply(MaterialsFormulas.PriceTotal, "materials", Term.Plan("materials.cost.net_amount", net), tax), unpriced);
    }

    private double? PriceOf(string part) => _materials.Prices.FirstOrDefault(p => p.Name == part)?.Value ?? parts.Find(part)?.Price;

    private static Given Line(string part, string key, double number) => Term.Plan($"materials.cost.lines[{part}].{key}", number);

    private static double Hundredths(double amount) => Math.Round(amount, 2, MidpointRounding.AwayFromZero);
}
