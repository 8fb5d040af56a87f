namespace InstallPacket.Drawings.Marks;

/// <summary>A label over a chart, tied to a point of it.</summary>
/// <param name="At">The point.</param>
/// <param name="Name">Its name.</param>
/// <param name="Facts">What is to be known, a line each.</param>
/// <param name="Strong">Whether the name stands out.</param>
/// <param name="Ink">What it means.</param>
internal sealed record Flag(PaperPoint At, string Name, IReadOnlyList<string> Facts, bool Strong = false, Ink Ink = Ink.Line);
