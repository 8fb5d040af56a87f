using System.Globalization;
using InstallPacket.Tests;

namespace InstallPacket.Cli.Tests;

/// <summary>How the machine writes numbers does not show in a packet.</summary>
public class CultureTests
{
    [Theory]
    [InlineData("far-meadow")]
    [InlineData("mill-yard")]
    public void Machine_that_writes_numbers_otherwise_gives_the_same_bytes(string id)
    {
        var theme = Theme.FromFolder(Path.Combine(DemoJobs.Checkout, "theme"));
        var sound = Files(theme, id);
        var before = CultureInfo.CurrentCulture;
        var odd = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        (odd.NumberFormat.NumberDecimalSeparator, odd.NumberFormat.NegativeSign, odd.NumberFormat.NumberGroupSeparator) = (",", "minus", ".");
        odd.DateTimeFormat.DateSeparator = "_";
        CultureInfo.CurrentCulture = odd;
        try
        {
            Assert.Equal(sound, Files(theme, id));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static SortedDictionary<string, string> Files(Theme theme, string id)
    {
        var jobs = DemoJobs.Load();
        var plan = Planner.Plan(jobs.Job(id), jobs.Parts(), null, []);
        return new(new PacketBuilder(theme, pictures: true).Build(plan).ToDictionary(f => f.Path, f => Convert.ToHexStringLower(
            System.Security.Cryptography.SHA256.HashData(f.Bytes))), StringComparer.Ordinal);
    }
}
