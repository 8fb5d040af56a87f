using InstallPacket.Plans;

namespace InstallPacket.Drawings.Mounting.Access;

/// <summary>The access sketch in words.</summary>
internal static class AccessWords
{
    /// <summary>Lines below the sketch.</summary>
    public static IEnumerable<string> Notes(SheetPlan plan)
    {
        var (print, m) = (plan.Print, plan.Mounting);
        if (m.Ladder is { } l)
            yield return $"Ladder: leans at {print.Length(m.WorkHeightM)}, {print.Length(l.WorkingM)} from foot to support, rails {print.AtLeast(l.RailM)} at least.";
        foreach (var (line, i) in m.PowerLines.Select((p, i) => (p, i)))
            yield return $"Wire {i + 1}: {line.What}, {print.Length(line.HeightM)} up, {(line.Clear ? "far enough from the mast" : "TOO NEAR: nothing is raised before the operator has made it safe")}. Broken line: where the mast can fall; dotted: {print.AtLeast(line.KeepClearM)} around the wire.";
        yield return "The house is a piece only; where ladder and wires stand around it is for the survey and the eyes on site.";
    }

    public static string Of(SheetPlan plan)
    {
        var print = plan.Print;
        return $"From the side, to scale: antenna {print.Length(plan.Siting.AntennaHeightM)} above ground. " + string.Join(" ", Notes(plan).SkipLast(1))
            + string.Concat(plan.Mounting.PowerLines.Select((l, i) => $" Wire {i + 1} is {print.Length(l.DistanceM)} from the mast foot and needs {print.AtLeast(l.RequiredM)}."));
    }
}
