using InstallPacket.Calc.Quantities;
using InstallPacket.Plans;

namespace InstallPacket.Drawings.Reception.Aim;

/// <summary>The aim card in words.</summary>
internal static class AimWords
{
    public static string Of(SheetPlan plan)
    {
        var print = plan.Print;
        var (siting, aim) = (plan.Siting, plan.Reception.Aim);
        var words = new List<string>
        {
            $"Plan of the roof with true north up and the antenna in the middle of a ring of degrees. {AimHeader.Readings(plan)[0]}; half-power lobe {UnitPrinter.Plain.Angle(aim.BeamwidthDeg)} wide.",
        };
        words.AddRange(More(plan));
        if (aim.Arc is { } arc) words.Add(Arc(arc));
        if (aim.Second is { } second)
            words.Add($"A second antenna at {UnitPrinter.Plain.Bearing(second.TrueDeg)} true{(second.MagneticDeg is { } m ? $", {UnitPrinter.Plain.Bearing(m)} on the compass" : "")} would add {string.Join(", ", second.Stations)}.");
        if (siting.Compass is { Usable: true, DeclinationDeg: { } d })
            words.Add($"The compass ring is turned {UnitPrinter.Plain.Angle(Math.Abs(d))} {(d < 0 ? "west" : "east")} of true north.");
        if (siting.Sites.Count > 0)
            words.Add("Sites: " + string.Join("; ", siting.Sites.Select(s =>
                $"{s.Number} {s.Name} at {UnitPrinter.Plain.Bearing(s.BearingTrueDeg)} true, {print.Distance(s.DistanceKm)}{(s.AnyWanted ? "" : ", no wanted station")}")) + ".");
        if (siting.Landmark is { } mark)
            words.Add($"Landmark: {mark.What} at {UnitPrinter.Plain.Bearing(mark.BearingTrueDeg)} true"
                + (aim.LandmarkTurnDeg is { } turn ? $"; from it turn {UnitText.Number(Math.Abs(turn), 0)}° to the {(turn < 0 ? "left" : "right")}." : "."));
        if (siting.Obstructions.Count > 0)
            words.Add("In the way: " + string.Join("; ", siting.Obstructions.Select(o =>
                $"{o.Name} ({o.Kind}) at {UnitPrinter.Plain.Bearing(o.BearingTrueDeg)} true, {UnitPrinter.Plain.Angle(o.WidthDeg)} wide, {print.Length(o.DistanceM)} away, {print.Length(o.HeightM)} high")) + ".");
        return string.Join(" ", words);
    }

    /// <summary>The aims of further antennas, a sentence each.</summary>
    public static IEnumerable<string> More(SheetPlan plan) => plan.Reception.MoreAntennas.Select(m =>
        $"{m.AntennaId}: aim {AimHeader.Bearings(m.Aim)}; half-power lobe {UnitPrinter.Plain.Angle(m.Aim.BeamwidthDeg)} wide.");

    /// <summary>The headings at which nothing is lost.</summary>
    public static string Arc(AimArc arc) => arc.WidthDeg >= 360 ? "Nothing that this aim receives is lost at any heading."
        : $"Nothing that this aim receives is lost between {UnitPrinter.Plain.Bearing(arc.FromDeg)} and {UnitPrinter.Plain.Bearing(arc.ToDeg)} true"
        + (arc is { FromMagneticDeg: { } from, ToMagneticDeg: { } to } ? $", {UnitPrinter.Plain.Bearing(from)} and {UnitPrinter.Plain.Bearing(to)} on the compass." : ".");
}
