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
        var lost = wanted.Where(a => headings.At(a, aim.BestDeg).Chance >= demanded && headings.At(a, aim.TrueDeg).Chance < demanded).Select(a => $"`{a.Station.Id}`").ToArray();
        var worst = wanted.MinBy(a => headings.At(a, aim.TrueDeg).MarginDb)!;
        var (here, there) = (headings.At(worst, aim.TrueDeg).MarginDb, wanted.Min(a => headings.At(a, aim.BestDeg).MarginDb));
        if (lost.Length == 0 && there - here < WorthTellingDb) return;
        findings.Add(Severity.Caution, "aim-costs", at,
            $"the aim of the job, {UnitPrinter.Plain.Bearing(aim.TrueDeg)} true, leaves the weakest wanted station `{worst.Station.Id}` a margin of {UnitText.Write(here, 1, "dB")}{(lost.Length > 0 ? " and does not hold " + string.Join(", ", lost) : "")}",
            $"at {UnitPrinter.Plain.Bearing(aim.BestDeg)} true the smallest margin is {UnitText.Write(there, 1, "dB")}; more than 3 dB, or a station, is worth a turn (our rule)", "remove `aim`, or say in the job why it must be so");
    }

    private void ReportSecond(AimPlan aim, SecondAim second, Arrival[] wanted)
    {
        var missing = wanted.Where(a => headings.At(a, aim.BestDeg).Chance < job.Reception.ChancePct / 100).Select(a => $"`{a.Station.Id}`");
        findings.Add(Severity.Caution, "one-aim-not-enough", job.Reception.WantAt,
            $"no single heading holds all wanted stations with a chance of {UnitText.Number(job.Reception.ChancePct, 0)} %: the best one, {UnitPrinter.Plain.Bearing(aim.BestDeg)} true, does not hold {string.Join(", ", missing)}",
            $"{UnitPrinter.Plain.Bearing(second.TrueDeg)} true would hold {string.Join(", ", second.Stations.Select(s => $"`{s}`"))}, by the same antenna and chain",
            "plan a second antenna with a combiner, or a rotor, or do not want these stations");
    }
}
