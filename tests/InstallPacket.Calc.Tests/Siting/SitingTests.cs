using CsCheck;
using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Siting;

namespace InstallPacket.Calc.Tests.Siting;

public class SitingTests
{
    private static readonly Gen<double> Lat = Gen.Double[-89.9, 89.9];
    private static readonly Gen<double> Lon = Gen.Double[-180, 180];

    [Fact]
    public void Inverse_and_direct_undo_each_other() =>
        Gen.Select(Lat, Lon, Gen.Double[0, 360], Gen.Double[1, 500000]).Sample((lat, lon, azimuth, distance) =>
        {
            var end = Geodesic.Direct(lat, lon, azimuth, distance);
            var line = Geodesic.Inverse(lat, lon, end.LatDeg, end.LonDeg);
            Assert.Equal(distance, line.DistanceM, 1e-6);
            Assert.True(Math.Abs(Bearing.Turn(azimuth, line.AzimuthDeg)) * Math.PI / 180 * distance < 2e-6);
        });

    [Fact]
    public void Bearing_back_starts_where_the_line_arrives() =>
        Gen.Select(Lat, Lon, Gen.Double[0, 360], Gen.Double[10, 500000]).Sample((lat, lon, azimuth, distance) =>
        {
            var end = Geodesic.Direct(lat, lon, azimuth, distance);
            var there = Geodesic.Inverse(lat, lon, end.LatDeg, end.LonDeg);
            var back = Geodesic.Inverse(end.LatDeg, end.LonDeg, lat, lon);
            Assert.Equal(there.DistanceM, back.DistanceM, 1e-6);
            Assert.True(Math.Abs(Bearing.Turn(back.AzimuthDeg, there.ArrivalAzimuthDeg + 180)) * Math.PI / 180 * distance < 2e-6);
        });

    [Fact]
    public void Inverse_due_north_prints_no_minus_zero()
    {
        var line = Geodesic.Inverse(41, -100, 40, -100);
        Assert.Equal(180, line.AzimuthDeg);
        Assert.False(double.IsNegative(Geodesic.Inverse(80, 10, 80, -170).AzimuthDeg));
    }

    [Theory, InlineData(90.1), InlineData(-91), InlineData(double.NaN)]
    public void Inverse_refuses_a_latitude_beyond_a_pole(double lat) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Geodesic.Inverse(lat, 0, 0, 0));

    [Fact]
    public void True_to_magnetic_and_back() =>
        Gen.Select(Gen.Double[-720, 720], Gen.Double[-180, 180]).Sample((bearing, declination) =>
        {
            var magnetic = CompassBearing.MagneticFromTrue(bearing, declination);
            Assert.True(magnetic is >= 0 and < 360);
            Assert.True(Math.Abs(Bearing.Turn(bearing, CompassBearing.TrueFromMagnetic(magnetic, declination))) < 1e-9);
        });

    [Theory, InlineData(0, "N"), InlineData(11.24, "N"), InlineData(11.25, "NNE"), InlineData(348.75, "N"), InlineData(348.74, "NNW"), InlineData(-90, "W"), InlineData(359.99, "N")]
    public void SixteenPoint_takes_the_nearest_point(double deg, string expected) => Assert.Equal(expected, CompassBearing.SixteenPoint(deg));

    [Fact]
    public void RoundForPrint_wraps() => Assert.Equal((0.0, 359.9), (CompassBearing.RoundForPrint(359.98, 1), CompassBearing.RoundForPrint(359.94, 1)));

    [Theory, InlineData(2019.99, false), InlineData(2020.0, true), InlineData(2030.0, true), InlineData(2030.01, false), InlineData(double.NaN, false)]
    public void Covers_ends_where_the_models_end(double year, bool covered)
    {
        Assert.Equal(covered, MagneticModel.Covers(year));
        if (!covered) Assert.Throws<ArgumentOutOfRangeException>(() => MagneticModel.At(40, -100, 0, year));
    }

    [Fact]
    public void At_changes_the_model_on_the_day_of_its_release()
    {
        Assert.Equal("WMM2020", MagneticModel.At(40, -100, 0, DecimalYear.Of(new DateOnly(2024, 11, 12))).ModelName);
        Assert.Equal("WMM2025", MagneticModel.At(40, -100, 0, DecimalYear.Of(new DateOnly(2024, 11, 13))).ModelName);
    }

    [Theory, InlineData(90.0), InlineData(-90.0)]
    public void At_a_pole_the_field_is_finite(double lat)
    {
        var field = MagneticModel.At(lat, 0, 0, 2026);
        Assert.InRange(field.F, 40000, 70000);
        Assert.True(double.IsFinite(field.DeclinationDeg));
    }

    [Fact]
    public void Zone_warns_of_a_useless_compass()
    {
        Assert.Equal(CompassZone.Usable, MagneticModel.At(42.36, -71.06, 0, 2026.5).Zone);
        Assert.Equal(CompassZone.Caution, MagneticModel.At(74.70, -94.83, 0, 2026.5).Zone);
        Assert.Equal(CompassZone.Blackout, MagneticModel.At(86.5, 160, 0, 2026.5).Zone);
    }

    // The clearance counts the earth as a parabola, the elevation angle as a circle; over these paths they part by less than 0.3 m.
    [Fact]
    public void An_edge_above_the_transmitter_blocks_and_one_below_does_not() =>
        Gen.Select(Gen.Double[0, 500], Gen.Double[0, 1000], Gen.Double[5000, 100000], Gen.Double[0.01, 0.99], Gen.Double[-300, 300]).Sample((own, other, path, share, above) =>
        {
            if (Math.Abs(above) < 0.3) return;
            var at = share * path;
            var edge = EffectiveEarth.ClearanceM(own, other, path, at, 0) + above;
            Assert.Equal(-above, EffectiveEarth.ClearanceM(own, other, path, at, edge), 1e-6);
            var higher = EffectiveEarth.ElevationAngleDeg(own, edge, at) > EffectiveEarth.ElevationAngleDeg(own, other, path);
            Assert.Equal(above > 0, higher);
        });

    [Fact]
    public void Grazing_an_edge_costs_six_decibels() => Assert.Equal(6.0, KnifeEdge.LossDb(0), 0.05);

    [Fact]
    public void LossDb_rises_with_the_edge() =>
        Gen.Select(Gen.Double[-3, 5], Gen.Double[0, 2]).Sample((nu, more) => Assert.True(KnifeEdge.LossDb(nu + more) >= KnifeEdge.LossDb(nu) - 1e-12));
}
