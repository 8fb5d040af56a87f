using System.Text.Json;
using InstallPacket.Packets;
using InstallPacket.Packets.Forms;
using InstallPacket.Plans;
using InstallPacket.Tests;

namespace InstallPacket.Cli.Tests.Forms;

/// <summary>The page itself: no network, targets for a thumb, what it keeps, what it opens.</summary>
public class FormPageTests(Browser browser)
{
    // Everything that can be tapped, in all sections, with one thing in each list; a button of a choice or a tick is as large as its label.
    private const string SmallTargets = """
        (() => {
          const small = [];
          for (const add of document.querySelectorAll('.add')) add.click();
          for (const q of document.querySelectorAll('.q')) { q.hidden = false; q.querySelectorAll('[hidden]').forEach(e => { e.hidden = false; }); }
          for (const section of document.querySelectorAll('main > section')) {
            for (const other of document.querySelectorAll('main > section')) other.hidden = other !== section;
            if (document.documentElement.scrollWidth > innerWidth) small.push(`${section.id} is ${document.documentElement.scrollWidth} wide`);
            for (const e of section.querySelectorAll('button, select, textarea, input, summary')) {
              const box = (e.type === 'radio' || e.type === 'checkbox' ? e.closest('label') : e).getBoundingClientRect();
              if (box.width > 0 && (box.width < 48 || box.height < 48)) small.push(`${section.id} ${e.id || e.className || e.name} ${box.width} x ${box.height}`);
              if (box.width > 0 && (box.left < 0 || box.right > innerWidth)) small.push(`${section.id} ${e.id || e.className || e.name} ends at ${box.right}`);
            }
          }
          return small;
        })()
        """;

    [Theory]
    [InlineData("fernleigh", 360)]
    [InlineData("lindmark", 320)]
    [InlineData("fernleigh", 1280)]
    public async Task Targets_are_large_and_nothing_scrolls_sideways(string firm, int width)
    {
        var phone = await browser.Open(firm, width);
        Assert.Empty(await phone.Page.EvaluateExpressionAsync<string[]>(SmallTargets));
    }

