using InstallPacket.Plans;

namespace InstallPacket.Drawings.Mounting.Mount;

/// <summary>The fixings: a plate from the front with its holes, and what belongs to each in words.</summary>
internal sealed class FixingPainter(SheetCanvas canvas, SheetPlan plan)
{
    private const double SizeMm = 3.2;
    private const double LeadMm = 4;
    private readonly UnitPrinter _print = plan.Print;

    public void Draw(PaperBox box)
    {
        var y = box.Top + 3;
        canvas.Text(new(new(box.Left, y), plan.Say("mount.fixings"), 3.8, Strong: true));
        y += 3;
        if (Holding().Sum(f => f.Count) is > 0 and var count
            && plan.Mounting.Kind is not (MountKind.Ballast or MountKind.ChimneyLashing))
            y = (plan.Mounting.Plate is { } one ? new PlatePainter(canvas, plan).Draw(box, y, one) : Plate(box, y, count)) + 4;
        foreach (var f in plan.Mounting.Fixings) y = Words(box, y, f) + 2;
    }

    private IEnumerable<FixingPlan> Holding() => plan.Mounting.Fixings.Where(f => f.Form != FixingForm.Clamp);

    // Brackets come in pairs; a ground mast has one above its foot, a tripod has three feet.
    private static int Plates(MountKind kind) => kind switch
    {
        MountKind.GroundMast => 1,
        MountKind.Tripod => 3,
        MountKind.GableBracket or MountKind.WallBracket or MountKind.EaveBracket => 2,
        MountKind.ChimneyLashing or MountKind.Ballast or MountKind.Attic => 2,
    };

    private double Plate(PaperBox box, double top, int count)
    {
        var plates = Plates(plan.Mounting.Kind);
        var each = Math.Max(1, count / plates);
        var (columns, rows) = each % 2 == 0 ? (2, each / 2) : (1, each);
        var (width, height) = (columns == 2 ? 22.0 : 12.0, 8.0 + 5 * Math.Min(rows, 4));
        var left = box.Left + 2;
        canvas.Box(new(left, top, left + width, top + height), new(Ink.Line, 0.5), Fill.Tint);
        for (var r = 0; r < Math.Min(rows, 4); r++)
            for (var c = 0; c < columns; c++)
                canvas.Ring(new(left + width * (columns == 2 ? 0.2 + 0.6 * c : 0.5), top + height * (r + 0.5) / Math.Min(rows, 4)), 1.2,
                    new(Ink.Line, 0.5), Fill.Paper);
        canvas.Text(new(new(left, top + height + 4.5), plates == 1 ? plan.Say("mount.one-plate")
            : plan.Say("mount.plates", ("plates", plates)), SizeMm));
        return top + height + 5;
    }

    private double Words(PaperBox box, double top, FixingPlan f)
    {
        var lines = new List<string> { plan.Say("mount.fixing", ("count", f.Count), ("name", f.Name)) };
        if (f.Existing) lines.Add(plan.Say("mount.there"));
        else if (f.PilotM is { } pilot) lines.Add(plan.Say("mount.pilot", ("size", _print.Drill(pilot))));
        if (f.DepthM is { } depth) lines.Add(plan.Say("mount.depth", ("depth", _print.Small(depth))));
        if (f.TorqueNm is { } torque) lines.Add(f.TorqueProvenance == "memory"
            ? plan.Say("mount.verify", ("torque", _print.Torque(torque))) : _print.Torque(torque));
        var worst = plan.Mounting.LoadPath?.Checks.Where(c => c.Id == "fixing"
            && c.What.StartsWith(f.Name, StringComparison.Ordinal)).MaxBy(c => c.UseShare);
        if (worst is { PullN: { } pull, ShearN: { } shear }) lines.Add(plan.Say("mount.each", ("pull", _print.Force(pull)),
            ("shear", _print.Force(shear))));
        var y = top;
        foreach (var (line, i) in lines.SelectMany((l, i) =>
            TextWrap.Lines(l, SizeMm, i == 0, box.Width, 4, canvas.Measure).Select(t => (t, i))))
        {
            y += LeadMm;
            canvas.Text(new(new(box.Left, y), line, SizeMm, Strong: i == 0));
        }
        return y;
    }
}
