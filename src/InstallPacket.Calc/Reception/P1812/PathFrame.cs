namespace InstallPacket.Calc.Reception.P1812;

/// <summary>The line between the antennas.</summary>
/// <param name="LengthKm">Length of the path, D [km].</param>
/// <param name="TxAboveSeaM">Transmitting antenna above sea level, hts [m].</param>
/// <param name="RxAboveSeaM">Receiving antenna above sea level, hrs [m].</param>
/// <param name="MedianRadiusKm">Median effective radius of the earth, ae [km].</param>
/// <param name="TxCoastKm">Distance of the transmitter from the coast along the path, dct [km].</param>
/// <param name="RxCoastKm">Distance of the receiver from the coast along the path, dcr [km].</param>
public sealed record PathFrame(double LengthKm, double TxAboveSeaM, double RxAboveSeaM, double MedianRadiusKm, double TxCoastKm,
    double RxCoastKm)
{
    /// <summary>The straight line between the antennas at a distance from the transmitter [m above sea level].</summary>
    internal double RayM(double distanceKm) => (TxAboveSeaM * (LengthKm - distanceKm) + RxAboveSeaM * distanceKm) / LengthKm;

    internal static PathFrame Of(ZonedProfile profile, PathEnd tx, PathEnd rx, PathClimate climate) => new(
        profile.LengthKm,
        profile.HeightsM[0] + tx.HeightM,
        profile.HeightsM[^1] + rx.HeightM,
        climate.MedianRadiusKm(),
        profile.Zones[0] == RadioZone.Sea ? 0 : tx.CoastKm,
        profile.Zones[^1] == RadioZone.Sea ? 0 : rx.CoastKm);
}
