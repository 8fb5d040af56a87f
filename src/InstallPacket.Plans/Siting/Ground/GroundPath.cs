using InstallPacket.Calc.Siting;

namespace InstallPacket.Plans.Siting.Ground;

/// <summary>The ground between the antenna and a transmitter at equal steps, from the antenna outward.</summary>
/// <param name="HeightsM">Ground above sea level [m]; empty when the path has a hole.</param>
/// <param name="StepM">Length of a step [m].</param>
/// <param name="From"><c>measured</c> or <c>tiles</c>.</param>
/// <param name="Bridged">How many samples lay in small voids and were interpolated.</param>
/// <param name="HoleM">Length of what is unknown and too long to bridge [m]; 0 for a whole path.</param>
internal sealed record GroundPath(double[] HeightsM, double StepM, string From, int Bridged, double HoleM)
{
    /// <summary>Whether every sample is known.</summary>
    public bool Whole => HeightsM.Length > 0;

    /// <summary>Length [m].</summary>
    public double LengthM => StepM * (HeightsM.Length - 1);

    /// <summary>The profile as the models want it: transmitter first.</summary>
    public TerrainProfile FromTransmitter() => new TerrainProfile(HeightsM, StepM).Reversed();
}
