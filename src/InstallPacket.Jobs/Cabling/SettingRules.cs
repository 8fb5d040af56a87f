namespace InstallPacket.Jobs.Cabling;

/// <summary>Only an amplifier has a setting.</summary>
internal static class SettingRules
{
    public static void Check(CablingSection cabling, FindingList findings)
    {
        foreach (var e in cabling.Chain.Where(e => e.Setting is not null && e.Part is not AmplifierPart))
            findings.Add(Severity.Stop, "setting-without-amplifier", e.SettingAt, ("element", e.Id), ("kind", Word.Of(e.Part.Kind)));
    }
}
