namespace InstallPacket.Plans.Mounting;

/// <summary>The one plate of a mount and its arm.</summary>
/// <param name="Fixings">Fixings of the job that go through it.</param>
/// <param name="Holes">Fixings that it takes; null when the part does not say.</param>
/// <param name="WidthM">Level distance between the outer holes; 0 for one upright line.</param>
/// <param name="HeightM">Upright distance between the outer holes.</param>
/// <param name="PatternAssumed">Whether nobody stated the pattern and a small one is taken.</param>
/// <param name="ArmM">From the plate to the middle of the mast, along the arm; null when the part does not say.</param>
/// <param name="TiltDeg">How far the arm rises above the level.</param>
/// <param name="ReachM">Level distance from the plate to the mast; null when the part does not say.</param>
/// <param name="RiseM">Height of the mast's clamp above the middle of the plate.</param>
public sealed record PlatePlan(int Fixings, int? Holes, double WidthM, double HeightM, bool PatternAssumed, double? ArmM, double TiltDeg,
    double? ReachM, double RiseM);
