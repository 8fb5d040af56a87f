using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Siting;

namespace InstallPacket.Plans.Printing;

/// <summary>Prints the plan's numbers in the units of the job. Rounding happens here and nowhere else.</summary>
/// <param name="usUnits">Feet, inches, miles, Fahrenheit, pound-force inches.</param>
/// <param name="levelUnit">The unit of levels.</param>
/// <param name="words">Signs and unit words of the language; English when null.</param>
public sealed class UnitPrinter(bool usUnits, LevelUnit levelUnit, NumberWords? words = null)
{
    /// <summary>English signs and metric units, for what is the same in every job.</summary>
    public static readonly UnitPrinter Plain = new(false, Jobs.LevelUnit.DBuV);

    private readonly NumberWords _words = words ?? NumberWords.Default;

    /// <summary>Signs and unit words of the language.</summary>
    public NumberWords Words => _words;

    /// <summary>A number with fixed decimals.</summary>
    public string Number(double value, int decimals)
    {
        if (!double.IsFinite(value)) return _words.Unknown;
        return Signed(UnitText.Number(value, decimals));
    }

    /// <summary>A number with fixed decimals and its unit.</summary>
    public string Write(double value, int decimals, string unit) => Number(value, decimals) + "\u00A0" + _words.Unit(unit);

    // The signs of the language in a text that has those of the plan.
    private string Signed(string number)
    {
        if (_words.Minus != "\u2212") number = number.Replace("\u2212", _words.Minus, StringComparison.Ordinal);
        return _words.Decimal == "." ? number : number.Replace(".", _words.Decimal, StringComparison.Ordinal);
    }

    /// <summary>The printer of a job, for its findings.</summary>
    internal static UnitPrinter Of(Job job) => new(job.Units == UnitFamily.Us, job.LevelUnit);

    /// <summary>The printer of a plan.</summary>
    public static UnitPrinter Of(JobFacts job, NumberWords? words = null) => new(job.Units == UnitFamily.Us, job.LevelUnit, words);

    /// <summary>A length of the house, from metres: <c>4.50 m</c> or <c>14 ft 9 in</c>.</summary>
    public string Length(double metres) => usUnits ? FeetInches.Write(metres, _words) : Write(metres, 2, "m");

    /// <summary>A distance to keep, from metres: rounded up, never down.</summary>
    public string AtLeast(double metres) => usUnits
        ? FeetInches.Write(Math.Ceiling(metres / 0.0254 - 1e-6) * 0.0254, _words) : Write(Math.Ceiling(metres * 100 - 1e-6) / 100, 2, "m");

    /// <summary>A length of cable, from metres: <c>12.3 m</c> or <c>40 ft 6 in</c>.</summary>
    public string Cable(double metres) => usUnits ? FeetInches.Write(metres, _words) : Write(metres, 1, "m");

    /// <summary>A small length, from metres: <c>150 mm</c> or <c>6 in</c>.</summary>
    public string Small(double metres) => usUnits ? FeetInches.Fraction(metres, 16, _words) : Write(metres * 1000, 0, "mm");

    /// <summary>A drill size, from metres: <c>3.2 mm</c> or <c>1/8 in</c>.</summary>
    public string Drill(double metres) => usUnits ? FeetInches.Fraction(metres, 64, _words) : Write(metres * 1000, 1, "mm");

    /// <summary>A distance over land, from kilometres: <c>41.2 km</c> or <c>25.6 mi</c>.</summary>
    public string Distance(double kilometres) => usUnits ? Write(kilometres / 1.609344, 1, "mi") : Write(kilometres, 1, "km");

    /// <summary>A height of land, from metres: <c>287 m</c> or <c>942 ft</c>.</summary>
    public string Height(double metres) => usUnits ? Write(metres / 0.3048, 0, "ft") : Write(metres, 0, "m");

    /// <summary>A bearing in whole degrees, <c>000</c> to <c>359</c>.</summary>
    public string Bearing(double degrees) => Number(CompassBearing.RoundForPrint(degrees, 0), 0).PadLeft(3, '0') + "°";

    /// <summary>An angle with one decimal.</summary>
    public string Angle(double degrees) => Number(degrees, 1) + "°";

    /// <summary>A level, from dBm, in the unit of the job.</summary>
    public string Level(double dbm) => LevelNumber(dbm) + "\u00A0" + LevelUnit;

    /// <summary>A level, from dBm, in the unit of the job, without that unit.</summary>
    public string LevelNumber(double dbm) => Number(LevelIn(dbm), 1);

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
    public string Ratio(double db) => Write(db, 1, "dB");

    /// <summary>A margin in decibels, always with its sign.</summary>
    public string Margin(double db)
    {
        var text = Ratio(db);
        return text.StartsWith(_words.Minus, StringComparison.Ordinal) ? text : "+" + text;
    }

    /// <summary>A chance in per cent, rounded down so that it never reads better than it is; two figures are all that such a number
    /// carries.</summary>
    public string Chance(double percent) => percent >= 99 ? _words.Over99 : percent < 1 ? _words.Under1
        : Write(Math.Floor(percent), 0, "%");

    /// <summary>A temperature, from degrees Celsius.</summary>
    public string Temperature(double celsius) => usUnits ? Write(celsius * 9 / 5 + 32, 0, "°F") : Write(celsius, 0, "°C");

    /// <summary>A force, from newtons.</summary>
    public string Force(double newtons) => usUnits ? Write(newtons / 4.4482216152605, 0, "lbf") : Write(newtons, 0, "N");

    /// <summary>A mass, from kilograms.</summary>
    public string Mass(double kilograms) => usUnits ? Write(kilograms / 0.45359237, 0, "lb")
        : Write(kilograms, kilograms < 10 ? 1 : 0, "kg");

    /// <summary>A stress, from pascals: of a roof in the unit of wind pressure, of steel in megapascals or kips per square inch.</summary>
    public string Stress(double pascals) => usUnits ? Write(pascals / 6894757.293168, 1, "ksi") : Write(pascals / 1e6, 0, "MPa");

    /// <summary>A bending moment, from newton metres.</summary>
    public string Moment(double newtonMetres) => usUnits ? Write(newtonMetres / 1.3558179483, 0, "lbf ft") : Write(newtonMetres, 0, "N m");

    /// <summary>A wind speed, from metres per second.</summary>
    public string Speed(double metresPerSecond) => usUnits ? Write(metresPerSecond / 0.44704, 0, "mph") : Write(metresPerSecond, 1, "m/s");

    /// <summary>A wind pressure, from pascals.</summary>
    public string Pressure(double pascals) => usUnits ? Write(pascals / 47.88026, 1, "lbf/ft²") : Write(pascals, 0, "Pa");

    /// <summary>An area, from square metres.</summary>
    public string WindArea(double squareMetres) => usUnits ? Write(squareMetres / (0.3048 * 0.3048), 2, "ft²")
        : Write(squareMetres, 2, "m²");

    /// <summary>A torque, from newton metres.</summary>
    public string Torque(double newtonMetres)
    {
        const double poundFootNm = 1.3558179483;
        if (!usUnits) return Write(newtonMetres, 1, "N m");
        var footPounds = newtonMetres / poundFootNm;
        return footPounds < 5 ? Write(footPounds * 12, 0, "lbf in") : Write(footPounds, 0, "lbf ft");
    }

    /// <summary>A coordinate with its letter.</summary>
    public string Coordinate(double degrees, bool latitude) =>
        Number(Math.Abs(degrees), 5) + "° " + _words.Letters[(latitude ? 0 : 2) + (degrees < 0 ? 1 : 0)];
}
