using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Reception;

namespace InstallPacket.Jobs.Reception;

/// <summary>The keys of <c>reception</c>.</summary>
internal static class ReceptionKeys
{
    private static readonly GroupKind PatternPoint = new(
        new("bearing", new BearingKind(), "True bearing from the transmitter.", Required: true),
        new("gain", new QuantityKind(Dimension.Ratio, PatternText.LeastDb, 0, "dB"), "Gain there, relative to the strongest direction.", Required: true));

    private static readonly GroupKind Transmitter = new(
        new("name", new TextKind(60), "What the viewer calls it.", Required: true),
        new("site", new TextKind(60), "The mast or hill it stands on; transmitters of one site share this name.", Required: true),
        new("system", new WordKind([.. StationRules.Systems]), "Transmission system.", Required: true),
        new("mode", new TextKind(30), "Modulation and code rate, for example `64QAM 2/3`; not needed for ATSC 1.0."),
        new("raster", new WordKind([.. StationRules.Rasters]), "Channel raster.", Required: true),
        new("channel", new IntegerKind(1, 69), "RF channel in that raster.", Required: true),
        new("shows-as", new TextKind(12), "The number that the viewer sees, for example `7.1`."),
        new("latitude", new CoordinateKind(true), "Latitude of the transmitter, WGS84.", Required: true),
        new("longitude", new CoordinateKind(false), "Longitude of the transmitter, WGS84.", Required: true),
        new("power", new QuantityKind(Dimension.RadiatedPower, 0.0001, 5000, "kW"), "Effective radiated power on a half-wave dipole (ERP), in the strongest direction.", Required: true),
        new("height", new QuantityKind(Dimension.Length, 1, 3000, "m"), "Height of its antenna above average terrain; needed without `above-sea`."),
        new("above-sea", new QuantityKind(Dimension.Length, -400, 6000, "m"), "Height of its antenna above sea level; needed without `height`, and for the terrain models."),
        new("polarisation", new WordKind("horizontal", "vertical", "both"), "Polarisation.", Required: true),
        new("pattern", new ListKind(PatternPoint, TransmitterPattern.FewestPoints, PatternText.MostPoints), "How its antenna radiates in each direction; straight lines between the points. Alike in all directions when absent."));

    public static readonly GroupKind Section = new(
        new("stations", new PathKind(), "A station list (CSV) in the job's folder or in `_shared/stations`."),
        new("transmitters", new MapKind(Transmitter, "transmitter", 0, 100), "Transmitters written into the job itself, instead of or beside a list."),
        new("want", new ListKind(new ReferenceKind(ReferenceTarget.Station), 1, 100), "The stations that must come in.", Required: true),
        new("within", new QuantityKind(Dimension.Length, 1000, 300000, "m"), "Stations farther away are left out.", Default: "150 km"),
        new("aim", new BearingKind(), "Where the antenna points; chosen by the program when absent."),
        new("reserve", new QuantityKind(Dimension.Ratio, 0, 40, "dB"), "Margin that a wanted channel should keep at every outlet.", Default: "6 dB"),
        new("chance", new QuantityKind(Dimension.Share, 50, 99, "%"), "Chance of reception that a wanted channel should have at every outlet.", Default: "90 %"),
        new("multipath", new QuantityKind(Dimension.Ratio, 0, 10, "dB"), "Allowance for reflections, added to the required C/N.", Default: "2 dB"));
}
