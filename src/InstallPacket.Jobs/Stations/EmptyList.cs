namespace InstallPacket.Jobs.Stations;

/// <summary>Reports a station list that leaves nothing to plan with.</summary>
internal static class EmptyList
{
    /// <summary>Adds the finding when no row was kept.</summary>
    public static void Check(JobFile file, RowTally tally, FindingList findings)
    {
        if (tally.Kept > 0) return;
        var (found, limit, remedy) = tally switch
        {
            { Read: 0 } => ("the station list has no rows", "a header row and at least one transmitter", "add the transmitters of the region"),
            { LeftOut.Count: 0 } => ($"none of the {tally.Read} rows can be used", "at least one transmitter", "correct the rows named in the other findings"),
            _ => ($"none of the {tally.Read} rows is kept", "at least one transmitter", "ask for more: a wider `--within`, other channels or another status; or correct the rows named in the other findings"),
        };
        findings.Add(Severity.Stop, "station-list-empty", new(file.Path, 0, 0), found, limit, remedy);
    }
}
