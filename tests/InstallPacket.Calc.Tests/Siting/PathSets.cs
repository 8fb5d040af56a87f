using System.Globalization;
using InstallPacket.Calc.Siting;
using InstallPacket.Calc.Tests.Checks;

namespace InstallPacket.Calc.Tests.Siting;

public static class PathSets
{
    // The worked path: 40 km, transmitter at 509 m, receiver at 209 m, 600 MHz; distances count from the receiver.
    private const double PathM = 40000, OwnM = 209, OtherM = 509, FrequencyMHz = 600;

    public static IReadOnlyList<ReferenceSet> All { get; } =
    [
        new()
        {
            Name = "Sun against an independent program", File = "siting/sun-position-check.csv", Source = "noaa-solar", Worth = Worth.Independent,
            Tolerance = "0.02 deg of azimuth on the sky, 0.01 deg of elevation: the equations are of low precision", Formulas = ["sun-azimuth"],
            Rows = 40, Comparisons = 80, Check = SunIndependent,
        },
        new()
        {
            Name = "Sun against the same equations", File = "siting/sun-position-check.csv", Source = "noaa-solar", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit", Formulas = ["sun-azimuth"], Rows = 40, Comparisons = 120, Check = SunSame,
        },
        new()
        {
            Name = "Elevation angles over the curved earth", File = "siting/elevation_angles.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit", Formulas = ["elevation-angle"], Rows = 6, Comparisons = 6,
            Check = r => [r.Printed("exact_deg", EffectiveEarth.ElevationAngleDeg(r.Value("h0_m"), r.Value("h_m"), r.Value("d_km") * 1000), "deg")],
        },
        new()
        {
            Name = "Fresnel radius", File = "siting/fresnel_radius.csv", Source = "itu-p526", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit, for the exact factor and for the rounded factor 550", Formulas = ["fresnel-radius"], Rows = 5, Comparisons = 10,
            Check = r =>
            [
                r.Printed("r1_exact_m", FresnelZone.RadiusM(1, r.Value("f_mhz"), r.Value("d1_km"), r.Value("d2_km")), "m"),
                r.Printed("r1_by_550_m", FresnelZone.RoundedRadiusM(1, r.Value("f_mhz"), r.Value("d1_km"), r.Value("d2_km")), "m"),
            ],
        },
        new()
        {
            Name = "Worked path over single edges", File = "siting/knife_edge_path.csv", Source = "itu-p526", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit; loss below the threshold exactly 0",
            Formulas = ["earth-bulge", "path-clearance", "knife-edge-parameter", "knife-edge-loss", "elevation-angle", "wavelength"], Rows = 3, Comparisons = 21, Check = Edge,
        },
        new()
        {
            Name = "Radio horizon", File = "siting/radio_horizon.csv", Source = "project-notes", Worth = Worth.Derived,
            Tolerance = "half a unit of the last printed digit", Formulas = ["radio-horizon"], Rows = 1, Comparisons = 1,
            Check = r => [r.Printed("d_km", EffectiveEarth.RadioHorizonKm(r.Value("h1_m"), r.Value("h2_m")), "km")],
        },
    ];

    private static SunAngles Sun(ReferenceRow r) => SunPosition.At(
        r.Value("lat"), r.Value("lon"), DateTimeOffset.Parse(r.Text("utc"), CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal));

    private static IEnumerable<Comparison> SunIndependent(ReferenceRow r)
    {
        var sun = Sun(r);
        var onSky = Math.IEEERemainder(sun.AzimuthDeg - r.Value("ephem_az_deg"), 360) * Math.Cos(sun.ElevationDeg * Math.PI / 180);
        yield return r.Expect("ephem_az_deg on the sky", 0, onSky, 0.02, "deg");
        yield return r.Within("ephem_el_deg", sun.ElevationDeg, 0.01, "deg");
    }

    private static IEnumerable<Comparison> SunSame(ReferenceRow r)
    {
        var sun = Sun(r);
        yield return r.Printed("noaa_az_deg", sun.AzimuthDeg, "deg");
        yield return r.Printed("noaa_el_deg", sun.ElevationDeg, "deg");
        yield return r.Printed("noaa_el_refracted_deg", sun.RefractedElevationDeg, "deg");
    }

    private static IEnumerable<Comparison> Edge(ReferenceRow r)
    {
        double d1 = r.Value("edge_km") * 1000, d2 = PathM - d1, edge = r.Value("edge_m");
        var clearance = EffectiveEarth.ClearanceM(OwnM, OtherM, PathM, d1, edge);
        var nu = KnifeEdge.ParameterNu(-clearance, Wavelength.Metres(FrequencyMHz), d1, d2);
        yield return r.Printed("bulge_m", EffectiveEarth.BulgeM(d1, d2), "m");
        yield return r.Printed("clearance_m", clearance, "m");
        yield return r.Printed("r1_by_550_m", FresnelZone.RoundedRadiusM(1, FrequencyMHz, d1 / 1000, d2 / 1000), "m");
        yield return r.Printed("nu", nu, "");
        yield return r.Text("j_db") == "0" ? r.Within("j_db", KnifeEdge.LossDb(nu), 1e-12, "dB") : r.Printed("j_db", KnifeEdge.LossDb(nu), "dB");
        yield return r.Printed("el_edge_deg", EffectiveEarth.ElevationAngleDeg(OwnM, edge, d1), "deg");
        yield return r.Printed("el_tx_deg", EffectiveEarth.ElevationAngleDeg(OwnM, OtherM, PathM), "deg");
    }
}
