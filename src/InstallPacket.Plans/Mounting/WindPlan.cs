namespace InstallPacket.Plans.Mounting;

/// <summary>What the wind does to antenna and mast.</summary>
/// <param name="SpeedMs">Basic wind speed of the job.</param>
/// <param name="Exposure">What the wind blows over.</param>
/// <param name="HeightM">Height for which the pressure holds.</param>
/// <param name="PressurePa">Velocity pressure there.</param>
/// <param name="AreaM2">Effective area of all antennas.</param>
/// <param name="ForceN">Force on the antennas for the strength check.</param>
/// <param name="LineLoadNPerM">Force on each metre of mast and cable for the strength check.</param>
/// <param name="FreeM">Free length above the highest support, a ring of guys included.</param>
/// <param name="SpacingM">Distance between the two supports below that.</param>
/// <param name="Material">Material of the tube.</param>
/// <param name="MaterialAssumed">Whether the material is unknown and a low value was taken.</param>
/// <param name="MomentNm">Largest moment of the mast.</param>
/// <param name="AllowableNm">Moment that the tube bears.</param>
/// <param name="UseShare">Demand over capacity.</param>
/// <param name="UpperN">Force on the upper bracket or clamp.</param>
/// <param name="LowerN">Force on the lower one, opposite to the upper one.</param>
/// <param name="TipM">Deflection of the tip in that wind.</param>
public sealed record WindPlan(
    double SpeedMs, string Exposure, double HeightM, double PressurePa, double AreaM2, double ForceN, double LineLoadNPerM, double FreeM,
        double SpacingM, string Material,
    bool MaterialAssumed, double MomentNm, double AllowableNm, double UseShare, double UpperN, double LowerN, double TipM)
{
    /// <summary>Force on the antennas, neither reduced nor increased.</summary>
    public double GustForceN { get; init; }

    /// <summary>Force on each metre of mast and cable, neither reduced nor increased.</summary>
    public double GustLineNPerM { get; init; }

    /// <summary>Force on the antennas in the gust at which pointing is judged.</summary>
    public double ServiceForceN { get; init; }

    /// <summary>Force on each metre of mast and cable in that gust.</summary>
    public double ServiceLineNPerM { get; init; }

    /// <summary>Stiffness of the tube against bending.</summary>
    public double StiffnessNm2 { get; init; }

    /// <summary>Mass of the antennas at the top; null when one is unknown.</summary>
    public double? TopKg { get; init; }

    /// <summary>Mass of each metre of mast.</summary>
    public double MastKgPerM { get; init; }

    /// <summary>Width that the wind meets: mast and the cables on it.</summary>
    public double WidthM { get; init; }

    /// <summary>Section modulus of the tube.</summary>
    public double SectionMm3 { get; init; }

    /// <summary>Plastic section modulus of the tube.</summary>
    public double PlasticMm3 { get; init; }

    /// <summary>Stress of the tube in that wind.</summary>
    public double StressPa { get; init; }

    /// <summary>First frequency of the free mast; null when the mass of the antenna is unknown.</summary>
    public double? FrequencyHz { get; init; }

    /// <summary>Tilt of the antenna in a gust of 50 mph (22.4 m/s).</summary>
    public double ServiceTiltDeg { get; init; }

    /// <summary>Speed of that gust.</summary>
    public double ServiceMs { get; init; }

    /// <summary>How the moment that the tube can take was found: <c>allowable-stress</c> or <c>partial-factors</c>.</summary>
    public string TubeMethod { get; init; } = "";

    /// <summary>All supports from below, rings of guys included.</summary>
    public IReadOnlyList<MastSupport> Supports { get; init; } = [];
}

/// <summary>A place that holds the mast.</summary>
/// <param name="Name"><c>lower support</c>, <c>upper support</c> or <c>ring 1</c>.</param>
/// <param name="HeightM">Above the foot of the mast.</param>
/// <param name="ForceN">Force against the wind there; negative when it holds the other way.</param>
public sealed record MastSupport(string Name, double HeightM, double ForceN);
