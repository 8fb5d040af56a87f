namespace InstallPacket.Packets.Pdf;

/// <summary>What every part of the PDF writer needs to know.</summary>
/// <param name="Document">The document.</param>
/// <param name="Types">Sizes and faces.</param>
/// <param name="Runs">Reader of running text.</param>
/// <param name="LargestFigure">Greatest height of a figure in points.</param>
internal sealed record PdfContext(PacketDocument Document, PdfTypes Types, RunReader Runs, double LargestFigure);
