using InstallPacket.Plans;

namespace InstallPacket.Drawings.Mounting.Mount;

/// <summary>The mount sketch in words.</summary>
internal static class MountWords
{
    public static string Of(SheetPlan plan)
    {
        var (print, m) = (plan.Print, plan.Mounting);
        var words = new List<string>
        {
            plan.Say("mount.what", ("mount", m.Mount), ("on", m.On), ("mast", m.Mast), ("length", print.Length(m.MastLengthM)),
                ("free", print.Length(m.FreeLengthM)), ("plate", m.Plate is not null)),
        };
        if (m.Existing) words.Add(plan.Say("mount.there-what"));
        if (m.Wind is { } wind)
        {
            words.Add(plan.Say("mount.pushes", ("force", print.Force(wind.ForceN))));
            words.Add(plan.Say("mount.forces",
                ("forces", string.Join("; ", wind.Supports.Select(s => plan.Say("mount.force", ("name", plan.Name(s.Name)),
                ("height", print.Length(s.HeightM)), ("force", print.Force(Math.Abs(s.ForceN))), ("other", s.ForceN < 0)))))));
        }
        words.AddRange((m.LoadPath?.Guys ?? []).Select(g => plan.Say("mount.guys",
            ("count", g.Count), ("ring", print.Length(g.RingM)), ("radius", print.Length(g.RadiusM)), ("force", print.Force(g.TensionN)))));
        if (m.LoadPath?.Ballast is { } b) words.Add(plan.Say("mount.ballast", ("count", b.Blocks), ("mass", print.Mass(b.BlockKg)),
            ("side", print.Length(b.SideM))));
        words.Add(plan.Say("mount.fixings-what", ("fixings", string.Join("; ", m.Fixings.Select(f =>
            plan.Say("mount.fixing-into", ("count", f.Count), ("name", f.Name), ("into", f.Into)))))));
        return string.Join(" ", words);
    }
}
