namespace InstallPacket.Calc.Mounting;

/// <summary>From mass to weight.</summary>
public static class StandardGravity
{
    /// <summary>Standard acceleration of free fall [m/s2].</summary>
    public const double MS2 = 9.80665;
}
