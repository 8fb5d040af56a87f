using InstallPacket.Plans;

namespace InstallPacket.Drawings.Materials.Labels;

/// <summary>Draws one label: number large, run, job, this end and the other end, length; folded in two it can be read from both
/// sides.</summary>
internal sealed class LabelPainter(SheetCanvas canvas, SheetPlan plan)
{
    private const double SizeMm = 3;

    /// <summary>Draws it.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="box">Where.</param>
    /// <param name="near">Whether it is for the end that stands first in the list.</param>
    public void Draw(PiecePlan piece, PaperBox box, bool near)
    {
        canvas.Box(box, new(Ink.Line, 0.3), Fill.Paper);
        var fold = box.Left + 22;
        canvas.Line(new(Ink.Faint, 0.25, Dash.Dashed), new(fold, box.Top), new(fold, box.Bottom));
        Number(piece, new(box.Left, box.Top, fold, box.Bottom));
        var (here, there) = near ? (piece.From, piece.To) : (piece.To, piece.From);
        string[] lines =
        [
            plan.Say("labels.this-end", ("end", plan.Name(here))), plan.Say("labels.other-end", ("end", plan.Name(there))),
            plan.Say(piece.Kind == PieceKind.Run ? "labels.run" : "labels.piece", ("run", plan.Name(piece.Run)),
                ("length", plan.Print.Cable(piece.LengthM))),
            plan.Say("labels.job", ("job", plan.Job.Id)),
        ];
        for (var i = 0; i < lines.Length; i++)
            canvas.Text(new(new(fold + 2, box.Top + 5 + i * 5),
                TextWrap.Lines(lines[i], SizeMm, i == 0, box.Right - fold - 3.5, 1, canvas.Measure)[0], SizeMm, Strong: i == 0));
    }

    private void Number(PiecePlan piece, PaperBox box)
    {
        var middle = (box.Left + box.Right) / 2;
        canvas.Text(new(new(middle, box.Top + 9), FormattableString.Invariant($"{piece.Number}"), 6, Ink.Line, Anchor.Middle,
            Strong: true));
        var lines = TextWrap.Lines(plan.Name(piece.Run), SizeMm, false, box.Width - 2, 2, canvas.Measure);
        for (var i = 0; i < lines.Count; i++) canvas.Text(new(new(middle, box.Top + 15 + i * 4.4), lines[i], SizeMm, Ink.Line,
            Anchor.Middle));
    }
}