    [Fact]
    public async Task Page_asks_for_nothing_but_itself_and_its_policy_lets_nothing_else_run()
    {
        var phone = await browser.Open("fernleigh");
        await phone.Type("title", "Nobody listens");
        await phone.Job();
        // The browser draws its own fields with pictures that it holds as data.
        Assert.Equal(["fernleigh.html"], phone.Requests.Where(r => !r.StartsWith("data:", StringComparison.Ordinal)).Select(r => Path.GetFileName(new Uri(r).LocalPath)));
        Assert.Empty(phone.Faults);
        await phone.Page.EvaluateExpressionAsync("(() => { const s = document.createElement('script'); s.textContent = 'window.strange = 1'; document.body.append(s); })()");
        Assert.False(await phone.Page.EvaluateExpressionAsync<bool>("'strange' in window"));
        Assert.Equal("refused", await phone.Page.EvaluateExpressionAsync<string>("fetch('https://example.org/').then(() => 'sent', () => 'refused')"));
        Assert.Contains(phone.Faults, f => f.Contains("Content Security Policy", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("", "Kept in this browser.")]
    [InlineData("Object.defineProperty(window, 'localStorage', { get() { throw new Error('closed'); } })", "Kept in the address of this page: this browser has no store for it. Do not close the page before you send the job.")]
    public async Task Answers_are_there_after_a_reload_with_and_without_a_store(string before, string said)
    {
        var phone = await browser.Open("fernleigh", before: before);
        await phone.Type("title", "Half done");
        await phone.NotKnown("customer-phone");
        await phone.Go("wires");
        await phone.Choose("wires", "some");
        await phone.Add("wires");
        await phone.Type("wires-what-1", "street line");
        var job = await phone.Job();
        await phone.Page.WaitForFunctionAsync("t => document.querySelector('#kept').textContent === t", new PuppeteerSharp.WaitForFunctionOptions { Timeout = 5000 }, said);
        await phone.Page.ReloadAsync();
        Assert.Equal(job, await phone.Job());
        Assert.Contains("street line", job, StringComparison.Ordinal);
        Assert.Contains("# Not known: customer.phone", job, StringComparison.Ordinal);
        await phone.Page.EvaluateExpressionAsync("document.querySelector('#forget').click()");
        await phone.Page.ReloadAsync();
        Assert.Equal(FormWriter.SchemaOfJob + "\nformat: 1\nfirm: fernleigh\n", await phone.Job());
    }

    [Fact]
    public async Task Looked_and_found_none_not_known_and_not_asked_are_three_things()
    {
        var phone = await browser.Open("fernleigh");
        Assert.DoesNotContain("power-lines", await phone.Job(), StringComparison.Ordinal);
        await phone.Go("wires");
        await phone.Choose("wires", "none");
        await phone.Go("house");
        await phone.NotKnown("wall");
        var job = await phone.Job();
        Assert.Contains("power-lines: {}", job, StringComparison.Ordinal);
        Assert.DoesNotContain("obstructions", job, StringComparison.Ordinal);
        Assert.Contains("# Not known: routing.house.wall", job, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Wrong_value_is_said_at_the_field_and_stays_out_of_the_job()
    {
        var phone = await browser.Open("fernleigh");
        await phone.Go("house");
        await phone.Type("eaves", "900");
        Assert.Equal("Wrong: expected from 3 ft 3 in to 196 ft 10 in.", await phone.Text("#q-eaves > .said"));
        await phone.Type("ridge", "12");
        Assert.DoesNotContain("eaves", await phone.Job(), StringComparison.Ordinal);
        await phone.Go("house");
        await phone.Type("eaves", "14");
        Assert.Equal("Wrong: the ridge is below the eaves.", await phone.Text("#q-ridge > .said"));
    }

    [Fact]
    public async Task Height_worked_out_goes_into_the_field()
    {
        var phone = await browser.Open("lindmark");
        await phone.Go("house");
        await phone.Tap("#q-ridge .tool");
        await phone.Tap("input[name='tool-height'][value='step']");
        foreach (var (field, value) in new[] { ("eye", "1.6"), ("step", "6"), ("near", "38"), ("far", "25") })
            await phone.Page.TypeAsync($"#t-height-{field}", value);
        await phone.Tap("#tool-height .take");
        Assert.Equal("8.54 m", await phone.Value("#f-ridge"));
    }

    [Theory]
    [InlineData("sugar-lane", "fernleigh", 3)]
    [InlineData("alder-lane", "fernleigh", 9)]
    [InlineData("pine-corner", "fernleigh", 8)]
    [InlineData("brook-terrace", "lindmark", 9)]
    [InlineData("quay-loft", "lindmark", 6)]
    [InlineData("far-meadow", "fernleigh", 10)]
    [InlineData("mill-yard", "fernleigh", 11)]
    public async Task Job_that_is_opened_and_exported_gives_the_same_plan(string id, string firm, int stays)
    {
        var job = File.ReadAllText(Path.Combine(DemoJobs.Checkout, "jobs", id, "job.yaml"));
        var phone = await browser.Open(firm);
        await phone.OpenText(job);
        var said = await phone.Text("#opened");
        Assert.StartsWith("Opened.", said, StringComparison.Ordinal);
        Assert.Matches($@"Parts that (this page does not ask|stay): {stays}\.", said);
        var exported = await phone.Job();
        Assert.Empty(phone.Faults);
        Assert.Equal(PlanOf(id, job), PlanOf(id, exported));
        foreach (var remark in job.Split('\n').Where(l => l.StartsWith('#'))) Assert.Contains(remark, exported, StringComparison.Ordinal);
        Assert.Equal(job.Split('\n')[0], exported.Split('\n')[0]);
        await phone.OpenText(exported);
        Assert.Equal(exported, await phone.Job());
    }

    [Theory]
    [InlineData("")]
    [InlineData("just a sentence")]
    [InlineData("title: x\n  : y")]
    [InlineData("format: 1\nsiting: |\n  text")]
    public async Task What_is_no_job_leaves_the_answers_as_they_are(string text)
    {
        var phone = await browser.Open("fernleigh");
        await phone.Type("title", "Mine");
        await phone.OpenText(text);
        Assert.Equal("This is no job that the page can read. The answers here are unchanged.", await phone.Text("#opened"));
        Assert.Contains("title: Mine", await phone.Job(), StringComparison.Ordinal);
    }

    // Without the places of findings.
    private static string PlanOf(string id, string job)
    {
        var jobs = DemoJobs.Load().WithFile($"{id}/job.yaml", job);
        var reading = new JobReader(jobs, jobs.Parts()).Read(id);
        Assert.True(reading.Job is not null, $"{job}\n{string.Join("\n", reading.Findings.Select(f => $"{f.At} {f.Id}"))}");
        using var terrain = reading.Job.Siting.Terrain is { } tiles ? new TerrainTiles(jobs, tiles.Value) : null;
        using var plan = JsonDocument.Parse(PlanJson.Text(PlanJson.Tree(Planner.Plan(reading.Job, jobs.Parts(), terrain, reading.Findings))));
        return string.Join("\n", Leaves(plan.RootElement, ""));
    }

    private static IEnumerable<string> Leaves(JsonElement element, string path) => element.ValueKind switch
    {
        JsonValueKind.Object => element.EnumerateObject().Where(p => p.Name is not ("file" or "line" or "column" or "path")).SelectMany(p => Leaves(p.Value, $"{path}.{p.Name}")),
        // Findings stand in the order of the file's lines.
        JsonValueKind.Array when path == ".findings" => element.EnumerateArray().Select(e => string.Join("\n", Leaves(e, ""))).Order(StringComparer.Ordinal),
        JsonValueKind.Array => element.EnumerateArray().SelectMany((e, i) => Leaves(e, $"{path}.{i}")),
        _ => [$"{path}: {element}"],
    };
}
