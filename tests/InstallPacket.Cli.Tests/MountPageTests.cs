using InstallPacket.Tests;

namespace InstallPacket.Cli.Tests;

/// <summary>What the crew's page says of the work at the mount.</summary>
public class MountPageTests
{
    [Fact]
    public void The_crew_is_told_to_level_before_it_marks_where_something_is_screwed_on()
    {
        var row = File.ReadLines(Path.Combine(DemoJobs.Checkout, "tests/Reference/mounting/common_practice.csv")).Single(l => l.Contains(",before-marking,", StringComparison.Ordinal)).Split(',');
        var shop = Workshop.Built;
        Assert.Contains(row[2], shop.Read("out/alder-lane/crew.md"), StringComparison.Ordinal);
        Assert.DoesNotContain(row[2], shop.Read("out/quay-loft/crew.md"), StringComparison.Ordinal);
    }
}
