using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>One printed sheet of field strengths by distance and height, read by straight lines in log d and log h.</summary>
internal sealed class FccCurveTable
{
    private static readonly Lazy<IReadOnlyDictionary<(CurveBand, bool), FccCurveTable>> Loaded = new(Load);

    private readonly double[] _logKm, _logHeight;
    private readonly double[,] _field;

    private FccCurveTable(double[] km, double[] heights, double[,] field)
    {
        FirstKm = km[0];
        _logKm = [.. km.Select(v => Math.Log(v))];
        _logHeight = [.. heights.Select(v => Math.Log(v))];
        _field = field;
    }

    /// <summary>First distance of the sheet [km].</summary>
    public double FirstKm { get; }

    /// <summary>The sheet for half of the time, or for a tenth of it.</summary>
    public static FccCurveTable Of(CurveBand band, bool tenthOfTime) => Loaded.Value[(band, tenthOfTime)];

    /// <summary>Field for 1 kW [dB(uV/m)]; outside the heights of the sheet the outermost straight line is carried on.</summary>
    public double At(double km, double heightM)
    {
        var (d, u) = Locate(_logKm, Math.Log(km));
        var (h, v) = Locate(_logHeight, Math.Log(heightM));
        var near = _field[d, h] + v * (_field[d, h + 1] - _field[d, h]);
        var far = _field[d + 1, h] + v * (_field[d + 1, h + 1] - _field[d + 1, h]);
        return near + u * (far - near);
    }

    private static (int Index, double Fraction) Locate(double[] grid, double x)
    {
        var i = Array.BinarySearch(grid, x);
        if (i < 0) i = ~i - 1;
        i = Math.Clamp(i, 0, grid.Length - 2);
        return (i, (x - grid[i]) / (grid[i + 1] - grid[i]));
    }

    private static Dictionary<(CurveBand, bool), FccCurveTable> Load() =>
        EmbeddedTable.Rows("Reception/fcc-field-strength-curves.csv")
            .GroupBy(r => (Band(r["band"]), r["curve"] == "F(50,10)"))
            .ToDictionary(g => g.Key, g => Sheet([.. g]));

    private static FccCurveTable Sheet(IReadOnlyDictionary<string, string>[] rows)
    {
        var columns = rows[0].Keys.Where(k => k.StartsWith('h')).ToArray();
        var field = new double[rows.Length, columns.Length];
        for (var i = 0; i < rows.Length; i++)
        {
            for (var j = 0; j < columns.Length; j++) field[i, j] = CsvNumber.Of(rows[i][columns[j]]);
        }
        return new FccCurveTable([.. rows.Select(r => CsvNumber.Of(r["distance_km"]))], [.. columns.Select(c => CsvNumber.Of(c[1..^1]))],
            field);
    }

    private static CurveBand Band(string text) => text switch
    {
        "low_vhf_ch2_6" => CurveBand.LowVhf,
        "high_vhf_ch7_13" => CurveBand.HighVhf,
        "uhf_ch14_36" => CurveBand.Uhf,
        _ => throw new FormatException($"Unknown band '{text}'."),
    };
}
