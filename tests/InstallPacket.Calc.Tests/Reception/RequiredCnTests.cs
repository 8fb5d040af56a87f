using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Tests.Reception;

public class RequiredCnTests
{
    [Theory, InlineData("QPSK", Provenance.Memory), InlineData("16QAM", Provenance.Memory), InlineData("64QAM", Provenance.Derived), InlineData("256QAM", Provenance.Derived), InlineData("1024QAM", Provenance.Derived), InlineData("4096QAM", Provenance.Derived)]
    public void Every_mode_of_ATSC_3_is_known_with_its_provenance(string modulation, Provenance provenance) => Assert.All(Enumerable.Range(2, 12), k =>
    {
        var row = RequiredCn.Find("ATSC 3.0", modulation, $"{k}/15")!;
        Assert.Equal((modulation, $"{k}/15", 0.0, provenance), (row.Modulation, row.CodeRate, row.AddedDb, row.Provenance));
        Assert.Equal(provenance == Provenance.Memory ? "AWGN, simulation" : "AWGN, estimate", row.Channel);
        // A stronger code of the same modulation needs less.
        if (k > 2) Assert.True(row.RequiredDb > RequiredCn.Find("ATSC 3.0", modulation, $"{k - 1}/15")!.RequiredDb);
    });

    [Theory, InlineData("DQPSK"), InlineData("QPSK"), InlineData("16QAM"), InlineData("64QAM")]
    public void Every_mode_of_ISDB_T_is_known_with_its_provenance(string modulation) => Assert.All((string[])["1/2", "2/3", "3/4", "5/6", "7/8"], rate =>
    {
        var row = RequiredCn.Find("ISDB-T", modulation, rate)!;
        Assert.Equal((modulation, rate, 3.0, Provenance.Memory), (row.Modulation, row.CodeRate, row.AddedDb, row.Provenance));
        Assert.Equal(row.ListedDb + 3, row.RequiredDb);
    });

    [Theory, InlineData("ATSC 3.0", "us-6"), InlineData("ATSC 1.0", "us-6"), InlineData("ISDB-T", "jp-6"), InlineData("ISDB-T", "br-6"), InlineData("DVB-T", "au-7"), InlineData("DVB-T2", "eu-8")]
    public void Every_system_has_its_bandwidth_on_its_raster(string system, string plan) =>
        Assert.All(ChannelRaster.All.Where(c => c.Plan == plan), c => Assert.InRange(Bandwidth.NoiseMHz(system, c.WidthMHz)!.Value, 0.92 * c.WidthMHz, c.WidthMHz));
}
