using InstallPacket.Calc.Quantities;
using InstallPacket.Jobs.Keys;

namespace InstallPacket.Jobs.Tests.Quantities;

/// <summary>Values as people of the trade write them.</summary>
public class TradeFormTests
{
    [Theory]
    [InlineData("25'", 300)]
    [InlineData("1/8\"", 0.125)]
    [InlineData("12' 6\"", 150)]
    [InlineData("12'6\"", 150)]
    [InlineData("6'-2 1/2\"", 74.5)]
    [InlineData("3 1/2\"", 3.5)]
    [InlineData("-2' 6\"", -30)]
    [InlineData("5.5\u2032", 66)]
    public void Feet_and_inches_are_read_by_their_signs(string text, double inches)
    {
        var reading = UnitText.Read(text, Dimension.Length);
        Assert.Equal(UnitProblem.None, reading.Problem);
        Assert.Equal(inches * 0.0254, reading.Value, 12);
    }

    [Theory]
    [InlineData("6\" 2'")]
    [InlineData("12' 6' 2\"")]
    [InlineData("'5")]
    [InlineData("5''")]
    public void Signs_in_another_order_are_refused(string text) =>
        Assert.NotEqual(UnitProblem.None, UnitText.Read(text, Dimension.Length).Problem);

    [Fact]
    public void The_sign_of_feet_is_no_unit_of_an_angle() => Assert.NotEqual(UnitProblem.None, UnitText.Read("25'", Dimension.Angle).Problem);

    [Theory]
    [InlineData("44°17'24\" N", 44.29)]
    [InlineData("44° 17' 24\" S", -44.29)]
    [InlineData("N 44°17'24\"", 44.29)]
    [InlineData("44 deg 17 min 24 s N", 44.29)]
    [InlineData("44°17.4' N", 44.29)]
    [InlineData("N 44.29", 44.29)]
    [InlineData("N44.29", 44.29)]
    [InlineData("44.29° N", 44.29)]
    [InlineData("44.29N", 44.29)]
    public void Latitudes_are_read_as_papers_and_maps_write_them(string text, double degrees) =>
        Assert.Equal(degrees, Assert.IsType<double>(Direction.Coordinate(text, true)), 9);

    [Theory]
    [InlineData("44.29")]
    [InlineData("N 44.29 N")]
    [InlineData("44°60'00\" N")]
    [InlineData("44°17'60\" N")]
    [InlineData("44.5°17' N")]
    [InlineData("44°17.5'24\" N")]
    [InlineData("44 17 24 N")]
    [InlineData("-44.29 N")]
    [InlineData("90°0'1\" N")]
    public void Latitudes_that_may_be_meant_otherwise_are_refused(string text) => Assert.Null(Direction.Coordinate(text, true));

    [Theory]
    [InlineData("us", "antenna-height: 31", "unit-missing", "ft")]
    [InlineData("us", "antenna-height: 31 foot", "unit-unknown", null)]
    [InlineData("us", "antenna-height: 900 ft", "out-of-range", "ft")]
    [InlineData("us", "antenna-height: tall", "wrong-type", "ft")]
    [InlineData("metric", "antenna-height: 31", "unit-missing", "m")]
    public void Findings_suggest_the_units_of_the_job(string units, string height, string id, string? unit)
    {
        var text = DemoJobs.Text("alder-lane").Replace("units: us", "units: " + units, StringComparison.Ordinal)
            .Replace("antenna-height: 31 ft", height, StringComparison.Ordinal);
        var finding = Assert.Single(DemoJobs.Read(text).Findings, f => f.Id == id);
        if (unit is not null) Assert.Equal(unit, finding.Values["unit"]);
        string[] foreign = units == "us" ? ["m", "cm", "mm", "km"] : ["ft", "in", "mi"];
        if (id != "out-of-range") Assert.Empty(((string[])finding.Values["units"]!).Intersect(foreign));
    }

    [Fact]
    public void A_range_is_rounded_inward_so_that_its_ends_are_allowed()
    {
        foreach (var key in KeyCatalogue.AllKeys().Select(k => k.Key.Kind).OfType<QuantityKind>().Distinct())
        {
            foreach (var family in new UnitFamily?[] { UnitFamily.Us, UnitFamily.Metric, null })
            {
                var range = new UnitChoice(family).Range(key.Dimension, key.Min, key.Max, key.RangeUnit);
                var stated = UnitTable.For(key.Dimension).First(u => u.Name == key.RangeUnit);
                double Stored(double v, Unit u) => (v * u.Factor) + u.Offset;
                Assert.True(Stored(range.Min, range.Unit) >= Stored(key.Min, stated) - 1e-9, $"{key}: {range}");
                Assert.True(Stored(range.Max, range.Unit) <= Stored(key.Max, stated) + 1e-9, $"{key}: {range}");
                Assert.True(range.Min < range.Max, $"{key}: {range}");
            }
        }
    }
}
