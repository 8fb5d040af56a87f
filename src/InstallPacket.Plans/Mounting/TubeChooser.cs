using InstallPacket.Calc.Mounting;

namespace InstallPacket.Plans.Mounting;

/// <summary>Looks through the table of tubes for one that bears the mast; the wind on a wider tube is larger, and that is
/// counted.</summary>
internal sealed class TubeChooser(Job job, IMastCode code, MastFrame frame, MastMaterial material, double forceN, double lineLoadNPerM,
    double outerM)
{
    private const double Enough = 0.8;

    /// <summary>The lightest tube, in the units of the job, that uses at most 0.8 of its strength; null when none of the table
    /// does.</summary>
    public string? Lightest() => Sold().Where(t => t.Section.OuterM >= outerM && Use(t.Section) <= Enough)
        .OrderBy(t => t.Section.MassKgM(material.DensityKgM3)).ThenBy(t => t.Name, StringComparer.Ordinal).FirstOrDefault()?.Name;

    // Of a gauge that is read in two ways the thinner wall counts.
    private IEnumerable<MastTube> Sold() => MastTubes.All
        .Where(t => t.Name.EndsWith("mm", StringComparison.Ordinal) == (job.Units == UnitFamily.Metric)
            && !t.Note.StartsWith("high", StringComparison.Ordinal));

    private double Use(MastSection tube)
    {
        var moment = frame.GreatestNm(forceN, lineLoadNPerM * tube.OuterM / outerM);
        return moment / code.ResistanceNm(tube, material);
    }
}
