using System.Text;

namespace InstallPacket.Packets.Tests;

public class CsvFileTests
{
    [Theory]
    [InlineData("=1+1")]
    [InlineData("+1")]
    [InlineData("-1")]
    [InlineData("@sum")]
    [InlineData("\tcell")]
    [InlineData("\rcell")]
    public void A_text_that_a_spreadsheet_would_compute_gets_an_apostrophe(string text)
    {
        var csv = new CsvFile("text", "number");
        csv.Row(text, -2.5);
        Assert.Equal($"text,number\n\"'{text}\",-2.5\n", Encoding.UTF8.GetString(csv.Bytes()));
    }

    [Fact]
    public void Numbers_stay_numbers_and_nothing_stays_empty()
    {
        var csv = new CsvFile("a", "b", "c");
        csv.Row(-3, 0.125, null);
        Assert.Equal("a,b,c\n-3,0.125,\n", Encoding.UTF8.GetString(csv.Bytes()));
    }
}
