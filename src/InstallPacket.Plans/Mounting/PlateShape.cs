using InstallPacket.Calc.Mounting;

namespace InstallPacket.Plans.Mounting;

/// <summary>The shape of the one plate of a mount, from the job or else from the part.</summary>
internal static class PlateShape
{
    // A small plate of the trade, 2 in square (common practice); a wider one only makes the pull less.
    private static readonly HolePattern Smallest = new(0.05, 0.05);

    /// <summary>The plate; null where the mount has two brackets or none.</summary>
    public static PlatePlan? Of(MountingSection m)
    {
        if (!m.OnePlate) return null;
        var stated = m.Plate ?? m.Mount.Holes?.Pattern;
        var pattern = stated ?? Smallest;
        var arm = m.Mount.Arm?.LengthM ?? m.Mount.StandOffM;
        var tilt = m.Mount.Arm?.TiltDeg ?? 0;
        var fixings = m.Fixings.Where(f => f.Part.Form != FixingForm.Clamp).Sum(f => f.Count);
        return new(fixings, m.Mount.Holes?.Count, pattern.WidthM, pattern.HeightM, stated is null, arm, tilt,
            arm is null ? null : OnePlate.ReachM(arm.Value, tilt), arm is null ? 0 : OnePlate.RiseM(arm.Value, tilt));
    }
}
