using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>The carrier-to-noise ratio a mode needs, and why this number.</summary>
/// <param name="System">Transmission system.</param>
/// <param name="Modulation">Modulation.</param>
/// <param name="CodeRate">Code rate.</param>
/// <param name="Channel">Column of the table: the kind of channel it holds for.</param>
/// <param name="ListedDb">The value in the table [dB].</param>
/// <param name="AddedDb">What was added for a real receiver [dB].</param>
/// <param name="AddedFor">Why it was added; empty when nothing was.</param>
/// <param name="SourceText">Document of the row.</param>
/// <param name="Provenance">The weaker of how the row and the addition are known.</param>
public sealed record RequiredCnRow(
    string System, string Modulation, string CodeRate, string Channel, double ListedDb,
    double AddedDb, string AddedFor, string SourceText, Provenance Provenance)
{
    /// <summary>The ratio to plan with [dB].</summary>
    public double RequiredDb => ListedDb + AddedDb;
}
