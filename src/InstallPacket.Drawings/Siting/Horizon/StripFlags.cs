using InstallPacket.Plans;

namespace InstallPacket.Drawings.Siting.Horizon;

/// <summary>The labels of the strip.</summary>
internal static class StripFlags
{
    /// <summary>Labels, and how many things have none because a sheet holds only so many.</summary>
    public static (IReadOnlyList<Flag> Flags, int Left) Of(SheetPlan plan, StripScale scale)
    {
        var flags = new List<Flag>();
        flags.AddRange(plan.Siting.Sites.OrderByDescending(s => s.AnyWanted).Select(s => Site(plan, s, scale)));
        if (plan.Reception.Aim.Second is { } second)
            flags.Insert(0,
                new(new(scale.X(second.TrueDeg), scale.Field.Bottom), plan.Say("second-aim"), [plan.True(second.TrueDeg)], Strong: true,
                Ink.Accent));
        flags.InsertRange(0, plan.Reception.MoreAntennas.Select(m => new Flag(
            new(scale.X(m.Aim.TrueDeg), scale.Field.Bottom), plan.Say("horizon.aim-of", ("antenna", m.AntennaId)),
                [plan.True(m.Aim.TrueDeg)], Strong: true, Ink.Accent)));
        if (plan.Siting.Landmark is { } mark)
            flags.Insert(0, new(new(scale.X(mark.BearingTrueDeg), scale.Y(0) - 4.4), mark.What, [plan.True(mark.BearingTrueDeg)]));
        flags.AddRange(plan.Siting.Obstructions.OrderByDescending(o => o.AngleDeg).ThenBy(o => o.Name, StringComparer.Ordinal).Select(o =>
            Obstruction(plan, o, scale)));
        return ([.. flags.Take(FlagTiers.Most)], Math.Max(0, flags.Count - FlagTiers.Most));
    }

    private static Flag Site(SheetPlan plan, SitePlan s, StripScale scale) => new(
        new(scale.X(s.BearingTrueDeg), scale.Y(s.ElevationDeg ?? 0)), plan.Print.Number(s.Number, 0) + "\u00A0" + s.Name,
        [plan.True(s.BearingTrueDeg), s.ElevationDeg is { } e ? StripWords.Angle(plan, e) : plan.Say("horizon.height-unknown")],
            s.AnyWanted, s.AnyWanted ? Ink.Line : Ink.Faint);

    private static Flag Obstruction(SheetPlan plan, ObstructionPlan o, StripScale scale) => new(
        new(scale.X(o.BearingTrueDeg), Math.Min(scale.Y(Math.Min(o.AngleDeg, scale.CutDeg)), scale.Field.Bottom - 0.8)), o.Name,
        [plan.Say(o.Kind == ObstructionKind.Other ? "horizon.top" : "horizon.top-of", ("kind", plan.Word("obstruction", o.Kind)),
            ("angle", StripWords.Angle(plan, o.AngleDeg)))], Ink: Ink.Warning);
}
