using InstallPacket.Calc.Reception;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans.Reception;

/// <summary>Puts together how sure a predicted field is.</summary>
internal sealed class SpreadPlanner(Job job, Workings work)
{
    private static readonly Constant LocationDb = new("spread-between-places", LocationVariation.DigitalSigmaDb, "itu-p1546-6",
        Provenance.Read);
    private static readonly Constant OfCurves = Model("curves", PredictionBasis.Curves);
    private static readonly Constant HillsM = new("ground-of-ordinary-hills", AreaSpread.HillsM, "project-notes", Provenance.Memory);
    private static readonly Constant UsualMastM = new("usual-mast", 150, "project-notes", Provenance.Derived);
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
        Term Of(string key, double db) => Term.Plan($"reception.stations[{id}].budget.spread.{key}", db);
        var difference = Difference(estimates);
        var (place, model) = planned.Ground == "nothing" ? Area(a)
            : (LocationDb, work.Apply(ReceptionFormulas.ModelSpread, id, planned.Model == "curves" ? OfCurves
                : work.Apply(ReceptionFormulas.PathSpread, id, a.Distance), Of("difference_db", difference)));
        var time = work.Apply(ReceptionFormulas.TimeSpread, id, fadeDb);
        var install = work.Apply(ReceptionFormulas.WorkSpread, id, InstallDb, Of("roof_db", roofSigmaDb));
        var total = work.Apply(ReceptionFormulas.TotalSpread, id, place, model, install);
        return new SpreadPlan(place, time, model, install, total) { DifferenceDb = difference, RoofDb = roofSigmaDb };
    }

    /// <summary>The largest difference of all estimates that saw the ground [dB]; 0 with one of them.</summary>
    public static double Difference(IReadOnlyList<FieldEstimate> estimates)
    {
        var seeing = estimates.Where(v => v.Ground == "path").Select(v => v.ServiceDbuvM).ToArray();
        return seeing.Length > 1 ? seeing.Max() - seeing.Min() : 0;
    }

    // Nobody looked at the hills: the house is one drawn at random in such country.
    private (Term Place, Row Model) Area(Arrival a)
    {
        var (s, id) = (a.Station, a.Station.Id);
        Term mast = s.HaatM is { } known ? Term.Station(id, "height", known) : UsualMastM;
        return (work.Apply(AreaSpread.LocationFormula, id, s.Centre(), a.Distance, HillsM),
            work.Apply(AreaSpread.SituationFormula, id, s.Centre(), a.Distance, mast, job.AntennaHeight()));
    }
}
