using InstallPacket.Plans;

namespace InstallPacket.Drawings;

/// <summary>Where a level stands on the ladder sheet; levels in the unit of the job.</summary>
/// <param name="Field">Ground of the chart.</param>
/// <param name="Low">Level at its lower edge, a full ten.</param>
/// <param name="High">Level at its upper edge, a full ten.</param>
/// <param name="Columns">How many steps.</param>
internal sealed record LadderScale(PaperBox Field, int Low, int High, int Columns)
{
    public const int GridDb = 10;

    // Room for the figures above and below the outermost lines.
    private const double RoomDb = 4;

    public static LadderScale Of(PaperBox field, IEnumerable<double> levels, int columns)
    {
        var all = levels.ToArray();
        var low = (int)Math.Floor((all.Min() - RoomDb) / GridDb) * GridDb;
        var high = (int)Math.Ceiling((all.Max() + RoomDb) / GridDb) * GridDb;
        return new(field, low, Math.Max(high, low + 2 * GridDb), columns);
    }

    public double ColumnMm => Field.Width / Columns;

    public double Y(double level) => Field.Bottom - (level - Low) / (High - Low) * Field.Height;

    /// <summary>Left edge of a column.</summary>
    public double X(int column) => Field.Left + column * ColumnMm;

    /// <summary>Every level of a plan's ladder that must be on the sheet.</summary>
    public static IEnumerable<double> Levels(LadderPlan ladder, UnitPrinter print)
    {
        foreach (var step in ladder.Lines.SelectMany(l => l.Steps)) yield return print.LevelIn(step.LevelDbm);
        foreach (var line in ladder.Lines.Where(l => l.Role == "weakest" && l.Steps.Count > 0)) yield return print.LevelIn(line.Steps[^1].LevelDbm - line.MarginDb);
        if (ladder.LargestDbm is { } largest) yield return print.LevelIn(largest);
    }
}
