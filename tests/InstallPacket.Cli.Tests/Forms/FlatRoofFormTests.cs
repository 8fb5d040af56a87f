using InstallPacket.Tests;

namespace InstallPacket.Cli.Tests.Forms;

/// <summary>A house that is no box, a mast that stands by its weight on the flat roof, a rod of its own: walked round, exported, built.</summary>
public class FlatRoofFormTests(Browser browser)
{
    private static string Golden => Path.Combine(DemoJobs.Checkout, "tests", "InstallPacket.Cli.Tests", "Forms", "flat-roof.yaml");

    [Fact]
    public async Task Ballast_on_a_house_with_a_wing_exports_a_job_that_builds_without_editing_and_opens_again()
    {
        var phone = await browser.Open("lindmark");
        await Outside(phone);
        await Mount(phone);
        await Cable(phone);
        await Rest(phone);
        var job = await phone.Job();
        Assert.Equal("Nothing is missing. The job is ready to build.", await phone.Text("#findings > :first-child"));
        if (Environment.GetEnvironmentVariable("INSTALLPACKET_ACCEPT") == "1") File.WriteAllText(Golden, job);
        browser.AssertBuilds("flat-roof", job);
        await phone.OpenText(job);
        Assert.StartsWith("Opened. Parts that this page does not ask: 0.", await phone.Text("#opened"), StringComparison.Ordinal);
        Assert.Equal(job, await phone.Job());
        await phone.Page.WaitForFunctionAsync("() => document.querySelector('#kept').textContent === 'Kept in this browser.'");
        await phone.Page.ReloadAsync();
        Assert.Equal(job, await phone.Job());
        Assert.Empty(phone.Faults);
        Assert.Equal(File.ReadAllText(Golden), job);
    }

