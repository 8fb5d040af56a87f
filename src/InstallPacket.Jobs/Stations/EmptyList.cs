namespace InstallPacket.Jobs.Stations;

/// <summary>Reports a station list that leaves nothing to plan with.</summary>
internal static class EmptyList
{
    /// <summary>Adds the finding when no row was kept.</summary>
    public static void Check(JobFile file, RowTally tally, FindingList findings)
    {
        if (tally.Kept > 0) return;
        var way = tally switch { { Read: 0 } => "no-rows", { LeftOut.Count: 0 } => "unusable", _ => "left-out" };
        findings.Add(Severity.Stop, "station-list-empty", way, new(file.Path, 0, 0), ("rows", tally.Read));
    }
}
