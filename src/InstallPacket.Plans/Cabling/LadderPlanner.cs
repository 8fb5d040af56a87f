using InstallPacket.Calc.Cabling;
using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Reception;

namespace InstallPacket.Plans.Cabling;

/// <summary>Follows the strongest and the weakest wanted channel to every outlet: level, noise below it, and what an amplifier on the way
/// would still give.</summary>
internal sealed class LadderPlanner(Job job, ReceptionPlan reception, ChainView chain, StepPlanner steps, AmplifierLoads loads,
    Workings work)
{
    /// <summary>One ladder an outlet, the one with the smallest margin first.</summary>
    public IReadOnlyList<LadderPlan> Plan(IReadOnlyList<OutletPlan> outlets) =>
        LadderLikeness.Grouped([.. outlets.Where(o => o.Channels.Count > 0).OrderBy(o => o.Channels.Min(c => c.MarginDb)).ThenBy(o => o.Id,
            StringComparer.Ordinal).Select(Ladder)]);

    private LadderPlan Ladder(OutletPlan outlet)
    {
        var strongest = outlet.Channels.OrderByDescending(c => c.LevelDbm).First();
        var weakest = outlet.Channels.OrderBy(c => c.MarginDb).ThenBy(c => c.Station, StringComparer.Ordinal).First();
        var lines = strongest.Station == weakest.Station ? [Line(outlet, weakest, "weakest")]
            : new[] { Line(outlet, strongest, "strongest"), Line(outlet, weakest, "weakest") };
        return new LadderPlan(outlet.Id, job.Cabling.Receiver.LargestLevel?.Dbm, lines);
    }

    private LadderLine Line(OutletPlan outlet, OutletChannel channel, string role)
    {
        var station = reception.Wanted.First(s => s.Id == channel.Station);
        var element = job.Cabling.Chain.First(e => e.Id == outlet.Id);
        var way = steps.Steps(chain.PathTo(element, station.FrequencyMhz), station.FrequencyMhz,
            StepPlanner.ReferenceC).Append(steps.FlyLead(element, station.FrequencyMhz)).ToArray();
        var level = Level.FromDbm(station.Budget!.LevelDbm);
        var rows = new List<LadderStep> { new("antenna", 0, level.Dbm, station.Budget.ThermalNoiseDbm + station.Budget.ExternalNoiseDb,
            null) };
        var sums = steps.Cascade(way, station.FrequencyMhz, StepPlanner.ReferenceC, element);
        for (var i = 0; i < way.Length; i++)
        {
            level += Gain.FromDb(way[i].Stage.GainDb);
            rows.Add(new(way[i].Label.ToString(), way[i].Stage.GainDb, level.Dbm, Noise(station, outlet, way[i], sums[i]),
                Ceiling(way[i], station, level.Dbm)));
        }
        return new LadderLine(channel.Station, role, channel.MarginDb, rows);
    }

    // Noise behind a step: that of the surroundings and of everything before it, with the gain so far.
    private Row Noise(StationPlan s, OutletPlan outlet, ChainStep step, (Term Gain, Term Noise) sum)
    {
        Subject subject = $"{s.Id} behind {step.Label} to {outlet.Id}";
        var figure = work.Apply(CablingFormulas.SystemBehind, subject, s.Of("external_noise_db", s.Budget!.ExternalNoiseDb), sum.Noise);
        return work.Apply(CablingFormulas.NoiseBehind, subject, s.Of("thermal_noise_dbm", s.Budget.ThermalNoiseDbm), figure, sum.Gain);
    }

    // What this channel could rise to before the amplifier's total output reaches its largest.
    private double? Ceiling(ChainStep step, StationPlan s, double levelDbm) =>
        step.Element.Part is AmplifierPart && step.Stage.GainDb > 0 && loads.Of(step.Element)?.ReserveDb is { } reserve && s.Calculated
            ? levelDbm + reserve : null;
}
