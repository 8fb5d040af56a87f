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
        var worst = headings.Disturbers(wanted).Where(d => d.AddsDb is not null).MaxBy(d => headings.DisturberDbm(d, aim.TrueDeg) + d.AddsDb!.Value)!;
        var ratio = with.SignalDbm - headings.DisturberDbm(worst, aim.TrueDeg);
        findings.Add(Severity.Caution, "channel-disturbed", want.At,
            $"other stations take {UnitText.Write(cost, 1, "dB")} from `{want.Value}`; the worst is `{worst.Other.Station.Id}` {(worst.Offset == 0 ? "on the same channel" : $"{Math.Abs(worst.Offset)} channel{(Math.Abs(worst.Offset) > 1 ? "s" : "")} {(worst.Offset > 0 ? "above" : "below")}")}, to which it stands at {UnitText.Write(ratio, 1, "dB")} for a tenth of the time",
            $"at {UnitText.Write(worst.LimitDb!.Value, 1, "dB")} nothing of the margin is left ({worst.LimitSource})", "turn the antenna so that the disturber falls into a null, use an antenna with a better front-to-back ratio, or do not want the station");
    }

    private void CheckFarChannels(Sourced<string> want, Arrival wanted, AimPlan aim)
    {
        double Ratio(Disturber d) => headings.At(wanted, aim.TrueDeg).SignalDbm - headings.DisturberDbm(d, aim.TrueDeg);
        var over = headings.Disturbers(wanted).Where(d => Math.Abs(d.Offset) > 1 && d.LimitDb is { } limit && Ratio(d) < limit).OrderBy(d => Ratio(d) - d.LimitDb).FirstOrDefault();
        if (over is null) return;
        findings.Add(Severity.Caution, "channel-disturbed", want.At, $"`{over.Other.Station.Id}`, {Math.Abs(over.Offset)} channels {(over.Offset > 0 ? "above" : "below")} `{want.Value}`, is {UnitText.Write(-Ratio(over), 1, "dB")} stronger at the antenna",
            $"receivers are made to stand {UnitText.Write(-over.LimitDb!.Value, 0, "dB")} there ({over.LimitSource})", "turn the antenna so that the strong station falls into a null, or put a filter or trap for its channel in front of the first amplifier");
    }

    private void CheckNetwork(Sourced<string> want, Arrival wanted, IReadOnlyList<Arrival> arrivals, AimPlan aim)
    {
        foreach (var other in arrivals.Where(o => o != wanted && o.WhyNot.Length == 0 && InterferencePlanner.OneNetwork(wanted, o)))
        {
            var later = (other.DistanceKm - wanted.DistanceKm) / LightKmPerUs;
            var weaker = headings.Power(wanted, wanted.FieldDbuvM, aim.TrueDeg) - headings.Power(other, other.FieldDbuvM, aim.TrueDeg);
            findings.Add(Severity.Note, "one-frequency-network", want.At,
                $"`{want.Value}` and `{other.Station.Id}` send the same on one channel; `{other.Station.Id}` arrives {UnitText.Write(Math.Abs(later), 0, "us")} {(later >= 0 ? "later" : "earlier")} and {UnitText.Write(Math.Abs(weaker), 0, "dB")} {(weaker >= 0 ? "weaker" : "stronger")}",
                "inside the guard interval of the mode they help each other, beyond it they disturb (the list does not tell the guard interval)", "aim at the stronger one; if the meter shows level without quality, turn until one of the two is gone");
        }
    }
}
