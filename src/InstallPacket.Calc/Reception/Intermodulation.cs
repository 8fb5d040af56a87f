using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>One channel at the output of an amplifier.</summary>
/// <param name="Slot">Its place on an even raster: the channel number within one band, or the centre in kilohertz where bands mix.</param>
/// <param name="OutputDbm">Its level at the output [dBm].</param>
public readonly record struct Carrier(int Slot, double OutputDbm);

/// <summary>How many products of third order fall into a channel.</summary>
/// <param name="TwoTone">Pairs of channels of the kind 2A - B.</param>
/// <param name="Triple">Triples of channels of the kind A + B - C; A and B may change places without counting twice.</param>
public readonly record struct BeatCount(int TwoTone, int Triple);

/// <summary>The products of third order that many channels make in one amplifier.</summary>
/// <remarks>
/// Every product is counted whole in the channel on whose centre it falls. The products of digital channels are three channels wide, so a
/// part of each
/// lands in the neighbours; and what falls between the channels of a broken raster is not counted.
/// </remarks>
public sealed class Intermodulation
{
    // Slot and power in milliwatts, in order of the slots.
    private readonly (int Slot, double Milliwatts)[] _carriers;
    private readonly Dictionary<int, double> _milliwatts = [];

    /// <summary>The products of a line-up.</summary>
    public static readonly Formula CompositeFormula = new(
        "intermodulation-composite",
        "Products of third order in a channel",
        "P = 10 log10(sum of 10^((2 PA + PB)/10) over 2A - B + 4 sum of 10^((PA + PB + PC)/10) over A + B - C) - 2 OIP3",
        new("P", "dBm", "all products in the channel, at the output"),
        [new("OIP3", "dBm", "output intercept point of third order"), new("n2", "", "products 2A - B"),
            new("n3", "", "products A + B - C")],
        "project-notes", "third-order amplifier, products of independent channels add in power, a triple is 6 dB above a pair",
            Provenance.Derived);

    /// <summary>The products of equal channels.</summary>
    public static readonly Formula EqualCarriersFormula = new(
        "intermodulation-equal",
        "Products of third order of equal channels",
        "P3 = 3 P - 2 OIP3 + 10 log10(n2 + 4 n3)",
        new("P3", "dBm", "all products in the channel, at the output"),
        [new("P", "dBm", "each channel at the output"), new("OIP3", "dBm", "output intercept point of third order"),
            new("n2", "", "products 2A - B"), new("n3", "", "products A + B - C")],
        "project-notes", "the same with equal levels", Provenance.Derived);

    /// <summary>The count of products.</summary>
    public static readonly Formula CountFormula = new(
        "intermodulation-count",
        "Count of third-order products in a channel",
        "n2 = pairs with 2A - B = k, n3 = triples with A + B - C = k, A < B, neither of them k",
        new("n2 + 4 n3", "", "weighted count"), [new("k", "", "the channel")],
        "project-notes", "by enumeration", Provenance.Derived);

    /// <summary>A line-up of channels.</summary>
    /// <param name="carriers">Channels in any order, levels finite, otherwise throws; two in one slot count with their total power.</param>
    public Intermodulation(IEnumerable<Carrier> carriers)
    {
        ArgumentNullException.ThrowIfNull(carriers);
        foreach (var (slot, dbm) in carriers)
        {
            if (!double.IsFinite(dbm)) throw new ArgumentOutOfRangeException(nameof(carriers), dbm, "The level of a channel is no number.");
            _milliwatts[slot] = _milliwatts.GetValueOrDefault(slot) + Math.Pow(10, dbm / 10);
        }
        _carriers = [.. _milliwatts.Select(c => (c.Key, c.Value)).OrderBy(c => c.Key)];
    }

    /// <summary>A line-up of equal channels without a gap, numbered from 1.</summary>
    /// <param name="count">Count of channels, at least 1; below throws.</param>
    /// <param name="outputDbm">Level of each at the output [dBm].</param>
    /// <returns>The line-up.</returns>
    public static Intermodulation Contiguous(int count, double outputDbm)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        return new(Enumerable.Range(1, count).Select(slot => new Carrier(slot, outputDbm)));
    }

    /// <summary>How many products fall into a channel.</summary>
    /// <param name="slot">Its slot; it need not be in the line-up.</param>
    /// <returns>Counts; both 0 for one channel, and for two inside themselves.</returns>
    public BeatCount Beats(int slot)
    {
        var (pairs, triples, _) = Enumerate(slot);
        return new(pairs, triples);
    }

    /// <summary>The power of all products that fall into a channel.</summary>
    /// <param name="slot">Its slot; it need not be in the line-up.</param>
    /// <param name="oip3Dbm">Output intercept point of third order [dBm], finite; otherwise throws.</param>
    /// <returns>Power at the output [dBm], or null when no product falls there.</returns>
    public double? CompositeDbm(int slot, double oip3Dbm)
    {
        if (!double.IsFinite(oip3Dbm)) throw new ArgumentOutOfRangeException(nameof(oip3Dbm), oip3Dbm, "The intercept point is no number.");
        var (pairs, triples, cubicMilliwatts) = Enumerate(slot);
        return pairs + triples == 0 ? null : 10 * Math.Log10(cubicMilliwatts) - 2 * oip3Dbm;
    }

    /// <summary>The power of the products of equal channels.</summary>
    /// <param name="outputDbm">Each channel at the output [dBm].</param>
    /// <param name="oip3Dbm">Output intercept point of third order [dBm].</param>
    /// <param name="beats">Count of products.</param>
    /// <returns>Power at the output [dBm], or null without products.</returns>
    public static double? EqualCarriersDbm(double outputDbm, double oip3Dbm, BeatCount beats)
    {
        var weighted = beats.TwoTone + 4 * beats.Triple;
        return weighted == 0 ? null : 3 * outputDbm - 2 * oip3Dbm + 10 * Math.Log10(weighted);
    }

    // With A and B other than k, C differs from both by itself. C may be k: that beat lies on the channel too.
    private (int Pairs, int Triples, double CubicMilliwatts) Enumerate(int k)
    {
        var (pairs, triples, sum) = (0, 0, 0.0);
        for (var i = 0; i < _carriers.Length; i++)
        {
            var (a, aMilliwatts) = _carriers[i];
            if (a == k) continue;
            if (_milliwatts.TryGetValue(2 * a - k, out var b)) (pairs, sum) = (pairs + 1, sum + aMilliwatts * aMilliwatts * b);
            for (var j = i + 1; j < _carriers.Length; j++)
            {
                var (other, otherMilliwatts) = _carriers[j];
                if (other != k && _milliwatts.TryGetValue(a + other - k, out var c)) (triples, sum) = (triples + 1, sum
                    + 4 * aMilliwatts * otherMilliwatts * c);
            }
        }
        return (pairs, triples, sum);
    }
}
