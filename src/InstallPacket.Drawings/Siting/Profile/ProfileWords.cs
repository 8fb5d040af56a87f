using InstallPacket.Plans;

namespace InstallPacket.Drawings.Siting.Profile;

/// <summary>A path profile in words.</summary>
internal sealed class ProfileWords(SheetPlan plan, PathPlan path)
{
    private readonly UnitPrinter _print = plan.Print;

    public string Site => _print.Number(path.Number, 0) + "\u00A0" + path.Site;

    public string Title => plan.Say("profile.title", ("site", Site));

    /// <summary>What follows the name in the heading.</summary>
    public string Verdict => plan.Say("profile.verdict", ("distance", _print.Distance(path.DistanceKm)), ("sight", InSight));

    public string Facts =>
        plan.Say("profile.facts", ("measured", path.From == "measured"), ("frequency", _print.Write(path.FrequencyMhz, 0, "MHz")),
        ("share", _print.Number(path.ClearShare, 2)), ("distance", _print.Distance(path.ClearAtKm)));

    /// <summary>How far the earth rises over the chord.</summary>
    public string Bulge => plan.Say("profile.bulge", ("height", _print.Height(path.Points.Max(p => p.BulgeM))));

    private string InSight => plan.Say(path.InSight ? "profile.in-sight" : "profile.blocked");

    public string Times(ProfileScale scale) => scale.Times == 1 ? plan.Say("profile.same-scale")
        : plan.Say("horizon.times", ("times", scale.Times));

    public string Description(ProfileScale scale)
    {
        var words = new List<string>
        {
            plan.Say("profile.what", ("site", path.Site), ("distance", _print.Distance(path.DistanceKm)), ("times", Times(scale)),
                ("sight", Capital(InSight)),
                ("facts", Facts), ("antenna", _print.Height(path.AntennaM)), ("transmitter", _print.Height(path.TransmitterM)),
                    ("bulge", Bulge)),
        };
        if (path.Edges.Count > 0) words.Add(plan.Say("profile.edges", ("edges", string.Join("; ", path.Edges.Select(Edge)))));
        if (path.Obstructions.Count > 0) words.Add(plan.Say("profile.near",
            ("things", string.Join("; ", path.Obstructions.Select(Thing)))));
        return string.Join(" ", words);
    }

    private string Edge(PathEdge e) => plan.Say("profile.edge", ("what", plan.Name(e.What)), ("distance", _print.Distance(e.DistanceKm)),
        ("height", _print.Height(e.GroundM)), ("angle", StripWords.Angle(plan, e.AngleDeg)));

    private string Thing(string name)
    {
        var o = plan.Siting.Obstructions.First(s => s.Name == name);
        return plan.Say("profile.thing", ("name", o.Name), ("kind", plan.Word("obstruction", o.Kind)),
            ("distance", _print.Length(o.DistanceM)),
            ("top", StripWords.Angle(plan, o.AngleDeg)));
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
