using InstallPacket.Calc.Quantities;
using InstallPacket.Plans;

namespace InstallPacket.Drawings.Bonding;

/// <summary>Draws the scene of the bonding sketch: mast, house, conductors, earth. Every thing has a fixed place, so that no two labels
/// meet.</summary>
internal sealed class BondScene(SheetCanvas canvas, SheetPlan plan, BondWords words)
{
    private const double GroundY = 104;
    private const double DownX = 34;
    private const double RodBottomY = 124;
    private const double ElectrodeX = 152;
    private const double TextMm = 3;
    private const double LeadMm = 3.6;

    // The grounding block sits outside on the wall, where the cable enters.
    private const double BlockX = 48.5;

    private static readonly Pen Bond = new(Ink.Accent, 1.1);
    private static readonly Pen Coax = new(Ink.Line, 0.4);
    private static readonly Pen House = new(Ink.Faint, 0.4);
    private static readonly PaperBox Termination = new(112, 84, 128, 96);
    private static readonly PaperBox Service = new(133, 74, 167, 98);

    private readonly BondingPlan _bonding = plan.Bonding;
    private readonly bool _attic = plan.Mounting.Kind == MountKind.Attic;
    private readonly bool _standing = plan.Mounting.Kind == MountKind.GroundMast;

    private double MastX => _standing ? 42 : DownX;

    private double WallX => _attic ? 5 : 58;

    /// <summary>Lower edge of the scene.</summary>
    public double Bottom => _bonding.Rod is null ? 118 : RodBottomY + 1;

    public static void Badge(SheetCanvas canvas, PaperPoint at, int number)
    {
        canvas.Ring(at, 2.3, new(Ink.Line, 0.4), Fill.Paper);
        canvas.Centred(at, UnitText.Number(number, 0), 2.8, strong: true);
    }

    public void Draw()
    {
        Building();
        Electrode();
        Mast();
        if (words.HasShield) Shield();
        if (words.HasMast) Down();
        else Exempt();
        if (_bonding.Rod is { } rod) Rod(rod);
        Ends();
    }

    private void Building()
    {
        canvas.Line(House, new(WallX, GroundY), new(WallX, 40), new((WallX + 168) / 2, _attic ? 11 : 17), new(168, 40), new(168, GroundY));
        canvas.Line(new(Ink.Line, 0.7), new(2, GroundY), new(168, GroundY));
        for (var x = 4.0; x < 168; x += 6) canvas.Line(new(Ink.Faint, 0.2), new(x, GroundY), new(x - 2, GroundY + 2));
    }

    private void Mast()
    {
        var (top, foot) = (_attic ? 36 : 20, _standing ? GroundY : 56);
        canvas.Line(new(Ink.Line, 1.3), new(MastX, top), new(MastX, foot));
        AntennaMark.Draw(canvas, new(MastX, top));
        canvas.Text(new(new(MastX - 6, top + 3), plan.Say("bonding.mast"), TextMm, Anchor: Anchor.End));
        if (!_attic && !_standing)
            foreach (var y in new[] { 46.0, 53 }) canvas.Line(new(Ink.Line, 0.7), new(MastX, y), new(WallX, y));
    }

    private void Shield()
    {
        canvas.Line(Coax, new(MastX + 2, _attic ? 38 : 22), new(MastX + 2, 66), new(BlockX, 66));
        canvas.Line(Coax, new(BlockX + 9, 66), new(104, 66));
        canvas.Head(new(106, 66), 90, 3, 1, Ink.Line);
        canvas.Text(new(new(108, 67), plan.Say("bonding.outlets"), TextMm));
        canvas.Box(new(BlockX, 62.5, BlockX + 9, 69.5), new(Ink.Line, 0.6), Fill.Tint);
        canvas.Text(new(new(BlockX + 12, 63.5), plan.Say("bonding.block", ("block", _bonding.BlockElement)), TextMm));
        canvas.Line(Bond, new(BlockX + 4.5, 69.5), new(BlockX + 4.5, 87), new(Termination.Left, 87));
        Label(new(BlockX + 12, 74.5), Anchor.Start, 36, plan.Size(_bonding.ShieldSize), words.ShieldLength);
        if (words.Power(BondWords.FromBlock) is { Length: > 0 } away) Power(new(106, 79), new(106, 86.2), new(109, 76), Anchor.Start, away,
            22);
        Badge(canvas, new(BlockX + 4.5, 79), words.Number("shield"));
    }

