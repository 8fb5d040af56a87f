using InstallPacket.Calc.Quantities;
using InstallPacket.Plans;

namespace InstallPacket.Drawings;

/// <summary>The aim card in words.</summary>
internal static class AimWords
{
    public static string Of(Plan plan)
    {
        var print = UnitPrinter.Of(plan.Job);
        var (siting, aim) = (plan.Siting, plan.Reception.Aim);
        var words = new List<string>
        {
            $"Plan of the roof with true north up and the antenna in the middle of a ring of degrees. {AimHeader.Reading(aim)}; half-power lobe {UnitPrinter.Angle(aim.BeamwidthDeg)} wide.",
        };
        if (siting.Compass is { Usable: true, DeclinationDeg: { } d })
            words.Add($"The compass ring is turned {UnitPrinter.Angle(Math.Abs(d))} {(d < 0 ? "west" : "east")} of true north.");
        if (siting.Sites.Count > 0)
            words.Add("Sites: " + string.Join("; ", siting.Sites.Select(s =>
                $"{s.Number} {s.Name} at {UnitPrinter.Bearing(s.BearingTrueDeg)} true, {print.Distance(s.DistanceKm)}{(s.AnyWanted ? "" : ", no wanted station")}")) + ".");
        if (siting.Landmark is { } mark)
            words.Add($"Landmark: {mark.What} at {UnitPrinter.Bearing(mark.BearingTrueDeg)} true"
                + (aim.LandmarkTurnDeg is { } turn ? $"; from it turn {UnitText.Number(Math.Abs(turn), 0)}° to the {(turn < 0 ? "left" : "right")}." : "."));
        if (siting.Obstructions.Count > 0)
            words.Add("In the way: " + string.Join("; ", siting.Obstructions.Select(o =>
                $"{o.Name} ({o.Kind}) at {UnitPrinter.Bearing(o.BearingTrueDeg)} true, {UnitPrinter.Angle(o.WidthDeg)} wide, {print.Length(o.DistanceM)} away, {print.Length(o.HeightM)} high")) + ".");
        return string.Join(" ", words);
    }
}
