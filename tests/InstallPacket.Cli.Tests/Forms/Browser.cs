using System.Collections.Concurrent;
using InstallPacket.Tests;
using PuppeteerSharp;

[assembly: AssemblyFixture(typeof(InstallPacket.Cli.Tests.Forms.Browser))]

namespace InstallPacket.Cli.Tests.Forms;

/// <summary>A browser of the system without a window, shared by the tests of the form, and the demo jobs with the forms of both firms.</summary>
public sealed class Browser : IAsyncLifetime
{
    /// <summary>Where the system keeps it; the environment variable names another one.</summary>
    private static readonly string Program = Environment.GetEnvironmentVariable("INSTALLPACKET_CHROMIUM") ?? "/usr/bin/chromium";

    private readonly ConcurrentDictionary<string, Lazy<Task<Phone>>> _shared = new(StringComparer.Ordinal);
    private IBrowser? _browser;
    private Workshop? _shop;

    internal Workshop Shop => _shop!;

    public async ValueTask InitializeAsync()
    {
        if (!File.Exists(Program)) return;
        _shop = Workshop.WithDemoJobs();
        foreach (var firm in new[] { "fernleigh", "lindmark" })
            Assert.Equal("", Workshop.Run("form", "--jobs", _shop.Jobs, "--firm", firm, "--out", Path.Combine(_shop.Root, firm + ".html")).Errors);
        _browser = await Puppeteer.LaunchAsync(new LaunchOptions { ExecutablePath = Program, Headless = true, Args = ["--no-sandbox", "--disable-gpu"] });
    }

    /// <summary>The form of a firm on a phone; the test is skipped where there is no browser.</summary>
    /// <param name="firm">The firm.</param>
    /// <param name="width">Of the screen.</param>
    /// <param name="before">Run in the page before its own script.</param>
    internal async Task<Phone> Open(string firm, int width = 360, string before = "")
    {
        Assert.SkipUnless(_browser is not null, $"There is no browser at {Program}; install chromium, or name one in INSTALLPACKET_CHROMIUM.");
        var context = await _browser.CreateBrowserContextAsync();
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
        if (_browser is not null) await _browser.CloseAsync();
        _shop?.Dispose();
    }
}
