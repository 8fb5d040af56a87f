namespace InstallPacket.Jobs.Siting;

/// <summary>Measured profiles begin at the house and go outward.</summary>
internal static class ProfileRules
{
    public static void Check(SitingSection siting, FindingList findings)
    {
        foreach (var profile in siting.Profiles) Check(profile, findings);
    }

    private static void Check(MeasuredProfile profile, FindingList findings)
    {
        if (profile.Points[0].DistanceM != 0)
            findings.Add(Severity.Stop, "profile-unfit", "start", profile.At, ("station", profile.Station),
                ("start_m", profile.Points[0].DistanceM));
        for (var i = 1; i < profile.Points.Count; i++)
            if (profile.Points[i].DistanceM <= profile.Points[i - 1].DistanceM)
                findings.Add(Severity.Stop, "profile-unfit", "order", profile.At, ("station", profile.Station),
                    ("from_m", profile.Points[i - 1].DistanceM),
                    ("to_m", profile.Points[i].DistanceM), ("point", i + 1), ("before", i));
    }
}
