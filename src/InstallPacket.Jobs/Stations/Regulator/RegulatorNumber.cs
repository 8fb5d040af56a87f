namespace InstallPacket.Jobs.Stations.Regulator;

/// <summary>Numbers as the regulator's list writes them: <c>34.     kW</c>, <c>318.</c>, <c>.5</c>.</summary>
internal static class RegulatorNumber
{
    /// <summary>The number at the start of a field and the unit behind it; null when there is no number.</summary>
    public static (double Value, string Unit)? Read(string field)
    {
        var words = field.Split(' ', 2, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (words.Length == 0) return null;
        var number = words[0].EndsWith('.') ? words[0][..^1] : words[0];
        if (number.StartsWith('.')) number = "0" + number;
        return Direction.PlainNumber(number, out var value) ? (value, words.Length == 2 ? words[1] : "") : null;
    }

    /// <summary>A plain number inside bounds; null otherwise.</summary>
    public static double? Within(string field, double min, double max) =>
        Read(field) is { Unit: "" } n && n.Value >= min && n.Value <= max ? n.Value : null;
}
