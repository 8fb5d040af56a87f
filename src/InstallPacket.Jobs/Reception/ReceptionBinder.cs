using InstallPacket.Calc.Quantities;

namespace InstallPacket.Jobs.Reception;

/// <summary>Turns the checked group <c>reception</c> into its record.</summary>
internal static class ReceptionBinder
{
    public static ReceptionSection Section(CheckedGroup g, IReadOnlyList<Station> stations, IReadOnlyList<Sourced<string>> want) => new(
        stations, want, g.Metres(ReceptionKeys.Within), g.Maybe(ReceptionKeys.Aim),
            Gain.FromDb(g.Get(ReceptionKeys.Reserve)),
        Gain.FromDb(g.Get(ReceptionKeys.Multipath)), g.At)
    {
        WantAt = g.Place(ReceptionKeys.Want),
        ChancePct = g.Get(ReceptionKeys.Chance),
        TimePct = g.Maybe(ReceptionKeys.Time)?.Value,
    };

    /// <summary>A transmitter that the job writes itself; its pattern is read apart.</summary>
    public static Station Transmitter(Entry<CheckedGroup> e)
    {
        var g = e.Value;
        return new(
            e.Name, g.Get(TransmitterKeys.Name), g.Get(TransmitterKeys.Site), g.Get(TransmitterKeys.System),
                g.Maybe(TransmitterKeys.Mode)?.Value ?? "",
            g.Get(TransmitterKeys.Raster), g.Get(TransmitterKeys.Channel), g.Maybe(TransmitterKeys.ShowsAs)?.Value ?? "",
            g.Get(TransmitterKeys.Latitude), g.Get(TransmitterKeys.Longitude), g.Get(TransmitterKeys.Power),
                g.Maybe(TransmitterKeys.Height)?.Value,
            g.Maybe(TransmitterKeys.AboveSea)?.Value, g.Get(TransmitterKeys.Polarisation), e.At);
    }
}
