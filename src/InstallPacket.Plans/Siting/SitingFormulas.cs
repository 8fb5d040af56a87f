using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans.Siting;

/// <summary>The sums by which the siting planners join published equations.</summary>
public static class SitingFormulas
{
    private const string Own = "project-notes";

    /// <summary>Height above the sea.</summary>
    public static readonly Formula AboveSea = new(
        "height-above-sea", "Height above the sea", "h = g + a", new("h", "m", "height above the sea"),
        [new("g", "m", "ground above the sea"), new("a", "m", "height above the ground")], Own, "sum", Provenance.Derived) { Method = v =>
            v[0] + v[1] };

    /// <summary>The other part of a path.</summary>
    public static readonly Formula Rest = new(
        "rest-of-path", "Distance from a point of the path to its far end", "d2 = D - d1", new("d2", "km", "distance"),
        [new("D", "km", "length of the path"), new("d1", "km", "distance to the near end")], Own, "difference", Provenance.Derived)
    {
        Method = v => v[0] - v[1],
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Formula> All => [AboveSea, Rest];
}
