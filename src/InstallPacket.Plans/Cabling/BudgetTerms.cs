using InstallPacket.Plans.Reception;

namespace InstallPacket.Plans.Cabling;

/// <summary>The numbers of a station's budget, as terms of the workings of the chain.</summary>
internal static class BudgetTerms
{
    /// <summary>A number of the budget.</summary>
    /// <param name="key">Its key in <c>plan.json</c>.</param>
    /// <param name="number">Its value.</param>
    public static Term Of(this StationPlan s, string key, double number) => Term.Plan($"reception.stations[{s.Id}].budget.{key}", number);
}
