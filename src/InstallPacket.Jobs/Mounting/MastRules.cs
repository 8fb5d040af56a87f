namespace InstallPacket.Jobs.Mounting;

/// <summary>A job names its mast and the length of it, unless the mount brings them.</summary>
internal static class MastRules
{
    public static void Check(CheckedGroup job, PartLibrary parts, FindingList findings)
    {
        if (job.Maybe(JobKeys.Mounting) is not { } mounting) return;
        var own = mounting.Value.Maybe(MountingKeys.Part) is { } part ? (parts.Find(part.Value) as MountPart)?.OwnMast : null;
        if (own is null) Ask(mounting, MountingKeys.Mast, findings);
        if (own?.LengthM is null) Ask(mounting, MountingKeys.MastLength, findings);
    }

    private static void Ask(Sourced<CheckedGroup> mounting, Key key, FindingList findings)
    {
        if (mounting.Value.Wrote(key)) return;
        findings.Add(Severity.Stop, "missing-key", "key", mounting.Value.At, ("path", $"{JobKeys.Mounting.Name}.{key.Name}"),
            ("key", key.Name), ("meaning", key.Meaning), ("expected", Expected.Of(key.Kind)));
    }
}
