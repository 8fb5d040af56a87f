namespace InstallPacket.Calc.Siting;

/// <summary>The shortest line from one point to another.</summary>
/// <param name="DistanceM">Length [m].</param>
/// <param name="AzimuthDeg">Bearing at the first point toward the second, from true north [deg], 0 &lt;= value &lt; 360.</param>
/// <param name="ArrivalAzimuthDeg">Direction of travel at the second point [deg], 0 &lt;= value &lt; 360; the bearing back is 180 degrees
/// more.</param>
public sealed record GeodesicLine(double DistanceM, double AzimuthDeg, double ArrivalAzimuthDeg);

/// <summary>A point reached along a line.</summary>
/// <param name="LatDeg">Latitude [deg], north positive.</param>
/// <param name="LonDeg">Longitude [deg], east positive, -180 &lt;= value &lt; 180.</param>
/// <param name="AzimuthDeg">Direction of travel there [deg], 0 &lt;= value &lt; 360.</param>
public sealed record GeodesicPoint(double LatDeg, double LonDeg, double AzimuthDeg);
