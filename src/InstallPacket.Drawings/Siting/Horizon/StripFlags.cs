using InstallPacket.Plans;

namespace InstallPacket.Drawings.Siting.Horizon;

/// <summary>The labels of the strip.</summary>
internal static class StripFlags
{
    /// <summary>Labels, and how many things have none because a sheet holds only so many.</summary>
    public static (IReadOnlyList<Flag> Flags, int Left) Of(SheetPlan plan, StripScale scale)
    {
        var flags = new List<Flag>();
        flags.AddRange(plan.Siting.Sites.OrderByDescending(s => s.AnyWanted).Select(s => Site(s, scale)));
        if (plan.Reception.Aim.Second is { } second)
            flags.Insert(0, new(new(scale.X(second.TrueDeg), scale.Field.Bottom), "second aim", [UnitPrinter.Plain.Bearing(second.TrueDeg) + " true"], Strong: true, Ink.Accent));
        flags.InsertRange(0, plan.Reception.MoreAntennas.Select(m => new Flag(
            new(scale.X(m.Aim.TrueDeg), scale.Field.Bottom), m.AntennaId + " aim", [UnitPrinter.Plain.Bearing(m.Aim.TrueDeg) + " true"], Strong: true, Ink.Accent)));
        if (plan.Siting.Landmark is { } mark)
            flags.Insert(0, new(new(scale.X(mark.BearingTrueDeg), scale.Y(0) - 4.4), mark.What, [UnitPrinter.Plain.Bearing(mark.BearingTrueDeg) + " true"]));
        flags.AddRange(plan.Siting.Obstructions.OrderByDescending(o => o.AngleDeg).ThenBy(o => o.Name, StringComparer.Ordinal).Select(o => Obstruction(o, scale)));
        return ([.. flags.Take(FlagTiers.Most)], Math.Max(0, flags.Count - FlagTiers.Most));
    }

    private static Flag Site(SitePlan s, StripScale scale) => new(
        new(scale.X(s.BearingTrueDeg), scale.Y(s.ElevationDeg ?? 0)), StripWords.Number(s.Number) + "\u00A0" + s.Name,
        [UnitPrinter.Plain.Bearing(s.BearingTrueDeg) + " true", s.ElevationDeg is { } e ? StripWords.Angle(e) : "height unknown"], s.AnyWanted, s.AnyWanted ? Ink.Line : Ink.Faint);

    private static Flag Obstruction(ObstructionPlan o, StripScale scale) => new(
        new(scale.X(o.BearingTrueDeg), Math.Min(scale.Y(Math.Min(o.AngleDeg, scale.CutDeg)), scale.Field.Bottom - 0.8)), o.Name,
        [(o.Kind == "other" ? "top " : o.Kind + ", top ") + StripWords.Angle(o.AngleDeg)], Ink: Ink.Warning);
}
