namespace InstallPacket.Terrain;

/// <summary>The files of elevation tiles: all that this project asks of the author's files.</summary>
public interface ITileFiles
{
    /// <summary>Paths of the files below a folder, in ordinal order; empty when there is no such folder.</summary>
    /// <param name="folder">Path below the jobs folder; empty for the jobs folder itself.</param>
    IReadOnlyList<string> List(string folder);

    /// <summary>Opens a tile for reading in any order; null when there is none or it leads out of the jobs folder.</summary>
    /// <param name="path">Path below the jobs folder, with forward slashes.</param>
    Stream? Open(string path) => null;
}
