using InstallPacket.Plans.Codes;

namespace InstallPacket.Plans.Tests;

/// <summary>The level that an outlet needs follows the mode.</summary>
public class OutletWindowTests
{
    private static readonly CodeFamilies Families = CodeFamilies.BuiltIn;

    [Theory]
    [InlineData("256QAM 2/3", 43.6)]
    [InlineData("256QAM 3/4", 45.6)]
    [InlineData("QPSK 1/2", 26.2)]
    public void Modes_without_a_row_are_moved_by_their_ratio(string mode, double dbuv)
    {
        var window = Families.Of("eu").Outlet("DVB-T2", mode)!;
        Assert.Equal(dbuv, window.LeastDbuv, 6);
        Assert.Equal("64QAM 2/3", window.MovedFrom);
    }

    [Fact]
    public void Row_of_the_document_stays_as_it_is_and_an_unknown_mode_takes_the_most_demanding_one()
    {
        var row = Families.Of("eu").Outlet("DVB-T2", "16QAM 2/3")!;
        Assert.Equal((35, ""), (row.LeastDbuv, row.MovedFrom));
        var unknown = Families.Of("eu").Outlet("DVB-T2", "1024QAM 9/10")!;
        Assert.Equal((39, ""), (unknown.LeastDbuv, unknown.MovedFrom));
    }

    [Fact]
    public void American_outlets_are_planned_to_the_practice_of_the_trade_and_not_to_the_threshold_of_a_receiver() =>
        Assert.Equal(45, Families.Of("us").Outlet("ATSC 1.0", "8VSB")!.LeastDbuv);
}
