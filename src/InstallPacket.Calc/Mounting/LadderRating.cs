using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Mounting;

/// <summary>Duty ratings of ladders: person, clothes, tools and what is carried, all together.</summary>
public static class LadderRating
{
    /// <summary>The rating for a load; its case holds the capacities of the ratings [kg], the weakest first.</summary>
    public static readonly Formula<IReadOnlyList<double>> RatingFormula = new Formula(
        "ladder-duty-rating",
        "Duty rating of the ladder",
        "mr = least rating that is not below m",
        new("mr", "kg", "capacity of the rating"), [new("m", "kg", "person with clothes, tools and what is carried")],
        "ladder-duty-ratings", "the ratings of the code family; the European figure is recalled")
        .By<IReadOnlyList<double>>((capacitiesKg, v) => capacitiesKg.First(c => c >= v[0]));
}
