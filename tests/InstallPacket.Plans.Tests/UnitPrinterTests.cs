namespace InstallPacket.Plans.Tests;

public class UnitPrinterTests
{
    private readonly UnitPrinter _metric = new(false, LevelUnit.DBuV);
    private readonly UnitPrinter _us = new(true, LevelUnit.DBmV);

    [Theory]
    [InlineData(4.5, "4.50 m", "14 ft 9 in")]
    [InlineData(0.3048, "0.30 m", "1 ft")]
    [InlineData(0.1524, "0.15 m", "6 in")]
    [InlineData(3.04799, "3.05 m", "10 ft")]
    [InlineData(0, "0.00 m", "0 in")]
    [InlineData(-1.0, "−1.00 m", "−3 ft 3 in")]
    public void Length_prints_in_both_families(double metres, string metric, string us)
    {
        Assert.Equal(metric, Plain(_metric.Length(metres)));
        Assert.Equal(us, Plain(_us.Length(metres)));
    }

    [Theory]
    [InlineData(0.003175, "3.2 mm", "1/8 in")]
    [InlineData(0.0047625, "4.8 mm", "3/16 in")]
    [InlineData(0.0254, "25.4 mm", "1 in")]
    [InlineData(0.0301625, "30.2 mm", "1 3/16 in")]
    public void Drill_prints_a_fraction_in_lowest_terms(double metres, string metric, string us)
    {
        Assert.Equal(metric, Plain(_metric.Drill(metres)));
        Assert.Equal(us, Plain(_us.Drill(metres)));
    }

    [Theory]
    [InlineData(9.901, "9.91 m", "32 ft 6 in")]
    [InlineData(9.906, "9.91 m", "32 ft 6 in")]
    [InlineData(9.9061, "9.91 m", "32 ft 7 in")]
    public void Distance_to_keep_is_never_rounded_down(double metres, string metric, string us)
    {
        Assert.Equal(metric, Plain(_metric.AtLeast(metres)));
        Assert.Equal(us, Plain(_us.AtLeast(metres)));
    }

    [Theory]
    [InlineData(359.98, "000°")]
    [InlineData(0.4, "000°")]
    [InlineData(7.5, "008°")]
    [InlineData(231.77, "232°")]
    public void Bearing_has_three_digits_and_wraps(double degrees, string expected) => Assert.Equal(expected, UnitPrinter.Plain.Bearing(degrees));

    [Fact]
    public void Level_prints_in_the_unit_of_the_job()
    {
        Assert.Equal("60.0 dBµV", Plain(_metric.Level(-48.7506)));
        Assert.Equal("0.0 dBmV", Plain(_us.Level(-48.7506)));
        Assert.Equal("−48.8 dBm", Plain(new UnitPrinter(false, LevelUnit.DBm).Level(-48.7506)));
    }

    [Fact]
    public void Temperature_and_torque_print_in_both_families()
    {
        Assert.Equal("140 °F", Plain(_us.Temperature(60)));
        Assert.Equal("30 lbf in", Plain(_us.Torque(3.3896)));
        Assert.Equal("10 lbf ft", Plain(_us.Torque(13.558)));
        Assert.Equal("3.4 N m", Plain(_metric.Torque(3.3896)));
    }

    [Fact]
    public void Margin_always_has_its_sign()
    {
        Assert.Equal("+5.7 dB", Plain(UnitPrinter.Plain.Margin(5.7)));
        Assert.Equal("−3.5 dB", Plain(UnitPrinter.Plain.Margin(-3.5)));
    }

    private static string Plain(string text) => text.Replace('\u00A0', ' ');
}
