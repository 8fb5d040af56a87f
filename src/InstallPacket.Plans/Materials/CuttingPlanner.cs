using InstallPacket.Calc.Materials;

namespace InstallPacket.Plans.Materials;

/// <summary>Cuts the pieces from the stock, each kind of cable by itself. A piece is never joined.</summary>
internal sealed class CuttingPlanner(Job job, IReadOnlyList<PlacedPiece> pieces, Workings work, FindingList findings,
    int mostNodes = CuttingStock.MostNodes)
{
    // Tenths of a millimetre: half a foot and a decimetre are whole numbers of it.
    private const double UnitsPerM = 10_000;
    private const int StripsOnSheet = 7;
    private readonly MaterialsSection _materials = job.Materials;

    public CuttingPlan? Plan()
    {
        if (_materials.Stock.Count == 0) return null;
        var cables = new List<CableCutPlan>();
        foreach (var group in pieces.GroupBy(p => p.Piece.Cable, StringComparer.Ordinal))
            if (Cable([.. group], cables.Sum(c => c.Strips.Count)) is { } cable) cables.Add(cable);
        var sheets = cables.SelectMany(c => c.Strips).Select(s => s.Figure).Distinct(StringComparer.Ordinal);
        return new(_materials.Aim, _materials.KeepAbove.Metres, cables, [.. sheets]) { Currency = _materials.Currency ?? "",
            VanList = [.. VanList(cables)] };
    }

    // Stock without a count stands in the shop and is not in this list.
    private IEnumerable<VanStockPlan> VanList(IReadOnlyList<CableCutPlan> cables)
    {
        foreach (var s in _materials.Stock)
        {
            var opened = cables.SelectMany(c => c.Strips).Where(strip => strip.Stock == s.Name).ToArray();
            if (s.Count - opened.Length is > 0 and var whole) yield return new(s.Name, s.Cable.Id, s.Cable.Name, s.Kind, s.PartUsed,
                s.Length.Metres, whole);
            foreach (var rest in opened.Where(o => o.Keep).GroupBy(o => o.LeftM)) yield return new(s.Name, s.Cable.Id, s.Cable.Name,
                s.Kind, true, rest.Key, rest.Count());
        }
    }

    private CableCutPlan? Cable(PlacedPiece[] wanted, int stripsBefore)
    {
        var (part, name) = (wanted[0].Piece.Cable, wanted[0].Piece.CableName);
        var stock = _materials.Stock.Where(s => s.Cable.Id == part).ToArray();
        if (stock.Length == 0)
        {
            findings.Add(Severity.Caution, "stock-missing", _materials.Stock[0].At, ("cable", part),
                ("wanted_m", wanted.Sum(p => p.Piece.LengthM)));
            return null;
        }
        if (TooShort(wanted, stock)) return null;
        var byPrice = ByPrice(part, stock);
        var result = CuttingStock.Solve(new([.. wanted.Select(p => Units(p.Piece.LengthM))],
            [.. stock.Select(s => new CutStock(Units(s.Length.Metres), Cost(s, byPrice), s.Count))]), mostNodes);
        if (!result.Found)
        {
            NotEnough(part, wanted, stock, result.Proved);
            return null;
        }
        var plan = Describe(part, name, wanted, stock, byPrice, result, stripsBefore);
        Record(plan, wanted.Length);
        if (!plan.Proved) NotProved(plan, stock[0]);
        return plan;
    }

    private CableCutPlan Describe(string part, string name, PlacedPiece[] wanted, StockLength[] stock, bool byPrice, CutResult result,
        int stripsBefore)
    {
        StripPlan Strip(CutStrip cut, int i)
        {
            var s = stock[cut.Stock];
            var left = (Units(s.Length.Metres) - cut.Pieces.Sum(p => Units(wanted[p].Piece.LengthM))) / UnitsPerM;
            var sheet = (stripsBefore + i) / StripsOnSheet;
            return new(stripsBefore + i + 1, s.Name, s.Kind, s.PartUsed, s.Length.Metres,
                [.. cut.Pieces.Select(p => wanted[p].Piece).OrderBy(p => p.Number).Select(p =>
                    new StripPiecePlan(p.Number, p.Run, p.LengthM))], left,
                left > 0 && left >= _materials.KeepAbove.Metres - 1e-9, sheet == 0 ? "cutting-plan" : $"cutting-plan-{sheet + 1}");
        }
        var strips = result.Strips.OrderBy(s => s.Stock).ThenBy(s => s.Pieces.Min()).Select(Strip).ToArray();
        var (used, opened) = (wanted.Sum(p => p.Piece.LengthM), strips.Sum(s => s.LengthM));
        return new(part, name, byPrice ? "price" : "length", used, opened, CuttingStock.WastePct(used, opened),
            strips.Where(s => s.Keep).Sum(s => s.LeftM),
            strips.Where(s => !s.Keep).Sum(s => s.LeftM), result.Proved, byPrice ? null : result.Bound / UnitsPerM, byPrice
                ? result.Cost / 100.0 : null,
            byPrice ? result.Bound / 100.0 : null, strips) { PieceCount = wanted.Length };
    }

    private void Record(CableCutPlan plan, int count)
    {
        Term Of(string key, double number) => Term.Plan($"materials.cutting.cables[{plan.Part}].{key}", number);
        work.Apply(CuttingStock.LeastFormula, plan.PriceAmount ?? plan.OpenedM, plan.Part, Of("piece_count", count),
            Of("pieces_m", plan.PiecesM),
            plan.BoundAmount is { } amount ? Of("bound_amount", amount) : Of("bound_m", plan.BoundM!.Value));
        work.Apply(CuttingStock.WasteFormula, plan.Part, Of("pieces_m", plan.PiecesM), Of("opened_m", plan.OpenedM));
    }

    private bool TooShort(PlacedPiece[] wanted, StockLength[] stock)
    {
        var longest = stock.MaxBy(s => s.Length.Metres)!;
        var tooLong = wanted.Where(p => Units(p.Piece.LengthM) > Units(longest.Length.Metres)).ToArray();
        foreach (var piece in tooLong)
            findings.Add(Severity.Stop, "stock-too-short", piece.At, ("piece", piece.Piece.Number), ("run", piece.Piece.Run),
                ("length_m", piece.Piece.LengthM),
                ("cable", piece.Piece.Cable), ("longest_m", longest.Length.Metres), ("stock", longest.Name));
        return tooLong.Length > 0;
    }

    // The price of every length must be known; otherwise the least length is sought.
    private bool ByPrice(string part, StockLength[] stock)
    {
        var wanted = _materials.Aim == CuttingAim.LeastCost;
        if (!wanted || stock.FirstOrDefault(s => s.Price is null) is not { } unpriced) return wanted;
        findings.Add(Severity.Caution, "stock-price-missing", unpriced.At, ("stock", unpriced.Name), ("cable", part));
        return false;
    }

    private void NotEnough(string part, PlacedPiece[] wanted, StockLength[] stock, bool proved)
    {
        var (needed, there) = (wanted.Sum(p => p.Piece.LengthM), stock.Sum(s => s.Length.Metres * (s.Count ?? 1)));
        findings.Add(Severity.Stop, "stock-not-enough", stock[0].At, ("cable", part), ("needed_m", needed), ("there_m", there),
            ("proved", proved), ("enough", there >= needed));
    }

    private void NotProved(CableCutPlan plan, StockLength stock) =>
        findings.Add(Severity.Note, "cutting-not-proved", plan.BoundAmount is null ? "length" : "price",
        stock.At, ("cable", plan.Part), ("opened_m", plan.OpenedM), ("bound_m", plan.BoundM), ("amount", plan.PriceAmount),
            ("bound_amount", plan.BoundAmount));

    private static long Cost(StockLength stock, bool byPrice) => byPrice ? (long)Math.Round(stock.Price!.Value * 100)
        : Units(stock.Length.Metres);

    private static long Units(double metres) => (long)Math.Round(metres * UnitsPerM);
}

/// <summary>A piece and where the job asks for it.</summary>
internal sealed record PlacedPiece(PiecePlan Piece, SourceSpan At);
