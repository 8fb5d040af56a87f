using InstallPacket.Calc.Quantities;
using InstallPacket.Calc.Reception;

namespace InstallPacket.Jobs.Reception;

/// <summary>The keys of a point of a pattern.</summary>
internal static class PatternPointKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<Bearing> Bearing = Keys.Required("bearing", new BearingKind(), "True bearing from the transmitter.");

    public static readonly Key<double> Gain = Keys.Required(
        "gain", new QuantityKind(Dimension.Ratio, PatternText.LeastDb, 0, "dB"), "Gain there, relative to the strongest direction.");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of a transmitter.</summary>
internal static class TransmitterKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<string> Name = Keys.Required("name", new TextKind(60), "What the viewer calls it.");

    public static readonly Key<string> Site = Keys.Required(
        "site", new TextKind(60), "The mast or hill it stands on; transmitters of one site share this name.");

    public static readonly Key<string> System = Keys.Required(
        "system", new TableWordKind([.. StationRules.Systems]), "Transmission system.");

    public static readonly Key<string> Mode = Keys.Optional(
        "mode", new TextKind(30), "Modulation and code rate, for example `64QAM 2/3`; not needed for ATSC 1.0.");

    // A row of the table of channel rasters: a country is added there.
    public static readonly Key<string> Raster = Keys.Required("raster", new TableWordKind([.. StationRules.Rasters]), "Channel raster.");

    public static readonly Key<int> Channel = Keys.Required("channel", new IntegerKind(1, 69), "RF channel in that raster.");

    public static readonly Key<string> ShowsAs = Keys.Optional(
        "shows-as", new TextKind(12), "The number that the viewer sees, for example `7.1`.");

    public static readonly Key<double> Latitude = Keys.Required(
        "latitude", new CoordinateKind(true), "Latitude of the transmitter, WGS84.");

    public static readonly Key<double> Longitude = Keys.Required(
        "longitude", new CoordinateKind(false), "Longitude of the transmitter, WGS84.");

    public static readonly Key<double> Power = Keys.Required(
        "power", new QuantityKind(Dimension.RadiatedPower, 0.0001, 5000, "kW"),
        "Effective radiated power on a half-wave dipole (ERP), in the strongest direction.");

    public static readonly Key<double> Height = Keys.Optional(
        "height", new QuantityKind(Dimension.Length, 1, 3000, "m"),
        "Height of its antenna above average terrain; needed without `above-sea`.");

    public static readonly Key<double> AboveSea = Keys.Optional(
        "above-sea", new QuantityKind(Dimension.Length, -400, 6000, "m"),
        "Height of its antenna above sea level; needed without `height`, and for the terrain models.");

    public static readonly Key<Polarisation> Polarisation = Keys.Required("polarisation", new WordKind<Polarisation>(), "Polarisation.");

    public static readonly Key<IReadOnlyList<Sourced<CheckedGroup>>> Pattern = Keys.Optional(
        "pattern", new ListKind<CheckedGroup>(PatternPointKeys.Group, TransmitterPattern.FewestPoints, PatternText.MostPoints),
        "How its antenna radiates in each direction; straight lines between the points. Alike in all directions when absent.");

    public static GroupKind Group => Keys.Group;
}

/// <summary>The keys of <c>reception</c>.</summary>
internal static class ReceptionKeys
{
    private static readonly KeyList Keys = new();

    public static readonly Key<string> Stations = Keys.Optional(
        "stations", new PathKind(), "A station list (CSV) in the job's folder or in `_shared/stations`.");

    public static readonly Key<IReadOnlyList<Entry<CheckedGroup>>> Transmitters = Keys.Optional(
        "transmitters", new MapKind<CheckedGroup>(TransmitterKeys.Group, "transmitter", 0, 100),
        "Transmitters written into the job itself, instead of or beside a list.");

    public static readonly Key<IReadOnlyList<Sourced<string>>> Want = Keys.Required(
        "want", new ShortKind<IReadOnlyList<Sourced<string>>>(new ListKind<string>(new WishKind(), 1, 100), new WishKind()),
        "The stations that must come in: by id, by the name or number that the set shows, a site for all of its stations, or for example `all within 60 km`.");

    public static readonly Key<double> Within = Keys.Default(
        "within", new QuantityKind(Dimension.Length, 1000, 300000, "m"), "Stations farther away are left out.", "150 km");

    public static readonly Key<Bearing> Aim = Keys.Optional(
        "aim", new BearingKind(), "Where the antenna points; chosen by the program when absent.");

    public static readonly Key<double> Reserve = Keys.Default(
        "reserve", new QuantityKind(Dimension.Ratio, 0, 40, "dB"), "Margin that a wanted channel should keep at every outlet.", "6 dB");

    public static readonly Key<double> Chance = Keys.Default(
        "chance", new QuantityKind(Dimension.Share, 50, 99, "%"),
        "Chance of reception that a wanted channel should have at every outlet.", "90 %");

    public static readonly Key<double> Time = Keys.Optional(
        "time", new QuantityKind(Dimension.Share, 50, 99.9, "%"),
        "Share of the time for which a channel must come in to count as received; that of the code family when absent: 90 % for `us`, 99 % for `eu`.");

    public static readonly Key<double> Multipath = Keys.Default(
        "multipath", new QuantityKind(Dimension.Ratio, 0, 10, "dB"), "Allowance for reflections, added to the required C/N.", "2 dB");

    public static GroupKind Group => Keys.Group;
}
