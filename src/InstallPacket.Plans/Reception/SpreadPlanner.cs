using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans.Reception;

/// <summary>Puts together how sure a predicted field is.</summary>
internal sealed class SpreadPlanner(Workings work)
{
    private static readonly Constant LocationDb = new("spread-between-places", LocationVariation.DigitalSigmaDb, "itu-p1546-6",
        Provenance.Read);
    private static readonly Constant OfCurves = Model("curves", PredictionBasis.Curves);
    private static readonly Constant OfTerrain = Model("terrain-model", PredictionBasis.Terrain);
    private static readonly Constant InstallDb = new("spread-of-parts-and-work", 1.5, "project-notes", Provenance.Memory);

    private static Constant Model(string name, PredictionBasis basis) =>
        new("spread-of-" + name, ReceptionSpread.ModelSigmaDb(basis), "project-notes", Provenance.Memory);

    /// <summary>The spread of a station's field.</summary>
    /// <param name="a">The station.</param>
    /// <param name="estimates">What the models say.</param>
    /// <param name="planned">The estimate that the plan uses.</param>
    /// <param name="fadeDb">Median less 90 % of time at the antenna.</param>
    /// <param name="roofSigmaDb">Spread of the loss of the roof above the antenna; 0 outdoors.</param>
    public SpreadPlan Plan(Arrival a, IReadOnlyList<FieldEstimate> estimates, FieldEstimate planned, Term fadeDb, double roofSigmaDb)
    {
        var id = a.Station.Id;
        var terrain = estimates.Where(v => v.Model != "curves").Select(v => v.ServiceDbuvM).ToArray();
        var difference = terrain.Length > 1 ? terrain.Max() - terrain.Min() : 0;
        Term Of(string key, double db) => Term.Plan($"reception.stations[{id}].budget.spread.{key}", db);
        var model = work.Apply(ReceptionFormulas.ModelSpread, id, planned.Model == "curves" ? OfCurves : OfTerrain,
            Of("difference_db", difference));
        var time = work.Apply(ReceptionFormulas.TimeSpread, id, fadeDb);
        var install = work.Apply(ReceptionFormulas.WorkSpread, id, InstallDb, Of("roof_db", roofSigmaDb));
        var total = work.Apply(ReceptionFormulas.TotalSpread, id, LocationDb, time, model, install);
        return new SpreadPlan(LocationDb, time, model, install, total) { DifferenceDb = difference, RoofDb = roofSigmaDb };
    }
}
