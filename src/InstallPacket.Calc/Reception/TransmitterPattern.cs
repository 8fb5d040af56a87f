using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>
/// The horizontal pattern of a directional transmitting antenna: gain relative to the strongest direction by true bearing from the
/// transmitter. Between two points it follows a straight line in decibels, and the last point joins the first around the circle.
/// </summary>
public sealed class TransmitterPattern
{
    /// <summary>Fewest points that make a pattern.</summary>
    public const int FewestPoints = 2;

    /// <summary>The gain toward a bearing.</summary>
    public static readonly Formula GainFormula = new(
        "transmitter-pattern",
        "Pattern of a directional transmitter toward the house",
        "g = g1 + (g2 - g1) (b - b1) / (b2 - b1)",
        new("g", "dB", "gain relative to the strongest direction"),
        [new("b", "deg", "true bearing from the transmitter to the house"), new("b1", "deg", "point of the pattern before it"),
            new("g1", "dB", "gain there"),
            new("b2", "deg", "point of the pattern after it"), new("g2", "dB", "gain there")],
        "project-notes", "straight line between the points of the pattern, around the circle", Provenance.Derived)
    {
        Method = v => v[2] + (v[4] - v[2]) * ((v[0] - v[1]) / (v[3] - v[1])),
    };

    /// <summary>The power toward a bearing.</summary>
    public static readonly Formula PowerFormula = new(
        "power-toward-house",
        "Power of a directional transmitter toward the house",
        "P = P0 10^(g/10)",
        new("P", "kW", "effective radiated power toward the house"),
        [new("P0", "kW", "effective radiated power in the strongest direction"), new("g", "dB", "gain toward the house relative to it")],
        "project-notes", "decibels of power", Provenance.Derived)
    {
        Method = v => PowerKw(v[0], v[1]),
    };

    /// <summary>Makes a pattern.</summary>
    /// <param name="points">True bearing [deg], 0 up to but not 360, each once; gain [dB], not above 0. At least two points; otherwise
    /// throws.</param>
    public TransmitterPattern(IEnumerable<(double BearingDeg, double GainDb)> points)
    {
        Points = [.. points.OrderBy(p => p.BearingDeg)];
        if (Points.Count < FewestPoints) throw new ArgumentException("A pattern has at least two points.", nameof(points));
        if (Points.Any(p => p is not { BearingDeg: >= 0 and < 360, GainDb: <= 0 } || !double.IsFinite(p.GainDb)))
            throw new ArgumentException("A point of a pattern has a bearing from 0 to below 360 degrees and a gain of at most 0 dB.",
                nameof(points));
        if (Points.Zip(Points.Skip(1)).Any(p => p.First.BearingDeg == p.Second.BearingDeg))
            throw new ArgumentException("A pattern states each bearing once.", nameof(points));
    }

    /// <summary>The points, by growing bearing [deg] with their gain [dB].</summary>
    public IReadOnlyList<(double BearingDeg, double GainDb)> Points { get; }

    /// <summary>The two points between which a bearing lies, and the gain there.</summary>
    /// <param name="bearingDeg">True bearing from the transmitter [deg], any turn; must be a number.</param>
    /// <returns>
    /// The bearing folded into 0 to below 360; the points before and after it, whose bearings may lie below 0 or from 360 on, where the
    /// line
    /// passes north; the gain [dB].
    /// </returns>
    public PatternSpan Toward(double bearingDeg)
    {
        if (!double.IsFinite(bearingDeg)) throw new ArgumentOutOfRangeException(nameof(bearingDeg), bearingDeg, "A bearing is a number.");
        var b = Bearing.Wrap(bearingDeg);
        var (first, last) = (Points[0], Points[^1]);
        var after = Points.FirstOrDefault(p => p.BearingDeg > b, first with { BearingDeg = first.BearingDeg + 360 });
        var before = Points.LastOrDefault(p => p.BearingDeg <= b, last with { BearingDeg = last.BearingDeg - 360 });
        var share = (b - before.BearingDeg) / (after.BearingDeg - before.BearingDeg);
        return new(b, before, after, before.GainDb + (after.GainDb - before.GainDb) * share);
    }

    /// <summary>The power that goes toward the house.</summary>
    /// <param name="erpKw">Effective radiated power in the strongest direction [kW], above 0; otherwise throws.</param>
    /// <param name="gainDb">Gain toward the house relative to it [dB].</param>
    /// <returns>Effective radiated power [kW].</returns>
    public static double PowerKw(double erpKw, double gainDb)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(erpKw);
        return erpKw * Math.Pow(10, gainDb / 10);
    }
}

/// <summary>A bearing between two points of a pattern.</summary>
/// <param name="BearingDeg">The bearing [deg].</param>
/// <param name="Before">Bearing [deg] and gain [dB] of the point before it.</param>
/// <param name="After">The same of the point after it.</param>
/// <param name="GainDb">Gain at the bearing [dB].</param>
public readonly record struct PatternSpan(double BearingDeg, (double BearingDeg, double GainDb) Before,
    (double BearingDeg, double GainDb) After, double GainDb);
