using InstallPacket.Calc.Quantities;

namespace InstallPacket.Calc.Tests.Quantities;

public class UnitTextTests
{
    [Theory]
    [InlineData("4.5 m", 4.5)]
    [InlineData("14 ft 6 in", 4.4196)]
    [InlineData("14ft 6in", 4.4196)]
    [InlineData("6 1/2 in", 0.1651)]
    [InlineData("1/4 in", 0.00635)]
    [InlineData("-1 ft 6 in", -0.4572)]
    [InlineData("150 mm", 0.15)]
    public void Length_reads_in_metres(string text, double metres)
    {
        var reading = UnitText.Read(text, Dimension.Length);
        Assert.Equal(UnitProblem.None, reading.Problem);
        Assert.Equal(metres, reading.Value, 12);
    }

    [Theory]
    [InlineData("4.5", UnitProblem.UnitMissing)]
    [InlineData("4.5 dB", UnitProblem.UnitUnknown)]
    [InlineData("14 ft -6 in", UnitProblem.NotANumber)]
    [InlineData("6 in 14 ft", UnitProblem.UnitUnknown)]
    [InlineData("4.5 m 2 cm", UnitProblem.UnitUnknown)]
    [InlineData("about 4 m", UnitProblem.NotANumber)]
    [InlineData("", UnitProblem.NotANumber)]
    [InlineData("1e3 m", UnitProblem.UnitUnknown)]
    public void What_is_no_length_is_refused(string text, UnitProblem problem) => Assert.Equal(problem, UnitText.Read(text, Dimension.Length).Problem);

    [Theory]
    [InlineData("68 F", Dimension.Temperature, 20)]
    [InlineData("-40 F", Dimension.Temperature, -40)]
    [InlineData("6.55 dB/100 ft", Dimension.Attenuation, 21.489501312)]
    [InlineData("60 dBuV", Dimension.Level, -48.750613)]
    [InlineData("0 dBmV", Dimension.Level, -48.750613)]
    [InlineData("10 dBd", Dimension.AntennaGain, 12.15)]
    [InlineData("30 lbf in", Dimension.Torque, 3.389545)]
    public void Other_dimensions_read_in_their_stored_unit(string text, Dimension dimension, double value) =>
        Assert.Equal(value, UnitText.Read(text, dimension).Value, 5);

    [Fact]
    public void Rounded_zero_never_carries_a_minus_sign()
    {
        Assert.Equal("0.0", UnitText.Number(-0.04, 1));
        Assert.Equal("\u22120.1", UnitText.Number(-0.06, 1));
    }
}
