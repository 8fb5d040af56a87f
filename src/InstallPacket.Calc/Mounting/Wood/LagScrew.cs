namespace InstallPacket.Calc.Mounting.Wood;

/// <summary>Dimensions of a standard lag screw, as the design values assume them.</summary>
/// <param name="DiameterM">Nominal diameter [m].</param>
/// <param name="RootM">Root diameter of the thread [m].</param>
/// <param name="TipM">Length of the tapered tip [m].</param>
/// <param name="BendingPa">Bending yield strength [Pa].</param>
public sealed record LagScrew(double DiameterM, double RootM, double TipM, double BendingPa)
{
    private const double Inch = 0.0254;
    private const double Psi = 6894.757293168;

    // Root, tip and yield strength are recalled; every cell of the lateral table that was read confirms them.
    private static readonly LagScrew[] Sizes =
    [
        Of(0.25, 0.173, 0.15625, 70000), Of(0.3125, 0.227, 0.1875, 60000), Of(0.375, 0.265, 0.21875, 45000),
            Of(0.4375, 0.328, 0.28125, 45000), Of(0.5, 0.371, 0.3125, 45000),
    ];

    /// <summary>All sizes, the thinnest first.</summary>
    public static IReadOnlyList<LagScrew> All => Sizes;

    /// <summary>The size with this nominal diameter, within a twentieth of a millimetre; null when it is no standard size.</summary>
    public static LagScrew? Find(double diameterM) => Sizes.FirstOrDefault(s => Math.Abs(s.DiameterM - diameterM) < 5e-5);

    /// <summary>How deep the screw reaches into the timber behind a plate, the tip not counted [m].</summary>
    /// <param name="lengthM">Length under the head [m].</param>
    /// <param name="plateM">What lies between head and timber [m].</param>
    public double PenetrationM(double lengthM, double plateM) => lengthM - plateM - TipM;

    /// <summary>How much of that is thread [m].</summary>
    /// <param name="lengthM">Length under the head [m].</param>
    /// <param name="plateM">What lies between head and timber [m].</param>
    /// <param name="threadM">Length of the thread with its tip, if the maker states it [m]; else the standard length.</param>
    public double ThreadInTimberM(double lengthM, double plateM, double? threadM = null) =>
        Math.Max(0, Math.Min((threadM ?? Math.Min(6 * Inch, lengthM / 2 + 0.5 * Inch)) - TipM, PenetrationM(lengthM, plateM)));

    private static LagScrew Of(double diameterIn, double rootIn, double tipIn, double psi) =>
        new(diameterIn * Inch, rootIn * Inch, tipIn * Inch, psi * Psi);
}
