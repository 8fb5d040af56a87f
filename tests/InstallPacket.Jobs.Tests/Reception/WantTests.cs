namespace InstallPacket.Jobs.Tests.Reception;

/// <summary>Which stations a wish finds.</summary>
public class WantTests
{
    private const string Good = "want: [kes-9, kes-21, kes-24, kes-30, blu-15, blu-33]";

    [Theory]
    [InlineData("want: [Kestrel Ridge]", "kes-9 kes-21 kes-24 kes-30")]
    [InlineData("want: [kestrel ridge, Bluestem Arts]", "kes-9 kes-21 kes-24 kes-30 blu-15")]
    [InlineData("want: all of Bluestem Hill", "blu-15 blu-33")]
    [InlineData("want: [\"5.1\", Valley Sports]", "kes-21 kes-30")]
    [InlineData("want: [blu-33, Bluestem Hill]", "blu-33 blu-15")]
    [InlineData("want: [Bluestem Hill, all of Bluestem Hill]", "blu-15 blu-33")]
    [InlineData("want: all within 60 km", "kes-9 kes-21 kes-24 kes-30 blu-15 blu-33")]
    [InlineData("want: [all within 26 mi]", "kes-9 kes-21 kes-24 kes-30")]
    public void A_wish_finds_its_stations_in_order_and_each_once(string wish, string ids)
    {
        var reading = Read(wish);
        Assert.DoesNotContain(reading.Findings, f => f.Severity == Severity.Stop);
        Assert.Equal(ids, string.Join(' ', reading.Job!.Reception.Want.Select(w => w.Value)));
    }

    [Fact]
    public void Each_station_keeps_the_place_of_its_wish()
    {
        var want = Read("want: [kes-9, Bluestem Hill]").Job!.Reception.Want;
        Assert.Equal([10, 17, 17], want.Select(w => w.At.Column));
    }

    [Theory]
    [InlineData("want: [kes-9, kes-9]", "duplicate-want")]
    [InlineData("want: [kes-9, Kestrel Public]", "duplicate-want")]
    [InlineData("want: [Kestral Ridge]", "unknown-reference")]
    [InlineData("want: all of Kestrel Public", "unknown-reference")]
    [InlineData("want: all within 3 mi", "want-finds-none")]
    [InlineData("want: all within 60", "unit-missing")]
    [InlineData("want: all within 900 km", "out-of-range")]
    [InlineData("want: all within sight", "wrong-type")]
    [InlineData("want: { all: yes }", "wrong-type")]
    public void A_wish_that_finds_nothing_or_one_station_twice_stops_the_job(string wish, string id) =>
        Assert.Equal(id, Assert.Single(Read(wish).Findings, f => f.Severity == Severity.Stop).Id);

    [Fact]
    public void A_name_that_two_stations_within_reach_share_is_not_guessed()
    {
        var list = DemoJobs.Files().Read("_shared/stations/tamarack.csv", FileBounds.StationBytes).Text;
        var near = list.Replace("Bluestem Arts", "Kestrel Public", StringComparison.Ordinal);
        Assert.Contains(Read("want: [Kestrel Public]", near).Findings, f => f.Id == "want-ambiguous");
        var far = near.Replace("43.3281,-99.7330,180", "48.3281,-99.7330,180", StringComparison.Ordinal);
        Assert.Equal(["kes-9"], Read("want: [Kestrel Public]", far).Job!.Reception.Want.Select(w => w.Value));
    }

    private static JobReading Read(string wish, string? list = null)
    {
        var text = DemoJobs.Text("alder-lane");
        Assert.Contains(Good, text, StringComparison.Ordinal);
        var files = DemoJobs.Files().With("job/job.yaml", text.Replace(Good, wish, StringComparison.Ordinal));
        if (list is not null) files.With("_shared/stations/tamarack.csv", list);
        return new JobReader(files, DemoJobs.Parts).Read("job");
    }
}
