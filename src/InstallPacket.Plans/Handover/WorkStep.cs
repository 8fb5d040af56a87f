namespace InstallPacket.Plans.Handover;

/// <summary>One step of the work; its words stand in the theme under its identifier.</summary>
/// <param name="Number">Its number, counted through the whole job.</param>
/// <param name="Phase">The part of the day: <c>leaving</c>, <c>arrival</c>, <c>ground</c>, <c>mount</c>, <c>outside</c>, <c>bond</c>,
/// <c>inside</c>, <c>power</c>, <c>measure</c> or <c>finish</c>.</param>
/// <param name="Id">What is done.</param>
public sealed record WorkStep(int Number, string Phase, string Id)
{
    /// <summary>The run, element, fixing or amplifier that it is about; empty for none.</summary>
    public string Subject { get; init; } = "";

    /// <summary>What to call it.</summary>
    public string Name { get; init; } = "";

    /// <summary>The figure that shows it; empty for none.</summary>
    public string Figure { get; init; } = "";

    /// <summary>Number of the piece of cable, as on sketch, list and label; null for none.</summary>
    public int? PieceNumber { get; init; }

    /// <summary>How many; null where nothing is counted.</summary>
    public int? Count { get; init; }

    /// <summary>Tightening torque; null where none is known: then the maker's sheet says it.</summary>
    public double? TorqueNm { get; init; }

    /// <summary>How the torque is known; empty where the step tightens nothing.</summary>
    public string TorqueProvenance { get; init; } = "";

    /// <summary>The test point; null where nothing is measured.</summary>
    public int? PointNumber { get; init; }

    /// <summary>Voltage to expect; null where none is measured.</summary>
    public double? ExpectV { get; init; }

    /// <summary>Levels to expect, the strongest and the weakest wanted channel.</summary>
    public IReadOnlyList<StepLevel> Expect { get; init; } = [];
}

/// <summary>A level to expect.</summary>
/// <param name="Name">What the viewer calls the station.</param>
/// <param name="RfChannel">RF channel.</param>
/// <param name="LevelDbm">Level.</param>
public sealed record StepLevel(string Name, int RfChannel, double LevelDbm);
