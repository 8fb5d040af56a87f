namespace InstallPacket.Calc.Quantities;

/// <summary>Which north a bearing counts from.</summary>
public enum North
{
    /// <summary>Geographic north.</summary>
    True,

    /// <summary>The north of an undisturbed compass needle.</summary>
    Magnetic,
}

/// <summary>A direction, clockwise in degrees from a stated north, kept in 0 &lt;= value &lt; 360.</summary>
public readonly record struct Bearing
{
    private Bearing(double degrees, North north) => (Degrees, North) = (Wrap(degrees), north);

    /// <summary>Degrees clockwise, 0 &lt;= value &lt; 360.</summary>
    public double Degrees { get; }

    /// <summary>The north it counts from.</summary>
    public North North { get; }

    /// <summary>A bearing from true north.</summary>
    public static Bearing FromTrue(double degrees) => new(degrees, North.True);

    /// <summary>A bearing from magnetic north.</summary>
    public static Bearing FromMagnetic(double degrees) => new(degrees, North.Magnetic);

    /// <summary>Folds any angle into 0 &lt;= value &lt; 360.</summary>
    public static double Wrap(double degrees)
    {
        var r = degrees % 360;
        if (r < 0) r += 360;
        return r >= 360 ? 0 : r;
    }

    /// <summary>The turn from one direction to another, -180 &lt; value &lt;= 180, positive clockwise.</summary>
    public static double Turn(double fromDegrees, double toDegrees)
    {
        var d = Wrap(toDegrees - fromDegrees);
        return d > 180 ? d - 360 : d;
    }
}
