namespace InstallPacket.Jobs.Tests;

public class DemoJobTests
{
    public static TheoryData<string> Ids => [.. DemoJobs.Ids];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Demo_jobs_read_without_a_stop(string id)
    {
        var reading = DemoJobs.Read(DemoJobs.Text(id));
        Assert.NotNull(reading.Job);
        Assert.Empty(reading.Findings);
    }

    [Fact]
    public void Every_folder_with_a_job_is_a_demo_job_of_these_tests() =>
        Assert.Equal(DemoJobs.Shown, Directory.GetFiles(DemoJobs.Folder, "job.yaml", SearchOption.AllDirectories).Select(f => Path.GetFileName(Path.GetDirectoryName(f))!).Order(StringComparer.Ordinal));

    [Fact]
    public void Values_keep_unit_and_place()
    {
        var job = DemoJobs.Read(DemoJobs.Text("brook-terrace")).Job!;
        Assert.Equal(8.4, job.Siting.AntennaHeight.Value.Metres, 12);
        Assert.Equal("job/job.yaml(19,19)", job.Siting.AntennaHeight.At.ToString());
        Assert.Equal(0.12, job.Routing.Runs[0].DripDepth.Value.Metres, 12);
        Assert.Equal(56.31, job.Siting.LatitudeDeg.Value, 12);
        Assert.Equal(("S1", 2), (job.Cabling.Chain.First(e => e.Id == "O2").From, job.Cabling.Chain.First(e => e.Id == "O2").FromPort));
    }
}
