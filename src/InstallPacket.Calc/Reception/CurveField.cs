using System.Diagnostics.CodeAnalysis;

namespace InstallPacket.Calc.Reception;

/// <summary>Which of the regulator's sheets applies.</summary>
public enum CurveBand
{
    /// <summary>American channels 2 to 6.</summary>
    LowVhf,

    /// <summary>American channels 7 to 13.</summary>
    HighVhf,

    /// <summary>American channels 14 and up.</summary>
    Uhf,
}

/// <summary>Share of places and of time for which a field is exceeded; half of the places in each case.</summary>
[SuppressMessage("Naming", "CA1707",
    Justification = "F(50,90) is the name of the curve in the trade; without the line it reads as one number.")]
public enum CurvePercent
{
    /// <summary>Half of the time.</summary>
    F50_50,

    /// <summary>A tenth of the time: for interference.</summary>
    F50_10,

    /// <summary>Nine tenths of the time: for service.</summary>
    F50_90,
}

/// <summary>A field strength from the regulator's curves.</summary>
/// <param name="DbuVm">Field strength [dB(uV/m)].</param>
/// <param name="HaatClamped">True when the antenna height was outside 30 to 1600 m and was brought to the limit.</param>
/// <param name="EffectiveHaatM">The height that was used [m].</param>
/// <param name="Band">The sheet that was used.</param>
public sealed record CurveField(double DbuVm, bool HaatClamped, double EffectiveHaatM, CurveBand Band);
