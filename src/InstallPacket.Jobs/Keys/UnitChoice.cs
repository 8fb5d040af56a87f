using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Keys;

/// <summary>Which units a message names: those that the author of a job thinks in. All of them may be written.</summary>
/// <param name="family">The units of the job; null where a file belongs to no job, and then all units are named.</param>
internal sealed class UnitChoice(UnitFamily? family)
{
    // Nobody gives the size of a thing that fits into a hand in metres or feet.
    private const double SmallM = 1;
    private const double FarM = 1000;

    /// <summary>The units of a dimension.</summary>
    public IReadOnlyList<Unit> Of(Dimension dimension) => [.. UnitTable.For(dimension).Where(IsOurs)];

    /// <summary>Their names.</summary>
    public string[] Names(Dimension dimension) => [.. Of(dimension).Select(u => u.Name)];

    /// <summary>The unit in which a value of a range is most likely meant.</summary>
    /// <param name="dimension">What is measured.</param>
    /// <param name="min">Smallest value, in <paramref name="rangeUnit"/>.</param>
    /// <param name="max">Largest value likewise.</param>
    /// <param name="rangeUnit">The unit of the range.</param>
    public Unit For(Dimension dimension, double min, double max, string rangeUnit)
    {
        var stated = UnitTable.For(dimension).First(u => u.Name == rangeUnit);
        if (family is null) return stated;
        if (dimension != Dimension.Length) return IsOurs(stated) ? stated : Of(dimension)[0];
        var us = family == UnitFamily.Us;
        var name = max * stated.Factor <= SmallM ? us ? "in" : "mm" : min * stated.Factor >= FarM ? us ? "mi" : "km" : us ? "ft" : "m";
        return UnitTable.For(dimension).First(u => u.Name == name);
    }

    /// <summary>A range in the unit that is most likely meant, its ends rounded inward to three digits.</summary>
    /// <param name="dimension">What is measured.</param>
    /// <param name="min">Smallest value, in <paramref name="rangeUnit"/>.</param>
    /// <param name="max">Largest value likewise.</param>
    /// <param name="rangeUnit">The unit of the range.</param>
    public (double Min, double Max, Unit Unit) Range(Dimension dimension, double min, double max, string rangeUnit)
    {
        var unit = For(dimension, min, max, rangeUnit);
        var stated = UnitTable.For(dimension).First(u => u.Name == rangeUnit);
        if (unit == stated) return (min, max, unit);
        double In(double value) => ((value * stated.Factor) + stated.Offset - unit.Offset) / unit.Factor;
        return (Rounded(In(min), Math.Ceiling), Rounded(In(max), Math.Floor), unit);
    }

    private static double Rounded(double value, Func<double, double> way)
    {
        if (value == 0) return 0;
        var step = Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(value))) - 2);
        return Math.Round(way(Math.Round(value / step, 6)) * step, 9);
    }

    /// <summary>The units of a job; null when neither it nor its firm says them.</summary>
    /// <param name="job">The job.</param>
    /// <param name="codes">The code families.</param>
    public static UnitFamily? FamilyOf(YamlMap job, IReadOnlyList<CodeDefaults> codes)
    {
        var code = (TreeEditor.Below(job, JobKeys.Code.Name) as YamlScalar)?.Value;
        return (TreeEditor.Below(job, JobKeys.Units.Name) is YamlScalar said ? Word.Read<UnitFamily>(said.Value) : null)
            ?? codes.FirstOrDefault(c => c.Id == code)?.Units;
    }

    private bool IsOurs(Unit unit) => family switch { UnitFamily.Us => !unit.IsMetric, UnitFamily.Metric => !unit.IsUs, _ => true };
}
