using System.Globalization;
using InstallPacket.Calc.Reception;

namespace InstallPacket.Calc.Tests.Reception;

/// <summary>What lies outside the method is refused, with the value and the limit in the message.</summary>
public class P1812LimitTests
{
    private static readonly double[] Flat = new double[11];

    [Theory]
    [InlineData(29.9, 50, 50, 0, "29.9", "30 to 6000")]
    [InlineData(6001, 50, 50, 0, "6001", "30 to 6000")]
    [InlineData(double.NaN, 50, 50, 0, "NaN", "30 to 6000")]
    [InlineData(605, 0.9, 50, 0, "0.9", "1 to 50")]
    [InlineData(605, 50.1, 50, 0, "50.1", "1 to 50")]
    [InlineData(605, 50, 0.5, 0, "0.5", "1 to 99")]
    [InlineData(605, 50, 99.5, 0, "99.5", "1 to 99")]
    [InlineData(605, 50, 50, -1, "-1", "0 and more")]
    public void Case_outside_the_limits_is_refused(double mhz, double time, double places, double spread, string value, string limit)
    {
        var path = Path(new(150), new(10), new(45));
        Refused(() => PathSpecificPrediction.Loss(path, new(mhz, time, WavePolarisation.Horizontal, places, spread)), value, limit);
    }

    [Theory]
    [InlineData(-81, 45, 325, "-81", "-80 to 80")]
    [InlineData(45, 0, 325, " 0;", "above 0 and below 157")]
    [InlineData(45, 157, 325, "157;", "above 0 and below 157")]
    [InlineData(45, 45, 249, "249", "250 to 400")]
    [InlineData(45, 45, 401, "401", "250 to 400")]
    public void Climate_outside_the_limits_is_refused(double latitude, double deltaN, double n0, string value, string limit) =>
        Refused(() => Path(new(150), new(10), new(latitude, deltaN, n0)), value, limit);

    [Theory]
    [InlineData(0.5, 500, "0.5", "1 to 3000")]
    [InlineData(3001, 500, "3001", "1 to 3000")]
    [InlineData(10, -2, "-2", "0 and more")]
    public void End_outside_the_limits_is_refused(double height, double coast, string value, string limit)
    {
        Refused(() => Path(new(height, coast), new(10), new(45)), value, limit);
        Refused(() => Path(new(10), new(height, coast), new(45)), value, limit);
    }

    [Theory]
    [InlineData("0 1 2 3", "is 4;", "5 and more")]
    [InlineData("1 2 3 4 5", "at 1 km", "at 0 km")]
    [InlineData("0 1 2 2 3", "2", "beyond 2 km")]
    [InlineData("0 1 3 2 4", "2", "beyond 3 km")]
    [InlineData("0 1 NaN 2 4", "NaN", "beyond 1 km")]
    [InlineData("0 0.05 0.1 0.15 0.2", "0.2", "0.25 to 3000")]
    [InlineData("0 1 2 3 3001", "3001", "0.25 to 3000")]
    public void Distances_outside_the_limits_are_refused(string distances, string value, string limit)
    {
        double[] km = [.. distances.Split(' ').Select(d => double.Parse(d, CultureInfo.InvariantCulture))];
        Refused(() => new ZonedProfile(km, new double[km.Length], [], []), value, limit);
    }

    [Fact]
    public void Heights_clutter_and_zones_are_checked()
    {
        var km = P1812Tests.Distances(5);
        Refused(() => new ZonedProfile(km, [0, 0, double.NaN, 0, 0], [], []), "NaN", "-1000 to 10000");
        Refused(() => new ZonedProfile(km, new double[5], [0, 0, -3, 0, 0], []), "-3", "0 to 1000");
        Refused(() => new ZonedProfile(km, new double[5], [], [RadioZone.Sea, (RadioZone)2, RadioZone.Sea, RadioZone.Sea, RadioZone.Sea]), "2", "coastal land");
    }

    [Fact]
    public void Lists_of_different_lengths_are_refused()
    {
        var km = P1812Tests.Distances(5);
        Assert.Equal("heightsM", Assert.Throws<ArgumentException>(() => new ZonedProfile(km, new double[4], [], [])).ParamName);
        Assert.Equal("clutterM", Assert.Throws<ArgumentException>(() => new ZonedProfile(km, new double[5], new double[6], [])).ParamName);
        Assert.Equal("zones", Assert.Throws<ArgumentException>(() => new ZonedProfile(km, new double[5], [], new RadioZone[2])).ParamName);
    }

    private static PreparedPath Path(PathEnd tx, PathEnd rx, PathClimate climate) => new(new(P1812Tests.Distances(Flat.Length), Flat, [], []), tx, rx, climate);

    private static void Refused(Func<object> run, string value, string limit)
    {
        var refusal = Assert.Throws<ArgumentOutOfRangeException>(run);
        Assert.Contains(value, refusal.Message, StringComparison.Ordinal);
        Assert.Contains(limit, refusal.Message, StringComparison.Ordinal);
    }
}
