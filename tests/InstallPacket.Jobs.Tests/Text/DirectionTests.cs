using System.Globalization;
using CsCheck;
using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Tests.Text;

public class DirectionTests
{
    [Theory]
    [InlineData("56.31 N", true, 56.31)]
    [InlineData("56.31 S", true, -56.31)]
    [InlineData("93.1204W", false, -93.1204)]
    [InlineData("14.21 deg E", false, 14.21)]
    [InlineData("0 N", true, 0)]
    [InlineData("180 W", false, -180)]
    public void Coordinates_have_the_letter_of_their_half_of_the_world(string text, bool latitude, double expected) =>
        Assert.Equal(expected, Assert.IsType<double>(Direction.Coordinate(text, latitude)), 12);

    [Theory]
    [InlineData("56.31", true)]
    [InlineData("-56.31 N", true)]
    [InlineData("90.1 N", true)]
    [InlineData("14.21 E", true)]
    [InlineData("56.31 N", false)]
    [InlineData("180.5 E", false)]
    [InlineData("56 18 36 N", true)]
    [InlineData("56,31 N", true)]
    [InlineData("56.31 n", true)]
    [InlineData("\u0665\u0666 N", true)]
    public void Other_forms_of_coordinates_are_refused(string text, bool latitude) => Assert.Null(Direction.Coordinate(text, latitude));

    [Fact]
    public void Coordinates_read_back() =>
        Gen.Select(Gen.Int[-9_000_000, 9_000_000], Gen.Bool).Sample((hundredThousandths, latitude) =>
        {
            var letter = (latitude, hundredThousandths < 0) switch { (true, true) => "S", (true, false) => "N", (false, true) => "W", _ => "E" };
            var text = (Math.Abs(hundredThousandths) / 1e5).ToString("F5", CultureInfo.InvariantCulture) + " " + letter;
            return Direction.Coordinate(text, latitude) is double value && Math.Abs(value - (hundredThousandths / 1e5)) < 1e-9;
        });

    [Fact]
    public void Bearings_say_their_north()
    {
        Assert.Equal(Bearing.FromTrue(214), Direction.Bearing("214 deg true"));
        Assert.Equal(Bearing.FromMagnetic(7.5), Direction.Bearing("7.5 deg magnetic"));
    }

    [Theory]
    [InlineData("214")]
    [InlineData("214 deg")]
    [InlineData("214 true")]
    [InlineData("361 deg true")]
    [InlineData("-1 deg true")]
    [InlineData("214 deg grid")]
    [InlineData("214 deg True")]
    [InlineData("SW")]
    public void Other_forms_of_bearings_are_refused(string text) => Assert.Null(Direction.Bearing(text));

    [Theory]
    [InlineData("1e3", false)]
    [InlineData("1_000", false)]
    [InlineData("0x1F", false)]
    [InlineData(".5", false)]
    [InlineData("5.", false)]
    [InlineData("NaN", false)]
    [InlineData("5\n", false)]
    [InlineData("-0.5", true)]
    [InlineData("017", true)]
    public void Plain_numbers_are_digits_with_a_dot(string text, bool reads) => Assert.Equal(reads, Direction.PlainNumber(text, out _));
}
