using InstallPacket.Calc.Sources;

namespace InstallPacket.Calc.Reception;

/// <summary>Powers of many channels together.</summary>
public static class DecibelSum
{
    /// <summary>The total power.</summary>
    public static readonly Formula TotalFormula = new(
        "total-power",
        "Total power of all channels",
        "P = 10 log10(sum of 10^(Pi/10))",
        new("P", "dBm", "total power"), [new("Pi", "dBm", "power of each channel")],
        "project-notes", "sum of powers", Provenance.Derived);

    /// <summary>The total power of many levels.</summary>
    /// <param name="levelsDbm">Levels [dBm]; at least one, else throws.</param>
    /// <returns>Total [dBm].</returns>
    public static double TotalDbm(IEnumerable<double> levelsDbm)
    {
        ArgumentNullException.ThrowIfNull(levelsDbm);
        var sum = 0.0;
        foreach (var level in levelsDbm) sum += Math.Pow(10, level / 10);
        if (sum <= 0) throw new ArgumentException("There is no level to add.", nameof(levelsDbm));
        return 10 * Math.Log10(sum);
    }
}
