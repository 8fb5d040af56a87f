namespace InstallPacket.Calc.Materials;

/// <summary>The linear program over all fillings, solved by column generation: fillings may be used in part.</summary>
internal sealed class CuttingProgram
{
    private const int MostRounds = 3000;
    private const double Tiny = 1e-9;
    private readonly CutInstance _instance;
    private readonly int _kinds;
    private readonly int[] _limitRows;
    private readonly double _dear;
    private readonly Column[] _basis;
    private readonly double[,] _inverse;
    private readonly double[] _amounts;

    private sealed record Column(double[] Entries, double Cost, Filling? Filling);

    public CuttingProgram(CutInstance instance)
    {
        _instance = instance;
        _kinds = instance.Lengths.Length;
        _limitRows = [.. Enumerable.Range(0, instance.Counts.Length).Where(s => instance.Limited[s])];
        _dear = 1000.0 * (1 + instance.Costs.Max());
        var rows = _kinds + _limitRows.Length;
        // Begin with a dear column of its own for each kind of piece, and the slack of each limit.
        _basis = [.. Enumerable.Range(0, rows).Select(r => new Column(Unit(rows, r, 1), r < _kinds ? _dear : 0, null))];
        _inverse = new double[rows, rows];
        for (var r = 0; r < rows; r++) _inverse[r, r] = 1;
        _amounts = [.. instance.Demand.Select(d => (double)d), .. _limitRows.Select(s => (double)instance.Counts[s])];
    }

    /// <summary>The least cost when fillings may be used in part; not a number when it was not reached.</summary>
    public double Value { get; private set; } = double.NaN;

    /// <summary>No plan costs less; made sure with whole numbers from the prices of the pieces.</summary>
    public long Bound { get; private set; }

    /// <summary>Fillings in use and how often.</summary>
    public IReadOnlyList<(Filling Filling, double Times)> Used =>
        [.. _basis.Select((c, r) => (c.Filling, _amounts[r])).Where(u => u.Filling is not null && u.Item2 > Tiny).Select(u =>
            (u.Filling!, u.Item2))];

    public void Solve()
    {
        for (var round = 0; round < MostRounds; round++)
        {
            var prices = Prices();
            if (Entering(prices) is not { } column)
            {
                if (!_basis.Where((c, r) => c.Cost == _dear && c.Filling is null && _amounts[r] > 1e-6).Any()) Value = _basis.Select((c,
                    r) => c.Cost * _amounts[r]).Sum();
                Bound = SafeBound(prices);
                return;
            }
            if (!Pivot(column)) return;
        }
    }

    private double[] Prices()
    {
        var rows = _basis.Length;
        var prices = new double[rows];
        for (var r = 0; r < rows; r++)
            for (var k = 0; k < rows; k++) prices[k] += _basis[r].Cost * _inverse[r, k];
        return prices;
    }

    private Column? Entering(double[] prices)
    {
        (Column? Column, double Saving) best = (null, 1e-7);
        for (var i = 0; i < _kinds; i++)
            if (-prices[i] > best.Saving) best = (new(Unit(prices.Length, i, -1), 0, null), -prices[i]);
        for (var k = 0; k < _limitRows.Length; k++)
            if (prices[_kinds + k] > best.Saving) best = (new(Unit(prices.Length, _kinds + k, 1), 0, null), prices[_kinds + k]);
        var values = prices[.._kinds].Select(p => Math.Max(0, p)).ToArray();
        for (var s = 0; s < _instance.Costs.Length; s++)
        {
            var (counts, value, _) = CuttingKnapsack.Best(_instance, _instance.StockLengths[s], values);
            var limit = Array.IndexOf(_limitRows, s);
            var saving = value + (limit < 0 ? 0 : prices[_kinds + limit]) - _instance.Costs[s];
            if (saving <= best.Saving) continue;
            var entries = new double[prices.Length];
            for (var i = 0; i < _kinds; i++) entries[i] = counts[i];
            if (limit >= 0) entries[_kinds + limit] = 1;
            best = (new(entries, _instance.Costs[s], new(s, counts, counts.Select((c, i) => c * _instance.Lengths[i]).Sum())), saving);
        }
        return best.Column;
    }

    private bool Pivot(Column column)
    {
        var rows = _basis.Length;
        var change = new double[rows];
        for (var r = 0; r < rows; r++)
            for (var k = 0; k < rows; k++) change[r] += _inverse[r, k] * column.Entries[k];
        var leave = -1;
        for (var r = 0; r < rows; r++)
            if (change[r] > Tiny && (leave < 0 || _amounts[r] / change[r] < _amounts[leave] / change[leave] - 1e-12)) leave = r;
        if (leave < 0) return false;
        var (step, pivot) = (_amounts[leave] / change[leave], change[leave]);
        for (var k = 0; k < rows; k++) _inverse[leave, k] /= pivot;
        for (var r = 0; r < rows; r++)
        {
            if (r == leave || change[r] == 0) continue;
            _amounts[r] = Math.Max(0, _amounts[r] - step * change[r]);
            for (var k = 0; k < rows; k++) _inverse[r, k] -= change[r] * _inverse[leave, k];
        }
        _amounts[leave] = step;
        _basis[leave] = column;
        return true;
    }

    // Any prices of pieces that no filling beats give a bound: rounded to whole numbers, then made smaller until none does.
    private long SafeBound(double[] prices)
    {
        const double scale = 1_000_000;
        var whole = prices[.._kinds].Select(p => Math.Floor(Math.Max(0, Math.Min(p, _dear)) * scale)).ToArray();
        var ceilings = _instance.StockLengths.Select(l => CuttingKnapsack.Best(_instance, l, whole).Ceiling).ToArray();
        double share = 1, limits = 0;
        for (var s = 0; s < ceilings.Length; s++)
            if (!_instance.Limited[s] && ceilings[s] > 0) share = Math.Min(share, _instance.Costs[s] * scale / ceilings[s]);
        for (var s = 0; s < ceilings.Length; s++)
            if (_instance.Limited[s]) limits += _instance.Counts[s] * Math.Max(0, ceilings[s] * share - _instance.Costs[s] * scale);
        var value = (whole.Select((p, i) => p * _instance.Demand[i]).Sum() * share - limits) / scale;
        return (long)Math.Max(0, Math.Ceiling(value - 1e-6));
    }

    private static double[] Unit(int rows, int at, double value)
    {
        var entries = new double[rows];
        entries[at] = value;
        return entries;
    }
}
