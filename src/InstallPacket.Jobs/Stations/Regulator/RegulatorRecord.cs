namespace InstallPacket.Jobs.Stations.Regulator;

/// <summary>
/// One line of the regulator's query list: it starts and ends with <c>|</c>, fields between are padded with blanks. Positions 1, 3, 4,
/// 9 to 11, 14 and 18 to 27 were read; the others are recalled, so that their fields count only where their form fits.
/// </summary>
internal sealed class RegulatorRecord
{
    public const int CallSign = 1;
    public const int ServiceWord = 3;
    public const int Channel = 4;
    public const int Directional = 5;
    public const int Status = 9;
    public const int City = 10;
    public const int Power = 14;
    public const int VerticalPower = 15;
    public const int AverageHeight = 16;
    public const int AverageHeightVertical = 17;
    public const int NorthSouth = 19;
    public const int EastWest = 23;
    public const int AboveSea = 31;
    public const int AboveSeaVertical = 32;

    // Up to the seconds of the longitude, and the empty texts before the first and behind the last bar.
    private const int FewestParts = EastWest + 3 + 2;
    private readonly string[] _parts;

    private RegulatorRecord(string[] parts, int line) => (_parts, Line) = (parts, line);

    /// <summary>The line, counted from 1.</summary>
    public int Line { get; }

    /// <summary>The record on a line, or null when the line is none.</summary>
    public static RegulatorRecord? Of(string text, int line)
    {
        var end = text.AsSpan().TrimEnd();
        if (end.Length < FewestParts || end[0] != '|' || end[^1] != '|') return null;
        var parts = end.ToString().Split('|');
        return parts.Length < FewestParts ? null : new(parts, line);
    }

    /// <summary>A field without its padding; empty when the record does not reach so far.</summary>
    public string Text(int position) => position < _parts.Length - 1 ? _parts[position].Trim() : "";

    /// <summary>Where a field's text starts, counted from 1; for an empty one, where the field starts.</summary>
    public int Column(int position)
    {
        var column = 1;
        for (var i = 0; i < position && i < _parts.Length - 1; i++) column += _parts[i].Length + 1;
        var field = position < _parts.Length ? _parts[position] : "";
        return field.Trim().Length == 0 ? column : column + field.Length - field.TrimStart().Length;
    }
}
