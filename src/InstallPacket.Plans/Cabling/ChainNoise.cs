using InstallPacket.Calc.Cabling;

namespace InstallPacket.Plans.Cabling;

/// <summary>Noise figure of the chain at its noisiest outlet, needed before levels are known: where to aim depends on it.</summary>
internal sealed class ChainNoise(Job job, RoutingPlan routing)
{
    // The cabling plan hands over the same rows and findings outlet by outlet; here nobody asks for them.
    private readonly StepPlanner _steps = new(job, routing);
    private readonly ChainView _chain = new(job.Cabling);
    private readonly Dictionary<double, double> _known = [];

    /// <summary>Largest noise figure over all outlets [dB], hot cable, referred to the antenna terminals.</summary>
    public double WorstDb(double frequencyMHz)
    {
        if (!_known.TryGetValue(frequencyMHz, out var db)) _known[frequencyMHz] = db = _chain.Outlets.Select(o =>
            AtOutlet(o, frequencyMHz)).DefaultIfEmpty(0).Max();
        return db;
    }

    private double AtOutlet(Element outlet, double frequencyMHz)
    {
        var stages = _steps.Steps(_chain.PathTo(outlet, frequencyMHz), frequencyMHz,
            job.Cabling.HotC).Append(_steps.FlyLead(outlet, frequencyMHz)).Select(s => s.Stage).ToList();
        stages.Add(new Stage("receiver", 0, job.Cabling.Receiver.NoiseFigureDb?.At(frequencyMHz) ?? 0));
        return NoiseCascade.Friis(stages)[^1].NoiseFigureDb;
    }
}
