namespace InstallPacket.Terrain;

/// <summary>Asks the other tiles of the folder for a node that lies beyond the edge of a tile; null when none has it.</summary>
internal delegate double? NodeBeyond(double latitudeDeg, double longitudeDeg);

/// <summary>A tile of heights at nodes in rows and columns.</summary>
internal interface IElevationTile
{
    /// <summary>Path below the jobs folder.</summary>
    string Path { get; }

    /// <summary>Spacing of its rows.</summary>
    double SpacingArcSeconds { get; }

    /// <summary>The citation of the tile; null when it cannot be used after all. Asked before the first height.</summary>
    TileUse? Use { get; }

    /// <summary>The height at a place in one of its cells.</summary>
    GroundHeight At(double latitudeDeg, double longitudeDeg, NodeBeyond beyond);

    /// <summary>The height at a place between its own nodes; null when it lies beyond them.</summary>
    GroundHeight? Among(double latitudeDeg, double longitudeDeg);
}
