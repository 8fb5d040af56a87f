using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Mounting;

/// <summary>Turns the checked group <c>mounting</c> into its record.</summary>
internal sealed class MountingBinder(PartLibrary parts)
{
    public MountingSection Section(CheckedGroup g) => new(
        Text(g, "kind"), Part(g, "part"), Part(g, "mast"), Metres(g, "mast-length"), Metres(g, "free-length"), Text(g, "on"),
        [.. g.Items<CheckedGroup>("fixings").Select(f => Fixing(f.Value))], Number(g, "roof-pitch"), Metres(g, "work-height"), Text(g, "access"), g.At)
    {
        FreeLengthAt = g.Place("free-length"),
        Spacing = Number(g, "spacing") is { } spacing ? Length.FromMetres(spacing) : null,
        Wind = g.Group("wind") is { } w ? new(w.Get<double>("speed").Value, w.Get<string>("exposure"), Text(w, "crest") == "yes", w.At) : null,
        Guys = g.Group("guys") is { } guys ? Guys(guys) : null,
        Ballast = g.Group("ballast") is { } b ? new(b.Get<double>("side").Value, b.Get<double>("block").Value, b.Maybe<int>("blocks")?.Value, Number(b, "friction"), Number(b, "roof-bears"), b.Maybe<string>("stated")?.Value, b.At) : null,
        Chimney = g.Group("chimney") is { } c ? new(c.Get<double>("side").Value, c.Get<double>("height").Value, c.Get<double>("strap-spacing").Value, c.Get<string>("state"), c.Get<string>("allowed"), c.At) : null,
        Survey = g.Group("survey") is { } s && g.Written.Contains("survey") ? new(Text(s, "roof"), Text(s, "asbestos"), Text(s, "behind"), Text(s, "buried"), Text(s, "old-mast") == "yes", s.At) : null,
        LadderLoadKg = g.Maybe<double>("ladder-load"),
        FallProtection = g.Maybe<string>("fall-protection"),
    };

    private Fixing Fixing(CheckedGroup g) => new(
        Part(g, "part"), g.Get<int>("count").Value, Number(g, "pilot") is { } pilot ? Length.FromMetres(pilot) : null, Text(g, "into"), g.At)
    {
        Timber = g.Maybe<string>("timber"),
        Wet = Text(g, "wet") == "yes",
        GapM = g.Get<double>("gap").Value,
        EndM = g.Maybe<double>("end-distance"),
        EdgeM = g.Maybe<double>("edge-distance"),
        PullN = Number(g, "pull"),
        ShearN = Number(g, "shear"),
        Stated = g.Maybe<string>("stated")?.Value,
        PilotAt = g.Place("pilot"),
    };

    private GuySection Guys(CheckedGroup g) => new(
        Part(g, "part"), g.Get<double>("pretension").Value,
        [.. g.Items<CheckedGroup>("sets").Select(s => new GuySet(s.Value.Get<double>("ring").Value, s.Value.Get<int>("count").Value, s.Value.Get<double>("anchor-radius").Value, s.At))],
        Text(g, "anchor"), Number(g, "anchor-pull"), g.Maybe<string>("stated")?.Value, g.At);

    private Part Part(CheckedGroup g, string key) => parts.Find(Text(g, key))!;

    private static string Text(CheckedGroup g, string key) => g.Get<string>(key).Value;

    private static double? Number(CheckedGroup g, string key) => g.Maybe<double>(key)?.Value;

    private static Length Metres(CheckedGroup g, string key) => Length.FromMetres(g.Get<double>(key).Value);
}
