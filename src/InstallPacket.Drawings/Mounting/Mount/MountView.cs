using InstallPacket.Plans;

namespace InstallPacket.Drawings.Mounting.Mount;

/// <summary>The mount in a view from the side; the mast stands at nought, its foot at height nought.</summary>
/// <param name="Side">Scale and place.</param>
/// <param name="WallM">Where the wall stands, to the left; null without wall.</param>
/// <param name="Supports">Heights of the supports, fixed ones first.</param>
internal sealed record MountView(SideView Side, double? WallM, IReadOnlyList<MastSupport> Supports)
{
    // A stand-off that nobody stated is drawn as a short one.
    private const double PlainStandOffM = 0.2;

    public static MountView Of(SheetPlan plan, PaperBox box)
    {
        var m = plan.Mounting;
        double? wall = m.Kind is MountKind.GableBracket or MountKind.WallBracket or MountKind.EaveBracket or MountKind.GroundMast
            ? -(m.Plate?.ReachM ?? m.LoadPath?.StandOffM ?? PlainStandOffM) : null;
        var reach = (m.LoadPath?.Guys ?? []).Select(g => g.RadiusM).Append(m.LoadPath?.Ballast?.SideM / 2 ?? 0.4).Max();
        return new(SideView.Fit(box, Math.Min(-reach, (wall ?? 0) - 0.1), Math.Min(0, PlateFoot(m)), reach, m.MastLengthM + 0.2), wall, SupportsOf(m));
    }

    /// <summary>The highest fixed support.</summary>
    public MastSupport Upper => Supports.Count > 1 ? Supports[1] : Supports[0];

    // The plate of a bent arm can reach below the foot of the mast.
    private static double PlateFoot(MountingPlan m) =>
        m.Plate is { } plate ? m.MastLengthM - m.FreeLengthM - plate.RiseM - plate.HeightM : 0;

    private static IReadOnlyList<MastSupport> SupportsOf(MountingPlan m) => m.Wind?.Supports ?? (m.Plate is null
        ? [new("lower support", 0, 0), new("upper support", m.MastLengthM - m.FreeLengthM, 0)]
        : [new("arm of the mount", m.MastLengthM - m.FreeLengthM, 0)]);
}
