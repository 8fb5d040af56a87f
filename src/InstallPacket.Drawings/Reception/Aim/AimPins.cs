using InstallPacket.Plans;

namespace InstallPacket.Drawings.Reception.Aim;

/// <summary>The marks that a plan puts on the ring.</summary>
internal static class AimPins
{
    public static IReadOnlyList<RingPin> Of(SheetPlan plan)
    {
        var print = plan.Print;
        var pins = new List<RingPin> { Aim(plan, PinKind.Aim, plan.Reception.AntennaId, plan.Reception.Aim) };
        pins.AddRange(plan.Reception.MoreAntennas.Select(m => Aim(plan, PinKind.SecondAim, m.AntennaId, m.Aim)));
        if (plan.Reception.Aim.Arc is { WidthDeg: < 360 } arc)
            pins.AddRange(new[] { arc.FromDeg, arc.ToDeg }.Select(deg => new RingPin(PinKind.ArcEnd, deg, UnitPrinter.Plain.Bearing(deg), "", [])));
        if (plan.Reception.Aim.Second is { } second)
            pins.Add(new(PinKind.SecondAim, second.TrueDeg, "", "second aim", [UnitPrinter.Plain.Bearing(second.TrueDeg) + " true"]));
        pins.AddRange(plan.Siting.Sites.Select(s => new RingPin(
            s.AnyWanted ? PinKind.WantedSite : PinKind.OtherSite, s.BearingTrueDeg, UnitText(s.Number), s.Name,
            [print.Distance(s.DistanceKm), UnitPrinter.Plain.Bearing(s.BearingTrueDeg) + " true"])));
        if (plan.Siting.Landmark is { } mark)
            pins.Add(new(PinKind.Landmark, mark.BearingTrueDeg, "", mark.What, [UnitPrinter.Plain.Bearing(mark.BearingTrueDeg) + " true"]));
        pins.AddRange(plan.Siting.Obstructions.Select(o => new RingPin(
            PinKind.Obstruction, o.BearingTrueDeg, "", o.Name, [print.Length(o.DistanceM) + " away", UnitPrinter.Plain.Bearing(o.BearingTrueDeg) + " true"])));
        return pins;
    }

    // A single antenna is told by the box above; of several each says whose aim it is.
    private static RingPin Aim(SheetPlan plan, PinKind kind, string antenna, AimPlan aim) => new(
        kind, aim.TrueDeg, "", plan.Reception.MoreAntennas.Count == 0 ? "" : $"{antenna} {UnitPrinter.Plain.Bearing(aim.TrueDeg)} true", []);

    private static string UnitText(int number) => Calc.Quantities.UnitText.Number(number, 0);
}
