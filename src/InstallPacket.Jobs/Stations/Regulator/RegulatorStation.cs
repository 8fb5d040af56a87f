namespace InstallPacket.Jobs.Stations.Regulator;

/// <summary>A station of the regulator's list that can be used.</summary>
/// <param name="Record">Its record.</param>
/// <param name="CallSign">Call sign, as listed.</param>
/// <param name="Channel">RF channel.</param>
/// <param name="LatitudeDeg">Latitude [deg], NAD83.</param>
/// <param name="LongitudeDeg">Longitude [deg], east positive, NAD83.</param>
/// <param name="ErpKw">Effective radiated power [kW].</param>
/// <param name="HaatM">Height above average terrain [m]; null when the list does not tell.</param>
/// <param name="AboveSeaM">Radiating centre above sea level [m]; null when the list does not tell.</param>
internal sealed record RegulatorStation(
    RegulatorRecord Record, string CallSign, int Channel, double LatitudeDeg, double LongitudeDeg, double ErpKw, double? HaatM,
        double? AboveSeaM)
{
    public string Status => Record.Text(RegulatorRecord.Status);

    public bool IsLicensed => Status.Equals(StationFilter.Licensed, StringComparison.OrdinalIgnoreCase);

    public bool IsDirectional => Record.Text(RegulatorRecord.Directional).StartsWith("DA", StringComparison.OrdinalIgnoreCase);

    public bool HasVerticalPower => RegulatorNumber.Read(Record.Text(RegulatorRecord.VerticalPower)) is { Value: > 0 };

    /// <summary>City as a name: <c>NORTH HARLOW</c> becomes <c>North Harlow</c>; signs that no name has are left out.</summary>
    public string City
    {
        get
        {
            var name = new System.Text.StringBuilder();
            foreach (var c in Record.Text(RegulatorRecord.City))
            {
                var inWord = name.Length > 0 && (char.IsLetter(name[^1]) || name[^1] == '\'');
                if (char.IsLetter(c)) name.Append(inWord ? char.ToLowerInvariant(c) : char.ToUpperInvariant(c));
                else if (name.Length > 0 && (char.IsAsciiDigit(c) || (c is ' ' or '.' or '-' or '\'' && name[^1] != c))) name.Append(c);
            }
            return name.ToString(0, Math.Min(name.Length, 60)).TrimEnd(' ', '-');
        }
    }
}
