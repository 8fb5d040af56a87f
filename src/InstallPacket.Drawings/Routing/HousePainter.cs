using InstallPacket.Plans;

namespace InstallPacket.Drawings.Routing;

/// <summary>Draws the house, the ground, the mast and the antenna behind the runs.</summary>
internal sealed class HousePainter(SheetCanvas canvas, SheetPlan plan)
{
    private const double SizeMm = 3.2;

    public void Plan(RouteView view, ViewPainter labels)
    {
        if (plan.Routing.Outline.Count > 0)
        {
            PaperPoint[] corners = [.. plan.Routing.Outline.Select(c => view.At(c.RightM, c.UpM, 0))];
            canvas.Area(new(Ink.Line, 0.5), Fill.Tint, corners);
            labels.Avoid([.. corners, corners[0]]);
        }
        foreach (var room in plan.Routing.Rooms)
            canvas.Area(new(Ink.Faint, 0.2, Dash.Dotted), Fill.None, [.. room.Corners.Select(c => view.At(c.RightM, c.UpM, 0))]);
        if (AimLine(view) is not { } aim) return;
        labels.Avoid(aim.From, aim.To);
        // Badges may lie on lines, but not on the head of this arrow.
        labels.Reserve(PaperBox.Around(new((aim.From.X + 3 * aim.To.X) / 4, (aim.From.Y + 3 * aim.To.Y) / 4), 1.8, 1.8));
    }

    /// <summary>The arrow of the aim, drawn over the runs.</summary>
    public void Aim(RouteView view)
    {
        if (AimLine(view) is { } aim) canvas.Arrow(aim.From, aim.To, 0.5, 2.8, Ink.Line);
    }

    // The aim counts from true north and the plan's upward axis lies at its own bearing: the difference is the turn on the sheet.
    private (PaperPoint From, PaperPoint To)? AimLine(RouteView view) => HousePlace.Antenna(plan) is { } antenna
        ? (view.Place(antenna), Polar.From(view.Place(antenna), plan.Reception.Aim.TrueDeg - plan.Routing.PlanUpDeg, 9)) : null;

    public void Elevation(RouteView view, ViewPainter labels)
    {
        var ground = view.At(0, 0, 0).Y;
        Walls(view, labels, ground);
        canvas.Line(new(Ink.Line, 0.6), new(view.Frame.Left, ground), new(view.Frame.Right, ground));
        labels.Avoid(new PaperPoint(view.Frame.Left, ground), new(view.Frame.Right, ground));
        if (HousePlace.Antenna(plan) is { } antenna) Mast(view, labels, antenna);
    }

    /// <summary>Names of rooms, where runs and labels leave room for them.</summary>
    public void Rooms(RouteView view, ViewPainter labels)
    {
        foreach (var room in plan.Routing.Rooms)
        {
            PaperPoint[] corners = [.. room.Corners.Select(c => view.At(c.RightM, c.UpM, 0))];
            labels.Word(new((corners.Min(c => c.X) + corners.Max(c => c.X)) / 2, (corners.Min(c => c.Y) + corners.Max(c => c.Y)) / 2),
                room.Name);
        }
    }

    // The roof as its form shows it from here; null when the job does not tell the form, for a guessed gable would mislead.
    private PaperPoint[]? Roof(double left, double right, double eaves, double ridge)
    {
        var r = plan.Routing;
        var middle = (left + right) / 2;
        var (depth, width) = (r.Outline.Max(c => c.UpM) - r.Outline.Min(c => c.UpM),
            r.Outline.Max(c => c.RightM) - r.Outline.Min(c => c.RightM));
        var slope = width > 0 ? Math.Min(depth, width) / 2 * (right - left) / width : 0;
        return (r.Roof, r.RidgeAlong) switch
        {
            (RoofForm.Gable, RidgeAxis.Right) => [new(left, eaves), new(left, ridge), new(right, ridge), new(right, eaves)],
            (RoofForm.Gable, RidgeAxis.Up) => [new(left, eaves), new(middle, ridge), new(right, eaves)],
            (RoofForm.Hip, _) => [new(left, eaves), new(left + slope, ridge), new(right - slope, ridge), new(right, eaves)],
            _ => null,
        };
    }

    // Where the form of the roof is unknown its height is drawn alone.
    private void Walls(RouteView view, ViewPainter labels, double ground)
    {
        var r = plan.Routing;
        if (r.Outline.Count == 0) return;
        var (left, right) = (view.At(r.Outline.Min(c => c.RightM), 0, 0).X, view.At(r.Outline.Max(c => c.RightM), 0, 0).X);
        var print = plan.Print;
        double Level(double heightM) => view.At(0, 0, heightM).Y;
        if (r.RidgeM is { } ridge)
        {
            // On a flat roof both heights lie close: the words of the ridge then move up.
            var words = r.EavesM is { } below ? Math.Min(Level(ridge), Level(below) - 1.4 * SizeMm) : Level(ridge);
            if (r.EavesM is { } foot && Roof(left, right, Level(foot), Level(ridge)) is { } roof)
            {
                canvas.Area(new(Ink.Line, 0.5), Fill.None, roof);
                labels.Avoid(roof);
            }
            else canvas.Line(new(Ink.Faint, 0.35, Dash.Dashed), new(left, Level(ridge)), new(right, Level(ridge)));
            Height(view, labels, (left, right), words, plan.Say("route.ridge", ("height", print.Length(ridge))));
        }
        if (r.EavesM is not { } eaves) return;
        canvas.Area(new(Ink.Line, 0.5), Fill.Tint, new(left, ground), new(left, Level(eaves)), new(right, Level(eaves)),
            new(right, ground));
        labels.Avoid(new PaperPoint(left, ground), new(left, Level(eaves)), new(right, Level(eaves)), new(right, ground));
        foreach (var floor in r.Storeys.Where(s => s.FloorM > 0 && s.FloorM < eaves))
            canvas.Line(new(Ink.Faint, 0.25, Dash.Dotted), new(left, Level(floor.FloorM)), new(right, Level(floor.FloorM)));
        Height(view, labels, (left, right), Level(eaves), plan.Say("route.eaves", ("height", print.Length(eaves))));
    }

    // Left of the house when there is room, otherwise on the line.
    private void Height(RouteView view, ViewPainter labels, (double Left, double Right) house, double y, string words)
    {
        var width = canvas.Measure.WidthMm(words, SizeMm);
        var outside = house.Left - view.Frame.Left >= width + 4;
        var caption = outside
            ? new Caption(new(house.Left - 2, y + 0.35 * SizeMm), words, SizeMm, Anchor: Anchor.End)
            : new Caption(new(house.Left + 1.5, y - 1), words, SizeMm);
        canvas.Text(caption);
        labels.Reserve(PaperBox.Of(caption, canvas.Measure).Grow(0.5));
        labels.Avoid(new PaperPoint(house.Left, y), new(house.Right, y));
    }

    private void Mast(RouteView view, ViewPainter labels, PointPlan antenna)
    {
        var at = view.Place(antenna);
        var foot = view.At(antenna.RightM, antenna.UpM, Math.Max(0, antenna.HeightM - plan.Mounting.MastLengthM));
        // Open, so that a run along the mast can be seen on it.
        canvas.Box(new(at.X - 1.3, at.Y, at.X + 1.3, foot.Y), new(Ink.Line, 0.4), Fill.Paper);
        AntennaMark.Draw(canvas, at);
        labels.Reserve(new(at.X - 4.6, at.Y - 4.4, at.X + 4.6, at.Y + 0.4));
        labels.Avoid(at, foot);
    }
}
