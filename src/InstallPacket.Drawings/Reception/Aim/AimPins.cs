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
        if (plan.Reception.Aim.Arc is { AllRound: false } arc)
            pins.AddRange(new[] { arc.FromDeg, arc.ToDeg }.Select(deg => new RingPin(PinKind.ArcEnd, deg, print.Bearing(deg), "", [])));
        if (plan.Reception.Aim.Second is { } second)
            pins.Add(new(PinKind.SecondAim, second.TrueDeg, "", plan.Say("second-aim"), [plan.True(second.TrueDeg)]));
        pins.AddRange(plan.Siting.Sites.Select(s => new RingPin(
            s.AnyWanted ? PinKind.WantedSite : PinKind.OtherSite, s.BearingTrueDeg, UnitText(s.Number), s.Name,
            [print.Distance(s.DistanceKm), plan.True(s.BearingTrueDeg)])));
        if (plan.Siting.Landmark is { } mark)
            pins.Add(new(PinKind.Landmark, mark.BearingTrueDeg, "", mark.What, [plan.True(mark.BearingTrueDeg)]));
        pins.AddRange(plan.Siting.Obstructions.Select(o => new RingPin(
            PinKind.Obstruction, o.BearingTrueDeg, "", o.Name,
                [plan.Say("away", ("distance", print.Length(o.DistanceM))), plan.True(o.BearingTrueDeg)])));
        return pins;
    }

    // A single antenna is told by the box above; of several each says whose aim it is.
    private static RingPin Aim(SheetPlan plan, PinKind kind, string antenna, AimPlan aim) => new(
        kind, aim.TrueDeg, "", plan.Reception.MoreAntennas.Count == 0 ? ""
            : plan.Say("horizon.antenna-at", ("antenna", antenna), ("bearing", plan.True(aim.TrueDeg))), []);

    private static string UnitText(int number) => Calc.Quantities.UnitText.Number(number, 0);
}
