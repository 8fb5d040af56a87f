using InstallPacket.Calc.Mounting;

namespace InstallPacket.Plans.Mounting;

/// <summary>The area that the wind meets: the maker's figure, or the bars of the outline.</summary>
internal static class AntennaArea
{
    /// <summary>Effective area [m2]; null when the part states neither.</summary>
    public static double? Of(AntennaPart antenna, WorkLog log) => antenna.WindAreaM2 ?? (antenna.Outline.Count == 0 ? null : Outline(antenna, log));

    private static double Outline(AntennaPart antenna, WorkLog log)
    {
        var (front, side) = (Bars(antenna, BarFace.Front, log), Bars(antenna, BarFace.Side, log));
        return log.Record(WindForce.AngleFormula, antenna.Id, WindForce.GreatestM2(front, side), front, side, front >= side ? 0 : 90);
    }

    private static double Bars(AntennaPart antenna, BarFace face, WorkLog log) => antenna.Outline.Select((b, i) => (Bar: b, Number: i + 1)).Where(b => b.Bar.Faces == face).Sum(b =>
    {
        var (bar, cf) = (b.Bar, b.Bar.Form == BarForm.Round ? WindForce.SlenderRoundCf : WindForce.SlenderSquareCf);
        return log.Record(WindForce.BarsFormula, $"{antenna.Id}, bar {b.Number}, wind {(face == BarFace.Front ? "along" : "across")} the boom",
            WindForce.BarsM2([new(bar.Count, bar.WidthM, bar.LengthM, cf)]), bar.Count, bar.WidthM, bar.LengthM, cf);
    });
}
