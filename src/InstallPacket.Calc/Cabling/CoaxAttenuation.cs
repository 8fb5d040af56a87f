using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Cabling;

/// <summary>One point of a cable's attenuation table.</summary>
/// <param name="FrequencyMHz">Frequency [MHz].</param>
/// <param name="DbPer100M">Loss of 100 m at 20 degrees Celsius [dB].</param>
public sealed record AttenuationPoint(double FrequencyMHz, double DbPer100M);

/// <summary>The loss of coax between the points of its table.</summary>
public static class CoaxAttenuation
{
    /// <summary>The loss per length at a frequency.</summary>
    public static readonly Formula<IReadOnlyList<AttenuationPoint>> PerLengthFormula = new Formula(
        "coax-attenuation",
        "Cable loss per length at the frequency",
        "a = a0 + (a1 - a0) (sqrt f - sqrt f0) / (sqrt f1 - sqrt f0); above the last point a1 sqrt(f / f1)",
        new("a", "dB/100 m", "loss at 20 C"),
        [new("f", "MHz", "frequency"), new("f0", "MHz", "table point below"), new("a0", "dB/100 m", "loss there"),
            new("f1", "MHz", "table point above"), new("a1", "dB/100 m", "loss there")],
        "s47-coax-design", "conductor loss grows with sqrt f; interpolation rule of this project", Provenance.Derived)
        .By<IReadOnlyList<AttenuationPoint>>((table, v) => DbPer100M(table, v[0]));

    /// <summary>The loss per length at a frequency.</summary>
    /// <param name="table">Points in rising frequency; at least one, else throws.</param>
    /// <param name="frequencyMHz">Frequency [MHz]; below the first point throws: steel-cored cable leaves the law there. Above the last
    /// point the square root law carries on.</param>
    /// <returns>Loss at 20 degrees Celsius [dB per 100 m].</returns>
    public static double DbPer100M(IReadOnlyList<AttenuationPoint> table, double frequencyMHz)
    {
        var (below, above) = Neighbours(table, frequencyMHz);
        if (ReferenceEquals(below, above))
            return above.DbPer100M * Math.Sqrt(frequencyMHz / above.FrequencyMHz);
        var root = Math.Sqrt(below.FrequencyMHz);
        var share = (Math.Sqrt(frequencyMHz) - root) / (Math.Sqrt(above.FrequencyMHz) - root);
        return below.DbPer100M + (above.DbPer100M - below.DbPer100M) * share;
    }

    /// <summary>The two table points that govern a frequency; both are the last point above the table.</summary>
    /// <param name="table">Points in rising frequency; at least one, else throws.</param>
    /// <param name="frequencyMHz">Frequency [MHz]; below the first point throws.</param>
    /// <returns>The points below and above.</returns>
    public static (AttenuationPoint Below, AttenuationPoint Above) Neighbours(IReadOnlyList<AttenuationPoint> table, double frequencyMHz)
    {
        ArgumentNullException.ThrowIfNull(table);
        if (table.Count == 0) throw new ArgumentException("The attenuation table is empty.", nameof(table));
        if (!(frequencyMHz >= table[0].FrequencyMHz))
            throw new ArgumentOutOfRangeException(nameof(frequencyMHz), frequencyMHz,
                "The frequency lies below the first point of the cable's table.");
        for (var i = 1; i < table.Count; i++)
        {
            if (table[i].FrequencyMHz <= table[i - 1].FrequencyMHz)
                throw new ArgumentException("The attenuation table must rise in frequency.", nameof(table));
            if (frequencyMHz <= table[i].FrequencyMHz) return (table[i - 1], table[i]);
        }
        return (table[^1], table[^1]);
    }
}
