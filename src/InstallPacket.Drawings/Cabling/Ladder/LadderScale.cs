using InstallPacket.Plans;

namespace InstallPacket.Drawings.Cabling.Ladder;

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

    // A ceiling farther above everything else would press the lines together and warns of nothing.
    private const double FarDb = 15;

    // Below the needed level by this the noise of a sound channel is reached; deeper noise is only named.
    private const double CutDb = 15;

    public static LadderScale Of(PaperBox field, LadderPlan ladder, UnitPrinter print)
    {
        var levels = Levels(ladder, print).ToArray();
        var (bottom, top) = (levels.Min(), levels.Max());
        var high = Ceilings(ladder, print).Where(c => c <= top + FarDb).Append(top).Max();
        var low = Math.Min(bottom, Floor(ladder, print, bottom, high));
        var lowest = (int)Math.Floor((low - RoomDb) / GridDb) * GridDb;
        var highest = (int)Math.Ceiling((high + RoomDb) / GridDb) * GridDb;
        return new(field, lowest, Math.Max(highest, lowest + 2 * GridDb), ladder.Lines[0].Steps.Count);
    }

    public double ColumnMm => Field.Width / Columns;

    public double Y(double level) => Field.Bottom - (level - Low) / (High - Low) * Field.Height;

    /// <summary>Left edge of a column.</summary>
    public double X(int column) => Field.Left + column * ColumnMm;

    // Down to the noise, unless its stretch would take more than half of the height.
    private static double Floor(LadderPlan ladder, UnitPrinter print, double bottom, double high)
    {
        if (ladder.Weakest is not { Steps.Count: > 0 } weakest) return bottom;
        var noise = weakest.Steps.Min(s => print.LevelIn(s.NoiseDbm));
        return bottom - noise <= high - bottom ? noise : print.LevelIn(weakest.Steps[^1].LevelDbm - weakest.MarginDb) - CutDb;
    }

    // Every level that must be on the sheet.
    private static IEnumerable<double> Levels(LadderPlan ladder, UnitPrinter print)
    {
        foreach (var step in ladder.Lines.SelectMany(l => l.Steps)) yield return print.LevelIn(step.LevelDbm);
        if (ladder.Weakest is { Steps.Count: > 0 } weakest) yield return print.LevelIn(weakest.Steps[^1].LevelDbm - weakest.MarginDb);
        if (ladder.LargestDbm is { } largest) yield return print.LevelIn(largest);
    }

    private static IEnumerable<double> Ceilings(LadderPlan ladder, UnitPrinter print) =>
        ladder.Lines[0].Steps.Select(s => s.CeilingDbm).OfType<double>().Select(print.LevelIn);
}
