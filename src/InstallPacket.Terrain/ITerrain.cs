namespace InstallPacket.Terrain;

/// <summary>How well the height at a place is known.</summary>
public enum HeightState
{
    /// <summary>From four cells.</summary>
    Known,

    /// <summary>Some of the four cells are void, or lie beyond the last tile; the others carry it.</summary>
    Partial,

    /// <summary>All four cells are void.</summary>
    Void,

    /// <summary>No tile covers the place.</summary>
    Missing,
}

/// <summary>The height of the ground at a place.</summary>
/// <param name="HeightM">Metres above the tile's vertical datum; meaningless when the state is void or missing.</param>
/// <param name="State">How well it is known.</param>
public readonly record struct GroundHeight(double HeightM, HeightState State);

/// <summary>A tile that was used.</summary>
/// <param name="Path">Path below the jobs folder.</param>
/// <param name="Sha256">Hash of the file.</param>
/// <param name="SpacingArcSeconds">Spacing of its rows.</param>
/// <param name="Datum">Vertical datum.</param>
public sealed record TileUse(string Path, string Sha256, double SpacingArcSeconds, string Datum);

/// <summary>The ground as the planners see it.</summary>
public interface ITerrain
{
    /// <summary>Spacing of the finest set of tiles, in arc-seconds; the step of a profile follows it.</summary>
    double SpacingArcSeconds { get; }

    /// <summary>The height at a place.</summary>
    GroundHeight At(double latitudeDeg, double longitudeDeg);

    /// <summary>The tiles used so far, by path.</summary>
    IReadOnlyList<TileUse> Used { get; }

    /// <summary>Tiles that are there and cannot be used, each with the reason.</summary>
    IReadOnlyList<string> UnfitTiles { get; }

    /// <summary>Names of the one-degree tiles of places that no tile holds, in ordinal order.</summary>
    IReadOnlyList<string> MissingTiles { get; }
}
