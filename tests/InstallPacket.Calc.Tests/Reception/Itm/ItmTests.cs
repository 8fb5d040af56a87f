using CsCheck;
using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Siting;

namespace InstallPacket.Calc.Tests.Reception;

public class ItmTests
{
    private static readonly ItmAir Air = ItmAir.AtSeaLevel(301);
    private static readonly string[] Names = [.. ItmProfiles.Names];
    private static readonly Gen<string> Name = Gen.Int[0, Names.Length - 1].Select(i => Names[i]);
    private static readonly Gen<double> Frequency = Gen.Double[54, 700];
    private static readonly Gen<double> Tx = Gen.Double[30, 500];
    private static readonly Gen<double> Rx = Gen.Double[3, 30];

    private static ItmPath Path(string profile, double tx, double rx) => ItmPath.Of(ItmProfiles.Of(profile), tx, rx, Air);

    private static double Loss(ItmPath path, double frequencyMHz, double timePct = 50) =>
        IrregularTerrain.Loss(path, ItmSettings.Television(frequencyMHz), timePct, 50, 50).BasicLossDb;

    [Fact]
    public void Loss_rises_with_the_share_of_time() => Gen.Select(Name, Tx, Rx, Frequency, Gen.Double[1, 98], Gen.Double[0.1, 50]).Sample((name, tx, rx, f, time, more) =>
    {
        var path = Path(name, tx, rx);
        Assert.True(Loss(path, f, Math.Min(time + more, 99)) > Loss(path, f, time));
    });

    // Behind one sharp ridge. Over broad or several ridges the model itself may lose a decibel more: clutter and effective heights follow the antenna.
    [Fact]
    public void A_higher_receiving_antenna_behind_a_ridge_loses_less() => Gen.Select(Frequency, Gen.Double[4, 29], Gen.Double[0.5, 3]).Sample((f, rx, more) =>
    {
        var low = OverRidge(250, rx);
        Assert.True(low.IsObstructed);
        Assert.True(Loss(OverRidge(250, rx + more), f) <= Loss(low, f));
    });

    [Fact]
    public void A_higher_ridge_loses_more() => Gen.Select(Frequency, Gen.Double[150, 500], Gen.Double[5, 100]).Sample((f, ridge, more) =>
        Assert.True(Loss(OverRidge(ridge + more), f) > Loss(OverRidge(ridge), f)));

    [Fact]
    public void Turning_the_path_round_turns_the_terrain_round() => Gen.Select(Name, Tx, Rx).Sample((name, tx, rx) =>
    {
        var there = Path(name, tx, rx).Terrain;
        var back = ItmPath.Of(ItmProfiles.Of(name).Reversed(), rx, tx, Air).Terrain;
        // The same quotients, but the running sums of distance start at the other end. The distances may part: on level ground two points tie.
        Assert.Equal(there.Sight.TxRad, back.Sight.RxRad, 1e-9);
        Assert.Equal(there.Sight.RxRad, back.Sight.TxRad, 1e-9);
        Assert.Equal(there.SystemHeightM, back.SystemHeightM, 1e-9);
    });

    // Only nearly: distances are running sums from the transmitter, and their last bit chooses the samples of a fit.
    [Theory, InlineData(100, 10), InlineData(300, 10), InlineData(30, 30)]
    public void Loss_is_nearly_the_same_from_the_other_end(double tx, double rx) => Assert.All(Names, name =>
    {
        var back = ItmPath.Of(ItmProfiles.Of(name).Reversed(), rx, tx, Air);
        foreach (var f in (double[])[60, 200, 600]) Assert.Equal(Loss(Path(name, tx, rx), f), Loss(back, f), 0.05);
    });

    [Fact]
    public void A_figure_is_finite_or_refused() =>
        Gen.Select(Name, Gen.Double[0.5, 3000], Gen.Double[0.5, 3000], Gen.Double[20, 300], Gen.Int[0, 1], Gen.Double[0.001, 5]).Sample((name, tx, rx, f, polarisation, conductivity) =>
        {
            var settings = new ItmSettings(f, (ItmPolarisation)polarisation, ItmClimate.MaritimeTemperateSea, 81, conductivity, ItmSettings.Broadcast);
            var result = IrregularTerrain.Loss(Path(name, tx, rx), settings, 50, 50, 50);
            Assert.Equal(result.Refusal == ItmRefusal.None, double.IsFinite(result.BasicLossDb));
        });

    [Fact]
    public void Mode_one_does_not_promise_sight()
    {
        var hidden = Path("ridge-030", 150, 6);
        Assert.Equal(ItmMode.LineOfSight, IrregularTerrain.Loss(hidden, ItmSettings.Television(473), 50, 50, 50).Mode);
        Assert.True(hidden.IsObstructed);
        Assert.False(Path("flat-010", 150, 6).IsObstructed);
    }

