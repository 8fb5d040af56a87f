using InstallPacket.Calc.Siting;

namespace InstallPacket.Calc.Reception.Itm;

/// <summary>
/// A profile with an antenna at each end, worked through once for all channels. Refractivity belongs here because it bends the horizons.
/// </summary>
public readonly record struct ItmPath
{
    /// <summary>Length [m].</summary>
    public double LengthM { get; private init; }

    /// <summary>Transmitting antenna above ground [m].</summary>
    public double TxHeightM { get; private init; }

    /// <summary>Receiving antenna above ground [m].</summary>
    public double RxHeightM { get; private init; }

    /// <summary>The air.</summary>
    public ItmAir Air { get; private init; }

    /// <summary>What the ground gave; all zero when heights or refractivity are refused.</summary>
    public ItmTerrain Terrain { get; private init; }

    /// <summary>True when the ground rises into the ray between the antennas, whatever the mode of the result says.</summary>
    public bool IsObstructed => Terrain.Sight.TxM < LengthM || Terrain.Sight.RxM < LengthM;

    /// <summary>Does the work that does not depend on frequency.</summary>
    /// <remarks>Nothing throws for an input out of range: the refusal comes with the result, in the published order of checks.</remarks>
    /// <param name="profile">The ground; its start is the transmitter.</param>
    /// <param name="txHeightM">Transmitting antenna above ground [m], 0.5 to 3000.</param>
    /// <param name="rxHeightM">Receiving antenna above ground [m], 0.5 to 3000.</param>
    /// <param name="air">Refractivity of the air.</param>
    /// <returns>The path.</returns>
    public static ItmPath Of(TerrainProfile profile, double txHeightM, double rxHeightM, ItmAir air)
    {
        ArgumentNullException.ThrowIfNull(profile);
        var path = new ItmPath { LengthM = profile.LengthM, TxHeightM = txHeightM, RxHeightM = rxHeightM, Air = air };
        return ItmChecks.HasTerrain(path) ? path with { Terrain = ItmTerrain.Of(profile, txHeightM, rxHeightM, air) } : path;
    }
}
