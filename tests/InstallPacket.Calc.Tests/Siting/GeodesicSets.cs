using InstallPacket.Calc.Siting;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Siting;

/// <summary>
/// Distances within a micrometre; azimuth errors as metres across the line, the azimuth error times min(s, 6400 km), within two.
/// The reference's own rounding (half a micrometre, 5e-12 degrees) is part of that.
/// </summary>
public static class GeodesicSets
{
    private const double DistanceM = 1e-6;
    private const double AcrossM = 2e-6;
    private const double LeverM = 6.4e6;

    public static IReadOnlyList<ReferenceSet> All { get; } =
    [
        new()
        {
            Name = "Geodesic inverse, 500 lines", File = "siting/geodesic-wgs84-vectors.csv", Source = "karney-2013", Worth = Worth.Independent,
            Tolerance = "1e-6 m in length; 2e-6 m across the line for azimuths (azimuths have no meaning at equal or exactly opposite points)",
            Formulas = ["path-distance", "true-bearing"], Rows = 500, Comparisons = 500 + 2 * 493, Check = Inverse,
        },
        new()
        {
            Name = "Geodesic direct, 500 lines", File = "siting/geodesic-wgs84-vectors.csv", Source = "karney-2013", Worth = Worth.Independent,
            Tolerance = "2e-6 m on the ground: the printed length (1e-6 m) and azimuth (1e-11 deg) of the reference are rounded",
            Formulas = ["path-point"], Rows = 500, Comparisons = 495, RowsLeftOut = 5, LeftOutBecause = "length 0: nothing to travel", Check = Direct,
        },
        new()
        {
            Name = "Geodesic inverse, 100 published lines", File = "siting/geodtest-100.csv", Source = "karney-2013", Worth = Worth.Published,
            Tolerance = "1e-7 m in length; 1e-7 m at the far end for azimuths, error times reduced length m12: most lines are nearly antipodal, where a nanometre at the end turns the start by much",
            Formulas = ["path-distance", "true-bearing"], Rows = 100, Comparisons = 300, Check = Published,
        },
        new()
        {
            Name = "Geodesic direct, 100 published lines", File = "siting/geodtest-100.csv", Source = "karney-2013", Worth = Worth.Published,
            Tolerance = "1e-7 m on the ground", Formulas = ["path-point"], Rows = 100, Comparisons = 100, Check = r => Travel(r, 1e-7),
        },
    ];

    private static IEnumerable<Comparison> Inverse(ReferenceRow r)
    {
        var line = Geodesic.Inverse(r.Value("lat1"), r.Value("lon1"), r.Value("lat2"), r.Value("lon2"));
        var s12 = r.Value("s12");
        yield return r.Within("s12", line.DistanceM, DistanceM, "m");
        if (s12 == 0 || HasTwoShortestLines(r)) yield break;
        yield return r.Expect("azi1", 0, Across(r.Value("azi1"), line.AzimuthDeg, s12), AcrossM, "m");
        yield return r.Expect("azi2", 0, Across(r.Value("azi2"), line.ArrivalAzimuthDeg, s12), AcrossM, "m");
    }

    private static IEnumerable<Comparison> Published(ReferenceRow r)
    {
        var line = Geodesic.Inverse(r.Value("lat1"), r.Value("lon1"), r.Value("lat2"), r.Value("lon2"));
        var lever = Math.Abs(r.Value("m12"));
        yield return r.Within("s12", line.DistanceM, 1e-7, "m");
        yield return r.Expect("azi1", 0, TurnRad(r.Value("azi1"), line.AzimuthDeg) * lever, 1e-7, "m");
        yield return r.Expect("azi2", 0, TurnRad(r.Value("azi2"), line.ArrivalAzimuthDeg) * lever, 1e-7, "m");
    }

    private static IEnumerable<Comparison> Direct(ReferenceRow r) => r.Value("s12") == 0 ? [] : Travel(r, 2e-6);

    private static IEnumerable<Comparison> Travel(ReferenceRow r, double tolerance)
    {
        var point = Geodesic.Direct(r.Value("lat1"), r.Value("lon1"), r.Value("azi1"), r.Value("s12"));
        var miss = Geodesic.Inverse(r.Value("lat2"), r.Value("lon2"), point.LatDeg, point.LonDeg).DistanceM;
        yield return r.Expect("end point", 0, miss, tolerance, "m");
    }

    private static double Across(double expectedDeg, double computedDeg, double s12) =>
        TurnRad(expectedDeg, computedDeg) * Math.Min(s12, LeverM);

    private static double TurnRad(double expectedDeg, double computedDeg) => Math.Abs(Math.IEEERemainder(computedDeg - expectedDeg, 360)) * Math.PI / 180;

    private static bool HasTwoShortestLines(ReferenceRow r) =>
        r.Value("lat1") == -r.Value("lat2") && Math.Abs(r.Value("lon2") - r.Value("lon1")) == 180;
}
