using InstallPacket.Plans;

namespace InstallPacket.Drawings.Mounting.Mount;

/// <summary>Draws mast, wall or roof, supports, guys, blocks, and the arrows of wind and forces.</summary>
internal sealed class MountPainter(SheetCanvas canvas, SheetPlan plan, MountView view)
{
    private const double MastMm = 0.9;
    private const double ArrowMm = 9;
    private readonly MountingPlan _m = plan.Mounting;

    public void Draw()
    {
        Ground();
        if (view.WallM is { } wall) Wall(wall);
        if (_m.Kind == MountKind.ChimneyLashing) Stack();
        Guys();
        Feet();
        var (foot, head) = (view.Side.At(0, 0), view.Side.At(0, _m.MastLengthM));
        canvas.Box(new(foot.X - MastMm, head.Y, foot.X + MastMm, foot.Y), new(Ink.Line, 0.4), Fill.Paper);
        AntennaMark.Draw(canvas, head);
        if (_m.Plate is { } plate) Arm(plate);
        foreach (var s in view.Supports.Where(s => !s.Name.StartsWith("ring", StringComparison.Ordinal))) Support(s);
        Wind();
    }

    private void Ground()
    {
        if (_m.Kind is not (MountKind.GroundMast or MountKind.Ballast or MountKind.Tripod)) return;
        var (left, right) = (view.Side.X(0) - 26, view.Side.X(0) + 26);
        var y = view.Side.Y(0);
        canvas.Line(new(Ink.Line, 0.6), new(left, y), new(right, y));
        Hatch.Draw(canvas, new(left, y, right, y + 2), new(Ink.Faint, 0.25), 2.5);
    }

    private void Wall(double wallM)
    {
        // A wall as high as the brackets need, or the post behind the stand-off of a ground mast.
        var (x, top) = (view.Side.X(wallM), view.Side.Y(view.Upper.HeightM) - 6);
        var foot = view.Side.Y(_m.Plate is { } plate ? Math.Min(0, view.Upper.HeightM - plate.RiseM - plate.HeightM) : 0);
        var box = new PaperBox(x - 3.5, top, x, foot + (_m.Kind == MountKind.GroundMast ? 0 : 4));
        canvas.Line(new(Ink.Line, 0.6), new(x, box.Top), new(x, box.Bottom));
        Hatch.Draw(canvas, box, new(Ink.Faint, 0.25), 2.5);
    }

    private void Stack()
    {
        var x = view.Side.X(0) - MastMm;
        var box = new PaperBox(x - 12, view.Side.Y(view.Upper.HeightM) - 5, x, view.Side.Y(0) + 4);
        canvas.Box(box, new(Ink.Line, 0.5), Fill.None);
        Hatch.Draw(canvas, box, new(Ink.Faint, 0.25), 4);
    }

    private void Guys()
    {
        foreach (var g in _m.LoadPath?.Guys ?? [])
            foreach (var side in new[] { -1, 1 })
            {
                canvas.Line(new(Ink.Line, 0.35), view.Side.At(0, g.RingM), view.Side.At(side * g.RadiusM, 0));
                var anchor = view.Side.At(side * g.RadiusM, 0);
                canvas.Area(new(Ink.Line, 0.3), Fill.Solid, new(anchor.X - 1.2, anchor.Y), new(anchor.X + 1.2, anchor.Y),
                    new(anchor.X, anchor.Y + 3));
            }
    }

    private void Feet()
    {
        if (_m.Kind == MountKind.Ballast && _m.LoadPath?.Ballast is { } ballast)
        {
            var (left, right, y) = (view.Side.X(-ballast.SideM / 2), view.Side.X(ballast.SideM / 2), view.Side.Y(0));
            canvas.Box(new(left, y - 1.2, right, y), new(Ink.Line, 0.4), Fill.Paper);
            foreach (var x in new[] { left, right - 6 }) canvas.Box(new(x, y - 4.4, x + 6, y - 1.2), new(Ink.Line, 0.4), Fill.Tint);
        }
        if (_m.Kind is not (MountKind.Ballast or MountKind.Tripod)) return;
        // Legs from the upper clamp of the frame down to its feet.
        var top = view.Side.At(0, view.Upper.HeightM);
        var reach = _m.LoadPath?.Ballast?.SideM / 2 ?? 0.45;
        foreach (var side in new[] { -1, 1 }) canvas.Line(new(Ink.Line, 0.5), top, view.Side.At(side * reach * 0.8, 0));
    }

    // The plate on the wall with the heads of its outer rows, and the arm from its middle to the mast.
    private void Arm(PlatePlan plate)
    {
        var (clamp, wall) = (view.Side.At(0, view.Upper.HeightM), view.Side.X(view.WallM ?? 0));
        var middle = view.Side.Y(view.Upper.HeightM - plate.RiseM);
        var half = Math.Max(3, plate.HeightM * view.Side.MmPerMetre / 2);
        canvas.Box(new(wall, middle - half - 1.2, wall + 1.0, middle + half + 1.2), new(Ink.Line, 0.4), Fill.Solid);
        foreach (var y in new[] { middle - half, middle + half })
            canvas.Line(new(Ink.Line, 0.9), new(wall - 3, y), new(wall + 2.2, y));
        canvas.Line(new(Ink.Line, 1.1), new(wall + 1, middle), clamp);
    }

    private void Support(MastSupport s)
    {
        var at = view.Side.At(0, s.HeightM);
        if (_m.Plate is null && view.WallM is { } wall && !(_m.Kind == MountKind.GroundMast && s.HeightM < 0.05)) canvas.Line(new(Ink.Line, 1.1),
            new(view.Side.X(wall), at.Y), at);
        canvas.Box(PaperBox.Around(at, 1.5, 1.0), new(Ink.Line, 0.4), Fill.Solid);
    }

    // The wind blows from the left here; a support that holds against it pushes to the left.
    private void Wind()
    {
        if (_m.Wind is not { } wind) return;
        var head = view.Side.At(0, _m.MastLengthM);
        canvas.Arrow(new(head.X - ArrowMm - 5, head.Y), new(head.X - 5, head.Y), 0.9, 3, Ink.Accent);
        var (top, bottom) = (head.Y + 6, view.Side.Y(_m.MastLengthM - wind.FreeM) - 3);
        for (var y = top; y <= bottom; y += Math.Max(6, (bottom - top) / 4)) canvas.Arrow(new(head.X - 7, y),
            new(head.X - MastMm - 0.4, y), 0.35, 1.8, Ink.Accent);
        foreach (var s in wind.Supports)
        {
            var at = view.Side.At(0, s.HeightM);
            if (Math.Abs(s.ForceN) < 0.5) continue;
            if (s.ForceN > 0) canvas.Arrow(new(at.X + ArrowMm + 2, at.Y), new(at.X + 2, at.Y), 0.9, 3, Ink.Warning);
            else canvas.Arrow(new(at.X + 2, at.Y), new(at.X + ArrowMm + 2, at.Y), 0.9, 3, Ink.Warning);
        }
    }
}
