namespace InstallPacket.Calc.Siting;

/// <summary>A direction as sine and cosine.</summary>
internal readonly record struct Direction(double Sin, double Cos)
{
    public static Direction Of(double sin, double cos)
    {
        (sin, cos) = Degrees.Normalise(sin, cos);
        return new Direction(sin, cos);
    }
}

/// <summary>Two points brought to the form |lat1| &gt;= |lat2|, lat1 &lt;= 0, longitudes 0 and 0...180 degrees apart.</summary>
internal readonly struct PointPair
{
    public PointPair(double lat1Deg, double lat2Deg, double turnDeg)
    {
        (Lat1Deg, TurnDeg) = (lat1Deg, turnDeg);
        (SinLambda, CosLambda) = Degrees.SinCos(turnDeg);
        (SinBeta1, CosBeta1) = Wgs84.ReducedLatitude(lat1Deg);
        (SinBeta2, CosBeta2) = Wgs84.ReducedLatitude(lat2Deg);
        // Equal latitudes must give equal pairs, or their difference is rounding noise.
        if (CosBeta1 < -SinBeta1 && CosBeta2 == CosBeta1) SinBeta2 = Math.CopySign(SinBeta1, SinBeta2);
        else if (CosBeta1 >= -SinBeta1 && Math.Abs(SinBeta2) == -SinBeta1) CosBeta2 = CosBeta1;
    }

    public double Lat1Deg { get; }

    public double TurnDeg { get; }

    public double SinLambda { get; }

    public double CosLambda { get; }

    public double SinBeta1 { get; }

    public double CosBeta1 { get; }

    public double SinBeta2 { get; }

    public double CosBeta2 { get; }

    public bool SameLatitude => CosBeta1 == CosBeta2 && Math.Abs(SinBeta2) == -SinBeta1;
}

/// <summary>A trial geodesic from the first point that reaches the latitude of the second.</summary>
internal readonly struct GeodesicArc
{
    private readonly double _sinAlpha0, _sigma12;
    private readonly double _sinSigma1, _cosSigma1, _sinSigma2, _cosSigma2;
    private readonly double _sinOmega12, _cosOmega12;
    private readonly GeodesicSeries _series;

    public GeodesicArc(PointPair p, Direction alpha1)
        : this(p, Usable(p, alpha1), Arrival(p, Usable(p, alpha1)), 0)
    {
    }

    public GeodesicArc(PointPair p, Direction alpha1, Direction alpha2, double meridianCosAlpha0)
    {
        (Alpha1, Alpha2) = (alpha1, alpha2);
        _sinAlpha0 = meridianCosAlpha0 > 0 ? 0 : alpha1.Sin * p.CosBeta1;
        var across = alpha1.Sin * p.SinBeta1;
        var cosAlpha0 = meridianCosAlpha0 > 0 ? meridianCosAlpha0 : Math.Sqrt(alpha1.Cos * alpha1.Cos + across * across);
        _series = new GeodesicSeries(cosAlpha0);
        double x1 = alpha1.Cos * p.CosBeta1, x2 = alpha2.Cos * p.CosBeta2;
        double y1 = _sinAlpha0 * p.SinBeta1, y2 = _sinAlpha0 * p.SinBeta2;
        (_sinSigma1, _cosSigma1) = Degrees.Normalise(p.SinBeta1, x1);
        (_sinSigma2, _cosSigma2) = Degrees.Normalise(p.SinBeta2, x2);
        _sigma12 = Math.Atan2(Math.Max(0, _cosSigma1 * _sinSigma2 - _sinSigma1 * _cosSigma2), _cosSigma1 * _cosSigma2
            + _sinSigma1 * _sinSigma2);
        (_sinOmega12, _cosOmega12) = (Math.Max(0, x1 * y2 - y1 * x2), x1 * x2 + y1 * y2);
    }

    public Direction Alpha1 { get; }

    public Direction Alpha2 { get; }

    public double DistanceM() =>
        Wgs84.B * _series.A1 * (_sigma12 + _series.B1(_sinSigma2, _cosSigma2) - _series.B1(_sinSigma1, _cosSigma1));

    /// <summary>By how much the trial misses the wanted longitude, and how fast that changes with the starting azimuth.</summary>
    public (double Error, double Slope) LongitudeError(PointPair p)
    {
        var miss = Math.Atan2(
            _sinOmega12 * p.CosLambda - _cosOmega12 * p.SinLambda,
            _cosOmega12 * p.CosLambda + _sinOmega12 * p.SinLambda);
        var b3 = _series.B3(_sinSigma2, _cosSigma2) - _series.B3(_sinSigma1, _cosSigma1);
        var error = miss - Wgs84.F * _series.A3 * _sinAlpha0 * (_sigma12 + b3);
        var d1 = Math.Sqrt(1 + Wgs84.Ep2 * p.SinBeta1 * p.SinBeta1);
        var slope = Alpha2.Cos == 0
            ? -2 * (1 - Wgs84.F) * d1 / p.SinBeta1
            : ReducedLengthOverB(p, d1) * (1 - Wgs84.F) / (Alpha2.Cos * p.CosBeta2);
        return (error, slope);
    }

    private double ReducedLengthOverB(PointPair p, double d1)
    {
        var d2 = Math.Sqrt(1 + Wgs84.Ep2 * p.SinBeta2 * p.SinBeta2);
        var j12 = (_series.A1 - _series.A2) * _sigma12
            + _series.A1 * (_series.B1(_sinSigma2, _cosSigma2) - _series.B1(_sinSigma1, _cosSigma1))
            - _series.A2 * (_series.B2(_sinSigma2, _cosSigma2) - _series.B2(_sinSigma1, _cosSigma1));
        return d2 * _cosSigma1 * _sinSigma2 - d1 * _sinSigma1 * _cosSigma2 - _cosSigma1 * _cosSigma2 * j12;
    }

    // An equatorial line past the cut has no direction of its own; a hair south decides.
    private static Direction Usable(PointPair p, Direction alpha1) =>
        p.SinBeta1 == 0 && alpha1.Cos == 0 ? new Direction(alpha1.Sin, -1e-160) : alpha1;

    private static Direction Arrival(PointPair p, Direction alpha1)
    {
        var sin = p.CosBeta2 != p.CosBeta1 ? alpha1.Sin * p.CosBeta1 / p.CosBeta2 : alpha1.Sin;
        if (p.SameLatitude) return new Direction(sin, Math.Abs(alpha1.Cos));
        var along = alpha1.Cos * p.CosBeta1;
        // cos^2 beta2 - cos^2 beta1 by the factors that do not cancel at this latitude.
        var x = p.CosBeta1 < -p.SinBeta1
            ? (p.CosBeta2 - p.CosBeta1) * (p.CosBeta1 + p.CosBeta2)
            : (p.SinBeta1 - p.SinBeta2) * (p.SinBeta1 + p.SinBeta2);
        return new Direction(sin, Math.Sqrt(along * along + x) / p.CosBeta2);
    }
}
