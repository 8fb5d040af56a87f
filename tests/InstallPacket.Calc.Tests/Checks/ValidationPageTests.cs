namespace InstallPacket.Calc.Tests.Checks;

public class ValidationPageTests
{
    [Fact]
    public void The_committed_page_is_the_generated_one()
    {
        var path = Path.Combine(ReferenceFile.Root(), "docs", "methods", "validation.md");
        if (Environment.GetEnvironmentVariable("INSTALLPACKET_ACCEPT") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, ValidationPage.Text);
        }
        Assert.True(File.Exists(path), "docs/methods/validation.md is missing: run the tests with INSTALLPACKET_ACCEPT=1 and review it.");
        Assert.Equal(File.ReadAllText(path).ReplaceLineEndings("\n"), ValidationPage.Text);
    }

    [Fact]
    public void Derived_and_recalled_sets_are_never_called_validation()
    {
        var afterRegression = ValidationPage.Text.Split("## Regression, not validation")[0];
        Assert.All(
            ReferenceSets.All.Where(s => s.Worth is Worth.Derived or Worth.Recalled),
            s => Assert.DoesNotContain($"| {s.Name};", afterRegression, StringComparison.Ordinal));
    }
}
