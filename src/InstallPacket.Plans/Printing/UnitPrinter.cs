using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Siting;

namespace InstallPacket.Plans.Printing;

/// <summary>Prints the plan's numbers in the units of the job. Rounding happens here and nowhere else.</summary>
/// <param name="usUnits">Feet, inches, miles, Fahrenheit, pound-force inches.</param>
/// <param name="levelUnit">The unit of levels.</param>
public sealed class UnitPrinter(bool usUnits, LevelUnit levelUnit)
{
    /// <summary>The printer of a job, for its findings.</summary>
    internal static UnitPrinter Of(Job job) => new(job.Units == UnitFamily.Us, job.LevelUnit);

    /// <summary>The printer of a plan.</summary>
    public static UnitPrinter Of(JobFacts job) => new(job.Units == UnitFamily.Us, job.LevelUnit);

    /// <summary>A length of the house, from metres: <c>4.50 m</c> or <c>14 ft 9 in</c>.</summary>
    public string Length(double metres) => usUnits ? FeetInches.Write(metres) : UnitText.Write(metres, 2, "m");

    /// <summary>A distance to keep, from metres: rounded up, never down.</summary>
    public string AtLeast(double metres) => usUnits
        ? FeetInches.Write(Math.Ceiling(metres / 0.0254 - 1e-6) * 0.0254) : UnitText.Write(Math.Ceiling(metres * 100 - 1e-6) / 100, 2, "m");

    /// <summary>A length of cable, from metres: <c>12.3 m</c> or <c>40 ft 6 in</c>.</summary>
    public string Cable(double metres) => usUnits ? FeetInches.Write(metres) : UnitText.Write(metres, 1, "m");

    /// <summary>A small length, from metres: <c>150 mm</c> or <c>6 in</c>.</summary>
    public string Small(double metres) => usUnits ? FeetInches.Fraction(metres, 16) : UnitText.Write(metres * 1000, 0, "mm");

    /// <summary>A drill size, from metres: <c>3.2 mm</c> or <c>1/8 in</c>.</summary>
    public string Drill(double metres) => usUnits ? FeetInches.Fraction(metres, 64) : UnitText.Write(metres * 1000, 1, "mm");

    /// <summary>A distance over land, from kilometres: <c>41.2 km</c> or <c>25.6 mi</c>.</summary>
    public string Distance(double kilometres) => usUnits ? UnitText.Write(kilometres / 1.609344, 1, "mi") : UnitText.Write(kilometres, 1, "km");

    /// <summary>A height of land, from metres: <c>287 m</c> or <c>942 ft</c>.</summary>
    public string Height(double metres) => usUnits ? UnitText.Write(metres / 0.3048, 0, "ft") : UnitText.Write(metres, 0, "m");

    /// <summary>A bearing in whole degrees, <c>000</c> to <c>359</c>.</summary>
    public static string Bearing(double degrees) => UnitText.Number(CompassBearing.RoundForPrint(degrees, 0), 0).PadLeft(3, '0') + "°";

    /// <summary>An angle with one decimal.</summary>
    public static string Angle(double degrees) => UnitText.Number(degrees, 1) + "°";

    /// <summary>A level, from dBm, in the unit of the job.</summary>
    public string Level(double dbm) => LevelNumber(dbm) + "\u00A0" + LevelUnit;

    /// <summary>A level, from dBm, in the unit of the job, without that unit.</summary>
    public string LevelNumber(double dbm) => UnitText.Number(LevelIn(dbm), 1);

    /// <summary>The unit of levels as printed.</summary>
    public string LevelUnit => levelUnit == Jobs.LevelUnit.DBuV ? "dBµV" : Word.Of(levelUnit);

    /// <summary>A level, from dBm, as a number in the unit of the job.</summary>
    public double LevelIn(double dbm)
    {
        var level = Calc.Quantities.Level.FromDbm(dbm);
        return levelUnit switch
        {
            Jobs.LevelUnit.DBm => level.Dbm,
            Jobs.LevelUnit.DBmV => level.DbmV,
            Jobs.LevelUnit.DBuV => level.DbuV,
        };
    }

    /// <summary>A ratio in decibels.</summary>
    public static string Ratio(double db) => UnitText.Write(db, 1, "dB");

    /// <summary>A margin in decibels, always with its sign.</summary>
    public static string Margin(double db)
    {
        var text = Ratio(db);
        return text[0] is '\u2212' ? text : "+" + text;
    }

    /// <summary>A chance in per cent, rounded down so that it never reads better than it is; two figures are all that such a number carries.</summary>
    public static string Chance(double percent) => percent >= 99 ? "over 99 %" : percent < 1 ? "under 1 %" : UnitText.Write(Math.Floor(percent), 0, "%");

    /// <summary>A temperature, from degrees Celsius.</summary>
    public string Temperature(double celsius) => usUnits ? UnitText.Write(celsius * 9 / 5 + 32, 0, "°F") : UnitText.Write(celsius, 0, "°C");

    /// <summary>A force, from newtons.</summary>
    public string Force(double newtons) => usUnits ? UnitText.Write(newtons / 4.4482216152605, 0, "lbf") : UnitText.Write(newtons, 0, "N");

    /// <summary>A mass, from kilograms.</summary>
    public string Mass(double kilograms) => usUnits ? UnitText.Write(kilograms / 0.45359237, 0, "lb") : UnitText.Write(kilograms, kilograms < 10 ? 1 : 0, "kg");

    /// <summary>A stress, from pascals: of a roof in the unit of wind pressure, of steel in megapascals or kips per square inch.</summary>
    public string Stress(double pascals) => usUnits ? UnitText.Write(pascals / 6894757.293168, 1, "ksi") : UnitText.Write(pascals / 1e6, 0, "MPa");

    /// <summary>A bending moment, from newton metres.</summary>
    public string Moment(double newtonMetres) => usUnits ? UnitText.Write(newtonMetres / 1.3558179483, 0, "lbf ft") : UnitText.Write(newtonMetres, 0, "N m");

    /// <summary>A wind speed, from metres per second.</summary>
    public string Speed(double metresPerSecond) => usUnits ? UnitText.Write(metresPerSecond / 0.44704, 0, "mph") : UnitText.Write(metresPerSecond, 1, "m/s");

    /// <summary>A wind pressure, from pascals.</summary>
    public string Pressure(double pascals) => usUnits ? UnitText.Write(pascals / 47.88026, 1, "lbf/ft²") : UnitText.Write(pascals, 0, "Pa");

    /// <summary>An area, from square metres.</summary>
    public string WindArea(double squareMetres) => usUnits ? UnitText.Write(squareMetres / (0.3048 * 0.3048), 2, "ft²") : UnitText.Write(squareMetres, 2, "m²");

    /// <summary>A torque, from newton metres.</summary>
    public string Torque(double newtonMetres)
    {
        const double poundFootNm = 1.3558179483;
        if (!usUnits) return UnitText.Write(newtonMetres, 1, "N m");
        var footPounds = newtonMetres / poundFootNm;
        return footPounds < 5 ? UnitText.Write(footPounds * 12, 0, "lbf in") : UnitText.Write(footPounds, 0, "lbf ft");
    }

    /// <summary>A coordinate with its letter.</summary>
    public static string Coordinate(double degrees, bool latitude) =>
        UnitText.Number(Math.Abs(degrees), 5) + "° " + (latitude ? degrees < 0 ? "S" : "N" : degrees < 0 ? "W" : "E");
}
