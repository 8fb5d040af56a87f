using InstallPacket.Calc.Quantities;

namespace InstallPacket.Plans.Reception;

/// <summary>Findings about other stations that disturb wanted ones, and about networks on one frequency.</summary>
internal sealed class InterferenceRules(Job job, HeadingView headings, FindingList findings)
{
    private const double WorthTellingDb = 3;
    private const double LightKmPerUs = 0.299792458;

    public void Check(Func<Arrival, AimPlan> aimFor, IReadOnlyList<Arrival> arrivals)
    {
        foreach (var want in job.Reception.Want)
            if (arrivals.FirstOrDefault(a => a.Station.Id == want.Value && a.WhyNot.Length == 0) is { } wanted)
            {
                var aim = aimFor(wanted);
                CheckDisturbers(want, wanted, aim);
                CheckFarChannels(want, wanted, aim);
                CheckNetwork(want, wanted, arrivals, aim);
            }
    }

    private void CheckDisturbers(Sourced<string> want, Arrival wanted, AimPlan aim)
    {
        var (with, alone) = (headings.At(wanted, aim.TrueDeg), headings.Alone(wanted, aim.TrueDeg));
        var cost = alone.MarginDb - with.MarginDb;
        if (cost < WorthTellingDb) return;
        var worst = headings.Disturbers(wanted).Where(d => d.AddsDb is not null).MaxBy(d => headings.DisturberDbm(d, aim.TrueDeg)
            + d.AddsDb!.Value)!;
        var ratio = with.SignalDbm - headings.DisturberDbm(worst, aim.TrueDeg);
        findings.Add(Severity.Caution, "channel-disturbed", "margin", want.At, ("station", want.Value), ("cost_db", cost),
            ("worst", worst.Other.Station.Id),
            ("channels", Math.Abs(worst.Offset)), ("above", worst.Offset > 0), ("ratio_db", ratio), ("limit_db", worst.LimitDb),
                ("source", worst.LimitSource));
    }

    private void CheckFarChannels(Sourced<string> want, Arrival wanted, AimPlan aim)
    {
        double Ratio(Disturber d) => headings.At(wanted, aim.TrueDeg).SignalDbm - headings.DisturberDbm(d, aim.TrueDeg);
        var over = headings.Disturbers(wanted).Where(d => Math.Abs(d.Offset) > 1 && d.LimitDb is { } limit
            && Ratio(d) < limit).OrderBy(d => Ratio(d) - d.LimitDb).FirstOrDefault();
        if (over is null) return;
        findings.Add(Severity.Caution, "channel-disturbed", "far", want.At, ("station", want.Value), ("worst", over.Other.Station.Id),
            ("channels", Math.Abs(over.Offset)), ("above", over.Offset > 0), ("stronger_db", -Ratio(over)), ("limit_db", -over.LimitDb),
                ("source", over.LimitSource));
    }

    private void CheckNetwork(Sourced<string> want, Arrival wanted, IReadOnlyList<Arrival> arrivals, AimPlan aim)
    {
        foreach (var other in arrivals.Where(o => o != wanted && o.WhyNot.Length == 0 && InterferencePlanner.OneNetwork(wanted, o)))
        {
            var later = (other.DistanceKm - wanted.DistanceKm) / LightKmPerUs;
            var weaker = headings.Power(wanted, wanted.FieldDbuvM, aim.TrueDeg) - headings.Power(other, other.FieldDbuvM, aim.TrueDeg);
            findings.Add(Severity.Note, "one-frequency-network", want.At, ("station", want.Value), ("other", other.Station.Id),
                ("apart_us", Math.Abs(later)),
                ("later", later >= 0), ("difference_db", Math.Abs(weaker)), ("weaker", weaker >= 0));
        }
    }
}
