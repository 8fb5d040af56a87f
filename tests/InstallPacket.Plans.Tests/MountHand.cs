namespace InstallPacket.Plans.Tests;

/// <summary>Arithmetic of mounts by hand, in another form than the core's, and short ways to what a plan says.</summary>
internal static class MountHand
{
    public const double Inch = 0.0254;
    public const double Foot = 0.3048;
    public const double Pound = 4.4482216152605;
    public const double Gravity = 9.80665;

    /// <summary>The one check of a kind whose words contain a text.</summary>
    public static LoadPathCheck Check(this Plan plan, string id, string contains = "") =>
        plan.Mounting.LoadPath!.Checks.Single(c => c.Id == id && c.What.Contains(contains, StringComparison.Ordinal));

    /// <summary>The result of the first use of a formula.</summary>
    public static double Result(this Plan plan, string formula, string subject = "") =>
        plan.Workings.First(w => w.Formula.Id == formula && w.Subject.Contains(subject, StringComparison.Ordinal)).Number;

    /// <summary>Area and section modulus and second moment of a tube [m].</summary>
    public static (double Area, double Modulus, double Second) Tube(double outer, double wall)
    {
        var inner = outer - 2 * wall;
        var second = Math.PI * (Math.Pow(outer, 4) - Math.Pow(inner, 4)) / 64;
        return (Math.PI * (outer * outer - inner * inner) / 4, 2 * second / outer, second);
    }

    /// <summary>Lag screw of 1800 G^1.5 D^0.75 pounds an inch [N].</summary>
    public static double LagPull(double gravity, double diameterIn, double threadIn) => 1800 * Math.Pow(gravity, 1.5) * Math.Pow(diameterIn, 0.75) * threadIn * Pound;

    /// <summary>The weakest mode of a screw through sheet steel, from the balance of the bent screw: A Z^2 + B Z = C [N].</summary>
    public static double Shear(double rootIn, double bendingPsi, double timberPsi, double plateIn, double bearingIn, double gapIn, double reduction)
    {
        var (m, s, my) = (timberPsi * rootIn, 61850 * rootIn, bendingPsi * Math.Pow(rootIn, 3) / 6);
        static double Root(double a, double b, double c) => (-b + Math.Sqrt(b * b + 4 * a * c)) / (2 * a);
        double[] modes =
        [
            m * bearingIn, s * plateIn,
            Root(1 / (4 * s) + 1 / (4 * m), plateIn / 2 + gapIn + bearingIn / 2, (s * plateIn * plateIn + m * bearingIn * bearingIn) / 4),
            Root(1 / (2 * s) + 1 / (4 * m), gapIn + bearingIn / 2, my + m * bearingIn * bearingIn / 4),
            Root(1 / (4 * s) + 1 / (2 * m), plateIn / 2 + gapIn, s * plateIn * plateIn / 4 + my),
            Root(1 / (2 * s) + 1 / (2 * m), gapIn, 2 * my),
        ];
        return modes.Min() / reduction * Pound;
    }

    /// <summary>Lag screw of 5/16 in across the grain [N]; one reduction for all modes because its root is thin.</summary>
    public static double Lag516Shear(double gravity, double plateM, double gapM = 0) =>
        Shear(0.227, 60000, 6100 * Math.Pow(gravity, 1.45) / Math.Sqrt(0.3125), plateM / Inch, 8 * 0.3125, gapM / Inch, (10 * 0.227 + 0.5) * 1.25);

    /// <summary>Pull and shear together [N].</summary>
    public static double Together(double pull, double shear, double pullCapacity, double shearCapacity)
    {
        var resultant = Math.Sqrt(pull * pull + shear * shear);
        var (sin, cos) = (pull / resultant, shear / resultant);
        return pullCapacity * shearCapacity / (pullCapacity * cos * cos + shearCapacity * sin * sin);
    }
}
