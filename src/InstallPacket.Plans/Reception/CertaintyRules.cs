namespace InstallPacket.Plans.Reception;

/// <summary>Findings about how sure the estimate of a wanted station can be: ground that nobody looked at, models that contradict each
/// other.</summary>
internal sealed class CertaintyRules(Job job, FindingList findings)
{
    private const double WorthTellingDb = 10;
    private const int MostNames = 8;

    public void Check(IReadOnlyList<Arrival> arrivals)
    {
        var wanted = arrivals.Where(a => a.Wanted && a.WhyNot.Length == 0).ToArray();
        CheckGround(wanted);
        CheckModels(wanted);
    }

    // With tiles named, what is missing of them is told where they are read.
    private void CheckGround(Arrival[] wanted)
    {
        string[] unseen = [.. wanted.Where(a => a.Ground == "nothing").Select(a => a.Station.Id)];
        if (unseen.Length == 0 || job.Siting.Terrain is not null) return;
        findings.Add(Severity.Caution, "hills-not-seen", job.Reception.WantAt, ("stations", unseen.Take(MostNames)),
            ("more", unseen.Length > MostNames), ("all", unseen.Length == wanted.Length), ("count", unseen.Length),
            ("spread_db", wanted.Where(a => a.Ground == "nothing").Max(a => a.Spread.TotalDb)));
    }

    private void CheckModels(Arrival[] wanted)
    {
        Arrival[] apart = [.. wanted.Where(a => a.Spread.DifferenceDb >= WorthTellingDb)];
        if (apart.MaxBy(a => a.Spread.DifferenceDb) is not { } worst) return;
        var seeing = worst.Estimates.Where(e => e.Ground == "path").OrderBy(e => e.ServiceDbuvM).ToArray();
        var want = job.Reception.Want.First(w => w.Value == worst.Station.Id);
        findings.Add(Severity.Caution, "models-disagree", want.At, ("station", worst.Station.Id), ("difference_db", worst.Spread.DifferenceDb),
            ("low", seeing[0].Model), ("low_dbuv_m", seeing[0].ServiceDbuvM), ("high", seeing[^1].Model), ("high_dbuv_m", seeing[^1].ServiceDbuvM),
            ("planned", worst.PlannedBy), ("dubious", seeing.Any(e => e.Dubious)), ("others", apart.Length - 1),
            ("spread_db", worst.Spread.TotalDb));
    }
}
