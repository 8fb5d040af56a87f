using PuppeteerSharp;
using PuppeteerSharp.Input;

namespace InstallPacket.Cli.Tests.Forms;

/// <summary>A hand on the screen: taps and types as a person does, and hears what the page complains about.</summary>
internal sealed class Phone
{
    private readonly IPage _page;

    public Phone(IPage page)
    {
        _page = page;
        page.Request += (_, e) => Requests.Add(e.Request.Url);
        page.PageError += (_, e) => Faults.Add(e.Message ?? "fault");
        page.Console += (_, e) =>
        {
            if (e.Message.Type == ConsoleType.Error) Faults.Add(e.Message.Text);
        };
    }

    /// <summary>Everything that the page asked the network or the disk for.</summary>
    public List<string> Requests { get; } = [];

    /// <summary>Errors of the script and refusals of the content security policy.</summary>
    public List<string> Faults { get; } = [];

    public IPage Page => _page;

    public Task Tap(string selector) => Click(selector);

    public async Task Next() => await Click("#next");

    /// <summary>Types into the field of a question; what stood there goes.</summary>
    public async Task Type(string id, string text)
    {
        var selector = $"#f-{id}";
        await Show(selector);
        await _page.FocusAsync(selector);
        await _page.EvaluateFunctionAsync("s => document.querySelector(s).select?.()", selector);
        await _page.Keyboard.PressAsync("Backspace");
        // As pasted: one change of the field, not one for each letter.
        await _page.Keyboard.SendCharacterAsync(text);
    }

    /// <summary>Taps one of the buttons of a question.</summary>
    public Task Choose(string id, string word) => Click($"input[name='r-{id}'][value='{word}']");

    public async Task Select(string id, string value)
    {
        Assert.Equal([value], await _page.SelectAsync($"#f-{id}", value));
    }

    public Task NotKnown(string id) => Click($"#q-{id} > .unknown");

    public Task Add(string id) => Click($"#q-{id} > .add");

    public async Task Bearing(string id, string degrees, string north)
    {
        await Type(id, degrees);
        await Choose(id, north);
    }

    public async Task Place(string id, string wall, string along, string corner, string up)
    {
        await Select(id + "-wall", wall);
        await Type(id + "-along", along);
        await Select(id + "-corner", corner);
        await Choose(id, up is "eaves" or "ridge" ? up : "measured");
        if (up is not ("eaves" or "ridge")) await Type(id + "-up", up);
    }

    public Task<string> Value(string selector) => _page.EvaluateFunctionAsync<string>("s => document.querySelector(s).value", selector);

    public Task<string> Text(string selector) => _page.EvaluateFunctionAsync<string>("s => document.querySelector(s).textContent", selector);

    /// <summary>Goes to the last section, where the job is.</summary>
    public async Task<string> Job()
    {
        await Go("check");
        return await Value("#job");
    }

    /// <summary>Goes to a section by the list of sections.</summary>
    public async Task Go(string section)
    {
        await Click("#sections");
        var at = await _page.EvaluateFunctionAsync<int>("s => [...document.querySelectorAll('main > section')].findIndex(e => e.dataset.section === s)", section);
        await Click($"#section-list li:nth-child({at + 1}) button");
    }

    public async Task OpenText(string job)
    {
        await Go("check");
        if (!await _page.EvaluateExpressionAsync<bool>("document.querySelector('#opening').open")) await Click("#opening summary");
        await _page.EvaluateFunctionAsync("t => { document.querySelector('#open-text').value = t; }", job);
        await Click("#open");
    }

    // A tap lands on what is seen at that place: a field below a bar is not hit.
    private async Task Click(string selector)
    {
        await Show(selector);
        await _page.ClickAsync(selector);
    }

    private Task Show(string selector) => _page.EvaluateFunctionAsync(
        "s => { const e = document.querySelector(s); if (!e) throw new Error('no ' + s); e.scrollIntoView({ block: 'center' }); }", selector);
}
