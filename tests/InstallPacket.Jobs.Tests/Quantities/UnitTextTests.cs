using System.Globalization;
using CsCheck;
using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Tests.Quantities;

public class UnitTextTests
{
    [Theory]
    [InlineData("4.5 m", Dimension.Length, 4.5)]
    [InlineData("4.5m", Dimension.Length, 4.5)]
    [InlineData("+120 mm", Dimension.Length, 0.12)]
    [InlineData("14 ft 6 in", Dimension.Length, 4.4196)]
    [InlineData("14 ft 6 1/2 in", Dimension.Length, 4.4323)]
    [InlineData("-3 ft 6 in", Dimension.Length, -1.0668)]
    [InlineData("1/4 in", Dimension.Length, 0.00635)]
    [InlineData("6-1/2 in", Dimension.Length, 0.1651)]
    [InlineData("2 mi", Dimension.Length, 3218.688)]
    [InlineData("-83 dBm", Dimension.Level, -83)]
    [InlineData("50 F", Dimension.Temperature, 10)]
    [InlineData("-40 F", Dimension.Temperature, -40)]
    [InlineData("2 dBd", Dimension.AntennaGain, 4.15)]
    [InlineData("30.48 dB/100 ft", Dimension.Attenuation, 100)]
    [InlineData("0.5 GHz", Dimension.Frequency, 500)]
    [InlineData("250 W", Dimension.RadiatedPower, 0.25)]
    public void Read_gives_the_value_in_the_stored_unit(string text, Dimension dimension, double expected)
    {
        var reading = UnitText.Read(text, dimension);
        Assert.Equal(UnitProblem.None, reading.Problem);
        Assert.Equal(expected, reading.Value, 9);
    }

    [Theory]
    [InlineData("4.5", Dimension.Length, UnitProblem.UnitMissing)]
    [InlineData("1/4", Dimension.Length, UnitProblem.UnitMissing)]
    [InlineData("14 ft 6", Dimension.Length, UnitProblem.UnitMissing)]
    [InlineData("", Dimension.Length, UnitProblem.NotANumber)]
    [InlineData("m", Dimension.Length, UnitProblem.NotANumber)]
    [InlineData("4,5 m", Dimension.Length, UnitProblem.NotANumber)]
    [InlineData("1 000 m", Dimension.Length, UnitProblem.NotANumber)]
    [InlineData("NaN m", Dimension.Length, UnitProblem.NotANumber)]
    [InlineData("0x10 m", Dimension.Length, UnitProblem.NotANumber)]
    [InlineData("\u0664 m", Dimension.Length, UnitProblem.NotANumber)]
    [InlineData("1e3 m", Dimension.Length, UnitProblem.UnitUnknown)]
    [InlineData("1/0 in", Dimension.Length, UnitProblem.NotANumber)]
    [InlineData("3 dBuV", Dimension.Ratio, UnitProblem.UnitUnknown)]
    [InlineData("3 M", Dimension.Length, UnitProblem.UnitUnknown)]
    [InlineData("1 m 6 in", Dimension.Length, UnitProblem.UnitUnknown)]
    [InlineData("6 in 6 in", Dimension.Length, UnitProblem.UnitUnknown)]
    [InlineData("6 in 2 ft", Dimension.Length, UnitProblem.UnitUnknown)]
    [InlineData("2 ft 6 in 6 in", Dimension.Length, UnitProblem.UnitUnknown)]
    [InlineData("14 ft -6 in", Dimension.Length, UnitProblem.NotANumber)]
    [InlineData("4.5 m!", Dimension.Length, UnitProblem.UnitUnknown)]
    [InlineData("3 \u00B5V", Dimension.Level, UnitProblem.UnitUnknown)]
    public void Read_refuses_what_could_mean_two_things(string text, Dimension dimension, UnitProblem problem) =>
        Assert.Equal(problem, UnitText.Read(text, dimension).Problem);

    [Fact]
    public void Feet_inches_and_sixteenths_read_back() =>
        Gen.Select(Gen.Bool, Gen.Int[0, 2000], Gen.Int[0, 11], Gen.Int[1, 15]).Sample((below, feet, inches, sixteenths) =>
        {
            var reading = UnitText.Read($"{(below ? "-" : "")}{feet} ft {inches} {sixteenths}/16 in", Dimension.Length);
            var expected = (below ? -1 : 1) * ((feet * 12) + inches + (sixteenths / 16.0)) * 0.0254;
            return reading.Problem == UnitProblem.None && Math.Abs(reading.Value - expected) < 1e-9;
        });

    [Fact]
    public void Every_unit_of_every_dimension_reads_back()
    {
        var units = Enum.GetValues<Dimension>().SelectMany(d => UnitTable.For(d).Select(u => (Dimension: d, Unit: u))).ToArray();
        Gen.Select(Gen.Int[0, units.Length - 1], Gen.Int[-999_999, 999_999]).Sample((index, thousandths) =>
        {
            var (dimension, unit) = units[index];
            var reading = UnitText.Read((thousandths / 1000.0).ToString("F3", CultureInfo.InvariantCulture) + " " + unit.Name, dimension);
            var expected = (thousandths / 1000.0 * unit.Factor) + unit.Offset;
            return reading.Problem == UnitProblem.None && reading.Unit == unit.Name && Math.Abs(reading.Value - expected) <= 1e-9 * Math.Max(1, Math.Abs(expected));
        });
    }

    [Fact]
    public void Any_text_is_read_or_refused_without_a_fault() =>
        Gen.Select(Gen.String, Gen.Enum<Dimension>()).Sample((text, dimension) =>
        {
            var reading = UnitText.Read(text, dimension);
            return double.IsFinite(reading.Value) && (reading.Problem == UnitProblem.None || reading.Value == 0);
        });
}
