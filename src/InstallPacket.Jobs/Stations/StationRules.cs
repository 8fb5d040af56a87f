using InstallPacket.Calc.Reception;

namespace InstallPacket.Jobs.Stations;

/// <summary>Words and thresholds that station lists and job files share.</summary>
public static class StationRules
{
    // A system fits a raster when its noise bandwidth is known for that width. ISDB-T sits 1/7 MHz above the middle of a 6 MHz channel,
    // so it has rasters of its own.
    private static readonly (string System, string[] Rasters)[] Known =
    [
        ("ATSC 1.0", ["us-6"]),
        ("ATSC 3.0", ["us-6"]),
        ("DVB-T", ["eu-7", "eu-8", "au-7"]),
        ("DVB-T2", ["eu-7", "eu-8", "au-7"]),
        ("ISDB-T", ["jp-6", "br-6"]),
    ];

    /// <summary>Transmission systems.</summary>
    public static readonly IReadOnlyList<string> Systems = [.. Known.Select(k => k.System)];

    /// <summary>Channel rasters.</summary>
    public static readonly IReadOnlyList<string> Rasters = [.. Known.SelectMany(k => k.Rasters).Distinct(StringComparer.Ordinal)];

    /// <summary>The rasters that a system is sent in; empty for an unknown system.</summary>
    public static IReadOnlyList<string> RastersOf(string system) => Known.FirstOrDefault(k => k.System == system).Rasters ?? [];

    /// <summary>The required C/N of a system and mode such as <c>64QAM 2/3</c>; null when it is not known.</summary>
    public static RequiredCnRow? Threshold(string system, string mode)
    {
        var words = mode.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (system == "ATSC 1.0") return RequiredCn.Find(system, "8-VSB", "");
        return words.Length == 2 ? RequiredCn.Find(system, words[0], words[1]) : null;
    }

    /// <summary>Whether every required key of a transmitter was read; otherwise its findings are reported already.</summary>
    internal static bool Complete(CheckedGroup g) => TransmitterKeys.Group.Keys.Where(k => k.Required).All(g.Has);

    /// <summary>Checks what spans several keys of a transmitter written into a job.</summary>
    internal static void Check(Station s, CheckedGroup g, FindingList findings)
    {
        if (!RastersOf(s.System).Contains(s.Raster))
            findings.Add(Severity.Stop, "raster-unfit", g.Place(TransmitterKeys.Raster), ("transmitter", s.Id), ("system", s.System),
                ("raster", s.Raster),
                ("rasters", RastersOf(s.System)));
        else if (ChannelRaster.Find(s.Raster, s.Channel) is null)
            findings.Add(Severity.Stop, "channel-unknown", g.Place(TransmitterKeys.Channel), ("transmitter", s.Id), ("channel", s.Channel),
                ("raster", s.Raster));
        if (Threshold(s.System, s.Mode) is null)
            findings.Add(Severity.Stop, "mode-unknown", ModeList.IsLayered(s.Mode) ? "layered" : "", g.Place(TransmitterKeys.Mode),
                ("transmitter", s.Id),
                ("system", s.System), ("mode", s.Mode), ("modes", ModeList.Of(s.System)));
        if (!g.Wrote(TransmitterKeys.Height) && !g.Wrote(TransmitterKeys.AboveSea))
            findings.Add(Severity.Stop, "missing-key", "height", g.At, ("transmitter", s.Id));
    }
}
