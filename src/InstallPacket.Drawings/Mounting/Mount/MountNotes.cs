using InstallPacket.Plans;

namespace InstallPacket.Drawings.Mounting.Mount;

/// <summary>The words beside the mount: forces to its right, lengths and wind to its left.</summary>
internal static class MountNotes
{
    public static IReadOnlyList<SideNote> Right(SheetPlan plan, MountView view)
    {
        var (print, m) = (plan.Print, plan.Mounting);
        var notes = new List<SideNote> { new(view.Side.At(0, m.MastLengthM), ["antenna " + plan.Reception.AntennaId, print.Length(plan.Siting.AntennaHeightM) + " above ground"], Strong: true) };
        foreach (var s in view.Supports)
        {
            var at = view.Side.At(0, s.HeightM);
            var force = m.Wind is null ? "" : ": " + print.Force(Math.Abs(s.ForceN)) + (s.ForceN < 0 ? ", the other way" : "");
            notes.Add(new(new(at.X + 12, at.Y), [Name(m, s) + force], Strong: m.Wind is not null, Ink.Warning));
        }
        foreach (var g in m.Hold?.Guys ?? [])
            notes.Add(new(view.Side.At(g.RadiusM, 0), [$"{g.Count} anchors {print.Length(g.RadiusM)} out, ring at {print.Length(g.RingM)}", $"a guy pulls {print.Force(g.TensionN)}"]));
        if (m.Hold?.Ballast is { } b) notes.Add(new(view.Side.At(b.SideM / 2, 0), [$"{b.Blocks} blocks of {print.Mass(b.BlockKg)}", "base " + print.Length(b.SideM) + " square"]));
        return notes;
    }

    public static IReadOnlyList<SideNote> Left(SheetPlan plan, MountView view)
    {
        var (print, m) = (plan.Print, plan.Mounting);
        var notes = new List<SideNote>();
        if (m.Wind is { } wind)
        {
            notes.Add(new(new(view.Side.X(0) - 14, view.Side.Y(m.MastLengthM)), ["wind on the antenna", print.Force(wind.ForceN)], Strong: true, Ink.Accent));
            notes.Add(new(new(view.Side.X(0) - 7, view.Side.Y(m.MastLengthM - wind.FreeM / 2)), ["wind on mast and cable", print.Force(wind.LineLoadNPerM * wind.FreeM) + " on the free length"], Ink: Ink.Accent));
        }
        var free = m.MastLengthM - m.FreeLengthM;
        notes.Add(new(view.Side.At(view.WallM ?? 0, free), [print.Length(m.FreeLengthM) + " free above this support"]));
        var (low, high) = (view.Supports[0].HeightM, view.Supports[1].HeightM);
        notes.Add(new(view.Side.At(view.WallM ?? 0, (low + high) / 2), [print.Length(high - low) + " between the supports"]));
        if (view.WallM is { } wall) notes.Add(new(view.Side.At(wall, low), ["stand-off " + (m.Hold?.StandOffM is { } s ? print.Small(s) : "unknown")]));
        return notes;
    }

    private static string Name(MountingPlan m, MastSupport s) => m.Kind == "ground-mast" && s.HeightM < 0.05 ? "foot" : s.Name;
}
