namespace InstallPacket.Jobs.Stations.Regulator;

/// <summary>The words by which the regulator's list names the kind of a station. Which of them are digital is recalled.</summary>
internal static class ServiceWord
{
    /// <summary>Digital television: full service, distributed, class A, low power, translator, replacement; then the older words.</summary>
    public static readonly IReadOnlyList<string> Digital = ["DTV", "DTS", "DCA", "LPD", "LPT", "DRT", "DT", "DD", "DC", "LD"];

    private static readonly string[] Analogue = ["TV", "TX", "CA"];

    public static bool IsDigital(string word) => Digital.Contains(word);

    public static bool IsAnalogue(string word) => Analogue.Contains(word);
}
