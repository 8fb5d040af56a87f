namespace InstallPacket.Terrain;

/// <summary>A tile that cannot be used. It never leaves the reader of tiles, which lists the reason.</summary>
/// <param name="found">What is wrong, as the end of a sentence that begins with the path.</param>
/// <param name="limit">What is read instead.</param>
internal sealed class UnfitTileException(string found, string limit) : Exception($"{found}; {limit}");
