using CsCheck;
using InstallPacket.Calc.Reception;

namespace InstallPacket.Calc.Tests.Reception;

public class IntermodulationTests
{
    private static readonly Gen<Carrier[]> LineUps =
        Gen.Select(Gen.Int[1, 40], Gen.Double[-60, 10], (slot, dbm) => new Carrier(slot, dbm)).Array[1, 14];

    [Fact]
    public void The_sum_is_that_of_all_ordered_choices() => Gen.Select(LineUps, Gen.Int[-5, 45]).Sample((carriers, slot) =>
    {
        var composite = new Intermodulation(carriers).CompositeDbm(slot, 30);
        var expected = ByAllChoices(carriers, slot);
        if (expected == 0) Assert.Null(composite);
        else Assert.Equal(10 * Math.Log10(expected) - 60, composite!.Value, 1e-9);
    });

    [Fact]
    public void One_decibel_more_everywhere_is_three_in_the_products() => Gen.Select(LineUps, Gen.Int[1, 40]).Sample((carriers, slot) =>
    {
        var before = new Intermodulation(carriers).CompositeDbm(slot, 30);
        var after = new Intermodulation(carriers.Select(c => c with { OutputDbm = c.OutputDbm + 1 })).CompositeDbm(slot, 30);
        Assert.Equal(before is null, after is null);
        if (before is { } b) Assert.Equal(3, after!.Value - b, 1e-9);
    });

    [Fact]
    public void Equal_channels_without_a_gap_meet_the_closed_form() => Gen.Select(Gen.Int[1, 40], Gen.Int[-2, 43], Gen.Double[-40, 10], Gen.Double[15, 45]).Sample((n, slot, dbm, oip3) =>
    {
        var lineUp = Intermodulation.Contiguous(n, dbm);
        var (composite, closed) = (lineUp.CompositeDbm(slot, oip3), Intermodulation.EqualCarriersDbm(dbm, oip3, lineUp.Beats(slot)));
        Assert.Equal(closed is null, composite is null);
        if (closed is { } expected) Assert.Equal(expected, composite!.Value, 1e-9);
    });

    [Fact]
    public void A_line_up_counts_the_same_from_either_end() => Gen.Select(Gen.Int[1, 40], Gen.Int[1, 40]).Sample((n, slot) =>
        Assert.Equal(Intermodulation.Contiguous(n, 0).Beats(slot), Intermodulation.Contiguous(n, 0).Beats(n + 1 - slot)));

    [Fact]
    public void One_channel_makes_no_product_and_two_make_none_inside_themselves()
    {
        Assert.Null(Intermodulation.Contiguous(1, 0).CompositeDbm(1, 30));
        var two = Intermodulation.Contiguous(2, 0);
        Assert.Equal([null, null], new[] { two.CompositeDbm(1, 30), two.CompositeDbm(2, 30) });
        Assert.Equal([-60.0, -60.0], new[] { two.CompositeDbm(0, 30), two.CompositeDbm(3, 30) }.Select(p => Math.Round(p!.Value, 9)));
    }

    [Fact]
    public void Two_stations_on_one_channel_count_with_their_total_power()
    {
        var apart = new Intermodulation([new(1, -10), new(2, -13), new(2, -13)]);
        var summed = new Intermodulation([new(1, -10), new(2, DecibelSum.TotalDbm([-13, -13]))]);
        Assert.Equal(summed.CompositeDbm(0, 30)!.Value, apart.CompositeDbm(0, 30)!.Value, 1e-9);
        Assert.Equal(new BeatCount(1, 0), apart.Beats(0));
    }

    [Fact]
    public void Levels_and_intercepts_must_be_numbers()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new Intermodulation([new(1, double.NaN)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Intermodulation([new(1, double.NegativeInfinity)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Intermodulation.Contiguous(3, 0).CompositeDbm(2, double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => Intermodulation.Contiguous(0, 0));
    }

    [Fact]
    public void A_rating_falls_with_the_number_of_channels()
    {
        Assert.Equal([0.0, 0.0, 0.0, 0.0], new[] { OutputRating.DeratingDb(1), OutputRating.DeratingDb(2), OutputRating.PracticeDeratingDb(1), OutputRating.PracticeDeratingDb(2) });
        Assert.All(Enumerable.Range(3, 40), n => Assert.True(OutputRating.DeratingDb(n) > OutputRating.PracticeDeratingDb(n)));
        Assert.Throws<ArgumentOutOfRangeException>(() => OutputRating.DeratingDb(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => OutputRating.InterceptDbm(0, -1));
    }

    // Every ordered choice of A, B and C, as slow as it is plain: half of A + B - C is the same beat with A and B exchanged.
    private static double ByAllChoices(Carrier[] carriers, int k)
    {
        var power = carriers.GroupBy(c => c.Slot).ToDictionary(g => g.Key, g => g.Sum(c => Math.Pow(10, c.OutputDbm / 10)));
        var sum = 0.0;
        foreach (var a in power.Keys)
        {
            foreach (var b in power.Keys.Where(b => b != a))
            {
                if (2 * a - b == k) sum += power[a] * power[a] * power[b];
                foreach (var c in power.Keys.Where(c => c != a && c != b && a + b - c == k)) sum += 2 * power[a] * power[b] * power[c];
            }
        }
        return sum;
    }
}
