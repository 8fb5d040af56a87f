using InstallPacket.Calc.Quantities;
using InstallPacket.Plans;

namespace InstallPacket.Drawings.Cabling.Chain;

/// <summary>How close the diagram is set.</summary>
internal enum ChainSetting
{
    /// <summary>Outlets and labels of cables in two lines.</summary>
    Roomy,

    /// <summary>In one line, so that many outlets fit on a page.</summary>
    Dense,
}

/// <summary>The words of a part and the room that they need.</summary>
/// <param name="First">What stands behind the name on its line.</param>
/// <param name="Lines">The lines below it.</param>
/// <param name="WidthMm">Width of the box.</param>
/// <param name="LinkMm">Length of the line that leads to it.</param>
internal sealed record ChainSize(string First, IReadOnlyList<string> Lines, double WidthMm, double LinkMm)
{
    public const double SizeMm = 3;
    public const double LeadMm = 3.5;
    public const double PadMm = 1.4;

    /// <summary>Room for the numbers of outputs along the right edge of a part.</summary>
    public const double PortMm = 4.4;

    /// <summary>Length of a line without a label: two parts screwed together.</summary>
    public const double JointMm = 5;

    private const double KindMm = 19;
    private const double ServesMm = 32;
    private const double DenseMm = 48;

    /// <summary>Where the line meets the box, below its upper edge.</summary>
    public const double LineMm = 3.5;

    public double HeightMm => LineMm + 0.6 + Lines.Count * LeadMm + (Lines.Count > 0 ? 0.3 : 0.6);

    public static ChainSize Of(ChainNode node, ChainSetting setting, SheetPlan plan, ITextMeasure measure)
    {
        double Width(string s, bool strong = false) => measure.WidthMm(s, SizeMm, strong);
        var (first, lines) = Words(node, setting, plan, measure);
        var text = lines.Select(l => Width(l)).Append(Width(node.Id, strong: true)
            + (first.Length > 0 && node.Id.Length > 0 ? Width(" " + first) : Width(first))).Max();
        var ports = node.Fed.Any(n => n.Port > 0) ? PortMm : PadMm;
        var link = node.Run is not { } run ? JointMm : 3 + (setting == ChainSetting.Dense
            ? Width(run.Id, strong: true) + Width(" ") + Width(Length(run, plan))
                : Math.Max(Width(run.Id, strong: true), Width(Length(run, plan))));
        return new(first, lines, PadMm + text + ports, link);
    }

    // Outlets are many and stand below each other: they are told in few lines.
    private static (string First, IReadOnlyList<string> Lines) Words(ChainNode node, ChainSetting setting, SheetPlan plan,
        ITextMeasure measure)
    {
        if (node.Element is not { } e) return (node.Into.Length > 0 ? plan.Say("chain.second-from", ("part", node.Into))
            : plan.Say("chain.terminator"), []);
        var kind = plan.Word("part", e.Kind);
        if (e.Kind == PartKind.Outlet
            && setting == ChainSetting.Dense) return (TextWrap.Lines(e.Serves.Length > 0
            ? plan.Say("chain.outlet-serves", ("kind", kind), ("serves", e.Serves)) : kind, SizeMm, false, DenseMm, 1, measure)[0], []);
        var serves = e.Serves.Length == 0 ? [] : TextWrap.Lines(e.Serves, SizeMm, false, ServesMm, 2, measure);
        if (e.Kind == PartKind.Outlet) return (kind, serves);
        var set = e.SettingDb is { } db ? [plan.Say("chain.set", ("setting", plan.Print.Ratio(db)))] : Array.Empty<string>();
        var second = e.Second.Length > 0 ? [plan.Say("chain.second", ("part", e.Second))] : Array.Empty<string>();
        return ("", [.. TextWrap.Lines(kind, SizeMm, false, KindMm, 2, measure), .. second, .. set, .. serves]);
    }

    /// <summary>The length of a run as printed: to cut, or as it lies where it is there already.</summary>
    public static string Length(RunPlan run, SheetPlan plan) => run.Existing
        ? plan.Say("chain.run-there", ("length", plan.Print.Length(run.RoutedM))) : plan.Print.Cable(run.LengthM);

    /// <summary>The number of an output as printed.</summary>
    public static string Port(int port) => UnitText.Number(port, 0);
}
