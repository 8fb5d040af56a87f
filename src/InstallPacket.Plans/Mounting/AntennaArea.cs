using InstallPacket.Calc.Sources;
using InstallPacket.Calc.Mounting;
using InstallPacket.Jobs.Parts;

namespace InstallPacket.Plans.Mounting;

/// <summary>The area that the wind meets: the maker's figure, or the bars of the outline.</summary>
internal static class AntennaArea
{
    private static readonly Constant AlongTheBoom = new("wind-along-the-boom", 0, "project-notes", Provenance.Derived);
    private static readonly Constant AcrossTheBoom = new("wind-across-the-boom", 90, "project-notes", Provenance.Derived);
    private static readonly Constant RoundCf = new("cf-slender-round", WindForce.SlenderRoundCf, "asce-7-16", Provenance.Read);
    private static readonly Constant SquareCf = new("cf-slender-square", WindForce.SlenderSquareCf, "asce-7-16", Provenance.Read);

    /// <summary>Effective area [m2]; null when the part states neither.</summary>
    public static double? Of(Part antenna, Workings work) => antenna.WindAreaM2 ?? (antenna.Outline.Count == 0 ? null : Outline(antenna, work));

    private static double Outline(Part antenna, Workings work)
    {
        var (front, side) = (Bars(antenna, front: true, work), Bars(antenna, front: false, work));
        return work.Apply(WindForce.AngleFormula, antenna.Id, Term.Part(antenna.Id, "outline", front), Term.Part(antenna.Id, "outline", side), front >= side ? AlongTheBoom : AcrossTheBoom);
    }

    private static double Bars(Part antenna, bool front, Workings work) => antenna.Outline.Select((b, i) => (Bar: b, Number: i + 1)).Where(b => b.Bar.Front == front).Sum(b =>
    {
        var (bar, cf) = (b.Bar, b.Bar.Round ? RoundCf : SquareCf);
        Term Of(double number) => Term.Part(antenna.Id, "outline", number);
        return work.Apply(WindForce.BarsFormula, $"{antenna.Id}, bar {b.Number}, wind {(front ? "along" : "across")} the boom",
            Of(bar.Count), Of(bar.WidthM), Of(bar.LengthM), cf).Number;
    });
}
