namespace InstallPacket.Drawings.Marks;

/// <summary>Numbers that a reader takes in at a glance: steps of axes, and how many times heights are drawn.</summary>
internal static class RoundNumbers
{
    private static readonly int[] Times = [1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100];

    /// <summary>The smallest of 1, 2, 5, 10, ... and of their tenths that is not smaller than a value.</summary>
    public static double StepAtLeast(double value)
    {
        var power = Math.Pow(10, Math.Floor(Math.Log10(value)));
        foreach (var lead in new[] { 1, 2, 5 })
            if (lead * power >= value * (1 - 1e-9)) return lead * power;
        return 10 * power;
    }

    /// <summary>Decimals that a multiple of a step needs.</summary>
    public static int Decimals(double step) => step >= 1 ? 0 : (int)Math.Ceiling(-Math.Log10(step) - 1e-9);

    /// <summary>Multiples of a step within a range, both ends included.</summary>
    public static IEnumerable<double> Multiples(double step, double low, double high)
    {
        for (var i = (long)Math.Ceiling(low / step - 1e-9); i * step <= high + 1e-9 * step; i++) yield return i * step;
    }

    /// <summary>The largest round number of times that is not above a value; at least 1.</summary>
    public static int TimesAtMost(double value, int most) => Times.Where(t => t <= most && t <= value * (1 + 1e-9)).DefaultIfEmpty(1).Max();
}
