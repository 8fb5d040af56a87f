using InstallPacket.Calc.Reception;
using InstallPacket.Jobs.Reading;

namespace InstallPacket.Jobs.Stations;

/// <summary>Words and thresholds that station lists and job files share.</summary>
public static class StationRules
{
    /// <summary>Transmission systems.</summary>
    public static readonly IReadOnlyList<string> Systems = ["ATSC 1.0", "DVB-T", "DVB-T2"];

    /// <summary>Channel rasters.</summary>
    public static readonly IReadOnlyList<string> Rasters = ["us-6", "eu-7", "eu-8"];

    /// <summary>Polarisations.</summary>
    public static readonly IReadOnlyList<string> Polarisations = ["horizontal", "vertical", "both"];

    /// <summary>The required C/N of a system and mode such as <c>64QAM 2/3</c>; null when it is not known.</summary>
    public static RequiredCnRow? Threshold(string system, string mode)
    {
        var words = mode.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (system == "ATSC 1.0") return RequiredCn.Find(system, "8-VSB", "");
        return words.Length == 2 ? RequiredCn.Find(system, words[0], words[1]) : null;
    }

    /// <summary>Whether every required key of a transmitter was read; otherwise its findings are reported already.</summary>
    internal static bool Complete(CheckedGroup g) =>
        ((Catalogue.GroupKind)((Catalogue.MapKind)Catalogue.ReceptionKeys.Section.Keys.First(k => k.Name == "transmitters").Kind).Item)
            .Keys.Where(k => k.Required).All(k => g.Has(k.Name));

    /// <summary>Checks what spans several keys of a transmitter written into a job.</summary>
    internal static void Check(Station s, CheckedGroup g, FindingList findings)
    {
        if (ChannelRaster.Find(s.Raster, s.Channel) is null)
            findings.Add(Severity.Stop, "channel-unknown", g.Place("channel"), $"reception.transmitters.{s.Id} is on channel {s.Channel} of the raster {s.Raster}, which has no such channel",
                "an RF channel of that raster", "check the RF channel (not the number that the viewer sees)");
        if (Threshold(s.System, s.Mode) is null)
            findings.Add(Severity.Stop, "mode-unknown", g.Place("mode"), $"reception.transmitters.{s.Id} is {s.System} in the mode `{s.Mode}`, whose threshold is not known",
                "a modulation and a code rate, for example `64QAM 2/3`", "ask the operator or read the mode off a meter");
    }
}
