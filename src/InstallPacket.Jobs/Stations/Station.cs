using InstallPacket.Calc.Reception;

namespace InstallPacket.Jobs.Stations;

/// <summary>A transmitter. At least one of its two heights is known.</summary>
/// <param name="Id">Its name in the list.</param>
/// <param name="Name">What the viewer calls it.</param>
/// <param name="Site">The mast or hill; transmitters of one site share it.</param>
/// <param name="System">Transmission system.</param>
/// <param name="Mode">Modulation and code rate; empty when the system has one.</param>
/// <param name="Raster">Channel raster.</param>
/// <param name="Channel">RF channel.</param>
/// <param name="ShowsAs">The number that the viewer sees; empty when unknown.</param>
/// <param name="LatitudeDeg">Latitude [deg].</param>
/// <param name="LongitudeDeg">Longitude [deg], east positive.</param>
/// <param name="ErpKw">Effective radiated power on a dipole [kW], in the strongest direction.</param>
/// <param name="HaatM">Height above average terrain [m]; null when unknown.</param>
/// <param name="AboveSeaM">Height of the antenna above sea level [m]; null when unknown.</param>
/// <param name="Polarisation">Polarisation.</param>
/// <param name="At">Where it is written.</param>
public sealed record Station(
    string Id, string Name, string Site, string System, string Mode, string Raster, int Channel, string ShowsAs, double LatitudeDeg,
    double LongitudeDeg, double ErpKw, double? HaatM, double? AboveSeaM, Polarisation Polarisation, SourceSpan At)
{
    /// <summary>Horizontal pattern of its antenna; null when it radiates alike in all directions or nobody said.</summary>
    public TransmitterPattern? Pattern { get; init; }
}
