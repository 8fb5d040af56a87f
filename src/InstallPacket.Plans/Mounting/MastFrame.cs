using InstallPacket.Calc.Mounting;

namespace InstallPacket.Plans.Mounting;

/// <summary>Where the mast is held, in metres above its foot.</summary>
/// <param name="SupportsM">Fixed supports, then rings of guys, rising.</param>
/// <param name="LengthM">Length of the mast.</param>
/// <param name="Exposed">Whether the wind meets the mast between its supports.</param>
internal sealed record MastFrame(IReadOnlyList<double> SupportsM, double LengthM, bool Exposed)
{
    public double FreeM => LengthM - SupportsM[^1];

    /// <summary>Between the two highest supports; 0 where one clamp holds the mast.</summary>
    public double SpacingM => Clamped ? 0 : SupportsM[^1] - SupportsM[^2];

    /// <summary>Whether the arm of one plate holds the mast.</summary>
    public bool Clamped => SupportsM.Count == 1;

    /// <summary>The mast on its fixed supports alone.</summary>
    public static MastFrame Fixed(MountingSection m)
    {
        var upper = m.MastLength.Metres - m.FreeLength.Metres;
        if (m.OnePlate) return new([upper], m.MastLength.Metres, false);
        var lower = m.Spacing is { } spacing ? Math.Max(0, upper - spacing.Metres) : 0;
        if (upper - lower < 0.05) lower = upper - 0.05;
        return new([lower, upper], m.MastLength.Metres, m.Kind is MountKind.GroundMast or MountKind.Tripod or MountKind.Ballast
            || m.Guys is not null);
    }

    /// <summary>The mast with its guys.</summary>
    public static MastFrame Guyed(MountingSection m)
    {
        var frame = Fixed(m);
        return m.Guys is { } guys && !frame.Clamped ? frame with { SupportsM = [.. frame.SupportsM, .. guys.Sets.Select(s => s.RingM)] } : frame;
    }

    /// <summary>Largest moment in a wind [N m].</summary>
    public double GreatestNm(double topN, double lineLoadNPerM) => Clamped
        ? MastBending.MomentNm(new([new(topN, FreeM)], lineLoadNPerM, FreeM, 0)) : Forces(topN, lineLoadNPerM).GreatestNm;

    /// <summary>Moments and forces in a wind, of a mast with two supports or more.</summary>
    public HeldMastForces Forces(double topN, double lineLoadNPerM) => ContinuousMast.Of(new(SupportsM, FreeM, topN, lineLoadNPerM));
}
