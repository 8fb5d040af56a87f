using InstallPacket.Calc.Materials;
using InstallPacket.Jobs;

namespace InstallPacket.Plans.Materials;

/// <summary>Cuts the pieces from the stock, each kind of cable by itself. A piece is never joined.</summary>
internal sealed class CuttingPlanner(Job job, IReadOnlyList<PlacedPiece> pieces, Workings work, FindingList findings, int mostNodes = CuttingStock.MostNodes)
{
    // Tenths of a millimetre: half a foot and a decimetre are whole numbers of it.
    private const double UnitsPerM = 10_000;
    private const int StripsOnSheet = 7;
    private readonly MaterialsSection _materials = job.Materials;
    private readonly UnitPrinter _print = UnitPrinter.Of(job);

    public CuttingPlan? Plan()
    {
        if (_materials.Stock.Count == 0) return null;
        var cables = new List<CableCutPlan>();
        foreach (var group in pieces.GroupBy(p => p.Piece.Cable, StringComparer.Ordinal))
            if (Cable([.. group], cables.Sum(c => c.Strips.Count)) is { } cable) cables.Add(cable);
        var sheets = cables.SelectMany(c => c.Strips).Select(s => s.Figure).Distinct(StringComparer.Ordinal);
        return new(_materials.LeastCost ? "least-cost" : "least-waste", _materials.KeepAbove.Metres, cables, [.. sheets]) { Currency = _materials.Currency ?? "", VanList = [.. VanList(cables)] };
    }

    // Stock without a count stands in the shop and is not in this list.
    private IEnumerable<VanStockPlan> VanList(IReadOnlyList<CableCutPlan> cables)
    {
        foreach (var s in _materials.Stock)
        {
            var opened = cables.SelectMany(c => c.Strips).Where(strip => strip.Stock == s.Name).ToArray();
            if (s.Count - opened.Length is > 0 and var whole) yield return new(s.Name, s.Cable.Id, s.Cable.Name, s.Kind, s.PartUsed, s.Length.Metres, whole);
            foreach (var rest in opened.Where(o => o.Keep).GroupBy(o => o.LeftM)) yield return new(s.Name, s.Cable.Id, s.Cable.Name, s.Kind, true, rest.Key, rest.Count());
        }
    }

