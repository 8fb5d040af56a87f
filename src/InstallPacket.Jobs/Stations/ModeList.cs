using InstallPacket.Calc.Reception;

namespace InstallPacket.Jobs.Stations;

/// <summary>The modes whose required C/N is known, in words.</summary>
internal static class ModeList
{
    private const int FewRates = 6;

    /// <summary>What a mode of a system may be; a mode that is refused by name is named.</summary>
    public static string Expected(string system, string mode) => IsLayered(mode)
        ? "layered division (LDM) is not in the table: its core layer sees the enhanced one as noise"
        : $"modes of {system} with a known threshold: {Of(system)}";

    /// <summary>What to do about a mode that is not known.</summary>
    public static string Remedy(string mode) => IsLayered(mode)
        ? "do not plan with this station; measure it on site" : "ask the operator or read the mode off a meter; write modulation and code rate";

    /// <summary>The modes of a system, for example <c>QPSK or 16QAM, each with 1/2, 2/3 or 3/4</c>.</summary>
    public static string Of(string system)
    {
        var rates = RequiredCn.All.Where(r => r.System == system && RequiredCn.Find(system, r.Modulation, r.CodeRate) is not null)
            .GroupBy(r => r.Modulation, StringComparer.Ordinal)
            .Select(g => (Modulation: g.Key, Rates: Rates([.. g.Select(r => r.CodeRate).Distinct(StringComparer.Ordinal)])));
        return string.Join("; ", rates.GroupBy(m => m.Rates, StringComparer.Ordinal).Select(g => $"{Or([.. g.Select(m => m.Modulation)])} with {g.Key}"));
    }

    private static bool IsLayered(string mode) => mode.Contains("LDM", StringComparison.OrdinalIgnoreCase);

    private static string Rates(string[] rates) => rates.Length > FewRates ? $"{rates[0]} to {rates[^1]}" : Or(rates);

    private static string Or(string[] words) => words.Length == 1 ? words[0] : string.Join(", ", words[..^1]) + " or " + words[^1];
}
