using System.Buffers.Binary;
using InstallPacket.Drawings.Canvas;
using InstallPacket.Tests;
using UglyToad.PdfPig;

namespace InstallPacket.Cli.Tests;

/// <summary>The logo of a firm stands on the pages of the customer and nowhere else, and what is hidden in its file stays behind.</summary>
public class LogoTests
{
    private static byte[] Mark => File.ReadAllBytes(Path.Combine(DemoJobs.Checkout, "jobs/_shared/fernleigh.png"));

    [Fact]
    public void Mark_stands_on_the_customers_page_and_pdf_alone()
    {
        Assert.Contains("alt=\"Fernleigh Aerials (invented)\"", Page("sugar-lane", "customer.html"), StringComparison.Ordinal);
        Assert.DoesNotContain("class=\"logo\"", Page("sugar-lane", "crew.html"), StringComparison.Ordinal);
        Assert.DoesNotContain("class=\"logo\"", Page("quay-loft", "customer.html"), StringComparison.Ordinal);
        Assert.Equal([1], Pictures("sugar-lane", "customer.pdf"));
        Assert.Empty(Pictures("sugar-lane", "crew.pdf"));
    }

    [Fact]
    public void Texts_in_the_file_do_not_get_into_a_packet()
    {
        var mark = Mark;
        byte[] named = [.. "tEXt"u8, .. "Comment\0secret of the machine"u8];
        byte[] chunk = [0, 0, 0, (byte)(named.Length - 4), .. named, 0, 0, 0, 0];
        BinaryPrimitives.WriteUInt32BigEndian(chunk.AsSpan(^4..), Calc.Checksums.Crc32.Of(named));
        var painted = PngPainter.Repainted([.. mark[..33], .. chunk, .. mark[33..]])!;
        Assert.Equal(-1, painted.AsSpan().IndexOf("secret"u8));
        Assert.Equal(PngPainter.Repainted(mark), painted);
    }

    [Fact]
    public void Another_mark_builds_the_packets_of_the_firm_anew()
    {
        using var shop = Workshop.WithPackets();
        Assert.Contains("(unchanged)", shop.Build("quay-loft").Output, StringComparison.Ordinal);
        File.WriteAllBytes(Path.Combine(shop.Jobs, "_shared", "fernleigh.png"), PngPainter.Repainted(Mark)!);
        var run = shop.Build("pine-corner");
        Assert.DoesNotContain("(unchanged)", run.Output, StringComparison.Ordinal);
        Assert.True(run.Code == ExitCode.Done, run.Errors);
    }

    private static string Page(string id, string name) => File.ReadAllText(Path.Combine(Workshop.Built.Out, id, name));

    // Numbers of the pages that hold a picture.
    private static IEnumerable<int> Pictures(string id, string name)
    {
        using var pdf = PdfDocument.Open(Path.Combine(Workshop.Built.Out, id, name));
        return [.. pdf.GetPages().Where(p => p.GetImages().Any()).Select(p => p.Number)];
    }
}
