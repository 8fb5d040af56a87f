namespace InstallPacket.Jobs.Stations.Regulator;

/// <summary>What the regulator's list does not tell, in words for whoever takes stations from it.</summary>
internal static class RegulatorRemarks
{
    private const int MostNames = 8;

    /// <summary>The remarks; none when no station was kept.</summary>
    /// <param name="listed">The stations as listed.</param>
    /// <param name="stations">The same ones as stations of ours.</param>
    public static IReadOnlyList<string> Of(IReadOnlyList<RegulatorStation> listed, IReadOnlyList<Station> stations)
    {
        if (stations.Count == 0) return [];
        string[] general =
        [
            "The coordinates are NAD83 and are taken as WGS84; the two lie 1 to 2 m apart.",
            "The list does not tell ATSC 3.0 from ATSC 1.0: every station is taken as ATSC 1.0. Correct `system` and `mode` of those that have changed.",
            "The number that the viewer sees is not in the list: fill in `shows_as`.",
        ];
        return
        [
            .. general,
            .. About(stations.Where((_, i) => listed[i].IsDirectional),
                "Directional antenna whose pattern is not in the list, so that the power holds for its strongest direction; fill in `pattern`"),
            .. About(stations.Where(s => s.HaatM is null),
                "No height above average terrain from 1 to 3000 m in the list; `haat_m` is empty"),
            .. About(stations.Where(s => s.AboveSeaM is null),
                "No height above sea level in the list; `above_sea_m` is empty, and the terrain models leave the station out"),
        ];
    }

    private static IEnumerable<string> About(IEnumerable<Station> stations, string what)
    {
        var ids = stations.Select(s => s.Id).ToArray();
        if (ids.Length == 0) yield break;
        yield return $"{what}: {string.Join(", ", ids.Take(MostNames))}{(ids.Length > MostNames ? $" and {ids.Length - MostNames} others" : "")}.";
    }
}
