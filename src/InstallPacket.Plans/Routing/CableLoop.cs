using InstallPacket.Calc.Cabling;
using InstallPacket.Calc.Sources;

namespace InstallPacket.Plans.Routing;

/// <summary>Resistance of both conductors of a run in series, the far end shorted.</summary>
internal static class CableLoop
{
    // A part states centre conductor and shield as one figure.
    private static readonly Constant BothConductors = new("shield-in-the-loop-already", 0, "project-notes", Provenance.Derived);

    /// <summary>The resistance [ohm].</summary>
    /// <param name="subject">What the row is about.</param>
    /// <param name="cable">The cable.</param>
    /// <param name="key">The key of the cable that states its resistance.</param>
    /// <param name="ohmPerKm">That figure.</param>
    /// <param name="run">The run.</param>
    /// <param name="lengthM">Its length as planned.</param>
    public static Row Ohm(Workings work, Subject subject, CablePart cable, Key key, double ohmPerKm, string run, double lengthM) => work.Apply(
        DcFeed.LoopFormula, subject, cable.Figure(key, ohmPerKm), BothConductors, Term.Plan($"routing.runs[{run}].length_m", lengthM));

    /// <summary>An existing run with what its test should read; unchanged where its cable does not state it.</summary>
    public static RunPlan Expected(RunPlan run, CablePart cable, Workings work)
    {
        if (!run.Existing || cable.LoopLeastOhmPerKm is not { } least || cable.LoopMostOhmPerKm is not { } most) return run;
        var high = Ohm(work, $"test of run {run.Id}", cable, cable.LoopMostKey, most, run.Id, run.LengthM);
        var low = least == most ? high : Ohm(work, $"test of run {run.Id}, least", cable, cable.LoopLeastKey, least, run.Id, run.LengthM);
        return run with { LoopLeastOhm = low, LoopMostOhm = high, LoopSources = Sources(cable) };
    }

    private static string[] Sources(CablePart cable) => [.. new[] { cable.LoopLeastKey, cable.LoopMostKey }.Distinct()
        .Select(k => cable.Provenance.TryGetValue(k.Name, out var source) ? source.Text : "unknown")];
}
