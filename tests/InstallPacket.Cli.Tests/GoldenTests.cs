using System.Text;
using InstallPacket.Tests;
using UglyToad.PdfPig;

namespace InstallPacket.Cli.Tests;

/// <summary>
/// Whole packets of the demo jobs against approved ones. INSTALLPACKET_ACCEPT=1 rewrites the approved files; read the diff.
/// Text is compared as text; of a PDF the pages, their words and its links.
/// </summary>
public class GoldenTests
{
    private static readonly string[] Texts = ["crew.md", "customer.md", "workings.md", "cut-list.csv", "materials.csv", "van-list.csv", "findings.json"];

    [Theory]
    [InlineData("alder-lane")]
    [InlineData("far-meadow")]
    [InlineData("mill-yard")]
    [InlineData("pine-corner")]
    [InlineData("quay-loft")]
    [InlineData("brook-terrace")]
    [InlineData("sugar-lane")]
    public void Packet_is_the_approved_one(string job)
    {
        var packet = Path.Combine(Workshop.Built.Out, job);
        var found = Texts.ToDictionary(f => f, f => File.ReadAllText(Path.Combine(packet, f)));
        foreach (var figure in Directory.EnumerateFiles(Path.Combine(packet, "figures"), "*.svg")) found["figures/" + Path.GetFileName(figure)] = File.ReadAllText(figure);
        foreach (var pdf in new[] { "crew.pdf", "customer.pdf" }) found[pdf + ".txt"] = Describe(Path.Combine(packet, pdf));
        foreach (var (file, text) in found) Compare(Path.Combine(DemoJobs.Checkout, "tests", "Golden", job, file), text);
    }

    private static void Compare(string approved, string text)
    {
        if (Environment.GetEnvironmentVariable("INSTALLPACKET_ACCEPT") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(approved)!);
            File.WriteAllText(approved, text);
        }
        Assert.True(File.Exists(approved), $"{approved} is not approved yet");
        Assert.Equal(File.ReadAllText(approved), text);
    }

    private static string Describe(string path)
    {
        using var pdf = PdfDocument.Open(path);
        var text = new StringBuilder($"pages: {pdf.NumberOfPages}\ntitle: {pdf.Information.Title}\n");
        foreach (var page in pdf.GetPages())
        {
            text.Append($"\n--- page {page.Number}\n").AppendJoin(' ', page.GetWords().Select(w => w.Text)).Append('\n');
            foreach (var link in page.GetHyperlinks()) text.Append("link: ").Append(link.Uri).Append('\n');
        }
        return text.ToString();
    }
}
