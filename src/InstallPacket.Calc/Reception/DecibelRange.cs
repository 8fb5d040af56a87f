namespace InstallPacket.Calc.Reception;

/// <summary>A loss that is only known between two figures.</summary>
/// <param name="LowDb">The smaller figure [dB].</param>
/// <param name="HighDb">The larger figure [dB].</param>
public readonly record struct DecibelRange(double LowDb, double HighDb);
