namespace InstallPacket.Drawings.Routing;

/// <summary>The line of a cable that drips off before a hole: down, around the lowest point, up, and over into the hole.</summary>
internal static class EntryCable
{
    /// <summary>Points from the top of the sheet to the outer end of the hole, in millimetres of the sheet.</summary>
    /// <param name="hole">Outer end of the hole.</param>
    /// <param name="depth">Depth of the lowest point below it; at least the radius.</param>
    /// <param name="radius">Bend radius.</param>
    /// <param name="top">Where the cable comes from.</param>
    public static IReadOnlyList<PaperPoint> Loop(PaperPoint hole, double depth, double radius, double top)
    {
        var over = hole with { Y = hole.Y + radius };
        // Two bends of the same radius that touch; a deep loop has a straight piece between them.
        var rise = Math.Min(0, depth - 2 * radius);
        var low = new PaperPoint(hole.X - Math.Sqrt(4 * radius * radius - rise * rise), hole.Y + depth - radius);
        var toward = rise < 0 ? Polar.BearingDeg(low, over) : 90;
        return [new(low.X - radius, top), .. Polar.Arc(low, radius, 270, toward - 270),
            .. Polar.Arc(over, radius, toward + 180, 180 - toward)];
    }

    /// <summary>Cable that comes up from below.</summary>
    public static IReadOnlyList<PaperPoint> Rising(PaperPoint hole, double radius, double bottom) =>
        [new(hole.X - radius, bottom), .. Polar.Arc(hole with { Y = hole.Y + radius }, radius, 270, 90)];
}
