using InstallPacket.Calc.Quantities;

namespace InstallPacket.Plans.Reception;

/// <summary>Findings about the aim: what a fixed one costs, and when one heading is not enough.</summary>
internal sealed class AimRules(Job job, AntennaView antenna, HeadingView headings, FindingList findings)
{
    private const double WorthTellingDb = 3;

    public void Check(AimPlan aim, Arrival[] arrivals)
    {
        var wanted = arrivals.Where(a => a.Wanted && a.WhyNot.Length == 0).ToArray();
        if (antenna.Aim is { } given && wanted.Length > 0) CheckCost(aim, given.At, wanted);
        if (aim.Second is { } second) ReportSecond(aim, second, wanted);
    }

    private void CheckCost(AimPlan aim, SourceSpan at, Arrival[] wanted)
    {
        var demanded = job.Reception.ChancePct / 100;
        var lost = wanted.Where(a => headings.At(a, aim.BestDeg).Chance >= demanded
            && headings.At(a, aim.TrueDeg).Chance < demanded).Select(a => a.Station.Id).ToArray();
        var worst = wanted.MinBy(a => headings.At(a, aim.TrueDeg).MarginDb)!;
        var (here, there) = (headings.At(worst, aim.TrueDeg).MarginDb, wanted.Min(a => headings.At(a, aim.BestDeg).MarginDb));
        if (lost.Length == 0 && there - here < WorthTellingDb) return;
        findings.Add(Severity.Caution, "aim-costs", at, ("aim_deg", aim.TrueDeg), ("station", worst.Station.Id), ("margin_db", here),
            ("lost", lost),
            ("best_deg", aim.BestDeg), ("best_margin_db", there));
    }

    private void ReportSecond(AimPlan aim, SecondAim second, Arrival[] wanted)
    {
        var missing = wanted.Where(a => headings.At(a, aim.BestDeg).Chance < job.Reception.ChancePct / 100).Select(a => a.Station.Id);
        findings.Add(Severity.Caution, "one-aim-not-enough", job.Reception.WantAt, ("chance_pct", job.Reception.ChancePct),
            ("best_deg", aim.BestDeg),
            ("missing", missing), ("second_deg", second.TrueDeg), ("held", second.Stations));
    }
}
