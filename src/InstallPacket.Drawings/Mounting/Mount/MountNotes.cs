using InstallPacket.Plans;

namespace InstallPacket.Drawings.Mounting.Mount;

/// <summary>The words beside the mount: forces to its right, lengths and wind to its left.</summary>
internal static class MountNotes
{
    public static IReadOnlyList<SideNote> Right(SheetPlan plan, MountView view)
    {
        var (print, m) = (plan.Print, plan.Mounting);
        var notes = new List<SideNote> { new(view.Side.At(0, m.MastLengthM),
            [plan.Say("mount.antenna", ("antenna", plan.Reception.AntennaId)),
            plan.Say("mount.above", ("height", print.Length(plan.Siting.AntennaHeightM)))], Strong: true) };
        foreach (var s in view.Supports)
        {
            var at = view.Side.At(0, s.HeightM);
            var label = plan.Say("mount.support", ("name", Name(plan, s)),
                ("force", m.Wind is null ? "" : print.Force(Math.Abs(s.ForceN))), ("other", s.ForceN < 0));
            string[] lines = m is { Plate: not null, Wind: { } wind }
                ? [label, plan.Say("mount.clamp-moment", ("moment", print.Moment(wind.MomentNm)))] : [label];
            notes.Add(new(new(at.X + 12, at.Y), lines, Strong: m.Wind is not null, Ink.Warning));
        }
        foreach (var g in m.LoadPath?.Guys ?? [])
            notes.Add(new(view.Side.At(g.RadiusM, 0),
                [plan.Say("mount.anchors", ("count", g.Count), ("radius", print.Length(g.RadiusM)), ("ring", print.Length(g.RingM))),
                plan.Say("mount.guy", ("force", print.Force(g.TensionN)))]));
        if (m.LoadPath?.Ballast is { } b) notes.Add(new(view.Side.At(b.SideM / 2, 0),
            [plan.Say("mount.blocks", ("count", b.Blocks), ("mass", print.Mass(b.BlockKg))),
            plan.Say("mount.base", ("side", print.Length(b.SideM)))]));
        return notes;
    }

    public static IReadOnlyList<SideNote> Left(SheetPlan plan, MountView view)
    {
        var (print, m) = (plan.Print, plan.Mounting);
        var notes = new List<SideNote>();
        if (m.Wind is { } wind)
        {
            notes.Add(new(new(view.Side.X(0) - 14, view.Side.Y(m.MastLengthM)), [plan.Say("mount.wind"), print.Force(wind.ForceN)],
                Strong: true, Ink.Accent));
            notes.Add(new(new(view.Side.X(0) - 7, view.Side.Y(m.MastLengthM - wind.FreeM / 2)),
                [plan.Say("mount.wind-line"), plan.Say("mount.on-free", ("force", print.Force(wind.LineLoadNPerM * wind.FreeM)))],
                Ink: Ink.Accent));
        }
        var free = m.MastLengthM - m.FreeLengthM;
        if (m.Plate is { } plate)
        {
            notes.AddRange(OfPlate(plan, plate, view, free));
            return notes;
        }
        notes.Add(new(view.Side.At(view.WallM ?? 0, free), [plan.Say("mount.free", ("length", print.Length(m.FreeLengthM)))]));
        var (low, high) = (view.Supports[0].HeightM, view.Supports[1].HeightM);
        notes.Add(new(view.Side.At(view.WallM ?? 0, (low + high) / 2), [plan.Say("mount.between", ("length", print.Length(high - low)))]));
        if (view.WallM is { } wall) notes.Add(new(view.Side.At(wall, low),
            [plan.Say("mount.stand-off", ("length", m.LoadPath?.StandOffM is { } s ? print.Small(s) : print.Words.Unknown))]));
        return notes;
    }

    private static IEnumerable<SideNote> OfPlate(SheetPlan plan, PlatePlan plate, MountView view, double freeM)
    {
        var print = plan.Print;
        yield return new(view.Side.At(0, freeM), [plan.Say("mount.arm-free", ("length", print.Length(plan.Mounting.FreeLengthM)))]);
        yield return new(view.Side.At((view.WallM ?? 0) / 2, freeM - plate.RiseM / 2),
            [plan.Say("mount.reach", ("length", plate.ReachM is { } reach ? print.Small(reach) : print.Words.Unknown),
            ("tilt", plate.TiltDeg == 0 ? "" : print.Angle(plate.TiltDeg)))]);
    }

    private static string Name(SheetPlan plan, MastSupport s) =>
        plan.Name(plan.Mounting.Kind == MountKind.GroundMast && s.HeightM < 0.05 ? "foot" : s.Name);
}