    private CableCutPlan? Cable(PlacedPiece[] wanted, int stripsBefore)
    {
        var (part, name) = (wanted[0].Piece.Cable, wanted[0].Piece.CableName);
        var stock = _materials.Stock.Where(s => s.Cable.Id == part).ToArray();
        if (stock.Length == 0)
        {
            findings.Add(Severity.Caution, "stock-missing", _materials.Stock[0].At, $"the job states stock, but none of `{part}`, of which {_print.Cable(wanted.Sum(p => p.Piece.LengthM))} is to be cut",
                "each kind of cable has its own stock", $"add an entry with `cable: {part}` under materials.stock");
            return null;
        }
        if (TooShort(wanted, stock)) return null;
        var byPrice = ByPrice(part, stock);
        var result = CuttingStock.Solve(new([.. wanted.Select(p => Units(p.Piece.LengthM))], [.. stock.Select(s => new CutStock(Units(s.Length.Metres), Cost(s, byPrice), s.Count))]), mostNodes);
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

    private CableCutPlan Describe(string part, string name, PlacedPiece[] wanted, StockLength[] stock, bool byPrice, CutResult result, int stripsBefore)
    {
        StripPlan Strip(CutStrip cut, int i)
        {
            var s = stock[cut.Stock];
            var left = (Units(s.Length.Metres) - cut.Pieces.Sum(p => Units(wanted[p].Piece.LengthM))) / UnitsPerM;
            var sheet = (stripsBefore + i) / StripsOnSheet;
            return new(stripsBefore + i + 1, s.Name, s.Kind, s.PartUsed, s.Length.Metres,
                [.. cut.Pieces.Select(p => wanted[p].Piece).OrderBy(p => p.Number).Select(p => new StripPiecePlan(p.Number, p.Run, p.LengthM))], left,
                left > 0 && left >= _materials.KeepAbove.Metres - 1e-9, sheet == 0 ? "cutting-plan" : $"cutting-plan-{sheet + 1}");
        }
        var strips = result.Strips.OrderBy(s => s.Stock).ThenBy(s => s.Pieces.Min()).Select(Strip).ToArray();
        var (used, opened) = (wanted.Sum(p => p.Piece.LengthM), strips.Sum(s => s.LengthM));
        return new(part, name, byPrice ? "price" : "length", used, opened, CuttingStock.WastePct(used, opened), strips.Where(s => s.Keep).Sum(s => s.LeftM),
            strips.Where(s => !s.Keep).Sum(s => s.LeftM), result.Proved, byPrice ? null : result.Bound / UnitsPerM, byPrice ? result.Cost / 100.0 : null,
            byPrice ? result.Bound / 100.0 : null, strips) { PieceCount = wanted.Length };
    }

    private void Record(CableCutPlan plan, int count)
    {
        Term Of(string key, double number) => Term.Plan($"materials.cutting.cables[{plan.Part}].{key}", number);
        work.Apply(CuttingStock.LeastFormula, plan.PriceAmount ?? plan.OpenedM, plan.Part, Of("piece_count", count), Of("pieces_m", plan.PiecesM),
            plan.BoundAmount is { } amount ? Of("bound_amount", amount) : Of("bound_m", plan.BoundM!.Value));
        work.Apply(CuttingStock.WasteFormula, plan.Part, Of("pieces_m", plan.PiecesM), Of("opened_m", plan.OpenedM));
    }

    private bool TooShort(PlacedPiece[] wanted, StockLength[] stock)
    {
        var longest = stock.MaxBy(s => s.Length.Metres)!;
        var tooLong = wanted.Where(p => Units(p.Piece.LengthM) > Units(longest.Length.Metres)).ToArray();
        foreach (var piece in tooLong)
            findings.Add(Severity.Stop, "stock-too-short", piece.At, $"piece {piece.Piece.Number} ({piece.Piece.Run}) is {_print.Cable(piece.Piece.LengthM)} long, and the longest stock of `{piece.Piece.Cable}` is {_print.Cable(longest.Length.Metres)} (`{longest.Name}`)",
                "a run is one piece: no joint makes up a length (satellite practice, read; memory for the rest)", "add longer stock under materials.stock, or move an element so that the run is shorter");
        return tooLong.Length > 0;
    }

    // The price of every length must be known; otherwise the least length is sought.
    private bool ByPrice(string part, StockLength[] stock)
    {
        if (!_materials.LeastCost || stock.FirstOrDefault(s => s.Price is null) is not { } unpriced) return _materials.LeastCost;
        findings.Add(Severity.Caution, "stock-price-missing", unpriced.At, $"the stock `{unpriced.Name}` of `{part}` has no price, and the aim is least-cost", "least cost needs the price of every length",
            "add `price` (0 for what is paid already); until then the least length is opened");
        return false;
    }

    private void NotEnough(string part, PlacedPiece[] wanted, StockLength[] stock, bool proved)
    {
        var (needed, there) = (wanted.Sum(p => p.Piece.LengthM), stock.Sum(s => s.Length.Metres * (s.Count ?? 1)));
        findings.Add(Severity.Stop, "stock-not-enough", stock[0].At, $"the pieces of `{part}` are {_print.Cable(needed)} together, and the stock holds {_print.Cable(there)}" + (proved ? "" : "; no way to cut them was found within the limit of the search"),
            there >= needed ? "no piece is made up of two, so some of the stock cannot be used" : "all pieces come from the stock", "add a reel under materials.stock, or raise `count`");
    }

    private void NotProved(CableCutPlan plan, StockLength stock) => findings.Add(Severity.Note, "cutting-not-proved", stock.At,
        plan.BoundAmount is { } amount ? $"the cutting plan of `{plan.Part}` opens stock for {plan.PriceAmount:0.00}: best found, bound {amount:0.00}" : $"the cutting plan of `{plan.Part}` opens {_print.Cable(plan.OpenedM)}: best found, bound {_print.Cable(plan.BoundM!.Value)}",
        "the search stops after a fixed number of steps", "use it as it is: no plan can be better than the bound");

    private static long Cost(StockLength stock, bool byPrice) => byPrice ? (long)Math.Round(stock.Price!.Value * 100) : Units(stock.Length.Metres);

    private static long Units(double metres) => (long)Math.Round(metres * UnitsPerM);
}

/// <summary>A piece and where the job asks for it.</summary>
internal sealed record PlacedPiece(PiecePlan Piece, SourceSpan At);
