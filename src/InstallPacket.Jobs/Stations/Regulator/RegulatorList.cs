namespace InstallPacket.Jobs.Stations.Regulator;

/// <summary>
/// Reads the regulator's query list of television stations in its text form: one record a line, fields between vertical bars. Makes
/// stations of ours from it: ids from call signs, sites from coordinates and cities.
/// </summary>
public static class RegulatorList
{
    /// <summary>The raster of the list's channels.</summary>
    public const string Raster = "us-6";

    private const string System = "ATSC 1.0";

    /// <summary>Whether a text has the form of the regulator's list: it holds a record, and no header of ours before it.</summary>
    public static bool HasForm(string text)
    {
        foreach (var range in text.AsSpan().Split('\n'))
        {
            var line = text.AsSpan(range);
            if (line.Contains("rf_channel", StringComparison.Ordinal)) return false;
            if (line.StartsWith("|") && RegulatorRecord.Of(line.ToString(), 1) is not null) return true;
        }
        return false;
    }

    /// <summary>Reads the list.</summary>
    /// <param name="file">The file, line ends as <c>\n</c>.</param>
    /// <param name="filter">What to keep. A row that it leaves out is only counted; of the others every one that cannot be used has a
    /// finding.</param>
    /// <param name="findings">Receives what is wrong with it.</param>
    public static StationList Read(JobFile file, StationFilter filter, FindingList findings)
    {
        var tally = new RowTally();
        // In this order neither ids nor sites depend on the order of the list.
        var usable = Usable(file, filter, tally, findings).OrderBy(s => s.CallSign, StringComparer.Ordinal).ThenBy(s => s.Channel)
            .ThenBy(s => s.LatitudeDeg).ThenBy(s => s.LongitudeDeg).ThenBy(s => s.Record.Line).ToArray();
        var sites = SiteGroups.Of([.. usable.Select(s => (s.LatitudeDeg, s.LongitudeDeg))]);
        var kept = WithoutDuplicates(file, [.. usable.Zip(sites)], tally, findings);
        tally.Keep(kept.Count);
        EmptyList.Check(file, tally, findings);
        var stations = Stations(file, kept);
        return new(stations, tally, RegulatorRemarks.Of([.. kept.Select(k => k.Station)], stations));
    }

    private static List<RegulatorStation> Usable(JobFile file, StationFilter filter, RowTally tally, FindingList findings)
    {
        var usable = new List<RegulatorStation>();
        var lines = file.Text.Split('\n');
        for (var i = 0; i < lines.Length; i++)
        {
            if (string.IsNullOrWhiteSpace(lines[i])) continue;
            if (RegulatorRecord.Of(lines[i], i + 1) is not { } record) ReportStranger(file, i + 1, tally, findings);
            else if (new RegulatorRow(file.Path, record, findings).Read(filter, tally) is { } station) usable.Add(station);
        }
        return usable;
    }

    private static void ReportStranger(JobFile file, int line, RowTally tally, FindingList findings)
    {
        tally.Drop("not a record");
        findings.Add(Severity.Caution, "station-row-dropped", "no-record", new(file.Path, line, 1));
    }

    private static List<(RegulatorStation Station, int Site)> WithoutDuplicates(
        JobFile file, (RegulatorStation Station, int Site)[] all, RowTally tally, FindingList findings)
    {
        var kept = new List<(RegulatorStation, int)>();
        foreach (var same in all.GroupBy(s => (Call: s.Station.CallSign.ToUpperInvariant(), s.Station.Channel, s.Site)))
        {
            var best = same.OrderByDescending(s => s.Station.IsLicensed).ThenByDescending(s => s.Station.ErpKw).ThenBy(s =>
                s.Station.Record.Line).First();
            kept.Add(best);
            foreach (var (other, _) in same.Where(s => s != best))
            {
                tally.Drop("duplicate");
                findings.Add(Severity.Caution, "station-row-dropped", "duplicate",
                    new(file.Path, other.Record.Line, other.Record.Column(RegulatorRecord.CallSign)),
                    ("call_sign", other.CallSign), ("channel", other.Channel), ("status", other.Status), ("power_kw", other.ErpKw),
                    ("kept_line", best.Station.Record.Line), ("kept_status", best.Station.Status), ("kept_power_kw", best.Station.ErpKw));
            }
        }
        return kept;
    }

    private static Station[] Stations(JobFile file, List<(RegulatorStation Station, int Site)> kept)
    {
        var ids = StationNames.Ids([.. kept.Select(k => k.Station)]);
        var sites = kept.Select(k => k.Site).Distinct().ToArray();
        var cities = kept.ToLookup(k => k.Site, k => k.Station.City);
        var names = sites.Zip(StationNames.Sites([.. sites.Select(s => cities[s].ToArray())])).ToDictionary(s => s.First, s => s.Second);
        return [.. kept.Zip(ids).Select(k => new Station(
            k.Second, k.First.Station.CallSign, names[k.First.Site], System, "", Raster, k.First.Station.Channel, "",
                k.First.Station.LatitudeDeg, k.First.Station.LongitudeDeg,
            k.First.Station.ErpKw, k.First.Station.HaatM, k.First.Station.AboveSeaM, k.First.Station.HasVerticalPower ? Polarisation.Both
                : Polarisation.Horizontal,
            new(file.Path, k.First.Station.Record.Line, 1)))];
    }
}
