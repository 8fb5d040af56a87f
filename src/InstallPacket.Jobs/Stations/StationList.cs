namespace InstallPacket.Jobs.Stations;

/// <summary>A station list as read.</summary>
/// <param name="Stations">The stations that can be used.</param>
/// <param name="Tally">What became of the rows.</param>
/// <param name="Remarks">What a reader of the stations should know, a sentence each.</param>
public sealed record StationList(IReadOnlyList<Station> Stations, RowTally Tally, IReadOnlyList<string> Remarks);
