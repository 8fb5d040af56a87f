using System.Globalization;

namespace InstallPacket.Jobs.Stations.Regulator;

/// <summary>Names for the stations and sites of a list that has call signs and cities only.</summary>
internal static class StationNames
{
    /// <summary>Ids: the call sign in lower case; with the RF channel behind it when the call sign stands there more than once; with a
    /// count when that is not enough.</summary>
    public static string[] Ids(IReadOnlyList<RegulatorStation> stations)
    {
        var times = stations.GroupBy(s => Plain(s.CallSign), StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Count(),
            StringComparer.Ordinal);
        var taken = new HashSet<string>(StringComparer.Ordinal);
        return [.. stations.Select(s =>
            Free(times[Plain(s.CallSign)] == 1 ? Plain(s.CallSign)
            : $"{Plain(s.CallSign)}-{s.Channel.ToString(CultureInfo.InvariantCulture)}", "-", taken))];
    }

    /// <summary>Names of the sites: the city that most of their stations name; numbered from 1 when several sites have the same.</summary>
    /// <param name="cities">For each site the cities of its stations.</param>
    public static string[] Sites(IReadOnlyList<IReadOnlyList<string>> cities)
    {
        var names = cities.Select(MostCommon).ToArray();
        var times = names.GroupBy(n => n, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Count(), StringComparer.Ordinal);
        var taken = names.Where(n => times[n] == 1).ToHashSet(StringComparer.Ordinal);
        var next = new Dictionary<string, int>(StringComparer.Ordinal);
        return [.. names.Select(n => times[n] == 1 ? n : Numbered(n, next, taken))];
    }

    private static string MostCommon(IReadOnlyList<string> cities) =>
        cities.Where(c => c.Length > 0).GroupBy(c => c, StringComparer.Ordinal).OrderByDescending(g => g.Count()).ThenBy(g => g.Key,
            StringComparer.Ordinal)
            .FirstOrDefault()?.Key ?? "Unnamed site";

    private static string Numbered(string name, Dictionary<string, int> next, HashSet<string> taken)
    {
        string numbered;
        do
        {
            next[name] = next.GetValueOrDefault(name) + 1;
            numbered = $"{name} {next[name].ToString(CultureInfo.InvariantCulture)}";
        }
        while (!taken.Add(numbered));
        return numbered;
    }

    private static string Free(string id, string mark, HashSet<string> taken)
    {
        var free = id;
        for (var n = 2; !taken.Add(free); n++) free = id + mark + n.ToString(CultureInfo.InvariantCulture);
        return free;
    }

    private static string Plain(string callSign) => callSign.ToLowerInvariant().TrimEnd('-');
}
