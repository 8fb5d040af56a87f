using InstallPacket.Calc.Reception;

namespace InstallPacket.Jobs.Stations;

/// <summary>The modes whose required C/N is known, in words.</summary>
internal static class ModeList
{
    private const int FewRates = 6;

    /// <summary>The modes of a system, one entry for all modulations with the same code rates: <c>QPSK, 16QAM: 1/2, 2/3, 3/4</c>.</summary>
    public static IReadOnlyList<string> Of(string system)
    {
        var rates = RequiredCn.All.Where(r => r.System == system && RequiredCn.Find(system, r.Modulation, r.CodeRate) is not null)
            .GroupBy(r => r.Modulation, StringComparer.Ordinal)
            .Select(g => (Modulation: g.Key, Rates: Rates([.. g.Select(r => r.CodeRate).Distinct(StringComparer.Ordinal)])));
        return [.. rates.GroupBy(m => m.Rates, StringComparer.Ordinal).Select(g =>
            $"{string.Join(", ", g.Select(m => m.Modulation))}: {g.Key}")];
    }

    /// <summary>Layered division (LDM) is not in the table: its core layer sees the enhanced one as noise.</summary>
    public static bool IsLayered(string mode) => mode.Contains("LDM", StringComparison.OrdinalIgnoreCase);

    private static string Rates(string[] rates) => rates.Length > FewRates ? $"{rates[0]} ... {rates[^1]}" : string.Join(", ", rates);
}
