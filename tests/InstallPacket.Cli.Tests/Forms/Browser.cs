using System.Collections.Concurrent;
using InstallPacket.Tests;
using PuppeteerSharp;

[assembly: AssemblyFixture(typeof(InstallPacket.Cli.Tests.Forms.Browser))]

namespace InstallPacket.Cli.Tests.Forms;

/// <summary>A browser of the system without a window, shared by the tests of the form, and the demo jobs with the forms of both firms.</summary>
public sealed class Browser : IAsyncDisposable
{
    /// <summary>Where the system keeps it; the environment variable names another one.</summary>
    private static readonly string Program = Environment.GetEnvironmentVariable("INSTALLPACKET_CHROMIUM") ?? "/usr/bin/chromium";

    private readonly ConcurrentDictionary<string, Lazy<Task<Phone>>> _shared = new(StringComparer.Ordinal);
    // Started by the first test that needs it: most runs of a few tests need none.
    private readonly Lazy<Task<IBrowser>> _browser;
    private readonly Lazy<Workshop> _shop = new(Workshop.WithDemoJobs);

    public Browser() => _browser = new(Start);

    internal Workshop Shop => _shop.Value;

    private async Task<IBrowser> Start()
    {
        foreach (var firm in new[] { "fernleigh", "lindmark" })
            Assert.Equal("", Workshop.Run("form", "--jobs", Shop.Jobs, "--firm", firm, "--out", Path.Combine(Shop.Root, firm + ".html")).Errors);
        return await Puppeteer.LaunchAsync(new LaunchOptions { ExecutablePath = Program, Headless = true, Args = ["--no-sandbox", "--disable-gpu"] });
    }

    /// <summary>The form of a firm on a phone; the test is skipped where there is no browser.</summary>
    /// <param name="firm">The firm.</param>
    /// <param name="width">Of the screen.</param>
    /// <param name="before">Run in the page before its own script.</param>
    internal async Task<Phone> Open(string firm, int width = 360, string before = "")
    {
        Assert.SkipUnless(File.Exists(Program), $"There is no browser at {Program}; install chromium, or name one in INSTALLPACKET_CHROMIUM.");
        var context = await (await _browser.Value).CreateBrowserContextAsync();
        var page = await context.NewPageAsync();
        await page.SetViewportAsync(new() { Width = width, Height = 740, HasTouch = true, IsMobile = width < 600 });
        if (before.Length > 0) await page.EvaluateExpressionOnNewDocumentAsync(before);
        var phone = new Phone(page);
        await page.GoToAsync(new Uri(Path.Combine(Shop.Root, firm + ".html")).AbsoluteUri);
        return phone;
    }

    /// <summary>A page that is opened once, for tests that ask its functions and touch no field.</summary>
    internal Task<Phone> Shared(string firm) => _shared.GetOrAdd(firm, f => new(() => Open(f))).Value;

    /// <summary>A job that the form exported builds as it is, and nothing in it stops the work.</summary>
    internal void AssertBuilds(string id, string job)
    {
        Shop.Write($"jobs/{id}/job.yaml", job);
        var run = Workshop.Run("build", id, "--jobs", Shop.Jobs, "--out", Path.Combine(Shop.Root, "out"), "--strict");
        Assert.True(run.Code == 0, $"{job}\n{run.Output}\n{run.Errors}");
        Assert.True(File.Exists(Path.Combine(Shop.Root, "out", id, "crew.html")), run.Output);
    }

    public async ValueTask DisposeAsync()
    {
        if (_browser.IsValueCreated) await (await _browser.Value).CloseAsync();
        if (_shop.IsValueCreated) _shop.Value.Dispose();
    }
}
