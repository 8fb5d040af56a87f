namespace InstallPacket.Cli.Tests.Forms;

/// <summary>The verb <c>form</c>, without a browser.</summary>
public class FormCommandTests
{
    [Theory]
    [InlineData("", "installpacket: name the firm with `--firm`: fernleigh, lindmark\n")]
    [InlineData("nobody", "installpacket: there is no firm nobody; firms: fernleigh, lindmark\n")]
    public void Firm_must_be_one_of_the_folder(string firm, string error)
    {
        using var shop = Workshop.WithDemoJobs();
        var output = Path.Combine(shop.Root, "survey.html");
        string[] named = firm.Length == 0 ? [] : ["--firm", firm];
        var run = Workshop.Run(["form", "--jobs", shop.Jobs, "--out", output, .. named]);
        Assert.Equal((ExitCode.WrongCommandLine, error), (run.Code, run.Errors));
        Assert.False(File.Exists(output));
    }

    [Fact]
    public void Firm_of_the_folder_needs_no_name_and_its_language_is_spoken()
    {
        using var shop = Workshop.WithDemoJobs();
        shop.Write("jobs/_shared/firm.yaml", shop.Read("jobs/_shared/firms/lindmark.yaml"));
        var output = Path.Combine(shop.Root, "survey.html");
        Assert.Equal(ExitCode.Done, Workshop.Run("form", "--jobs", shop.Jobs, "--out", output).Code);
        var page = File.ReadAllText(output);
        Assert.Contains("<html lang=\"en-GB\">", page, StringComparison.Ordinal);
        Assert.Contains("Where the aerial will stand", page, StringComparison.Ordinal);
        Assert.DoesNotContain("Code family", page, StringComparison.Ordinal);
        Assert.DoesNotContain("src=", page, StringComparison.Ordinal);
    }
}
