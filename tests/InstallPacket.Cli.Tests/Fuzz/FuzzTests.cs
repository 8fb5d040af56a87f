using InstallPacket.Tests;
using InstallPacket.Tests.Fuzz;

namespace InstallPacket.Cli.Tests.Fuzz;

/// <summary>
/// Damaged inputs of every kind end in words and an exit code of 0, 1 or 2, and touch nothing outside the output folder. The seeds are
/// the same in each run; <c>Bench fuzz</c> tries as many others as are asked for.
/// </summary>
public class FuzzTests
{
    private const int FirstSeed = 1;

    public static TheoryData<string> Kinds() => [.. FuzzKind.All.Select(k => k.Name)];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Damaged_input_ends_in_words(string name)
    {
        using var kind = FuzzKind.All.Single(k => k.Name == name).Make();
        var outcomes = Enumerable.Range(FirstSeed, kind.InTests).Select(seed => (Seed: seed, Outcome: kind.Run(seed))).ToArray();
        Assert.Empty(outcomes.Where(o => o.Outcome.Fault.Length > 0).Select(o => $"--kind {name} --seed {o.Seed}: {o.Outcome.Fault}"));
        // Both ways must be taken, or the damage is too great or too small to try anything.
        Assert.Contains(outcomes, o => o.Outcome.Code == ExitCode.Done);
        Assert.Contains(outcomes, o => o.Outcome.Code == ExitCode.JobFailed);
    }

    [Fact]
    public void Same_seed_gives_the_same_damage()
    {
        var sound = "a: 5 m\nb: [1, 2]\nc: { d: e }\n"u8.ToArray();
        byte[] Of(int seed) => new Damage(new Random(seed), HostileWords.Yaml).Of(sound);
        for (var seed = 1; seed < 200; seed++) Assert.Equal(Of(seed), Of(seed));
        Assert.True(Enumerable.Range(1, 200).Select(s => Convert.ToHexString(Of(s))).Distinct().Count() > 100);
    }

    [Theory]
    [InlineData("stations", "list.csv", "--at", "\u001b[31m")]
    [InlineData("explain", "\u001b[31m")]
    [InlineData("check", "--jobs", "\u001b[31m")]
    [InlineData("\u001b[31m")]
    public void Control_characters_of_an_option_do_not_reach_the_terminal(params string[] arguments)
    {
        var run = Workshop.Run(arguments);
        Assert.Equal(ExitCode.WrongCommandLine, run.Code);
        Assert.Contains("[31m", run.Errors, StringComparison.Ordinal);
        Assert.DoesNotContain("\u001b", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Control_characters_of_a_message_of_the_system_do_not_reach_the_terminal()
    {
        var terminal = new RecordedTerminal();
        Assert.Equal(ExitCode.JobFailed, ExitGuard.Run(terminal, () => throw new IOException("the file \u001b[31m is held.")));
        Assert.Contains("the file  [31m is held.", terminal.Errors, StringComparison.Ordinal);
        Assert.Equal(ExitCode.OurBug, ExitGuard.Run(terminal, () => throw new NotSupportedException("\u0007")));
        Assert.DoesNotContain(terminal.Errors, c => char.IsControl(c) && c != '\n' && c != '\r');
    }

    [Theory]
    [InlineData("packet.json")]
    [InlineData("crew.pdf")]
    [InlineData("../.installpacket-tiles")]
    [InlineData("../.installpacket")]
    public async Task Pipe_in_an_output_folder_does_not_hang(string path)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "no pipes in folders there");
        using var shop = Workshop.WithPackets();
        var place = Path.Combine(shop.Out, "quay-loft", path);
        File.Delete(place);
        System.Diagnostics.Process.Start("mkfifo", [place]).WaitForExit();
        var run = Task.Run(() => ExitGuard.Run(new RecordedTerminal(), () => shop.Build("quay-loft").Code),
            TestContext.Current.CancellationToken);
        Assert.Same(run, await Task.WhenAny(run, Task.Delay(TimeSpan.FromSeconds(60), TestContext.Current.CancellationToken)));
        Assert.NotEqual(ExitCode.OurBug, await run);
    }

    [Theory]
    [InlineData("fonts", true)]
    [InlineData(".installpacket", true)]
    [InlineData(".installpacket-work", false)]
    [InlineData(".installpacket-tiles", false)]
    public void Nothing_is_written_through_a_link_in_an_output_folder(string name, bool refused)
    {
        using var shop = Workshop.WithPackets();
        shop.Write("elsewhere/old/far/packet.json", "{\"inputs\":\"x\"}");
        var place = Path.Combine(shop.Out, name);
        if (Directory.Exists(place)) Directory.Delete(place, true);
        File.Delete(place);
        File.CreateSymbolicLink(place, Path.Combine(shop.Root, "elsewhere"));
        var terminal = new RecordedTerminal();
        var code = ExitGuard.Run(terminal, () => shop.Build("quay-loft", "--force").Code);
        Assert.Equal(refused ? ExitCode.JobFailed : ExitCode.Done, code);
        Assert.Equal(refused, terminal.Errors.Contains("is a link; nothing is written through it", StringComparison.Ordinal));
        Assert.Equal(["old/far/packet.json"], Workshop.Files(Path.Combine(shop.Root, "elsewhere")).Keys);
    }

    [Theory]
    [InlineData("glyf", 500, "does not have the checksum")]
    [InlineData("head", 18, "does not have the checksum")]
    [InlineData("maxp", 4, "does not have the checksum")]
    [InlineData(null, 12 + 12, "goes beyond the end")]
    public void Damaged_font_is_a_mistake_of_the_theme(string? table, int at, string says)
    {
        const string Path = "fonts/SourceSans3-Regular.ttf";
        var bytes = ThemeFiles.Read(Path);
        if (table is not null) at += Table(bytes, table);
        bytes[at] ^= 0x55;
        using var shop = Workshop.WithDemoJobs();
        Directory.CreateDirectory(System.IO.Path.Combine(shop.Root, "theme", "fonts"));
        File.WriteAllBytes(System.IO.Path.Combine(shop.Root, "theme", Path), bytes);
        var run = Assert.Throws<DocumentException>(() => shop.Build("--theme", System.IO.Path.Combine(shop.Root, "theme"), "quay-loft"));
        Assert.Contains("font 'fonts/SourceSans3-Regular.ttf' is", run.Message, StringComparison.Ordinal);
        Assert.Contains(says, run.Message, StringComparison.Ordinal);
    }

    private static int Table(byte[] font, string tag)
    {
        var entry = Enumerable.Range(0, font[5]).Select(i => 12 + 16 * i).Single(e => System.Text.Encoding.ASCII.GetString(font, e,
            4) == tag);
        return System.Buffers.Binary.BinaryPrimitives.ReadInt32BigEndian(font.AsSpan(entry + 8));
    }
}
