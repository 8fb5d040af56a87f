using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Reception;

namespace InstallPacket.Jobs.Reception;

/// <summary>The pattern of a directional transmitter as a job writes it: a list of bearings and gains.</summary>
internal static class JobPattern
{
    /// <summary>The pattern; null when there is none, or after a finding.</summary>
    public static TransmitterPattern? Read(Entry<CheckedGroup> transmitter, FindingList findings)
    {
        var points = new List<(double BearingDeg, double GainDb)>();
        foreach (var (group, at) in transmitter.Value.Items(TransmitterKeys.Pattern))
        {
            if (group.Maybe(PatternPointKeys.Bearing) is not { } bearing || group.Maybe(PatternPointKeys.Gain) is not { } gain) return null;
            if (bearing.Value.North != North.True)
                return Refuse(findings, "magnetic", bearing, transmitter.Name);
            if (points.Exists(p => p.BearingDeg == bearing.Value.Degrees))
                return Refuse(findings, "twice", bearing, transmitter.Name);
            points.Add((bearing.Value.Degrees, gain.Value));
        }
        return points.Count < TransmitterPattern.FewestPoints ? null : new TransmitterPattern(points);
    }

    private static TransmitterPattern? Refuse(FindingList findings, string way, Sourced<Bearing> bearing, string transmitter)
    {
        findings.Add(Severity.Stop, "pattern-unfit", way, bearing.At, ("transmitter", transmitter), ("bearing_deg", bearing.Value.Degrees));
        return null;
    }
}
