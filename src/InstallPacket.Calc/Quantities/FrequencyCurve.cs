namespace InstallPacket.Calc.Quantities;

/// <summary>A figure of a part that depends on frequency: straight lines between stated points, held constant beyond the ends.</summary>
public sealed class FrequencyCurve
{
    private readonly (double MHz, double Value)[] _points;

    /// <summary>From points in any order.</summary>
    /// <param name="points">At least one pair of frequency [MHz] and value.</param>
    public FrequencyCurve(IEnumerable<(double MHz, double Value)> points)
    {
        _points = [.. points.OrderBy(p => p.MHz)];
        if (_points.Length == 0) throw new ArgumentException("A curve needs at least one point.", nameof(points));
    }

    /// <summary>The points in rising order of frequency.</summary>
    public IReadOnlyList<(double MHz, double Value)> Points => _points;

    /// <summary>The same value at every frequency.</summary>
    public static FrequencyCurve Constant(double value) => new([(0, value)]);

    /// <summary>The value at a frequency [MHz].</summary>
    public double At(double frequencyMHz)
    {
        if (frequencyMHz <= _points[0].MHz) return _points[0].Value;
        for (var i = 1; i < _points.Length; i++)
        {
            var (high, highValue) = _points[i];
            if (frequencyMHz > high) continue;
            var (low, lowValue) = _points[i - 1];
            return lowValue + (highValue - lowValue) * (frequencyMHz - low) / (high - low);
        }
        return _points[^1].Value;
    }
}
