using System.Diagnostics.CodeAnalysis;

namespace InstallPacket.Calc.Reception.P1812;

/// <summary>Radio-climatic zone of a point of the profile, numbered as published.</summary>
[SuppressMessage("Design", "CA1008", Justification = "The published numbers start at 1; an unset zone must not pass for one of them.")]
public enum RadioZone
{
    /// <summary>Sea, and lakes of similar size.</summary>
    Sea = 1,

    /// <summary>Land up to 100 m above sea level within 50 km of the sea.</summary>
    CoastalLand = 3,

    /// <summary>All other land.</summary>
    Inland = 4,
}
