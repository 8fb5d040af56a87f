using InstallPacket.Calc.Cabling;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans.Cabling;

/// <summary>Currents and voltages in the net of one inserter.</summary>
internal sealed class FeedSums(Job job, FeedNet net, RoutingPlan routing, Workings work)
{
    private static readonly Constant Diode = new("diode-of-a-steered-port", DcFeed.DiodeV, "project-notes", Provenance.Memory);

    /// <summary>Current [A] of the amplifiers behind a part, its own included; null when one of them does not state it.</summary>
    public Term? CurrentA(FeedNode at)
    {
        Term? sum = null;
        var names = net.Inserter.Id;
        foreach (var e in net.Amplifiers.Where(a => a.Path.Contains(at)).Select(a => a.Element))
        {
            if (e.Part is not AmplifierPart { DrawsMa: { } draws }) return null;
            Term own = e.Part.Figure(AmplifierPartKeys.Draws, draws).In(0.001);
            names += $", {e.Id}";
            sum = sum is null ? own : work.Apply(DcFeed.CurrentSumFormula, names, sum, own);
        }
        return sum;
    }

    /// <summary>Voltage at a part; null where a current or a resistance on the way is not known.</summary>
    public Term? VoltageV(FeedNode at)
    {
        if (at.Before is not { } before)
            return net.Inserter.Part.SupplyV is { } supply ? net.Inserter.Part.Figure(PartKeys.Supply, supply) : null;
        if (VoltageV(before) is not { } volts) return null;
        if (at.Steered)
            volts = work.Apply(DcFeed.SteeredPortFormula, $"{before.Element.Id} toward {at.Element.Id}, from {net.Inserter.Id}", volts, Diode);
        if (at.Run is null) return volts;
        if (CurrentA(at) is not { } amps || LoopOhm(at) is not { } ohm) return null;
        return work.Apply(DcFeed.ConstantCurrentFormula, $"{at.Element.Id}, from {net.Inserter.Id}", volts, amps, ohm);
    }

    /// <summary>Resistance of all runs from the inserter to a part [ohm]; null as soon as one cable does not state it.</summary>
    public double? WayOhm(FeedNode at)
    {
        var sum = 0.0;
        foreach (var node in at.Path.Where(n => n.Run is not null))
        {
            if (LoopOhm(node) is not { } ohm) return null;
            sum += ohm;
        }
        return sum;
    }

    /// <summary>Whether cable of unknown kind lies on the way to a part.</summary>
    public bool OldCable(FeedNode at) =>
        at.Path.Any(n => job.Routing.Runs.Any(r => r.Id == n.Run && r.Cable.LoopLeastOhmPerKm < r.Cable.LoopMostOhmPerKm));

    // Of cable of unknown kind the most that it may resist.
    private Row? LoopOhm(FeedNode at)
    {
        var (run, cable) = (routing.Runs.First(r => r.Id == at.Run), job.Routing.Runs.First(r => r.Id == at.Run).Cable);
        if (cable.LoopMostOhmPerKm is not { } perKm) return null;
        return CableLoop.Ohm(work, $"run {run.Id}, supply from {net.Inserter.Id}", cable, cable.LoopMostKey, perKm, run.Id, run.LengthM);
    }
}
