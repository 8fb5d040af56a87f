using InstallPacket.Plans;

namespace InstallPacket.Drawings.Siting.Profile;

/// <summary>Draws ground, ray and Fresnel zone, the masts at both ends and the house.</summary>
internal sealed class ProfilePainter(SheetCanvas canvas, PathPlan path, ProfileScale scale)
{
    private const double TowerMm = 5;

    /// <summary>The straight ray.</summary>
    public static Pen Ray { get; } = new(Ink.Accent, 0.9);

    /// <summary>The lower half of the Fresnel zone, which ground should leave free.</summary>
    public static Pen LowerHalf { get; } = new(Ink.Accent, 0.55, Dash.Dashed);

    /// <summary>The upper half.</summary>
    public static Pen UpperHalf { get; } = new(Ink.Accent, 0.25, Dash.Dashed);

    /// <summary>Ground that stands in the ray.</summary>
    public static Pen InTheRay { get; } = new(Ink.Warning, 1.4);

    /// <summary>The chord between the two ends.</summary>
    public static Pen Chord { get; } = new(Ink.Line, 0.35, Dash.DashDot);

    public void Draw()
    {
        Ground();
        Zone();
        canvas.Line(Ray, scale.At(0, path.AntennaM), scale.At(path.DistanceKm, path.TransmitterM));
        House();
        Transmitter();
    }

    private void Ground()
    {
        var points = path.Points;
        PaperPoint[] line = [.. points.Select(p => scale.At(p.DistanceKm, p.CurvedM))];
        var before = line[0] with { X = line[0].X - ProfileScale.HouseMm + 1 };
        var behind = line[^1] with { X = line[^1].X + 3 };
        // The lower edge is a level on the curved earth; between it and the chord the bulge shows.
        canvas.Area(new(Ink.Line, 0), Fill.Tint,
            [before with { Y = scale.Field.Bottom }, before, .. line, behind, behind with { Y = scale.Field.Bottom },
            .. points.Reverse().Select(p => scale.At(p.DistanceKm, scale.LowM + p.BulgeM))]);
        canvas.Line(new(Ink.Faint, 0.3), [.. points.Select(p => scale.At(p.DistanceKm, scale.LowM + p.BulgeM))]);
        canvas.Line(new(Ink.Line, 0.6), [before, .. line, behind]);
        canvas.Line(Chord, new(scale.Field.Left, scale.Field.Bottom), new(scale.Field.Right, scale.Field.Bottom));
        foreach (var stretch in Stretch.Of(points, p => p.CurvedM - p.RayM)) canvas.Line(InTheRay,
            [.. stretch.Select(p => scale.At(p.DistanceKm, p.CurvedM))]);
    }

    private void Zone()
    {
        canvas.Line(UpperHalf, [.. path.Points.Select(p => scale.At(p.DistanceKm, p.RayM + p.FresnelM))]);
        foreach (var stretch in Stretch.Of(path.Points, p => p.RayM - p.FresnelM - p.BulgeM - scale.LowM))
            canvas.Line(LowerHalf, [.. stretch.Select(p => scale.At(p.DistanceKm, p.RayM - p.FresnelM))]);
    }

    // The house is a sign, not to scale; the height of the antenna is.
    private void House()
    {
        var (foot, top) = (scale.At(0, path.Points[0].CurvedM), scale.At(0, path.AntennaM));
        var (left, right) = (foot.X - 6.7, foot.X - 2.7);
        canvas.Area(new(Ink.Line, 0.45), Fill.Paper, new(left, foot.Y), new(left, foot.Y - 2.4), new((left + right) / 2, foot.Y - 4.2),
            new(right, foot.Y - 2.4), foot with { X = right });
        canvas.Line(new(Ink.Line, 0.6), foot, top);
        AntennaMark.Draw(canvas, top, 0.55);
    }

    private void Transmitter()
    {
        var (top, foot) = (scale.At(path.DistanceKm, path.TransmitterM), scale.Y(path.Points[^1].CurvedM));
        var height = Math.Max(TowerMm, foot - top.Y);
        canvas.Area(new(Ink.Line, 0.5), Fill.Paper, top, new(top.X + 1.3, top.Y + height), new(top.X - 1.3, top.Y + height));
        canvas.Ring(top, 0.9, new(Ink.Line, 0.3), Fill.Solid);
    }
}
