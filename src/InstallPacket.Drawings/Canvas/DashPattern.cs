namespace InstallPacket.Drawings.Canvas;

/// <summary>The lengths of dashes and gaps in millimetres, one table for all painters; lines end butt.</summary>
public static class DashPattern
{
    private static readonly double[] Unbroken = [];
    private static readonly double[] Long = [2.4, 1.2];
    private static readonly double[] Dots = [0.5, 0.8];
    private static readonly double[] LongAndDot = [3, 0.9, 0.6, 0.9];

    /// <summary>Lengths on and off in turn; empty for an unbroken line.</summary>
    /// <param name="dash">The pattern.</param>
    public static IReadOnlyList<double> Millimetres(Dash dash) => dash switch
    {
        Dash.Solid => Unbroken,
        Dash.Dashed => Long,
        Dash.Dotted => Dots,
        Dash.DashDot => LongAndDot,
        _ => throw new ArgumentOutOfRangeException(nameof(dash), dash, "unknown dash"),
    };
}
