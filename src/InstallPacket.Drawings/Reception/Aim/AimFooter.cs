using InstallPacket.Plans;

namespace InstallPacket.Drawings.Reception.Aim;

/// <summary>The two norths, the scale of the house and what the lines mean.</summary>
internal sealed class AimFooter(SheetCanvas canvas, RingGeometry ring, SheetPlan plan)
{
    private const double RowMm = 5.6;
    private const double SizeMm = 3.3;
    private const double LeastTurnDeg = 16;

    private sealed record Row(string Words, Action<PaperPoint> Sample);

    /// <summary>Height that the footer needs.</summary>
    public double HeightMm => Math.Max(27, (Rows().Count + 1) / 2 * RowMm + 3);

    public void Draw(double top)
    {
        Norths(new(12, top + 21));
        var rows = Rows();
        var half = (rows.Count + 1) / 2;
        for (var i = 0; i < rows.Count; i++)
        {
            var at = new PaperPoint(i < half ? 46 : 112, top + 3 + i % half * RowMm);
            rows[i].Sample(at);
            if (rows[i].Words.Length > 0) canvas.Text(new(new(at.X + 12, at.Y + 1.1), rows[i].Words, SizeMm));
        }
    }

    private void Norths(PaperPoint foot)
    {
        var up = Polar.From(foot, 0, 16);
        canvas.Arrow(foot, up, 0.6, 3.6, Ink.Line);
        canvas.Centred(new(up.X, up.Y - 2.4), plan.Say("true-north"), 3.2, strong: true);
        if (plan.Siting.Compass is not { Usable: true, DeclinationDeg: { } declination }) return;
        // A few degrees would draw both arrows as one: the small turn is drawn wider, and the words say so.
        var east = declination >= 0;
        var wider = Math.Abs(declination) < LeastTurnDeg;
        var tip = Polar.From(foot, wider ? east ? LeastTurnDeg : -LeastTurnDeg : declination, 11.5);
        canvas.Arrow(foot, tip, 0.4, 2.6, Ink.Line);
        string[] words = [plan.Say("aim.compass-north"),
            plan.Say(east ? "aim.east" : "aim.west", ("angle", plan.Print.Angle(Math.Abs(declination)))), wider ? plan.Say("aim.wider")
            : ""];
        for (var i = 0; i < words.Length; i++)
            if (words[i].Length > 0) canvas.Text(new(new(Math.Max(foot.X, tip.X) + 2.5, foot.Y - 9 + 4.2 * i), words[i], 3.2));
    }

    private List<Row> Rows()
    {
        var rows = new List<Row>();
        var more = plan.Reception.MoreAntennas;
        rows.Add(new(more.Count == 0 ? plan.Say("aim-alone") : plan.Say("aim-of", ("antennas", plan.Reception.AntennaId)), Aim));
        if (more.Count > 0) rows.Add(new(plan.Say("aim-of", ("antennas", plan.List(more.Select(m => m.AntennaId)))), MoreAims));
        if (plan.Reception.Aim.Arc is { } arc) rows.Add(new(arc.AllRound ? plan.Say("aim.arc-all") : plan.Say("arc"), Arc));
        if (ring.Compass) rows.Add(new(plan.Say("aim.rings"), Rings));
        if (plan.Siting.Sites.Any(s => s.AnyWanted)) rows.Add(new(plan.Say("aim.wanted-site"), at => Site(at, PinKind.WantedSite)));
        if (plan.Siting.Sites.Any(s => !s.AnyWanted)) rows.Add(new(plan.Say("aim.other-site"), at => Site(at, PinKind.OtherSite)));
        if (FieldPainter.HasLobe(plan)) rows.Add(new(plan.Say("aim.lobe"), Lobe));
        if (plan.Siting.Obstructions.Count > 0) rows.Add(new(plan.Say("aim.obstruction"), Obstruction));
        if (plan.Siting.Landmark is not null) rows.Add(new(plan.Say("landmark"), at =>
            PinPainter.Mark(canvas, PinKind.Landmark, new(at.X + 4, at.Y), "", 0)));
        if (FieldPainter.Scale(plan, ring) is { } scale) rows.Add(new("", at => ScaleBar.Draw(canvas, at, scale, 18, plan)));
        return rows;
    }

    private void Aim(PaperPoint at)
    {
        canvas.Arrow(at, new(at.X + 5, at.Y), 1.2, 3.2, Ink.Accent);
        PinPainter.Mark(canvas, PinKind.Aim, new(at.X + 8, at.Y), "", 90);
    }

    private void MoreAims(PaperPoint at)
    {
        canvas.Arrow(at, new(at.X + 5, at.Y), FieldPainter.MoreMm, 3.2, Ink.Accent);
        PinPainter.Mark(canvas, PinKind.SecondAim, new(at.X + 8, at.Y), "", 90);
    }

    private void Arc(PaperPoint at)
    {
        canvas.Box(new(at.X, at.Y - 0.6, at.X + 9, at.Y + 1.8), new(Ink.Accent, 0), Fill.Tint);
        canvas.Line(new(Ink.Accent, 1.4), new(at.X, at.Y - 1.2), new(at.X + 9, at.Y - 1.2));
    }

    private void Rings(PaperPoint at)
    {
        canvas.Line(new(Ink.Line, 0.5), new(at.X, at.Y - 1.2), new(at.X + 9, at.Y - 1.2));
        canvas.Line(new(Ink.Faint, 0.25), new(at.X, at.Y + 1.2), new(at.X + 9, at.Y + 1.2));
    }

    private void Site(PaperPoint at, PinKind kind)
    {
        canvas.Line(kind == PinKind.WantedSite ? new(Ink.Line, 0.6) : new(Ink.Faint, 0.35, Dash.Dashed), at, new(at.X + 9, at.Y));
        PinPainter.Mark(canvas, kind, new(at.X + 7, at.Y), "", 90);
    }

    private void Lobe(PaperPoint at) =>
        canvas.Area(new(Ink.Accent, 0.3, Dash.Dashed), Fill.Tint, new(at.X, at.Y), new(at.X + 9, at.Y - 2), new(at.X + 9, at.Y + 2));

    private void Obstruction(PaperPoint at)
    {
        canvas.Line(new(Ink.Warning, 2.4), at, new(at.X + 6, at.Y));
        PinPainter.Mark(canvas, PinKind.Obstruction, new(at.X + 8.5, at.Y), "", 90);
    }
}
