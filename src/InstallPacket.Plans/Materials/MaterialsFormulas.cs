using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans.Materials;

/// <summary>The sums of the materials planners.</summary>
public static class MaterialsFormulas
{
    private const string Own = "project-notes";

    /// <summary>Price of a line.</summary>
    public static readonly Formula LinePrice = new(
        "line-price", "Price of what is used of a part", "a = p q, rounded to hundredths",
            new("a", "", "amount in the currency of the job"),
        [new("p", "", "price of a piece or a metre"), new("q", "", "pieces or metres that the plan uses")], Own, "product",
            Provenance.Derived)
    {
        Method = v => Hundredths(v[0] * v[1]),
    };

    /// <summary>Tax on top.</summary>
    public static readonly Formula Tax = new(
        "tax-on-materials", "Tax on the materials", "t = s r / 100, rounded to hundredths",
            new("t", "", "amount in the currency of the job"),
        [new("s", "", "sum of the lines"), new("r", "%", "tax")], Own, "product; the rate is the job's", Provenance.Derived)
    {
        Method = v => Hundredths(v[0] * v[1] / 100),
    };

    /// <summary>Sum with tax.</summary>
    public static readonly Formula PriceTotal = new(
        "price-total", "Materials with tax", "T = s + t", new("T", "", "amount in the currency of the job"),
        [new("s", "", "sum of the lines"), new("t", "", "tax")], Own, "sum", Provenance.Derived)
    {
        Method = v => Hundredths(v[0] + v[1]),
    };

    /// <summary>Hours of a task.</summary>
    public static readonly Formula TaskHours = new(
        "task-hours", "Person-hours of a task", "h = n e", new("h", "h", "person-hours"),
        [new("n", "", "how often, or metres"), new("e", "h", "hours for each: the job's own, or the table of rough values")], Own,
            "rough values of ours; replace them by those of the firm", Provenance.Memory)
    {
        Method = v => v[0] * v[1],
    };

    /// <summary>Hours by the clock.</summary>
    public static readonly Formula ClockHours = new(
        "clock-hours", "Hours by the clock", "c = H / n", new("c", "h", "hours"), [new("H", "h", "person-hours"), new("n", "", "crew")],
        Own, "everybody is busy all the time", Provenance.Derived)
    {
        Method = v => v[0] / v[1],
    };

    /// <summary>Length of the day.</summary>
    public static readonly Formula<double> Daylight = new Formula(
        "daylight-hours", "Hours of daylight", "d = 24 n / 288, n of 288 moments of the day with the sun's centre above -0.833 deg",
            new("d", "h", "hours"),
        [new("lat", "deg", "latitude"), new("lon", "deg", "longitude, east positive")], "noaa-solar",
            "sunrise and sunset at -0.833 deg; counted every five minutes", Provenance.Memory)
        .By<double>((hours, _) => hours);

    private static double Hundredths(double amount) => Math.Round(amount, 2, MidpointRounding.AwayFromZero);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Formula> All => [LinePrice, Tax, PriceTotal, TaskHours, ClockHours, Daylight];
}
