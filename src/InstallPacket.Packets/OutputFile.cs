namespace InstallPacket.Packets;

/// <summary>A file of a packet, in memory.</summary>
/// <param name="Path">Path below the packet's folder, with forward slashes.</param>
/// <param name="Bytes">Its content.</param>
public sealed record OutputFile(string Path, byte[] Bytes);
