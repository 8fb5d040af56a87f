namespace InstallPacket.Plans.Codes;

/// <summary>The level that an outlet should have.</summary>
/// <param name="System">Transmission system.</param>
/// <param name="Mode">Mode that the row stands for; empty for any.</param>
/// <param name="LeastDbuv">Lowest level at 75 ohm.</param>
/// <param name="LargestDbuv">Highest level at 75 ohm.</param>
/// <param name="Document">Where it is written.</param>
/// <param name="Edition">Which edition.</param>
/// <param name="Provenance">How it is known.</param>
public sealed record OutletWindow(string System, string Mode, double LeastDbuv, double LargestDbuv, string Document, string Edition,
    string Provenance)
{
    /// <summary>Empty where the document has a row for the mode or for any; else the row from which the level was moved by the C/N that
    /// the mode needs more.</summary>
    public string MovedFrom { get; init; } = "";
}
