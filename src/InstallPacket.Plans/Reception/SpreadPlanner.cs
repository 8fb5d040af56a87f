using InstallPacket.Calc.Reception;

namespace InstallPacket.Plans.Reception;

/// <summary>Puts together how sure a predicted field is.</summary>
internal sealed class SpreadPlanner(WorkLog log)
{
    private const double LocationDb = LocationVariation.DigitalSigmaDb;
    private const double InstallDb = 1.5;
    private const double TenthQuantile = 1.2816;

    /// <summary>The spread of a station's field.</summary>
    /// <param name="a">The station.</param>
    /// <param name="voices">What the models say.</param>
    /// <param name="planned">The voice that the plan uses.</param>
    /// <param name="fadeDb">Median less 90 % of time at the antenna.</param>
    /// <param name="roofSigmaDb">Spread of the loss of the roof above the antenna; 0 outdoors.</param>
    public SpreadPlan Plan(Arrival a, IReadOnlyList<FieldVoice> voices, FieldVoice planned, double fadeDb, double roofSigmaDb)
    {
        var id = a.Station.Id;
        var terrain = voices.Where(v => v.Model != "curves").Select(v => v.ServiceDbuvM).ToArray();
        var difference = terrain.Length > 1 ? terrain.Max() - terrain.Min() : 0;
        var own = ReceptionSpread.ModelSigmaDb(planned.Model == "curves" ? PredictionBasis.Curves : PredictionBasis.Terrain);
        var model = log.Record(ReceptionFormulas.ModelSpread, id, Probability.CombinedSigmaDb([own, difference / 2]), own, difference);
        var time = log.Record(ReceptionFormulas.TimeSpread, id, fadeDb / TenthQuantile, fadeDb);
        var work = Probability.CombinedSigmaDb([InstallDb, roofSigmaDb]);
        var total = log.Record(ReceptionFormulas.TotalSpread, id, Probability.CombinedSigmaDb([LocationDb, time, model, work]), LocationDb, time, model, work);
        return new SpreadPlan(LocationDb, time, model, work, total);
    }
}
