namespace InstallPacket.Calc.Quantities;

/// <summary>A unit that an author may write.</summary>
/// <param name="Name">As written, for example <c>ft</c>.</param>
/// <param name="Factor">Stored value = written value x factor + offset.</param>
/// <param name="Offset">See <paramref name="Factor"/>.</param>
public sealed record Unit(string Name, double Factor, double Offset = 0)
{
    /// <summary>Whether only those who think in feet and pounds write it.</summary>
    public bool IsUs => UnitTable.UsOnly.Contains(Name);

    /// <summary>Whether only those who think in metres and kilograms write it.</summary>
    public bool IsMetric => UnitTable.MetricOnly.Contains(Name);
}

/// <summary>The units accepted for each dimension; the first one is the stored unit.</summary>
public static class UnitTable
{
    private const double PoundForce = 4.4482216152605;

    internal static readonly string[] UsOnly =
    [
        "ft", "in", "mi", "dB/100 ft", "F", "lbf ft", "lbf in", "lb", "ohm/1000 ft", "mph", "ft2", "lbf", "lbf/ft2", "/mi2/year",
    ];

    internal static readonly string[] MetricOnly =
    [
        "m", "cm", "mm", "km", "dB/100 m", "C", "N m", "kg", "g", "ohm/km", "m/s", "km/h", "m2", "cm2", "N", "kN", "Pa", "kPa", "/km2/year",
    ];

    private static readonly Dictionary<Dimension, Unit[]> Units = new()
    {
        [Dimension.Length] =
        [
            new("m", 1), new("cm", 0.01), new("mm", 0.001), new("km", 1000),
            new("ft", Length.MetresPerFoot), new("in", Length.MetresPerFoot / 12), new("mi", 1609.344),
        ],
        [Dimension.Angle] = [new("deg", 1)],
        [Dimension.Level] = [new("dBm", 1), new("dBuV", 1, -Level.MicrovoltOffset), new("dBmV", 1, 60 - Level.MicrovoltOffset)],
        [Dimension.Ratio] = [new("dB", 1)],
        [Dimension.AntennaGain] = [new("dBi", 1), new("dBd", 1, 2.15)],
        [Dimension.Attenuation] = [new("dB/100 m", 1), new("dB/100 ft", 1 / Length.MetresPerFoot)],
        [Dimension.Frequency] = [new("MHz", 1), new("GHz", 1000), new("kHz", 0.001)],
        [Dimension.Temperature] = [new("C", 1), new("F", 5.0 / 9, -160.0 / 9)],
        [Dimension.Torque] =
        [
            new("N m", 1), new("lbf ft", PoundForce * Length.MetresPerFoot), new("lbf in", PoundForce * Length.MetresPerFoot / 12),
        ],
        [Dimension.Voltage] = [new("V", 1), new("kV", 1000)],
        [Dimension.Current] = [new("mA", 1), new("A", 1000)],
        [Dimension.RadiatedPower] = [new("kW", 1), new("W", 0.001), new("MW", 1000)],
        [Dimension.Mass] = [new("kg", 1), new("g", 0.001), new("lb", 0.45359237)],
        [Dimension.Duration] = [new("h", 1), new("min", 1.0 / 60)],
        [Dimension.Share] = [new("%", 1)],
        [Dimension.LoopResistance] = [new("ohm/km", 1), new("ohm/1000 ft", 1 / (Length.MetresPerFoot))],
        [Dimension.Speed] = [new("m/s", 1), new("km/h", 1 / 3.6), new("mph", 0.44704)],
        [Dimension.WindArea] = [new("m2", 1), new("cm2", 1e-4), new("ft2", Length.MetresPerFoot * Length.MetresPerFoot)],
        [Dimension.Area] = [new("mm2", 1)],
        [Dimension.Force] = [new("N", 1), new("kN", 1000), new("lbf", PoundForce)],
        [Dimension.Pressure] = [new("Pa", 1), new("kPa", 1000), new("lbf/ft2", PoundForce / (Length.MetresPerFoot * Length.MetresPerFoot))],
        [Dimension.Resistivity] = [new("ohm m", 1), new("ohm cm", 0.01)],
        [Dimension.FlashDensity] = [new("/km2/year", 1), new("/mi2/year", 1 / (1.609344 * 1.609344))],
    };

    /// <summary>The units of a dimension, stored unit first.</summary>
    public static IReadOnlyList<Unit> For(Dimension dimension) => Units[dimension];

    /// <summary>Stored value over written value for a unit without zero point of its own; 1 for none.</summary>
    /// <param name="unit">Name of the unit; empty for a pure number.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such unit.</exception>
    public static double Factor(string unit) => unit.Length == 0 ? 1
        : Units.Values.SelectMany(u => u).FirstOrDefault(u => u.Name == unit && u.Offset == 0)?.Factor
            ?? throw new ArgumentOutOfRangeException(nameof(unit), unit, "No such unit.");

    /// <summary>The unit names of a dimension as a phrase: <c>m, cm, mm or ft</c>.</summary>
    public static string Names(Dimension dimension)
    {
        var names = Units[dimension].Select(u => u.Name).ToArray();
        return names.Length == 1 ? names[0] : string.Join(", ", names[..^1]) + " or " + names[^1];
    }
}