    private void Down()
    {
        var end = _bonding.Rod is null ? 92 : GroundY + 3;
        var start = _standing ? new PaperPoint(MastX, 58) : new(DownX, 54);
        canvas.Line(Bond, _bonding.Rod is null
            ? [start, new(DownX, 62), new(DownX, end), new(Termination.Left, end)] : [start, new(DownX, 62), new(DownX, end)]);
        canvas.Ring(start, 1.1, new(Ink.Accent, 0.5), Fill.Solid);
        Label(new(DownX - 3, 66), Anchor.End, 28, plan.Size(_bonding.MastSize), words.MastLength);
        if (words.Power(BondWords.FromMast) is { Length: > 0 } away) Power(new(10, 86), new(DownX - 1, 86), new(4, 92), Anchor.Start, away,
            26);
        Badge(canvas, new(DownX, 78), words.Number("mast"));
    }

    private void Exempt() => Label(new(DownX - 3, 66), Anchor.End, 29, plan.Say("bonding.exempt"), "");

    private void Rod(RodPlan rod)
    {
        Pole(DownX);
        if (rod.Count > 1) Pole(DownX + 14);
        var x = rod.Count > 1 ? DownX + 18 : DownX + 4;
        canvas.Text(new(new(x, RodBottomY - 3), words.RodLabel, TextMm));
        if (rod.Jumper.Length > 0)
        {
            canvas.Line(new(Ink.Accent, 1.1, Dash.Dashed), new(DownX, GroundY + 4), new(ElectrodeX, GroundY + 4));
            canvas.Text(new(new(60, GroundY + 9), words.JumperLabel, TextMm));
        }
        else
        {
            if (rod.Count > 1) canvas.Line(Bond, new(DownX, GroundY + 4), new(DownX + 14, GroundY + 4));
            canvas.Text(new(new(60, GroundY + 9), plan.Say("bonding.no-jumper"), TextMm, Ink.Warning, Strong: true));
        }
        Badge(canvas, new(56, GroundY + 8), words.Number("jumper"));
        Badge(canvas, new(DownX, GroundY + 13), words.Number("rod"));
    }

    private void Pole(double x) => canvas.Line(new(Ink.Line, 1.8), new(x, GroundY - 2), new(x, RodBottomY));

    private void Electrode()
    {
        canvas.Line(new(Ink.Line, 0.5, Dash.Dashed), new(ElectrodeX, Service.Bottom), new(ElectrodeX, GroundY));
        canvas.Line(new(Ink.Line, 1.3), new(ElectrodeX, GroundY), new(ElectrodeX, GroundY + 12));
        canvas.Text(new(new(ElectrodeX - 4, GroundY + 13), plan.Say("bonding.electrode"), TextMm, Anchor: Anchor.End));
    }

    // The termination may be used by the crew where the law lets it; what lies behind is for licensed people.
    private void Ends()
    {
        canvas.Box(Termination, new(Ink.Line, 0.6), Fill.Tint);
        Badge(canvas, new(120, 90), words.Number("connection"));
        canvas.Line(new(Ink.Line, 0.5, Dash.Dashed), new(Termination.Right, 90), new(Service.Left, 90));
        canvas.Box(Service, new(Ink.Warning, 0.8, Dash.Dashed), Fill.Paper);
        canvas.Text(new(new(150, 79.5), plan.Say("bonding.service"), TextMm, Anchor: Anchor.Middle));
        canvas.Text(new(new(150, 84), plan.Say("bonding.licensed"), TextMm, Ink.Warning, Anchor.Middle, Strong: true));
        Badge(canvas, new(150, 91), words.Number("service"));
    }

    private void Label(PaperPoint at, Anchor anchor, double width, string size, string length)
    {
        IReadOnlyList<string> lines = [.. TextWrap.Lines(size, TextMm, false, width, 4, canvas.Measure), .. length.Length > 0 ? [length]
            : Array.Empty<string>()];
        for (var i = 0; i < lines.Count; i++)
            canvas.Text(new(new(at.X, at.Y + i * LeadMm), lines[i], TextMm, Anchor: anchor, Strong: i == lines.Count - 1
                && length.Length > 0));
    }

    /// <summary>A power conductor beside the run: a crossed ring, an arrow, and how far it is.</summary>
    private void Power(PaperPoint wire, PaperPoint run, PaperPoint text, Anchor anchor, string away, double width)
    {
        canvas.Arrow(wire, run, 0.3, 2, Ink.Warning);
        canvas.Ring(wire, 1.8, new(Ink.Warning, 0.6), Fill.Paper);
        canvas.Line(new(Ink.Warning, 0.4), new(wire.X - 1.2, wire.Y + 1.2), new(wire.X + 1.2, wire.Y - 1.2));
        Label(text, anchor, width, away, "");
    }
}
