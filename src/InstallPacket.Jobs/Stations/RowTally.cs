namespace InstallPacket.Jobs.Stations;

/// <summary>What became of the rows of a station list: every row read was kept, left out as asked, or dropped.</summary>
public sealed class RowTally
{
    private readonly SortedDictionary<string, int> _leftOut = new(StringComparer.Ordinal);
    private readonly SortedDictionary<string, int> _dropped = new(StringComparer.Ordinal);

    /// <summary>Rows that became a station.</summary>
    public int Kept { get; private set; }

    /// <summary>Rows that the user's own filters leave out, by reason.</summary>
    public IReadOnlyDictionary<string, int> LeftOut => _leftOut;

    /// <summary>Rows that cannot be used, by reason; each has a finding.</summary>
    public IReadOnlyDictionary<string, int> Dropped => _dropped;

    /// <summary>All rows.</summary>
    public int Read => Kept + _leftOut.Values.Sum() + _dropped.Values.Sum();

    internal void Keep(int rows) => Kept += rows;

    internal void LeaveOut(string reason) => _leftOut[reason] = _leftOut.GetValueOrDefault(reason) + 1;

    internal void Drop(string reason, int rows = 1) => _dropped[reason] = _dropped.GetValueOrDefault(reason) + rows;

    /// <summary>The counts in one line.</summary>
    public override string ToString() =>
        $"{Count(Read, "row")} read, {Count(Kept, "station")} kept, {Count(_dropped.Values.Sum(), "row")} dropped{Reasons(_dropped)}"
        + (_leftOut.Count == 0 ? "" : $", {Count(_leftOut.Values.Sum(), "row")} left out as asked{Reasons(_leftOut)}");

    private static string Count(int n, string what) => n == 1 ? $"1 {what}" : $"{n} {what}s";

    private static string Reasons(SortedDictionary<string, int> counts) =>
        counts.Count == 0 ? "" : " (" + string.Join(", ", counts.Select(c => $"{c.Key}: {c.Value}")) + ")";
}
