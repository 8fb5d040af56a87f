using InstallPacket.Calc.Reception;

namespace InstallPacket.Plans.Siting;

/// <summary>The numbers of a job's place, as terms of the workings.</summary>
internal static class SitingTerms
{
    /// <summary>Latitude [deg].</summary>
    public static Term Latitude(this Job job) => Term.Key("siting.latitude", job.Siting.LatitudeDeg.Value);

    /// <summary>Longitude [deg].</summary>
    public static Term Longitude(this Job job) => Term.Key("siting.longitude", job.Siting.LongitudeDeg.Value);

    /// <summary>Ground at the house [m].</summary>
    public static Term Ground(this Job job) => job.Siting.GroundKnown ? Term.Key("siting.ground", job.Siting.Ground.Value.Metres)
        : Term.Ground("house", job.Siting.Ground.Value.Metres);

    /// <summary>Height of the antenna above the ground [m].</summary>
    public static Term AntennaHeight(this Job job) => Term.Key("siting.antenna-height", job.Siting.AntennaHeight.Value.Metres);

    /// <summary>Height of the antenna above the sea [m].</summary>
    /// <param name="ground">Ground at the house [m].</param>
    public static Term AntennaAboveSea(this Job job, Workings work, Term ground) =>
        work.Apply(SitingFormulas.AboveSea, "antenna", ground, job.AntennaHeight());

    /// <summary>Latitude of a station [deg].</summary>
    public static Term Latitude(this Station s) => Term.Station(s.Id, "latitude", s.LatitudeDeg);

    /// <summary>Longitude of a station [deg].</summary>
    public static Term Longitude(this Station s) => Term.Station(s.Id, "longitude", s.LongitudeDeg);

    /// <summary>Height of a station's antenna above the sea [m].</summary>
    public static Term AboveSea(this Station s) => Term.Station(s.Id, "above-sea", s.AboveSeaM!.Value);

    /// <summary>Centre of a station's channel [MHz].</summary>
    public static Term Centre(this Station s) =>
        Term.Table(NumberTables.Channels, $"{s.Raster}.{s.Channel}", ChannelRaster.Find(s.Raster, s.Channel)!.CentreMHz);
}
