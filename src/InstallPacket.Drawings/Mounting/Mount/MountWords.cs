using InstallPacket.Plans;

namespace InstallPacket.Drawings.Mounting.Mount;

/// <summary>The mount sketch in words.</summary>
internal static class MountWords
{
    public static string Of(SheetPlan plan)
    {
        var (print, m) = (plan.Print, plan.Mounting);
        var words = new List<string> { $"{m.Mount} on {m.On}, from the side: {m.Mast}, {print.Length(m.MastLengthM)} long, {print.Length(m.FreeLengthM)} free above the upper support." };
        if (m.Wind is { } wind)
        {
            words.Add($"The wind of the check pushes the antenna with {print.Force(wind.ForceN)}.");
            words.Add("Forces: " + string.Join("; ", wind.Supports.Select(s => $"{s.Name}, {print.Length(s.HeightM)} above the foot of the mast, {print.Force(Math.Abs(s.ForceN))}{(s.ForceN < 0 ? " the other way" : "")}")) + ".");
        }
        foreach (var g in m.Hold?.Guys ?? []) words.Add($"{g.Count} guys from the ring at {print.Length(g.RingM)} to anchors {print.Length(g.RadiusM)} out, each pulls {print.Force(g.TensionN)} at most.");
        if (m.Hold?.Ballast is { } b) words.Add($"{b.Blocks} blocks of {print.Mass(b.BlockKg)} on a base of {print.Length(b.SideM)} square.");
        words.Add("Fixings: " + string.Join("; ", m.Fixings.Select(f => $"{f.Count} × {f.Name} into {f.Into}")) + ".");
        return string.Join(" ", words);
    }
}
