using InstallPacket.Tests;

namespace InstallPacket.Cli.Tests.Forms;

/// <summary>The survey form, filled in as on site: what it exports builds as it is.</summary>
public class SurveyFormTests(Browser browser)
{
    [Fact]
    public async Task Filled_in_form_exports_a_job_that_builds_without_editing_and_opens_again()
    {
        var phone = await browser.Open("fernleigh");
        await Outside(phone);
        await Antenna(phone);
        await Inside(phone);
        await Rest(phone);
        var job = await phone.Job();
        Assert.Equal("Nothing is missing. The job is ready to build.", await phone.Text("#findings > :first-child"));
        if (Environment.GetEnvironmentVariable("INSTALLPACKET_ACCEPT") == "1") File.WriteAllText(Golden, job);
        browser.AssertBuilds("walked-round", job);
        await phone.OpenText(job);
        Assert.StartsWith("Opened. Parts that this page does not ask: 0.", await phone.Text("#opened"), StringComparison.Ordinal);
        Assert.Equal(job, await phone.Job());
        Assert.Empty(phone.Faults);
        Assert.Equal(File.ReadAllText(Golden), job);
    }

    private static string Golden => Path.Combine(DemoJobs.Checkout, "tests", "InstallPacket.Cli.Tests", "Forms", "walked-round.yaml");

    private static async Task Outside(Phone phone)
    {
        await phone.Type("title", "Larch Row, eave antenna into the house cable");
        await phone.Page.EvaluateExpressionAsync("document.querySelector('#f-date').value = '2027-05-12'");
        await phone.Type("customer-name", "D. Fairweather (invented)");
        await phone.Type("customer-address", "3 Larch Row, Tamarack Valley (invented)");
        await phone.NotKnown("customer-phone");
        await phone.Type("place", "43.6300 N, 99.1500 W");
        await phone.Type("ground", "1650");
        await phone.Next();
        foreach (var station in new[] { "kes-9", "kes-21", "kes-24" }) await phone.Choose("want", station);
        await phone.Next();
        await phone.Choose("house-form", "box");
        await phone.Type("width", "36");
        await phone.Type("depth", "28'");
        await phone.Bearing("front", "180", "true");
        await phone.Type("eaves", "18");
        await phone.Type("ridge", "27 ft 6 in");
        await phone.Choose("roof-form", "gable");
        await phone.Choose("ridge-along", "right");
        await phone.NotKnown("wall");
        await phone.Next();
        await phone.Choose("obstructions", "none");
        await phone.Next();
        await phone.Choose("wires", "some");
        await phone.Add("wires");
        await phone.Type("wires-what-1", "service drop at the street");
        await phone.Type("wires-distance-1", "62");
        await phone.Type("wires-height-1", "22");
        await phone.Next();
        await phone.Type("landmark-what", "the water tower");
        await phone.Bearing("landmark-bearing", "191", "magnetic");
        await phone.Next();
    }

    private static async Task Antenna(Phone phone)
    {
        await phone.Select("antenna", "kit:antenna-and-amplifier");
        await phone.Select("mount-kind", "eave-bracket");
        await phone.Place("mount-at", "left", "6", "front", "eaves");
        await phone.Select("mount-part", "eave-bracket");
        await phone.Select("mast", "mast-38");
        await phone.Type("mast-length", "5");
        await phone.Type("free-length", "3");
        await phone.Type("mount-on", "rafter ends through the fascia");
        await phone.Add("fixings");
        await phone.Select("fixings-part-1", "lag-screw-5-16");
        await phone.Type("fixings-count-1", "8");
        await phone.Type("fixings-into-1", "rafter ends, sound wood");
        await phone.Type("fixings-pilot-1", "3/16");
        await phone.Select("fixings-timber-1", "spruce-pine-fir");
        await phone.Type("fixings-gap-1", "3/4");
        await phone.Add("fixings");
        await phone.Select("fixings-part-2", "u-bolt-m8");
        await phone.Type("fixings-count-2", "2");
        await phone.Type("fixings-into-2", "the antenna clamp on the mast");
        await phone.Select("wind-exposure", "B");
        await phone.Next();
    }

    private static async Task Inside(Phone phone)
    {
        await phone.Choose("entry-through", "wall");
        await phone.Place("entry-at", "left", "3", "front", "5");
        await phone.Select("block", "grounding-block");
        await phone.Choose("entry-existing", "yes");
        await phone.Choose("down-existing", "no");
        await phone.Type("down-length", "16");
        await phone.Select("down-way", "outside");
        await phone.Choose("drip-loop", "yes");
        await phone.Next();
        await phone.Select("inserter", "power-inserter-12v");
        await phone.Select("splitter", "splitter-2");
        await phone.Type("panel-room", "Utility room");
        await Existing(phone, "panel", "12", "");
        await phone.Choose("panel-connectors", "yes");
        await Outlet(phone, 1, "Living room", "45");
        await Outlet(phone, 2, "Bedroom", "60");
        await phone.Choose("internet", "other");
        await phone.Next();
    }

    private static async Task Outlet(Phone phone, int number, string room, string length)
    {
        await phone.Add("outlets");
        await phone.Type($"outlets-room-{number}", room);
        await phone.Choose($"outlets-existing-{number}", "yes");
        await Existing(phone, "outlets-run", length, $"-{number}");
    }

    private static async Task Existing(Phone phone, string run, string length, string end)
    {
        await phone.Choose($"{run}-existing{end}", "yes");
        await phone.Type($"{run}-length{end}", length);
        await phone.Select($"{run}-cable{end}", "coax-unknown");
    }

    private static async Task Rest(Phone phone)
    {
        await phone.Type("bond-to", "the intersystem termination under the meter");
        await phone.Type("bond-mast", "20");
        await phone.Type("bond-shield", "5");
        await phone.Next();
        await phone.Choose("roof", "sound");
        await phone.Choose("asbestos", "none");
        await phone.Choose("behind", "nothing");
        await phone.Choose("buried", "unknown");
        await phone.Next();
        await phone.Add("photos");
        await phone.Type("photos-shows-1", "left wall at the eaves");
        await phone.Type("photos-file-1", "photo-12.jpg");
    }
}
