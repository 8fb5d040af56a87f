using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting;

/// <summary>Duty ratings of ladders: person, clothes, tools and what is carried, all together.</summary>
/// <param name="Word">The rating.</param>
/// <param name="CapacityKg">What it bears.</param>
public sealed record LadderRating(string Word, double CapacityKg)
{
    private const double PoundKg = 0.45359237;

    /// <summary>The rating for a load.</summary>
    public static readonly Formula<bool> RatingFormula = new Formula(
        "ladder-duty-rating",
        "Duty rating of the ladder",
        "least of III 200, II 225, I 250, IA 300, IAA 375 lb that is not below m; EN 131: 150 kg",
        new("mr", "kg", "capacity of the rating"), [new("m", "kg", "person with clothes, tools and what is carried")],
        "ladder-duty-ratings", "duty ratings in use in the United States; the European figure is recalled")
        .By<bool>((us, v) => For(v[0], us)!.CapacityKg);

    /// <summary>Ratings of the United States, the weakest first.</summary>
    public static readonly IReadOnlyList<LadderRating> Us =
        [new("III", 200 * PoundKg), new("II", 225 * PoundKg), new("I", 250 * PoundKg), new("IA", 300 * PoundKg), new("IAA", 375 * PoundKg)];

    /// <summary>The one European figure.</summary>
    public static readonly LadderRating Europe = new("EN 131", 150);

    /// <summary>The weakest rating that bears a load; null when none does.</summary>
    /// <param name="loadKg">Person with clothes, tools and what is carried [kg], not negative; outside throws.</param>
    /// <param name="us">Family of the United States, else of Europe.</param>
    public static LadderRating? For(double loadKg, bool us)
    {
        Limit.AtLeast(loadKg, 0, "load of the ladder in kg");
        IReadOnlyList<LadderRating> ratings = us ? Us : [Europe];
        return ratings.FirstOrDefault(r => r.CapacityKg >= loadKg);
    }
}
