using InstallPacket.Calc.Sources;
using InstallPacket.Calc.Mounting;

namespace InstallPacket.Plans.Mounting;

/// <summary>The area that the wind meets: the maker's figure, or the bars of the outline.</summary>
internal static class AntennaArea
{
    private static readonly Constant AlongTheBoom = new("wind-along-the-boom", 0, "project-notes", Provenance.Derived);
    private static readonly Constant AcrossTheBoom = new("wind-across-the-boom", 90, "project-notes", Provenance.Derived);
    private static readonly Constant RoundCf = new("cf-slender-round", WindForce.SlenderRoundCf, "asce-7-16", Provenance.Read);
    private static readonly Constant SquareCf = new("cf-slender-square", WindForce.SlenderSquareCf, "asce-7-16", Provenance.Read);

    /// <summary>Effective area [m2]; null when the part states neither.</summary>
    public static double? Of(AntennaPart antenna, Workings work) => antenna.WindAreaM2
        ?? (antenna.Outline.Count == 0 ? null : Outline(antenna, work));

    private static double Outline(AntennaPart antenna, Workings work)
    {
        var (front, side) = (Bars(antenna, BarFace.Front, work), Bars(antenna, BarFace.Side, work));
        return work.Apply(WindForce.AngleFormula, antenna.Id, antenna.Figure(AntennaPartKeys.Outline, front),
            antenna.Figure(AntennaPartKeys.Outline, side), front >= side ? AlongTheBoom : AcrossTheBoom);
    }

    private static double Bars(AntennaPart antenna, BarFace face, Workings work) =>
        antenna.Outline.Select((b, i) => (Bar: b, Number: i + 1)).Where(b => b.Bar.Faces == face).Sum(b =>
    {
        var (bar, cf) = (b.Bar, b.Bar.Form == BarForm.Round ? RoundCf : SquareCf);
        Term Of(double number) => antenna.Figure(AntennaPartKeys.Outline, number);
        return work.Apply(WindForce.BarsFormula,
            $"{antenna.Id}, bar {b.Number}, wind {(face == BarFace.Front ? "along" : "across")} the boom",
            Of(bar.Count), Of(bar.WidthM), Of(bar.LengthM), cf).Number;
    });
}
