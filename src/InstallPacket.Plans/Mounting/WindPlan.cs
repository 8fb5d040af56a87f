namespace InstallPacket.Plans;

/// <summary>What the wind does to antenna and mast.</summary>
/// <param name="SpeedMs">Basic wind speed of the job.</param>
/// <param name="Exposure">What the wind blows over.</param>
/// <param name="HeightM">Height for which the pressure holds.</param>
/// <param name="PressurePa">Velocity pressure there.</param>
/// <param name="AreaM2">Effective area of all antennas.</param>
/// <param name="ForceN">Force on the antennas for the strength check.</param>
/// <param name="LineLoadNPerM">Force on each metre of mast for the strength check.</param>
/// <param name="FreeM">Free length.</param>
/// <param name="SpacingM">Distance between the supports.</param>
/// <param name="Material">Material of the tube.</param>
/// <param name="MaterialAssumed">Whether the material is unknown and a low value was taken.</param>
/// <param name="MomentNm">Moment at the upper support.</param>
/// <param name="AllowableNm">Moment that the tube bears.</param>
/// <param name="UseShare">Demand over capacity.</param>
/// <param name="UpperN">Force on the upper support.</param>
/// <param name="LowerN">Force on the lower support, opposite to the upper one.</param>
/// <param name="TipM">Deflection of the tip in that wind.</param>
public sealed record WindPlan(
    double SpeedMs, string Exposure, double HeightM, double PressurePa, double AreaM2, double ForceN, double LineLoadNPerM, double FreeM, double SpacingM, string Material,
    bool MaterialAssumed, double MomentNm, double AllowableNm, double UseShare, double UpperN, double LowerN, double TipM);