    [Fact]
    public async Task Walls_that_do_not_close_or_turn_wrong_are_told_and_stay_out_of_the_job()
    {
        var phone = await browser.Open("lindmark");
        await phone.Go("house");
        await phone.Choose("house-form", "other");
        await Walls(phone, ("12", "outer"), ("8", "outer"), ("5", "outer"), ("3", "outer"), ("7", "outer"), ("5", "outer"));
        Assert.Equal("Wrong: outer corners less inner corners make 6, not 4. Look which corner is wrong or missing.", await phone.Text("#q-walls > .said"));
        await phone.Choose("walls-corner-4", "inner");
        await phone.Type("walls-length-3", "6.2");
        Assert.Equal("Wrong: the last wall ends 1.2 m from where the first one begins. Measure again.", await phone.Text("#q-walls > .said"));
        Assert.DoesNotContain("footprint", await phone.Job(), StringComparison.Ordinal);
        await phone.Go("house");
        await phone.Type("walls-length-3", "5.04");
        Assert.Equal("", await phone.Text("#q-walls > .said"));
        Assert.Equal(6, await phone.Page.EvaluateExpressionAsync<int>("document.querySelectorAll('#q-walls .plan text').length"));
        Assert.Contains("footprint: [[0 m, 0 m], [12 m, 0 m], [12 m, 8 m], [6.96 m, 8 m], [6.96 m, 5 m], [0 m, 5 m]]", await phone.Job(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_belongs_to_one_kind_of_mount_is_asked_of_that_kind_alone()
    {
        var phone = await browser.Open("fernleigh");
        await phone.Go("mount");
        string[] asked = ["mount-at", "mount-where", "under-roof", "roof-pitch", "chimney-side", "ballast-side", "guys", "guys-part"];
        async Task<string> Shown(string kind)
        {
            await phone.Select("mount-kind", kind);
            var shown = await phone.Page.EvaluateFunctionAsync<string[]>(
                "all => all.filter(id => !document.querySelector('#q-' + id).hidden)", (object)asked);
            return string.Join(' ', shown);
        }
        Assert.Equal("mount-at", await Shown("gable-bracket"));
        Assert.Equal("mount-where roof-pitch chimney-side", await Shown("chimney-lashing"));
        Assert.Equal("mount-where roof-pitch ballast-side", await Shown("ballast"));
        Assert.Equal("mount-where under-roof", await Shown("attic"));
        Assert.Equal("mount-where guys", await Shown("ground-mast"));
        await phone.Add("guys");
        Assert.Equal("mount-where guys guys-part", await Shown("ground-mast"));
        Assert.Equal("mount-at", await Shown("wall-bracket"));
    }

    private static async Task Walls(Phone phone, params (string Length, string Corner)[] walls)
    {
        for (var i = 1; i <= walls.Length; i++)
        {
            await phone.Add("walls");
            await phone.Type($"walls-length-{i}", walls[i - 1].Length);
            await phone.Choose($"walls-corner-{i}", walls[i - 1].Corner);
        }
    }

    private static async Task Outside(Phone phone)
    {
        await phone.Type("title", "Tern Court, ballasted mast on a flat roof");
        await phone.Page.EvaluateExpressionAsync("document.querySelector('#f-date').value = '2027-06-02'");
        await phone.Type("customer-name", "T. Sandell (invented)");
        await phone.NotKnown("customer-phone");
        await phone.Type("place", "56.3050 N, 14.2050 E");
        await phone.Type("ground", "104");
        await phone.Next();
        foreach (var station in new[] { "mux-a", "mux-b" }) await phone.Choose("want", station);
        await phone.Next();
        await phone.Choose("house-form", "other");
        await Walls(phone, ("12", "outer"), ("8", "outer"), ("5", "outer"), ("3", "inner"), ("7", "outer"), ("5", "outer"));
        await phone.Bearing("front", "192", "true");
        await phone.Type("eaves", "9");
        await phone.Type("ridge", "9.2");
        await phone.Choose("roof-form", "flat");
        await phone.Type("wall", "360 mm");
        await phone.Add("storeys");
        await phone.Type("storeys-name-1", "Upper");
        await phone.Type("storeys-floor-1", "6");
        await phone.Next();
        await phone.Choose("obstructions", "none");
        await phone.Next();
        await phone.Choose("wires", "none");
        await phone.Next();
        await phone.Next();
    }

    private static async Task Mount(Phone phone)
    {
        await phone.Select("antenna", "part:antenna-uhf-yagi-long");
        await phone.Select("mount-kind", "ballast");
        await phone.Type("mount-where", "flat roof, 3 m from every edge");
        await phone.Type("antenna-height", "11.2");
        await phone.Type("roof-pitch", "1");
        await phone.Select("mount-part", "ballast-frame-120");
        await phone.Select("mast", "mast-50");
        await phone.Type("mast-length", "2");
        await phone.Type("free-length", "1.4");
        await phone.Type("spacing", "0.5");
        await phone.Type("mount-on", "the membrane of the flat roof, on its protection mat");
        await Fixing(phone, 1, "ballast-clamp-m10", "4", "the frame itself; nothing goes through the membrane");
        await Fixing(phone, 2, "u-bolt-m8", "2", "the antenna clamp on the mast");
        await phone.Type("ballast-side", "1.2");
        await phone.Type("ballast-block", "20");
        await phone.Type("ballast-blocks", "8");
        await phone.Type("ballast-bears", "2 kPa");
        await phone.Type("ballast-stated", "structural note of the house (invented)");
        await phone.Next();
    }

    private static async Task Fixing(Phone phone, int number, string part, string count, string into)
    {
        await phone.Add("fixings");
        await phone.Select($"fixings-part-{number}", part);
        await phone.Type($"fixings-count-{number}", count);
        await phone.Type($"fixings-into-{number}", into);
    }

    private static async Task Cable(Phone phone)
    {
        await phone.Choose("entry-through", "roof");
        await phone.Type("entry-where", "roof hatch beside the stairs");
        await phone.Select("block", "grounding-block");
        await phone.Choose("entry-existing", "yes");
        await phone.Choose("down-existing", "no");
        await phone.Type("down-length", "6");
        await phone.Select("down-way", "outside");
        await phone.Choose("drip-loop", "yes");
        await phone.Next();
        await phone.Add("outlets");
        await phone.Type("outlets-room-1", "Living room");
        await phone.Choose("outlets-on-wall-1", "yes");
        await phone.Place("outlets-at-1", "wall-4", "1.2", "left-end", "6.4");
        await phone.Choose("outlets-existing-1", "no");
        await phone.Choose("outlets-run-existing-1", "no");
        await phone.Type("outlets-run-length-1", "9");
        await phone.Select("outlets-run-way-1", "conduit");
        await phone.Choose("internet", "none");
        await phone.Next();
    }

    private static async Task Rest(Phone phone)
    {
        await phone.Type("bond-to", "the main earthing bar in the stairwell");
        await phone.Type("bond-mast", "13");
        await phone.Choose("mast-route", "yes");
        await phone.Type("mast-bends", "3");
        await phone.Type("mast-bend-radius", "250 mm");
        await phone.Type("mast-coils", "0");
        await phone.Type("bond-shield", "10");
        await phone.Choose("lightning", "yes");
        await phone.Type("thunder-days", "14");
        await phone.Choose("lightning-place", "similar");
        await phone.Next();
        await phone.Choose("access", "ladder-and-roof");
        await phone.Type("work-height", "9.2");
        await phone.Choose("fall-protection", "edge");
        await phone.Choose("roof", "sound");
        await phone.Choose("asbestos", "none");
        await phone.Choose("behind", "nothing");
        await phone.Choose("buried", "none");
        await phone.Next();
    }
}
