using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting;

/// <summary>How a leaning ladder must stand.</summary>
public static class LadderSet
{
    /// <summary>How far the rails stand above the landing [m], 3 ft.</summary>
    public const double RailsAboveLandingM = 3 * 0.3048;

    // Foot out one quarter of the working length: cos(theta) = 1/4.
    private static readonly double SinTheta = Math.Sqrt(15) / 4;

    /// <summary>The working length.</summary>
    public static readonly Formula WorkingLengthFormula = new(
        "ladder-working-length",
        "Working length of the ladder, foot to top support",
        "Lw = H / sin(theta), cos(theta) = 1/4",
        new("Lw", "m", "working length"), [new("H", "m", "height of the top support")],
        "osha-1926-1053", "(b)(5)(i)")
    {
        Method = v => WorkingLengthM(v[0]),
    };

    /// <summary>The distance of the foot.</summary>
    public static readonly Formula FootDistanceFormula = new(
        "ladder-foot-distance",
        "Distance of the ladder's foot from the wall",
        "x = Lw / 4",
        new("x", "m", "distance"), [new("Lw", "m", "working length")],
        "osha-1926-1053", "(b)(5)(i)")
    {
        Method = v => FootDistanceM(v[0]),
    };

    /// <summary>The length of the rails.</summary>
    public static readonly Formula RailLengthFormula = new(
        "ladder-rail-length",
        "Length of the rails, 3 ft above the landing",
        "Lr = (H + 0.914) / sin(theta), cos(theta) = 1/4",
        new("Lr", "m", "rail length"), [new("H", "m", "height of the landing")],
        "osha-1926-1053", "(b)(1) with (b)(5)(i)")
    {
        Method = v => RailLengthM(v[0]),
    };

    /// <summary>The size of the extension ladder.</summary>
    public static readonly Formula ExtensionSizeFormula = new(
        "ladder-extension-size",
        "Size of an extension ladder",
        "n = least of 16, 20, ... 60 with n - overlap >= Lr; overlap 3 ft to size 36, 4 ft to 48, 5 ft to 60",
        new("n", "ft", "nominal size"), [new("Lr", "ft", "rail length needed")],
        "osha-1926-1053", "overlap of the sections (3 ft read, the others recalled)", Provenance.Memory)
    {
        Method = v => ExtensionSizeFt(v[0])!.Value,
    };

    /// <summary>The angle of a ladder set by the rule of one quarter [deg].</summary>
    public static double AngleDeg => Math.Acos(0.25) * 180 / Math.PI;

    /// <summary>The working length for a height.</summary>
    /// <param name="supportHeightM">Height of the top support above the foot [m], not negative; outside throws.</param>
    /// <returns>Length [m].</returns>
    public static double WorkingLengthM(double supportHeightM)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(supportHeightM);
        return supportHeightM / SinTheta;
    }

    /// <summary>The distance of the foot from below the top support.</summary>
    /// <param name="workingLengthM">Working length [m], not negative; outside throws.</param>
    /// <returns>Distance [m].</returns>
    public static double FootDistanceM(double workingLengthM)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(workingLengthM);
        return workingLengthM / 4;
    }

    /// <summary>The length of the rails, so that they stand above the landing.</summary>
    /// <param name="supportHeightM">Height of the landing above the foot [m], not negative; outside throws.</param>
    /// <returns>Length [m].</returns>
    public static double RailLengthM(double supportHeightM) => WorkingLengthM(supportHeightM + RailsAboveLandingM);

    /// <summary>The smallest extension ladder that gives a rail length.</summary>
    /// <param name="railLengthFt">Rail length needed [ft], not negative; outside throws.</param>
    /// <returns>Nominal size [ft], or null when none is long enough.</returns>
    public static int? ExtensionSizeFt(double railLengthFt)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(railLengthFt);
        for (var size = 16; size <= 60; size += 4)
        {
            var overlap = size <= 36 ? 3 : size <= 48 ? 4 : 5;
            if (size - overlap >= railLengthFt) return size;
        }
        return null;
    }
}
