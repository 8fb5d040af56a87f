namespace InstallPacket.Jobs.Reception;

/// <summary>Stations that a job wants twice.</summary>
internal static class ReceptionRules
{
    public static void Check(ReceptionSection reception, FindingList findings)
    {
        foreach (var twice in reception.Want.GroupBy(w => w.Value, StringComparer.Ordinal).Where(g => g.Count() > 1))
            foreach (var again in twice.Skip(1))
                findings.Add(Severity.Stop, "duplicate-want", again.At, ("station", twice.Key));
    }
}