    [Fact]
    public void The_work_on_a_path_allocates_nothing()
    {
        var profile = ItmProfiles.Of("roll-100");
        Loss(Path("roll-100", 150, 10), 605);
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = 0; i < 100; i++) Loss(ItmPath.Of(profile, 150 + i, 10, Air), 605);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    [Theory, InlineData(149, ItmRefusal.SurfaceRefractivityLow), InlineData(401, ItmRefusal.SurfaceRefractivityHigh), InlineData(double.NaN, ItmRefusal.SurfaceRefractivityLow), InlineData(301, ItmRefusal.None)]
    public void Refractivity_at_the_ground_has_limits_of_its_own(double ns, ItmRefusal expected)
    {
        var path = ItmPath.Of(ItmProfiles.Of("flat-010"), 100, 10, ItmAir.FixedAtGround(ns));
        Assert.Equal(expected, IrregularTerrain.Loss(path, ItmSettings.Television(605), 50, 50, 50).Refusal);
    }

    [Fact]
    public void What_is_not_a_number_is_refused()
    {
        var good = ItmSettings.Television(605);
        ItmRefusal Of(ItmPath path, ItmSettings s, double timePct = 50) => IrregularTerrain.Loss(path, s, timePct, 50, 50).Refusal;
        var path = Path("flat-010", 100, 10);
        Assert.Equal(ItmRefusal.TxHeight, Of(Path("flat-010", double.NaN, 10), good));
        Assert.Equal(ItmRefusal.RxHeight, Of(Path("flat-010", 100, double.NaN), good));
        Assert.Equal(ItmRefusal.Refractivity, Of(ItmPath.Of(ItmProfiles.Of("flat-010"), 100, 10, ItmAir.AtSeaLevel(double.NaN)), good));
        Assert.Equal(ItmRefusal.Frequency, Of(path, good with { FrequencyMHz = double.NaN }));
        Assert.Equal(ItmRefusal.Permittivity, Of(path, good with { Permittivity = double.NaN }));
        Assert.Equal(ItmRefusal.Conductivity, Of(path, good with { ConductivitySm = double.NaN }));
        Assert.Equal(ItmRefusal.Time, Of(path, good, double.NaN));
        Assert.Equal(ItmRefusal.TxHeight, Of(default, good));
        Assert.Equal(ItmRefusal.Undefined, default(ItmChannel).Loss(50, 50, 50).Refusal);
    }

    [Fact]
    public void High_plateau_refuses_for_its_thin_air()
    {
        var path = ItmPath.Of(new TerrainProfile([.. Enumerable.Repeat(7000.0, 101)], 200), 100, 10, Air);
        var result = IrregularTerrain.Loss(path, ItmSettings.Television(605), 50, 50, 50);
        Assert.Equal((ItmRefusal.SurfaceRefractivityLow, 1021), (result.Refusal, result.ReturnCode));
    }

    [Fact]
    public void Smallest_agrees_with_sorting() => Gen.Select(Gen.Double[-3, 3].Select(v => Math.Round(v, 1)).Array[1, 60], Gen.Int[0, 59]).Sample((values, at) =>
    {
        var index = at % values.Length;
        var sorted = values.Order().ToArray();
        var chosen = ItmOrder.Smallest(values, index);
        Assert.Equal(sorted[index], chosen);
        Assert.All(values[..index], v => Assert.True(v <= chosen));
        Assert.All(values[index..], v => Assert.True(v >= chosen));
    });

    [Fact]
    public void A_profile_refuses_what_is_no_ground()
    {
        Assert.Throws<ArgumentException>(() => new TerrainProfile([100], 50));
        Assert.Throws<ArgumentOutOfRangeException>(() => new TerrainProfile([100, 100], 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => new TerrainProfile([100, 100], double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => new TerrainProfile([100, -9999], 50));
        Assert.Throws<ArgumentOutOfRangeException>(() => new TerrainProfile([100, double.NaN, 100], 50));
    }

    [Fact]
    public void A_profile_does_not_follow_its_array()
    {
        double[] heights = [1, 2, 3];
        var profile = new TerrainProfile(heights, 50);
        heights[0] = 9;
        Assert.Equal([1, 2, 3], profile.ElevationsM.ToArray());
        Assert.Equal([3, 2, 1], profile.Reversed().ElevationsM.ToArray());
        Assert.Equal((2, 100.0), (profile.Intervals, profile.LengthM));
    }

    // 40 km at 100 m with a ridge 2 km wide in the middle.
    private static ItmPath OverRidge(double heightM, double rx = 10) => ItmPath.Of(
        new TerrainProfile([.. Enumerable.Range(0, 401).Select(i => 100 + heightM * Math.Max(0, 1 - Math.Abs(i - 200) / 10.0))], 100), 200, rx, Air);
}
