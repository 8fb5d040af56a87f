using InstallPacket.Plans;

namespace InstallPacket.Drawings.Siting.Profile;

/// <summary>Draws heights above the sea, which bend with the earth, and distances from the house.</summary>
internal sealed class ProfileAxis(SheetCanvas canvas, SheetPlan plan, PathPlan path, ProfileScale scale)
{
    /// <summary>Height of all that stands below the field.</summary>
    public const double BelowMm = 7;

    private const double KilometresPerMile = 1.609344;
    private const double MetresPerFoot = 0.3048;
    private const double SizeMm = 3.2;
    private const double RowMm = 6;
    private const double ColumnMm = 16;

    private bool Us => plan.Job.Units == UnitFamily.Us;

    public void Draw()
    {
        Heights();
        Distances();
    }

    private void Heights()
    {
        var unit = Us ? MetresPerFoot : 1;
        var step = RoundNumbers.StepAtLeast(Math.Max(1, RowMm / (scale.MmPerM * unit)));
        foreach (var height in RoundNumbers.Multiples(step, scale.LowM / unit, scale.HighM / unit))
        {
            // Equal heights above the sea lie on curves: the earth bulges over its chord.
            foreach (var stretch in Stretch.Of(path.Points, p => scale.HighM - height * unit - p.BulgeM))
                canvas.Line(new(Ink.Faint, 0.15), [.. stretch.Select(p => scale.At(p.DistanceKm, height * unit + p.BulgeM))]);
            canvas.Text(new(new(scale.Field.Left - ProfileScale.HouseMm - 1, scale.Y(height * unit) + 1.1), plan.Print.Number(height, 0),
                SizeMm, Anchor: Anchor.End));
        }
        canvas.Text(new(new(scale.Field.Left - ProfileScale.HouseMm - 1, scale.Field.Bottom + 5.2), plan.Print.Words.Unit(Us ? "ft" : "m"),
            SizeMm, Anchor: Anchor.End, Strong: true));
    }

    private void Distances()
    {
        var (unit, name) = Us ? (KilometresPerMile, "mi") : (1, "km");
        var step = RoundNumbers.StepAtLeast(ColumnMm / (scale.MmPerKm * unit));
        var ticks = RoundNumbers.Multiples(step, 0, path.DistanceKm / unit).ToArray();
        for (var i = 0; i < ticks.Length; i++)
        {
            var x = scale.X(ticks[i] * unit);
            canvas.Line(new(Ink.Line, 0.35), new(x, scale.Field.Bottom), new(x, scale.Field.Bottom + 1.6));
            var number = plan.Print.Number(ticks[i], RoundNumbers.Decimals(step));
            canvas.Text(new(new(x, scale.Field.Bottom + 5.2), i == ticks.Length - 1 ? number + "\u00A0" + plan.Print.Words.Unit(name)
                : number, SizeMm, Anchor: Anchor.Middle));
        }
    }
}
