using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Siting;

/// <summary>The earth's magnetic field from the World Magnetic Model in force at a date.</summary>
public static class MagneticModel
{
    /// <summary>First date for which any model here is used.</summary>
    public const double FirstYear = 2020.0;

    /// <summary>Last date for which any model here is used.</summary>
    public const double LastYear = 2030.0;

    // The 2025 model is released for use from 13 November 2024 on.
    private static readonly double Wmm2025From = DecimalYear.Of(new DateOnly(2024, 11, 13));

    // Reference radius of the model, not of the ellipsoid.
    private const double MagneticRadiusKm = 6371.2;
    private const double EquatorKm = 6378.137;

    /// <summary>The declination from the model.</summary>
    public static readonly Formula DeclinationFormula = new(
        "magnetic-declination",
        "Magnetic declination, east positive",
        "D = atan2(Y, X); X, Y = gradient of the degree-12 spherical harmonic potential at (phi, lambda, h), coefficients g + (t - t0) gdot",
        new("D", "deg", "angle from true north to magnetic north"),
        [new("phi", "deg", "latitude"), new("lambda", "deg", "longitude, east positive"), new("h", "km", "height"),
            new("t", "yr", "date as decimal year")],
        "wmm-2025", "technical report, equations of the model (seen in extract; proved by its test values)")
    {
        Method = v => At(v[0], v[1], v[2], v[3]).DeclinationDeg,
    };

    /// <summary>The error of the declination.</summary>
    public static readonly Formula<MagneticField> DeclinationSigmaFormula = new Formula(
        "declination-sigma",
        "One-sigma error of the declination",
        "sigma = sqrt(0.26^2 + (5417 / H)^2); 5625 in place of 5417 for the 2020 model",
        new("sigma", "deg", "global one-sigma error, without iron nearby"),
        [new("H", "nT", "horizontal field")],
        "wmm-2025", "error model").By<MagneticField>((field, _) => field.SigmaDeclinationDeg);

    /// <summary>Whether a model covers a date: from 2020.0 to 2030.0. Outside, print true bearings only and say why.</summary>
    /// <param name="decimalYear">Date [decimal year].</param>
    /// <returns>True when <see cref="At(double, double, double, double)"/> will answer.</returns>
    public static bool Covers(double decimalYear) => decimalYear is >= FirstYear and <= LastYear;

    /// <summary>The field at a place and date, from the model in force then.</summary>
    /// <param name="latDeg">Latitude [deg], -90 to 90; outside throws.</param>
    /// <param name="lonDeg">Longitude [deg], east positive, any turn.</param>
    /// <param name="heightKm">Height above sea level [km], -1 to 850; outside throws.</param>
    /// <param name="decimalYear">Date [decimal year]; outside <see cref="Covers"/> throws: the field is never extrapolated.</param>
    /// <returns>The field.</returns>
    public static MagneticField At(double latDeg, double lonDeg, double heightKm, double decimalYear)
    {
        if (!Covers(decimalYear))
            throw new ArgumentOutOfRangeException(nameof(decimalYear), decimalYear, "No magnetic model covers this date.");
        var model = decimalYear >= Wmm2025From ? MagneticCoefficients.Wmm2025 : MagneticCoefficients.Wmm2020;
        return At(model, latDeg, lonDeg, heightKm, decimalYear);
    }

    /// <summary>The field from a given model, at any date; for checks and comparison of models.</summary>
    /// <param name="model">The coefficients.</param>
    /// <param name="latDeg">Latitude [deg], -90 to 90; outside throws.</param>
    /// <param name="lonDeg">Longitude [deg], east positive.</param>
    /// <param name="heightKm">Height [km], -1 to 850; outside throws.</param>
    /// <param name="decimalYear">Date [decimal year].</param>
    /// <returns>The field.</returns>
    public static MagneticField At(MagneticCoefficients model, double latDeg, double lonDeg, double heightKm, double decimalYear)
    {
        ArgumentNullException.ThrowIfNull(model);
        if (!(Math.Abs(latDeg) <= 90)) throw new ArgumentOutOfRangeException(nameof(latDeg), latDeg,
            "A latitude lies between -90 and 90 degrees.");
        if (!(heightKm is >= -1 and <= 850)) throw new ArgumentOutOfRangeException(nameof(heightKm), heightKm,
            "The model holds from -1 to 850 km.");
        var place = Geocentric.Of(latDeg, heightKm);
        var functions = new LegendreTable(place.Sin, place.Cos, model.Degree);
        var years = decimalYear - model.EpochYear;
        var main = place.ToEllipsoid(Sum(model.Degree, lonDeg, place, functions, (n, m) => (model.G(n, m, years), model.H(n, m, years))));
        var rate = place.ToEllipsoid(Sum(model.Degree, lonDeg, place, functions, (n, m) => (model.GDot(n, m), model.HDot(n, m))));
        return new MagneticField(main.X, main.Y, main.Z, rate.X, rate.Y, rate.Z)
        {
            ModelName = model.Name,
            SigmaDeclinationDeg = SigmaDeg(Math.Sqrt(main.X * main.X + main.Y * main.Y), model.SigmaTermNT),
        };
    }

    private static double SigmaDeg(double horizontalNT, double termNT) => Math.Sqrt(0.26 * 0.26 + Math.Pow(termNT / horizontalNT, 2));

    // Equation (4): the three geocentric components; each (a/r)^(n+2) is carried along.
    private static Vector Sum(int degree, double lonDeg, Geocentric place, LegendreTable f, Func<int, int,
        (double G, double H)> coefficient)
    {
        double x = 0, y = 0, z = 0;
        var ratio = MagneticRadiusKm / place.RadiusKm;
        var power = ratio * ratio;
        for (var n = 1; n <= degree; n++)
        {
            power *= ratio;
            for (var m = 0; m <= n; m++)
            {
                var (g, h) = coefficient(n, m);
                var (sin, cos) = Degrees.SinCos(m * lonDeg);
                x += power * (g * cos + h * sin) * f.Q(n, m);
                y += power * m * (g * sin - h * cos) * f.P(n, m);
                z -= power * (n + 1) * (g * cos + h * sin) * f.P(n, m);
            }
        }
        return new Vector(x, y / place.Cos, z);
    }

    private readonly record struct Vector(double X, double Y, double Z);

    private readonly record struct Geocentric(double RadiusKm, double Sin, double Cos, double TiltSin, double TiltCos)
    {
        // Equation (1). The cosine is kept off zero so that a pole gives a finite field.
        public static Geocentric Of(double latDeg, double heightKm)
        {
            var (s, c) = Degrees.SinCos(latDeg);
            var normal = EquatorKm / Math.Sqrt(1 - Wgs84.E2 * s * s);
            var p = (normal + heightKm) * c;
            var z = (normal * (1 - Wgs84.E2) + heightKm) * s;
            var r = Math.Sqrt(p * p + z * z);
            var (sin, cos) = (z / r, Math.Max(p / r, 1e-10));
            return new Geocentric(r, sin, cos, sin * c - cos * s, cos * c + sin * s);
        }

        // Equation (5): turn by psi = phi' - phi.
        public Vector ToEllipsoid(Vector v) => new(v.X * TiltCos - v.Z * TiltSin, v.Y, v.X * TiltSin + v.Z * TiltCos);
    }
}
