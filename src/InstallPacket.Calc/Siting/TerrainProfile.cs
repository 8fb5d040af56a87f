namespace InstallPacket.Calc.Siting;

/// <summary>
/// Heights of the ground along a path at equal steps. The first sample lies under the start of the path, the last one under its end; the
/// propagation
/// model takes the start for the transmitter and the end for the receiver.
/// </summary>
public sealed class TerrainProfile
{
    /// <summary>Lowest ground that is believed [m]; the Dead Sea shore lies at -430 m.</summary>
    public const double LowestM = -500;

    /// <summary>Highest ground that is believed [m].</summary>
    public const double HighestM = 9000;

    private readonly double[] _elevationsM;

    /// <summary>Takes a copy of the samples, so that nothing can change a profile that was checked.</summary>
    /// <param name="elevationsM">Ground above sea level from start to end [m], at least two, each within <see cref="LowestM"/> to
    /// <see cref="HighestM"/>; otherwise throws.</param>
    /// <param name="stepM">Length of one step [m], above 0; outside throws.</param>
    public TerrainProfile(ReadOnlySpan<double> elevationsM, double stepM)
    {
        if (elevationsM.Length < 2) throw new ArgumentException("A profile needs the ground under both ends.", nameof(elevationsM));
        if (!(stepM > 0 && double.IsFinite(stepM))) throw new ArgumentOutOfRangeException(nameof(stepM), stepM,
            "The step must be a length above 0.");
        foreach (var z in elevationsM)
        {
            // Holes in terrain data often stand as -9999 or -32768.
            if (!(z is >= LowestM and <= HighestM)) throw new ArgumentOutOfRangeException(nameof(elevationsM), z,
                "No ground lies at this height.");
        }
        _elevationsM = elevationsM.ToArray();
        StepM = stepM;
    }

    /// <summary>Ground above sea level from start to end [m].</summary>
    public ReadOnlySpan<double> ElevationsM => _elevationsM;

    /// <summary>Length of one step [m].</summary>
    public double StepM { get; }

    /// <summary>Count of steps, one less than samples.</summary>
    public int Intervals => _elevationsM.Length - 1;

    /// <summary>Length of the path [m].</summary>
    public double LengthM => Intervals * StepM;

    /// <summary>The same ground walked from the other end.</summary>
    /// <returns>A profile whose start is the end of this one.</returns>
    public TerrainProfile Reversed()
    {
        var turned = _elevationsM.AsSpan().ToArray();
        Array.Reverse(turned);
        return new TerrainProfile(turned, StepM);
    }
}
